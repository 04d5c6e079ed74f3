using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace BracketGen.Strength.Elements;

/// <summary>A symmetric 18 x 18 matrix of a triangle as the six blocks of its pairs of corners, each as <see cref="Block6"/> lays it out.</summary>
internal static class CornerBlocks
{
    /// <summary>Numbers of all six blocks.</summary>
    public const int Length = Pairs * Block6.Size;

    /// <summary>Number of pairs of corners.</summary>
    public const int Pairs = 6;

    private static ReadOnlySpan<byte> Firsts => [0, 0, 0, 1, 1, 2];

    private static ReadOnlySpan<byte> Seconds => [0, 1, 2, 1, 2, 2];

    /// <summary>The corners of a pair, the first not after the second.</summary>
    public static (int I, int J) Corners(int pair) => (Firsts[pair], Seconds[pair]);

    /// <summary>
    /// Rᵀ K R of membrane and plate in the axes of the model, R having the triangle's axes as rows. In the plane and across it nothing couples: in the triangle's own axes
    /// half of each block is empty.
    /// </summary>
    /// <param name="g">The triangle.</param>
    /// <param name="membrane">9 x 9 for (u, v, θz), as <see cref="Rows"/> pads it.</param>
    /// <param name="plate">9 x 9 for (w, θx, θy), likewise.</param>
    /// <param name="blocks">The blocks.</param>
    public static void Fill(in LocalTriangle g, ReadOnlySpan<double> membrane, ReadOnlySpan<double> plate, Span<double> blocks)
    {
        ref var to = ref MemoryMarshal.GetReference(blocks[..Length]);
        nuint at = 0;
        for (var pair = 0; pair < Pairs; pair++)
        {
            var (i, j) = Corners(pair);

            // Lanes: displacement by displacement, displacement by rotation, rotation by displacement, rotation by rotation.
            var m = membrane.Slice(3 * Rows.Stride * i + 3 * j, 2 * Rows.Stride + 3);
            var p = plate.Slice(3 * Rows.Stride * i + 3 * j, 2 * Rows.Stride + 3);
            Vector256<double> xx = Vector256.Create(m[0], 0, 0, p[13]), xy = Vector256.Create(m[1], 0, 0, p[14]), xz = Vector256.Create(0, m[2], p[12], 0);
            Vector256<double> yx = Vector256.Create(m[12], 0, 0, p[25]), yy = Vector256.Create(m[13], 0, 0, p[26]), yz = Vector256.Create(0, m[14], p[24], 0);
            Vector256<double> zx = Vector256.Create(0, p[1], m[24], 0), zy = Vector256.Create(0, p[2], m[25], 0), zz = Vector256.Create(p[0], 0, 0, m[26]);
            Turned columnX = new(g.Ex.X, g.Ey.X, g.Ez.X), columnY = new(g.Ex.Y, g.Ey.Y, g.Ez.Y), columnZ = new(g.Ex.Z, g.Ey.Z, g.Ez.Z);
            for (var c = 0; c < 3; c++)
            {
                var column = c == 0 ? columnX : c == 1 ? columnY : columnZ;
                var x = column.X * xx + column.Y * xy + column.Z * xz;
                var y = column.X * yx + column.Y * yy + column.Z * yz;
                var z = column.X * zx + column.Y * zy + column.Z * zz;
                (columnX.X * x + columnX.Y * y + columnX.Z * z).StoreUnsafe(ref to, at + (nuint)(4 * c));
                (columnY.X * x + columnY.Y * y + columnY.Z * z).StoreUnsafe(ref to, at + (nuint)(4 * (3 + c)));
                (columnZ.X * x + columnZ.Y * y + columnZ.Z * z).StoreUnsafe(ref to, at + (nuint)(4 * (6 + c)));
            }

            at += Block6.Size;
        }
    }

    /// <summary>The whole matrix, rows first.</summary>
    public static void Expand(ReadOnlySpan<double> blocks, Span<double> matrix)
    {
        for (var pair = 0; pair < Pairs; pair++)
        {
            var (i, j) = Corners(pair);
            for (var r = 0; r < 6; r++)
            {
                for (var c = 0; c < 6; c++)
                {
                    var value = blocks[Block6.Size * pair + Block6.At(r, c)];
                    matrix[18 * (6 * i + r) + 6 * j + c] = value;
                    matrix[18 * (6 * j + c) + 6 * i + r] = value;
                }
            }
        }
    }

    // The triangle's axes along one of the model's.
    private readonly struct Turned(double x, double y, double z)
    {
        public readonly Vector256<double> X = Vector256.Create(x), Y = Vector256.Create(y), Z = Vector256.Create(z);
    }
}
