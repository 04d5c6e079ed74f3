using BracketGen.Strength.Model;

namespace BracketGen.Strength.Solving;

/// <summary>Which nodes of a mesh share a triangle: where the blocks of a matrix stand.</summary>
internal sealed class BlockPattern
{
    private BlockPattern(int[] rowStarts, int[] columns, int[] places) => (RowStarts, Columns, Places) = (rowStarts, columns, places);

    /// <summary>Number of nodes.</summary>
    public int Nodes => RowStarts.Length - 1;

    /// <summary>Where the blocks of each node begin in <see cref="Columns"/>; one more at the end.</summary>
    public int[] RowStarts { get; }

    /// <summary>Column node of each block, ascending in a row.</summary>
    public int[] Columns { get; }

    /// <summary>For each triangle the blocks of its nine pairs of corners, rows first; -1 where a corner is left out.</summary>
    public int[] Places { get; }

    /// <summary>The pattern of <paramref name="triangles"/>; a corner of -1 is left out.</summary>
    public static BlockPattern For(int nodes, ReadOnlySpan<Triangle> triangles)
    {
        var starts = new int[nodes + 1];
        foreach (var t in triangles)
        {
            for (var i = 0; i < 3; i++)
            {
                if (t[i] >= 0)
                {
                    starts[t[i] + 1] += 2;
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
            for (var i = 0; i < 3; i++)
            {
                if (t[i] >= 0)
                {
                    (raw[fill[t[i]]++], raw[fill[t[i]]++]) = (t[(i + 1) % 3], t[(i + 2) % 3]);
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
                if (c > last)
                {
                    columns[count++] = last = c;
                }
            }

            rows[i + 1] = count;
        }

        Array.Resize(ref columns, count);
        return new(rows, columns, PlacesOf(triangles, rows, columns));
    }

    private static int[] PlacesOf(ReadOnlySpan<Triangle> triangles, int[] rows, int[] columns)
    {
        var places = new int[9 * triangles.Length];
        for (var t = 0; t < triangles.Length; t++)
        {
            for (var i = 0; i < 3; i++)
            {
                for (var j = 0; j < 3; j++)
                {
                    int row = triangles[t][i], column = triangles[t][j];
                    places[9 * t + 3 * i + j] = row < 0 || column < 0 ? -1 : rows[row] + columns.AsSpan(rows[row], rows[row + 1] - rows[row]).IndexOf(column);
                }
            }
        }

        return places;
    }
}
