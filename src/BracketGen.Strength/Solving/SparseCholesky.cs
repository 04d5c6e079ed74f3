using BracketGen.Strength.Elements;
using System.Buffers;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Solving;

/// <summary>K = L·Lᵀ of a symmetric positive definite block matrix by the multifrontal method; solves any number of right-hand sides.</summary>
/// <remarks>Source as <see cref="EliminationPlan"/>.</remarks>
internal sealed class SparseCholesky
{
    private const int Block = Block6.Order;

    private readonly EliminationPlan _plan;
    private readonly double[][] _columns;

    private SparseCholesky(EliminationPlan plan, double[][] columns)
    {
        _plan = plan;
        _columns = columns;
        Entries = plan.Supernodes.Sum(s => (long)Block * s.Count * Block * s.Front);
    }

    /// <summary>Numbers kept in L, zeros of merged groups and of the diagonal blocks' upper halves included.</summary>
    public long Entries { get; }

    /// <summary>Factorises <paramref name="matrix"/>.</summary>
    /// <exception cref="SingularSystemException">A pivot is zero or negative: some motion meets no stiffness.</exception>
    public static SparseCholesky Factorise(BlockMatrix matrix)
    {
        var plan = EliminationPlan.For(matrix.Pattern);
        var groups = plan.Supernodes;
        var place = new int[matrix.Nodes];
        for (var k = 0; k < place.Length; k++)
        {
            place[plan.Order[k]] = k;
        }

        var earlier = ByEarlier(matrix.Pattern, place);
        var children = new List<int>?[groups.Length];
        var fronts = new double[groups.Length][];
        var columns = new double[groups.Length][];
        var local = new int[matrix.Nodes];
        for (var g = 0; g < groups.Length; g++)
        {
            var group = groups[g];
            int order = Block * group.Front, eliminated = Block * group.Count, stride = FrontKernel.Stride(order);
            var front = ArrayPool<double>.Shared.Rent(FrontKernel.Length(order));
            for (var c = 0; c < order; c++)
            {
                // What lies above the blocks of the diagonal is never looked at.
                front.AsSpan(c * stride + c / Block * Block, stride - c / Block * Block).Clear();
            }

            for (var i = 0; i < group.Count; i++)
            {
                local[group.First + i] = i;
            }

            for (var i = 0; i < group.Rows.Length; i++)
            {
                local[group.Rows[i]] = group.Count + i;
            }

            var smallest = new double[eliminated];
            Assemble(matrix, earlier, place, group, local, front, stride, smallest);
            foreach (var child in children[g] ?? [])
            {
                ExtendAdd(groups[child], fronts[child], local, front, stride);
                ArrayPool<double>.Shared.Return(fronts[child]);
                fronts[child] = null!;
            }

            var bad = FrontKernel.Eliminate(front, order, eliminated, smallest);
            if (bad >= 0)
            {
                throw new SingularSystemException(plan.Order[group.First + bad / Block], bad % Block);
            }

            columns[g] = GC.AllocateUninitializedArray<double>(eliminated * stride);
            for (var c = 0; c < eliminated; c++)
            {
                front.AsSpan(c * stride + c / Block * Block, stride - c / Block * Block).CopyTo(columns[g].AsSpan(c * stride + c / Block * Block));
            }

            if (group.Parent >= 0)
            {
                fronts[g] = front;
                (children[group.Parent] ??= []).Add(g);
            }
            else
            {
                ArrayPool<double>.Shared.Return(front);
            }
        }

        return new(plan, columns);
    }

    /// <summary>Solves in place for each of <paramref name="vectors"/>, six numbers a node.</summary>
    public void Solve(params ReadOnlySpan<double[]> vectors)
    {
        var order = _plan.Order;
        var work = ArrayPool<double>.Shared.Rent(SolveKernel.Width * Block * order.Length);
        for (var from = 0; from < vectors.Length; from += SolveKernel.Width)
        {
            var some = vectors.Slice(from, Math.Min(SolveKernel.Width, vectors.Length - from));
            Array.Clear(work, 0, SolveKernel.Width * Block * order.Length);
            for (var v = 0; v < some.Length; v++)
            {
                for (var k = 0; k < order.Length; k++)
                {
                    var node = some[v].AsSpan(Block * order[k], Block);
                    for (var f = 0; f < Block; f++)
                    {
                        work[SolveKernel.Width * (Block * k + f) + v] = node[f];
                    }
                }
            }

            for (var g = 0; g < _plan.Supernodes.Length; g++)
            {
                SolveKernel.Forward(_plan.Supernodes[g], _columns[g], work);
            }

            for (var g = _plan.Supernodes.Length - 1; g >= 0; g--)
            {
                SolveKernel.Backward(_plan.Supernodes[g], _columns[g], work);
            }

            for (var v = 0; v < some.Length; v++)
            {
                for (var k = 0; k < order.Length; k++)
                {
                    var node = some[v].AsSpan(Block * order[k], Block);
                    for (var f = 0; f < Block; f++)
                    {
                        node[f] = work[SolveKernel.Width * (Block * k + f) + v];
                    }
                }
            }
        }

        ArrayPool<double>.Shared.Return(work);
    }

    private static void Assemble(
        BlockMatrix matrix, (int[] Starts, int[] Blocks, int[] Others) earlier, int[] place, EliminationPlan.Supernode group, int[] local, double[] front, int stride,
        double[] smallest)
    {
        for (var i = 0; i < group.Count; i++)
        {
            for (var e = earlier.Starts[group.First + i]; e < earlier.Starts[group.First + i + 1]; e++)
            {
                // The front holds columns: the block of (this node, other) rows first is what its columns need, turned round where it is kept as (other, this).
                var (code, other) = (earlier.Blocks[e], place[earlier.Others[e]]);
                var block = matrix.Values.AsSpan(code / 2 * Block6.Size, Block6.Size);
                var isTurned = (code & 1) == 1;
                var at = Block * i * stride + Block * local[other];
                for (var c = 0; c < 3; c++)
                {
                    for (var r = 0; r < 3; r++)
                    {
                        var four = block.Slice(isTurned ? 4 * (3 * r + c) : 4 * (3 * c + r), 4);
                        front[at + c * stride + r] = four[0];
                        front[at + c * stride + r + 3] = four[isTurned ? 2 : 1];
                        front[at + (c + 3) * stride + r] = four[isTurned ? 1 : 2];
                        front[at + (c + 3) * stride + r + 3] = four[3];
                    }
                }

                for (var c = 0; other == group.First + i && c < Block; c++)
                {
                    smallest[Block * i + c] = StrengthTolerance.Singular * block[Block6.At(c, c)];
                }
            }
        }
    }

    // The blocks by the place of the one of their two nodes that is eliminated first: twice the block's number, and one more where that node is its column; and the other node.
    private static (int[] Starts, int[] Blocks, int[] Others) ByEarlier(BlockPattern pattern, int[] place)
    {
        var starts = new int[pattern.Nodes + 1];
        for (var i = 0; i < pattern.Nodes; i++)
        {
            for (var b = pattern.RowStarts[i]; b < pattern.RowStarts[i + 1]; b++)
            {
                starts[Math.Min(place[i], place[pattern.Columns[b]]) + 1]++;
            }
        }

        for (var i = 0; i < pattern.Nodes; i++)
        {
            starts[i + 1] += starts[i];
        }

        var fill = starts.AsSpan(0, pattern.Nodes).ToArray();
        var (blocks, others) = (new int[pattern.Columns.Length], new int[pattern.Columns.Length]);
        for (var i = 0; i < pattern.Nodes; i++)
        {
            for (var b = pattern.RowStarts[i]; b < pattern.RowStarts[i + 1]; b++)
            {
                var j = pattern.Columns[b];
                var isTurned = place[j] < place[i];
                var at = fill[Math.Min(place[i], place[j])]++;
                (blocks[at], others[at]) = (2 * b + (isTurned ? 1 : 0), isTurned ? i : j);
            }
        }

        return (starts, blocks, others);
    }

    private static void ExtendAdd(EliminationPlan.Supernode child, double[] from, int[] local, double[] front, int stride)
    {
        int childStride = FrontKernel.Stride(Block * child.Front), skip = Block * child.Count;
        for (var j = 0; j < child.Rows.Length; j++)
        {
            for (var c = 0; c < Block; c++)
            {
                int source = (skip + Block * j + c) * childStride + skip, target = (Block * local[child.Rows[j]] + c) * stride;
                for (var i = j; i < child.Rows.Length; i++)
                {
                    var s = from.AsSpan(source + Block * i, Block);
                    var t = front.AsSpan(target + Block * local[child.Rows[i]], Block);
                    ref double to = ref MemoryMarshal.GetReference(t), of = ref MemoryMarshal.GetReference(s);
                    (Vector128.LoadUnsafe(ref to) + Vector128.LoadUnsafe(ref of)).StoreUnsafe(ref to);
                    (Vector128.LoadUnsafe(ref to, 2) + Vector128.LoadUnsafe(ref of, 2)).StoreUnsafe(ref to, 2);
                    (Vector128.LoadUnsafe(ref to, 4) + Vector128.LoadUnsafe(ref of, 4)).StoreUnsafe(ref to, 4);
                }
            }
        }
    }
}

/// <summary>A motion of the part meets no stiffness.</summary>
internal sealed class SingularSystemException(int node, int freedom)
    : Exception($"Nothing resists freedom {freedom} of node {node}.")
{
    public int Node { get; } = node;

    public int Freedom { get; } = freedom;
}
