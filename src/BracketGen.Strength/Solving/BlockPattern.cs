using BracketGen.Strength.Elements;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Solving;

/// <summary>Which nodes of a mesh share a triangle: where the blocks of a symmetric matrix stand, those on and above the diagonal.</summary>
internal sealed class BlockPattern
{
    private BlockPattern(int[] rowStarts, int[] columns, int[] places) => (RowStarts, Columns, Places) = (rowStarts, columns, places);

    /// <summary>Number of nodes.</summary>
    public int Nodes => RowStarts.Length - 1;

    /// <summary>Where the blocks of each node begin in <see cref="Columns"/>; one more at the end.</summary>
    public int[] RowStarts { get; }

    /// <summary>Column node of each block, ascending in a row; the first is the row's own.</summary>
    public int[] Columns { get; }

    /// <summary>
    /// For each triangle twice the number of the block of each of its six pairs of corners (<see cref="CornerBlocks.Corners"/>), and one more where the block is that of the
    /// pair turned round; -1 where a corner is left out.
    /// </summary>
    public int[] Places { get; }

    /// <summary>The pattern of <paramref name="triangles"/>; a corner of -1 is left out.</summary>
    public static BlockPattern For(int nodes, ReadOnlySpan<Triangle> triangles)
    {
        var starts = new int[nodes + 1];
        foreach (var t in triangles)
        {
            for (var pair = 0; pair < CornerBlocks.Pairs; pair++)
            {
                var (i, j) = CornerBlocks.Corners(pair);
                if (i != j && t[i] >= 0 && t[j] >= 0)
                {
                    starts[Math.Min(t[i], t[j]) + 1]++;
                }
            }
        }

        for (var i = 0; i < nodes; i++)
        {
            starts[i + 1] += starts[i] + 1;
        }

        var raw = new int[starts[nodes]];
        var fill = starts.AsSpan(0, nodes).ToArray();
        for (var i = 0; i < nodes; i++)
        {
            raw[fill[i]++] = i;
        }

        foreach (var t in triangles)
        {
            for (var pair = 0; pair < CornerBlocks.Pairs; pair++)
            {
                var (i, j) = CornerBlocks.Corners(pair);
                if (i != j && t[i] >= 0 && t[j] >= 0)
                {
                    raw[fill[Math.Min(t[i], t[j])]++] = Math.Max(t[i], t[j]);
                }
            }
        }

        var rows = new int[nodes + 1];
        var columns = new int[raw.Length];
        var count = 0;
        for (var i = 0; i < nodes; i++)
        {
            var row = raw.AsSpan(starts[i], starts[i + 1] - starts[i]);
            row.Sort();
            var last = -1;
            foreach (var c in row)
            {
                if (c != last)
                {
                    columns[count++] = last = c;
                }
            }

            rows[i + 1] = count;
        }

        Array.Resize(ref columns, count);
        return new(rows, columns, PlacesOf(triangles, rows, columns));
    }

    /// <summary>For each node all that share a triangle with it, itself left out: where each list begins, one more at the end, and the lists.</summary>
    public (int[] Starts, int[] Neighbours) Neighbours()
    {
        var starts = new int[Nodes + 1];
        for (var i = 0; i < Nodes; i++)
        {
            starts[i + 1] += RowStarts[i + 1] - RowStarts[i] - 1;
            for (var b = RowStarts[i] + 1; b < RowStarts[i + 1]; b++)
            {
                starts[Columns[b] + 1]++;
            }
        }

        for (var i = 0; i < Nodes; i++)
        {
            starts[i + 1] += starts[i];
        }

        var fill = starts.AsSpan(0, Nodes).ToArray();
        var neighbours = new int[starts[Nodes]];
        for (var i = 0; i < Nodes; i++)
        {
            for (var b = RowStarts[i] + 1; b < RowStarts[i + 1]; b++)
            {
                neighbours[fill[i]++] = Columns[b];
                neighbours[fill[Columns[b]]++] = i;
            }
        }

        return (starts, neighbours);
    }

    private static int[] PlacesOf(ReadOnlySpan<Triangle> triangles, int[] rows, int[] columns)
    {
        var places = new int[CornerBlocks.Pairs * triangles.Length];
        var at = 0;
        foreach (var t in triangles)
        {
            for (var pair = 0; pair < CornerBlocks.Pairs; pair++)
            {
                var (i, j) = CornerBlocks.Corners(pair);
                int row = Math.Min(t[i], t[j]), column = Math.Max(t[i], t[j]);
                places[at++] = row < 0 ? -1
                    : 2 * (rows[row] + columns.AsSpan(rows[row], rows[row + 1] - rows[row]).IndexOf(column)) + (t[i] > t[j] ? 1 : 0);
            }
        }

        return places;
    }
}
