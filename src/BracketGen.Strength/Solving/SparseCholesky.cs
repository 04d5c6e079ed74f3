using BracketGen.Strength.Elements;
using System.Buffers;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Solving;

/// <summary>K = L·Lᵀ of a symmetric positive definite block matrix by the multifrontal method; solves any number of right-hand sides.</summary>
/// <remarks>Source as <see cref="EliminationPlan"/>.</remarks>
internal sealed class SparseCholesky
{
    private const int Block = Block6.Order;

    private readonly EliminationPlan _plan;
    private readonly double[][] _columns;
    private readonly int _longest;

    private SparseCholesky(EliminationPlan plan, double[][] columns)
    {
        _plan = plan;
        _columns = columns;
        Entries = plan.Supernodes.Sum(s => (long)Block * s.Count * Block * s.Front);
        _longest = plan.Supernodes.Max(s => (int?)FrontKernel.Stride(Block * s.Front)) ?? 0;
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
            Array.Clear(front, 0, FrontKernel.Length(order));
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

            columns[g] = front.AsSpan(0, eliminated * stride).ToArray();
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
        var work = new double[vectors.Length][];
        var buffers = new double[vectors.Length][];
        for (var v = 0; v < vectors.Length; v++)
        {
            buffers[v] = new double[_longest];
            work[v] = new double[vectors[v].Length];
            for (var k = 0; k < order.Length; k++)
            {
                vectors[v].AsSpan(Block * order[k], Block).CopyTo(work[v].AsSpan(Block * k, Block));
            }
        }

        for (var g = 0; g < _plan.Supernodes.Length; g++)
        {
            Forward(_plan.Supernodes[g], _columns[g], work, buffers);
        }

        for (var g = _plan.Supernodes.Length - 1; g >= 0; g--)
        {
            Backward(_plan.Supernodes[g], _columns[g], work, buffers);
        }

        for (var v = 0; v < vectors.Length; v++)
        {
            for (var k = 0; k < order.Length; k++)
            {
                work[v].AsSpan(Block * k, Block).CopyTo(vectors[v].AsSpan(Block * order[k], Block));
            }
        }
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
                    t[0] += s[0];
                    t[1] += s[1];
                    t[2] += s[2];
                    t[3] += s[3];
                    t[4] += s[4];
                    t[5] += s[5];
                }
            }
        }
    }

    private static void Gather(EliminationPlan.Supernode group, double[] x, Span<double> y)
    {
        x.AsSpan(Block * group.First, Block * group.Count).CopyTo(y);
        for (var i = 0; i < group.Rows.Length; i++)
        {
            x.AsSpan(Block * group.Rows[i], Block).CopyTo(y.Slice(Block * (group.Count + i), Block));
        }

        y[(Block * group.Front)..].Clear();
    }

    // A column serves all vectors while it is at hand.
    private static void Forward(EliminationPlan.Supernode group, double[] columns, double[][] vectors, double[][] buffers)
    {
        int eliminated = Block * group.Count, stride = FrontKernel.Stride(Block * group.Front);
        for (var v = 0; v < vectors.Length; v++)
        {
            Gather(group, vectors[v], buffers[v].AsSpan(0, stride));
        }

        for (var c = 0; c < eliminated; c++)
        {
            var column = columns.AsSpan(c * stride, stride);
            foreach (var buffer in buffers)
            {
                var y = buffer.AsSpan(0, stride);
                y[c] /= column[c];
                FrontKernel.Subtract(y[(c + 1)..], column[(c + 1)..], y[c]);
            }
        }

        for (var v = 0; v < vectors.Length; v++)
        {
            var (x, y) = (vectors[v], buffers[v]);
            y.AsSpan(0, eliminated).CopyTo(x.AsSpan(Block * group.First));
            for (var i = 0; i < group.Rows.Length; i++)
            {
                y.AsSpan(Block * (group.Count + i), Block).CopyTo(x.AsSpan(Block * group.Rows[i]));
            }
        }
    }

    private static void Backward(EliminationPlan.Supernode group, double[] columns, double[][] vectors, double[][] buffers)
    {
        int eliminated = Block * group.Count, stride = FrontKernel.Stride(Block * group.Front);
        for (var v = 0; v < vectors.Length; v++)
        {
            Gather(group, vectors[v], buffers[v].AsSpan(0, stride));
        }

        for (var c = eliminated - 1; c >= 0; c--)
        {
            var column = columns.AsSpan(c * stride, stride);
            foreach (var buffer in buffers)
            {
                var y = buffer.AsSpan(0, stride);
                y[c] = (y[c] - FrontKernel.Dot(column[(c + 1)..], y[(c + 1)..])) / column[c];
            }
        }

        for (var v = 0; v < vectors.Length; v++)
        {
            buffers[v].AsSpan(0, eliminated).CopyTo(vectors[v].AsSpan(Block * group.First));
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
