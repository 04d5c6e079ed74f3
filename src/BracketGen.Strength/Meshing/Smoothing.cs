using BracketGen.Geometry;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Meshing;

/// <summary>Moves free nodes to better places.</summary>
/// <remarks>
/// Each node goes to the mean of its neighbours where the worst triangle around it gains (L. A. Freitag, "On combining Laplacian and
/// optimization-based mesh smoothing techniques", ASME AMD 220, 1997). Quality of a triangle: 4√3 area over the sum of squared
/// sides, 1 where it is equilateral.
/// </remarks>
internal static class Smoothing
{
    private const int Sweeps = 8;

    // A node of a halved edge goes out onto its arc unless that spoils a triangle.
    private const double StillGood = 0.3;

    /// <summary>Smooths <paramref name="nodes"/> in place.</summary>
    /// <param name="nodes">The nodes.</param>
    /// <param name="triangles">The triangles.</param>
    /// <param name="isFixed">Which nodes stay.</param>
    /// <param name="pulled">Where some of the fixed nodes ought to be.</param>
    public static void Run(
        Vector2[] nodes, IReadOnlyList<Triangle> triangles, bool[] isFixed, IReadOnlyList<(int Node, Vector2 To)> pulled)
    {
        var around = new List<Triangle>[nodes.Length];
        for (var n = 0; n < nodes.Length; n++)
        {
            around[n] = [];
        }

        foreach (var t in triangles)
        {
            around[t.A].Add(t);
            around[t.B].Add(t);
            around[t.C].Add(t);
        }

        foreach (var (node, to) in pulled)
        {
            var old = nodes[node];
            nodes[node] = to;
            if (!(Worst(nodes, around[node]) > StillGood))
            {
                nodes[node] = old;
            }
        }

        for (var sweep = 0; sweep < Sweeps; sweep++)
        {
            for (var n = 0; n < nodes.Length; n++)
            {
                if (isFixed[n] || around[n].Count == 0)
                {
                    continue;
                }

                var sum = Vector2.Zero;
                foreach (var t in around[n])
                {
                    sum += nodes[t.A] + nodes[t.B] + nodes[t.C] - nodes[n];
                }

                var old = nodes[n];
                var before = Worst(nodes, around[n]);
                nodes[n] = sum / (2 * around[n].Count);
                if (!(Worst(nodes, around[n]) > before))
                {
                    nodes[n] = old;
                }
            }
        }
    }

    private static double Worst(Vector2[] nodes, List<Triangle> triangles)
    {
        var worst = double.PositiveInfinity;
        foreach (var t in triangles)
        {
            worst = Math.Min(worst, Quality(nodes[t.A], nodes[t.B], nodes[t.C]));
        }

        return worst;
    }

    private static double Quality(Vector2 a, Vector2 b, Vector2 c)
    {
        Vector2 ab = b - a, bc = c - b, ca = a - c;
        return 2 * Math.Sqrt(3) * ab.Cross(c - a) / (ab.Dot(ab) + bc.Dot(bc) + ca.Dot(ca));
    }
}
