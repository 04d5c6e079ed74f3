using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using BracketGen.Strength.Elements;

namespace BracketGen.Strength.Solving;

/// <summary>A symmetric sparse matrix of 6 x 6 blocks, one block row a node; the blocks on and above the diagonal are kept.</summary>
/// <remarks>Written while it is assembled, only read afterwards. Blocks lie as <see cref="Block6"/> says.</remarks>
internal sealed class BlockMatrix(BlockPattern pattern)
{
    /// <summary>Where the blocks stand.</summary>
    public BlockPattern Pattern => pattern;

    /// <summary>Number of nodes.</summary>
    public int Nodes => pattern.Nodes;

    /// <summary>The blocks.</summary>
    public double[] Values { get; } = new double[pattern.Columns.Length * Block6.Size];

    /// <summary>Adds the matrix of a triangle of the pattern, but for corners that are left out.</summary>
    /// <param name="triangle">Number of the triangle.</param>
    /// <param name="blocks">Its matrix, laid out as <see cref="CornerBlocks"/>.</param>
    public void Add(int triangle, ReadOnlySpan<double> blocks)
    {
        var places = pattern.Places.AsSpan(CornerBlocks.Pairs * triangle, CornerBlocks.Pairs);
        for (var pair = 0; pair < places.Length; pair++)
        {
            if (places[pair] < 0)
            {
                continue;
            }

            ref var from = ref MemoryMarshal.GetReference(blocks.Slice(Block6.Size * pair, Block6.Size));
            ref var to = ref MemoryMarshal.GetReference(Values.AsSpan(places[pair] / 2 * Block6.Size, Block6.Size));
            var isTurned = (places[pair] & 1) == 1;
            for (var r = 0; r < 3; r++)
            {
                for (var c = 0; c < 3; c++)
                {
                    // Turned round, displacement by rotation becomes rotation by displacement.
                    nuint at = (nuint)(4 * (3 * r + c)), source = isTurned ? (nuint)(4 * (3 * c + r)) : at;
                    var four = Vector256.LoadUnsafe(ref from, source);
                    four = isTurned ? Vector256.Shuffle(four, Vector256.Create(0L, 2, 1, 3)) : four;
                    (Vector256.LoadUnsafe(ref to, at) + four).StoreUnsafe(ref to, at);
                }
            }
        }
    }

    /// <summary>The product with <paramref name="x"/>, six numbers a node, into <paramref name="result"/>.</summary>
    public void Multiply(ReadOnlySpan<double> x, Span<double> result)
    {
        result[..(Block6.Order * Nodes)].Clear();
        for (var i = 0; i < Nodes; i++)
        {
            var own = new NodeFours(x.Slice(Block6.Order * i, Block6.Order));
            Vector256<double> a = default, b = default, c = default;
            for (var k = pattern.RowStarts[i]; k < pattern.RowStarts[i + 1]; k++)
            {
                ref var v = ref MemoryMarshal.GetReference(Values.AsSpan(k * Block6.Size, Block6.Size));
                Vector256<double> v0 = Vector256.LoadUnsafe(ref v), v1 = Vector256.LoadUnsafe(ref v, 4), v2 = Vector256.LoadUnsafe(ref v, 8);
                Vector256<double> v3 = Vector256.LoadUnsafe(ref v, 12), v4 = Vector256.LoadUnsafe(ref v, 16), v5 = Vector256.LoadUnsafe(ref v, 20);
                Vector256<double> v6 = Vector256.LoadUnsafe(ref v, 24), v7 = Vector256.LoadUnsafe(ref v, 28), v8 = Vector256.LoadUnsafe(ref v, 32);
                var j = pattern.Columns[k];
                var other = new NodeFours(x.Slice(Block6.Order * j, Block6.Order));
                a += v0 * other.AsColumn0 + v1 * other.AsColumn1 + v2 * other.AsColumn2;
                b += v3 * other.AsColumn0 + v4 * other.AsColumn1 + v5 * other.AsColumn2;
                c += v6 * other.AsColumn0 + v7 * other.AsColumn1 + v8 * other.AsColumn2;
                if (j != i)
                {
                    var y = result.Slice(Block6.Order * j, Block6.Order);
                    AddColumn(y, 0, v0 * own.AsRow0 + v3 * own.AsRow1 + v6 * own.AsRow2);
                    AddColumn(y, 1, v1 * own.AsRow0 + v4 * own.AsRow1 + v7 * own.AsRow2);
                    AddColumn(y, 2, v2 * own.AsRow0 + v5 * own.AsRow1 + v8 * own.AsRow2);
                }
            }

            var mine = result.Slice(Block6.Order * i, Block6.Order);
            AddRow(mine, 0, a);
            AddRow(mine, 1, b);
            AddRow(mine, 2, c);
        }
    }

    private static void AddRow(Span<double> y, int axis, Vector256<double> four)
    {
        y[axis] += four[0] + four[1];
        y[axis + 3] += four[2] + four[3];
    }

    private static void AddColumn(Span<double> y, int axis, Vector256<double> four)
    {
        y[axis] += four[0] + four[2];
        y[axis + 3] += four[1] + four[3];
    }

    // The six numbers of a node, displacement and rotation along one axis together, as they meet the fours of a block from the right and from the left.
    private readonly ref struct NodeFours(ReadOnlySpan<double> x)
    {
        public readonly Vector256<double> AsColumn0 = Vector256.Create(x[0], x[3], x[0], x[3]);
        public readonly Vector256<double> AsColumn1 = Vector256.Create(x[1], x[4], x[1], x[4]);
        public readonly Vector256<double> AsColumn2 = Vector256.Create(x[2], x[5], x[2], x[5]);
        public readonly Vector256<double> AsRow0 = Vector256.Create(x[0], x[0], x[3], x[3]);
        public readonly Vector256<double> AsRow1 = Vector256.Create(x[1], x[1], x[4], x[4]);
        public readonly Vector256<double> AsRow2 = Vector256.Create(x[2], x[2], x[5], x[5]);
    }
}
