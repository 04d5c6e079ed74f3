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
        Span<double> membrane = stackalloc double[81], plate = stackalloc double[81], local = stackalloc double[Size * Size];
        membrane.Clear();
        plate.Clear();
        local.Clear();
        OptMembrane.AddStiffness(g, thickness, material, membrane);
        DkmtPlate.AddStiffness(g, thickness, material, plate);
        Scatter(membrane, MembraneFreedoms, local);
        Scatter(plate, PlateFreedoms, local);
        ToModel(g, local, k);
    }

    /// <summary>Fills <paramref name="m"/> with the consistent mass (tonne, tonne·mm, tonne·mm²).</summary>
    public static void Mass(in LocalTriangle g, double thickness, SheetMaterial material, Span<double> m)
    {
        Span<double> plate = stackalloc double[81], local = stackalloc double[Size * Size];
        plate.Clear();
        local.Clear();
        var perArea = material.Density * thickness;
        PlateMass.Add(g, perArea, perArea * thickness * thickness / 12, plate);
        Scatter(plate, PlateFreedoms, local);
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                var share = perArea * g.Area / 12 * (i == j ? 2 : 1);
                local[Size * (6 * i) + 6 * j] += share;
                local[Size * (6 * i + 1) + 6 * j + 1] += share;
            }
        }

        ToModel(g, local, m);
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

    private static void Scatter(ReadOnlySpan<double> nine, ReadOnlySpan<int> freedoms, Span<double> local)
    {
        for (var i = 0; i < 9; i++)
        {
            var row = Size * (6 * (i / 3) + freedoms[i % 3]);
            for (var j = 0; j < 9; j++)
            {
                local[row + 6 * (j / 3) + freedoms[j % 3]] += nine[9 * i + j];
            }
        }
    }

    // Rᵀ K R in 3 x 3 blocks, R having the triangle's axes as rows.
    private static void ToModel(in LocalTriangle g, ReadOnlySpan<double> local, Span<double> model)
    {
        ReadOnlySpan<double> r = [g.Ex.X, g.Ex.Y, g.Ex.Z, g.Ey.X, g.Ey.Y, g.Ey.Z, g.Ez.X, g.Ez.Y, g.Ez.Z];
        Span<double> kr = stackalloc double[9];
        for (var bi = 0; bi < Size; bi += 3)
        {
            for (var bj = 0; bj < Size; bj += 3)
            {
                for (var i = 0; i < 3; i++)
                {
                    var row = Size * (bi + i) + bj;
                    for (var j = 0; j < 3; j++)
                    {
                        kr[3 * i + j] = local[row] * r[j] + local[row + 1] * r[3 + j] + local[row + 2] * r[6 + j];
                    }
                }

                for (var i = 0; i < 3; i++)
                {
                    var row = Size * (bi + i) + bj;
                    for (var j = 0; j < 3; j++)
                    {
                        model[row + j] = r[i] * kr[j] + r[3 + i] * kr[3 + j] + r[6 + i] * kr[6 + j];
                    }
                }
            }
        }
    }
}
