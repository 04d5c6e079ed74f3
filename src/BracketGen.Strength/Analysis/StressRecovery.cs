using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Strength.Elements;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Analysis;

/// <summary>Stresses on both surfaces from the solved displacements.</summary>
internal static class StressRecovery
{
    /// <summary>Von Mises stresses at the nodes; <paramref name="u"/> holds six freedoms a node.</summary>
    public static ImmutableArray<NodeStress> AtNodes(ShellModel model, FreeNodes free, double[] u)
    {
        ReadOnlySpan<double> tensors = TensorsAtNodes(model, free, u);
        var result = ImmutableArray.CreateBuilder<NodeStress>(tensors.Length / 12);
        for (var n = 0; n < tensors.Length; n += 12)
        {
            result.Add(new(VonMises(tensors.Slice(n, 6)), VonMises(tensors.Slice(n + 6, 6))));
        }

        return result.MoveToImmutable();
    }

    /// <summary>
    /// Mean stress tensors at the nodes, twelve numbers each (MPa): xx yy zz xy yz zx on top, then at the bottom. <paramref name="u"/> holds six freedoms a node.
    /// </summary>
    public static double[] TensorsAtNodes(ShellModel model, FreeNodes free, double[] u)
    {
        ReadOnlySpan<ThrottlePoint> nodes = model.Mesh.Nodes.AsSpan();
        ReadOnlySpan<Triangle> triangles = model.Mesh.Triangles.AsSpan();

        // Twelve stress components a node (six for each surface, xx yy zz xy yz zx) and the weight.
        var sums = new double[nodes.Length * 13];
        Span<double> all = stackalloc double[18], local = stackalloc double[18], membrane = stackalloc double[9], plate = stackalloc double[9];
        Span<double> strains = stackalloc double[9], bends = stackalloc double[9], e = stackalloc double[9];
        OptMembrane.PlaneStress(model.Material, e);
        var noneIsFree = free.Pattern.Nodes == 0;
        for (var number = 0; number < triangles.Length; number++)
        {
            var t = triangles[number];

            // The sheet under a washer has no stress here; at the washer's rim it must not water down the mean.
            if (free.IsAtRest(t) && !noneIsFree)
            {
                continue;
            }

            var g = new LocalTriangle(nodes[t.A].Vector, nodes[t.B].Vector, nodes[t.C].Vector);
            for (var corner = 0; corner < 3; corner++)
            {
                u.AsSpan(6 * t[corner], 6).CopyTo(all[(6 * corner)..]);
            }

            ShellTriangle.ToLocal(g, all, local);
            ShellTriangle.Membrane(local, membrane);
            ShellTriangle.Plate(local, plate);
            OptMembrane.CornerStrains(g, model.Material, membrane, strains);
            DkmtPlate.CornerCurvatures(g, model.Thickness, model.Material, plate, bends);
            var curvature = model.Curvature.IsEmpty ? new(1, 1) : model.Curvature[number];
            for (var corner = 0; corner < 3; corner++)
            {
                ReadOnlySpan<double> strain = strains.Slice(3 * corner, 3), bend = bends.Slice(3 * corner, 3);
                var sum = sums.AsSpan(13 * t[corner], 13);
                sum[12] += g.Area;
                for (var surface = 0; surface < 2; surface++)
                {
                    var z = (surface == 0 ? 0.5 * curvature.Top : -0.5 * curvature.Bottom) * model.Thickness;
                    double ex = strain[0] + z * bend[0], ey = strain[1] + z * bend[1], gxy = strain[2] + z * bend[2];
                    AddTensor(g, e[0] * ex + e[1] * ey, e[3] * ex + e[4] * ey, e[8] * gxy, sum.Slice(6 * surface, 6));
                }
            }
        }

        var tensors = new double[nodes.Length * 12];
        for (var n = 0; n < nodes.Length; n++)
        {
            var sum = sums.AsSpan(13 * n, 13);
            var weight = sum[12] > 0 ? sum[12] : 1;
            for (var i = 0; i < 12; i++)
            {
                tensors[12 * n + i] = sum[i] / weight;
            }
        }

        return tensors;
    }

    private static void AddTensor(in LocalTriangle g, double sx, double sy, double sxy, Span<double> sum)
    {
        var (x, y) = (g.Ex, g.Ey);
        var area = g.Area;
        sum[0] += area * (sx * x.X * x.X + sy * y.X * y.X + 2 * sxy * x.X * y.X);
        sum[1] += area * (sx * x.Y * x.Y + sy * y.Y * y.Y + 2 * sxy * x.Y * y.Y);
        sum[2] += area * (sx * x.Z * x.Z + sy * y.Z * y.Z + 2 * sxy * x.Z * y.Z);
        sum[3] += area * (sx * x.X * x.Y + sy * y.X * y.Y + sxy * (x.X * y.Y + x.Y * y.X));
        sum[4] += area * (sx * x.Y * x.Z + sy * y.Y * y.Z + sxy * (x.Y * y.Z + x.Z * y.Y));
        sum[5] += area * (sx * x.Z * x.X + sy * y.Z * y.X + sxy * (x.Z * y.X + x.X * y.Z));
    }

    private static double VonMises(ReadOnlySpan<double> s)
    {
        double a = s[0] - s[1], b = s[1] - s[2], c = s[2] - s[0];
        return Math.Sqrt((a * a + b * b + c * c) / 2 + 3 * (s[3] * s[3] + s[4] * s[4] + s[5] * s[5]));
    }
}
