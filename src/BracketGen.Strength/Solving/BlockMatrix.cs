namespace BracketGen.Strength.Solving;

/// <summary>A symmetric sparse matrix of 6 x 6 blocks, one block row a node; both triangles are kept.</summary>
/// <remarks>Written while it is assembled, only read afterwards.</remarks>
internal sealed class BlockMatrix(BlockPattern pattern)
{
    /// <summary>Freedoms of a node.</summary>
    public const int Block = 6;

    /// <summary>Numbers of a block.</summary>
    public const int BlockSize = Block * Block;

    private readonly int[] _rowStarts = pattern.RowStarts;
    private readonly int[] _columns = pattern.Columns;

    /// <summary>Where the blocks stand.</summary>
    public BlockPattern Pattern => pattern;

    /// <summary>Number of nodes.</summary>
    public int Nodes => pattern.Nodes;

    /// <summary>The blocks, 36 numbers each, rows first.</summary>
    public double[] Values { get; } = new double[pattern.Columns.Length * BlockSize];

    /// <summary>Adds the 18 x 18 matrix of a triangle of the pattern, but for corners that are left out.</summary>
    public void Add(int triangle, ReadOnlySpan<double> matrix)
    {
        for (var pair = 0; pair < 9; pair++)
        {
            var place = pattern.Places[9 * triangle + pair];
            if (place < 0)
            {
                continue;
            }

            var block = Values.AsSpan(place * BlockSize, BlockSize);
            var from = matrix[(18 * Block * (pair / 3) + Block * (pair % 3))..];
            for (var r = 0; r < Block; r++)
            {
                var row = from.Slice(18 * r, Block);
                var sum = block.Slice(Block * r, Block);
                sum[0] += row[0];
                sum[1] += row[1];
                sum[2] += row[2];
                sum[3] += row[3];
                sum[4] += row[4];
                sum[5] += row[5];
            }
        }
    }

    /// <summary>Adds <paramref name="value"/> to one diagonal entry of a node.</summary>
    public void AddToDiagonal(int node, int freedom, double value)
    {
        var block = _rowStarts[node] + _columns.AsSpan(_rowStarts[node], _rowStarts[node + 1] - _rowStarts[node]).IndexOf(node);
        Values[block * BlockSize + (Block + 1) * freedom] += value;
    }

    /// <summary>The product with <paramref name="x"/>, six numbers a node, into <paramref name="result"/>.</summary>
    public void Multiply(ReadOnlySpan<double> x, Span<double> result)
    {
        for (var i = 0; i < Nodes; i++)
        {
            double s0 = 0, s1 = 0, s2 = 0, s3 = 0, s4 = 0, s5 = 0;
            for (var b = _rowStarts[i]; b < _rowStarts[i + 1]; b++)
            {
                var v = Values.AsSpan(b * BlockSize, BlockSize);
                var xj = x.Slice(_columns[b] * Block, Block);
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
}
