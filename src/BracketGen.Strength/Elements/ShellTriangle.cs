using BracketGen.Geometry;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Elements;

/// <summary>The flat shell triangle: OPT membrane and DKMT plate together, six freedoms a corner, in the axes of the model.</summary>
/// <remarks>Freedoms at each corner (ux, uy, uz, θx, θy, θz); matrices 18 x 18, rows first.</remarks>
internal static class ShellTriangle
{
    /// <summary>Freedoms of the whole triangle.</summary>
    public const int Size = 18;

    // Where the freedoms of membrane and plate sit among the six of a corner.
    private static ReadOnlySpan<int> MembraneFreedoms => [0, 1, 5];

    private static ReadOnlySpan<int> PlateFreedoms => [2, 3, 4];

    /// <summary>Fills <paramref name="k"/> with the stiffness (N/mm, N, N·mm).</summary>
    public static void Stiffness(in LocalTriangle g, double thickness, SheetMaterial material, Span<double> k)
    {
        Span<double> membrane = stackalloc double[81], plate = stackalloc double[81];
        OptMembrane.Stiffness(g, thickness, material, membrane);
        DkmtPlate.Stiffness(g, thickness, material, plate);
        ToModel(g, membrane, plate, k);
    }

    /// <summary>Fills <paramref name="m"/> with the consistent mass (tonne, tonne·mm, tonne·mm²).</summary>
    public static void Mass(in LocalTriangle g, double thickness, SheetMaterial material, Span<double> m)
    {
        Span<double> membrane = stackalloc double[81], plate = stackalloc double[81];
        membrane.Clear();
        var perArea = material.Density * thickness;
        PlateMass.Fill(g, perArea, perArea * thickness * thickness / 12, plate);
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                var share = perArea * g.Area / 12 * (i == j ? 2 : 1);
                membrane[9 * (3 * i) + 3 * j] = share;
                membrane[9 * (3 * i + 1) + 3 * j + 1] = share;
            }
        }

        ToModel(g, membrane, plate, m);
    }

    /// <summary>Turns the 18 freedoms <paramref name="u"/> of the model's axes into the triangle's own.</summary>
    public static void ToLocal(in LocalTriangle g, ReadOnlySpan<double> u, Span<double> local)
    {
        for (var c = 0; c < Size; c += 3)
        {
            var v = new Vector3(u[c], u[c + 1], u[c + 2]);
            local[c] = g.Ex.Dot(v);
            local[c + 1] = g.Ey.Dot(v);
            local[c + 2] = g.Ez.Dot(v);
        }
    }

    /// <summary>Picks the nine membrane freedoms out of 18 local ones.</summary>
    public static void Membrane(ReadOnlySpan<double> local, Span<double> nine) => Gather(local, MembraneFreedoms, nine);

    /// <summary>Picks the nine plate freedoms out of 18 local ones.</summary>
    public static void Plate(ReadOnlySpan<double> local, Span<double> nine) => Gather(local, PlateFreedoms, nine);

    private static void Gather(ReadOnlySpan<double> local, ReadOnlySpan<int> freedoms, Span<double> nine)
    {
        for (var i = 0; i < 9; i++)
        {
            nine[i] = local[6 * (i / 3) + freedoms[i % 3]];
        }
    }

    // Rᵀ K R in 3 x 3 blocks, R having the triangle's axes as rows. In the plane and across it nothing couples: in the triangle's own axes half of each block is empty.
    private static void ToModel(in LocalTriangle g, ReadOnlySpan<double> membrane, ReadOnlySpan<double> plate, Span<double> model)
    {
        ReadOnlySpan<double> x = [g.Ex.X, g.Ex.Y, g.Ex.Z], y = [g.Ey.X, g.Ey.Y, g.Ey.Z], z = [g.Ez.X, g.Ez.Y, g.Ez.Z];
        for (var i = 0; i < 3; i++)
        {
            for (var j = i; j < 3; j++)
            {
                var m = membrane[(27 * i + 3 * j)..];
                var p = plate[(27 * i + 3 * j)..];
                for (var c = 0; c < 3; c++)
                {
                    double xc = x[c], yc = y[c], zc = z[c];
                    double tt0 = m[0] * xc + m[1] * yc, tt1 = m[9] * xc + m[10] * yc, tt2 = p[0] * zc;
                    double rr0 = p[10] * xc + p[11] * yc, rr1 = p[19] * xc + p[20] * yc, rr2 = m[20] * zc;
                    double tr0 = m[2] * zc, tr1 = m[11] * zc, tr2 = p[1] * xc + p[2] * yc;
                    double rt0 = p[9] * zc, rt1 = p[18] * zc, rt2 = m[18] * xc + m[19] * yc;
                    for (var r = 0; r < 3; r++)
                    {
                        double xr = x[r], yr = y[r], zr = z[r];
                        int translation = 6 * i + r, column = 6 * j + c;
                        double tt = xr * tt0 + yr * tt1 + zr * tt2, tr = xr * tr0 + yr * tr1 + zr * tr2;
                        double rt = xr * rt0 + yr * rt1 + zr * rt2, rr = xr * rr0 + yr * rr1 + zr * rr2;
                        model[Size * translation + column] = tt;
                        model[Size * translation + column + 3] = tr;
                        model[Size * (translation + 3) + column] = rt;
                        model[Size * (translation + 3) + column + 3] = rr;
                        if (i != j)
                        {
                            model[Size * column + translation] = tt;
                            model[Size * (column + 3) + translation] = tr;
                            model[Size * column + translation + 3] = rt;
                            model[Size * (column + 3) + translation + 3] = rr;
                        }
                    }
                }
            }
        }
    }
}
