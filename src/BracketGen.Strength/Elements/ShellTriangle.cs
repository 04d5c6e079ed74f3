using BracketGen.Geometry;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Elements;

/// <summary>The flat shell triangle: OPT membrane and DKMT plate together, six freedoms a corner, in the axes of the model.</summary>
/// <remarks>Freedoms at each corner (ux, uy, uz, θx, θy, θz).</remarks>
internal static class ShellTriangle
{
    /// <summary>Freedoms of the whole triangle.</summary>
    public const int Size = 18;

    // Where the freedoms of membrane and plate sit among the six of a corner.
    private static ReadOnlySpan<int> MembraneFreedoms => [0, 1, 5];

    private static ReadOnlySpan<int> PlateFreedoms => [2, 3, 4];

    /// <summary>Fills <paramref name="blocks"/> with the stiffness (N/mm, N, N·mm), laid out as <see cref="CornerBlocks"/>.</summary>
    public static void Stiffness(in LocalTriangle g, double thickness, SheetMaterial material, Span<double> blocks)
    {
        Span<double> membrane = stackalloc double[9 * Rows.Stride], plate = stackalloc double[9 * Rows.Stride];
        OptMembrane.Stiffness(g, thickness, material, membrane);
        DkmtPlate.Stiffness(g, thickness, material, plate);
        CornerBlocks.Fill(g, membrane, plate, blocks);
    }

    /// <summary>Fills <paramref name="blocks"/> with the consistent mass (tonne, tonne·mm, tonne·mm²), laid out as <see cref="CornerBlocks"/>.</summary>
    public static void Mass(in LocalTriangle g, double thickness, SheetMaterial material, Span<double> blocks)
    {
        Span<double> membrane = stackalloc double[9 * Rows.Stride], plate = stackalloc double[9 * Rows.Stride];
        membrane.Clear();
        var perArea = material.Density * thickness;
        PlateMass.Fill(g, perArea, perArea * thickness * thickness / 12, plate);
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                var share = perArea * g.Area / 12 * (i == j ? 2 : 1);
                membrane[Rows.Stride * (3 * i) + 3 * j] = share;
                membrane[Rows.Stride * (3 * i + 1) + 3 * j + 1] = share;
            }
        }

        CornerBlocks.Fill(g, membrane, plate, blocks);
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
}
