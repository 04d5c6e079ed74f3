namespace BracketGen.Line.Sharing;

/// <summary>Rows and the sets that cover them, both ways.</summary>
internal sealed class CoverTable
{
    /// <summary>The table of some sets.</summary>
    /// <param name="rows">Number of rows; each is in a set.</param>
    /// <param name="rowsOf">The rows of each set.</param>
    public CoverTable(int rows, int[][] rowsOf)
    {
        (Rows, RowsOf) = (rows, rowsOf);
        var sets = new List<int>[rows];
        for (var r = 0; r < rows; r++)
        {
            sets[r] = [];
        }

        for (var s = 0; s < rowsOf.Length; s++)
        {
            foreach (var row in rowsOf[s])
            {
                sets[row].Add(s);
            }

            Links += rowsOf[s].Length;
        }

        SetsOf = Array.ConvertAll(sets, s => s.ToArray());
    }

    /// <summary>Number of rows.</summary>
    public int Rows { get; }

    /// <summary>The rows of each set.</summary>
    public int[][] RowsOf { get; }

    /// <summary>The sets of each row, rising.</summary>
    public int[][] SetsOf { get; }

    /// <summary>Number of sets.</summary>
    public int Sets => RowsOf.Length;

    /// <summary>Rows of all sets, counted once for each set.</summary>
    public int Links { get; }

    /// <summary>The row to branch on: of those not covered the first with the fewest sets left; -1 where all are covered.</summary>
    /// <param name="covered">How often each row is covered.</param>
    /// <param name="isOut">Sets that are left out.</param>
    public int FewestChoices(int[] covered, bool[] isOut)
    {
        var (best, fewest) = (-1, int.MaxValue);
        for (var r = 0; r < Rows; r++)
        {
            if (covered[r] == 0 && SetsOf[r].Count(s => !isOut[s]) is var choices && choices < fewest)
            {
                (best, fewest) = (r, choices);
            }
        }

        return best;
    }

    /// <summary>The rows in groups that share no set; the rows of each rise, and so do the groups' first rows.</summary>
    public IEnumerable<int[]> Groups()
    {
        // Union of all rows of a set, by path halving.
        var parent = Enumerable.Range(0, Rows).ToArray();
        int Root(int row)
        {
            while (parent[row] != row)
            {
                row = parent[row] = parent[parent[row]];
            }

            return row;
        }

        foreach (var rows in RowsOf)
        {
            foreach (var row in rows)
            {
                parent[Root(row)] = Root(rows[0]);
            }
        }

        return Enumerable.Range(0, Rows).GroupBy(Root).Select(g => g.ToArray()).OrderBy(g => g[0]);
    }
}
