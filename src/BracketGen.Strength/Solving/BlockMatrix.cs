using BracketGen.Strength.Model;

namespace BracketGen.Strength.Solving;

/// <summary>A symmetric sparse matrix of 6 x 6 blocks, one block row a node; both triangles are kept.</summary>
/// <remarks>Written while it is assembled, only read afterwards.</remarks>
internal sealed class BlockMatrix
{
    /// <summary>Freedoms of a node.</summary>
    public const int Block = 6;

    private const int BlockSize = Block * Block;

    private BlockMatrix(int[] rowStarts, int[] columns)
    {
        RowStarts = rowStarts;
        Columns = columns;
        Values = new double[columns.Length * BlockSize];
    }

    /// <summary>Number of nodes.</summary>
    public int Nodes => RowStarts.Length - 1;

    /// <summary>Where the blocks of each node begin in <see cref="Columns"/>; one more at the end.</summary>
    public int[] RowStarts { get; }

    /// <summary>Column node of each block, ascending in a row.</summary>
    public int[] Columns { get; }

    /// <summary>The blocks, 36 numbers each, rows first.</summary>
    public double[] Values { get; }

    /// <summary>An empty matrix that couples the nodes of every triangle.</summary>
    public static BlockMatrix For(int nodes, IReadOnlyList<Triangle> triangles)
    {
        var starts = new int[nodes + 1];
        foreach (var t in triangles)
        {
            starts[t.A + 1] += 2;
            starts[t.B + 1] += 2;
            starts[t.C + 1] += 2;
        }

        for (var i = 0; i < nodes; i++)
        {
            starts[i + 1] += starts[i] + 1;
        }

        var fill = starts.AsSpan(0, nodes).ToArray();
        var raw = new int[starts[nodes]];
        for (var i = 0; i < nodes; i++)
        {
            raw[fill[i]++] = i;
        }

        foreach (var t in triangles)
        {
            (raw[fill[t.A]++], raw[fill[t.A]++]) = (t.B, t.C);
            (raw[fill[t.B]++], raw[fill[t.B]++]) = (t.A, t.C);
            (raw[fill[t.C]++], raw[fill[t.C]++]) = (t.A, t.B);
        }

        var rows = new int[nodes + 1];
        var columns = new List<int>(raw.Length);
        for (var i = 0; i < nodes; i++)
        {
            var row = raw.AsSpan(starts[i], starts[i + 1] - starts[i]);
            row.Sort();
            var last = -1;
            foreach (var c in row)
            {
                if (c != last)
                {
                    columns.Add(c);
                    last = c;
                }
            }

            rows[i + 1] = columns.Count;
        }

        return new(rows, [.. columns]);
    }

    /// <summary>Adds an 18 x 18 triangle matrix.</summary>
    public void Add(Triangle t, ReadOnlySpan<double> matrix)
    {
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                var block = Values.AsSpan(Find(t[i], t[j]) * BlockSize, BlockSize);
                for (var r = 0; r < Block; r++)
                {
                    var row = matrix.Slice(18 * (6 * i + r) + 6 * j, Block);
                    for (var c = 0; c < Block; c++)
                    {
                        block[Block * r + c] += row[c];
                    }
                }
            }
        }
    }

    /// <summary>Adds <paramref name="value"/> to the diagonal of a node's three displacements.</summary>
    public void AddToDisplacements(int node, double value)
    {
        var block = Find(node, node) * BlockSize;
        for (var i = 0; i < 3; i++)
        {
            Values[block + (Block + 1) * i] += value;
        }
    }

    /// <summary>The product with <paramref name="x"/>, six numbers a node, into <paramref name="result"/>.</summary>
    public void Multiply(ReadOnlySpan<double> x, Span<double> result)
    {
        for (var i = 0; i < Nodes; i++)
        {
            double s0 = 0, s1 = 0, s2 = 0, s3 = 0, s4 = 0, s5 = 0;
            for (var b = RowStarts[i]; b < RowStarts[i + 1]; b++)
            {
                var v = Values.AsSpan(b * BlockSize, BlockSize);
                var xj = x.Slice(Columns[b] * Block, Block);
                double x0 = xj[0], x1 = xj[1], x2 = xj[2], x3 = xj[3], x4 = xj[4], x5 = xj[5];
                s0 += v[0] * x0 + v[1] * x1 + v[2] * x2 + v[3] * x3 + v[4] * x4 + v[5] * x5;
                s1 += v[6] * x0 + v[7] * x1 + v[8] * x2 + v[9] * x3 + v[10] * x4 + v[11] * x5;
                s2 += v[12] * x0 + v[13] * x1 + v[14] * x2 + v[15] * x3 + v[16] * x4 + v[17] * x5;
                s3 += v[18] * x0 + v[19] * x1 + v[20] * x2 + v[21] * x3 + v[22] * x4 + v[23] * x5;
                s4 += v[24] * x0 + v[25] * x1 + v[26] * x2 + v[27] * x3 + v[28] * x4 + v[29] * x5;
                s5 += v[30] * x0 + v[31] * x1 + v[32] * x2 + v[33] * x3 + v[34] * x4 + v[35] * x5;
            }

            var y = result.Slice(i * Block, Block);
            (y[0], y[1], y[2], y[3], y[4], y[5]) = (s0, s1, s2, s3, s4, s5);
        }
    }

    /// <summary>A copy in which the rows and columns of <paramref name="held"/> freedoms are empty but for <paramref name="diagonal"/> times their own diagonal.</summary>
    public BlockMatrix Without(IReadOnlyList<bool> held, double diagonal)
    {
        var copy = new BlockMatrix(RowStarts, Columns);
        for (var i = 0; i < Nodes; i++)
        {
            for (var b = RowStarts[i]; b < RowStarts[i + 1]; b++)
            {
                var j = Columns[b];
                for (var r = 0; r < Block; r++)
                {
                    for (var c = 0; c < Block; c++)
                    {
                        int row = i * Block + r, column = j * Block + c;
                        var at = b * BlockSize + Block * r + c;
                        copy.Values[at] = !held[row] && !held[column] ? Values[at] : row == column ? diagonal * Values[at] : 0;
                    }
                }
            }
        }

        return copy;
    }

    private int Find(int row, int column) =>
        Array.BinarySearch(Columns, RowStarts[row], RowStarts[row + 1] - RowStarts[row], column);
}
