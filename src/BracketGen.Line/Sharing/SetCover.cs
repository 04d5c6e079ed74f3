namespace BracketGen.Line.Sharing;

/// <summary>The fewest sets that cover all rows, and of those covers the cheapest: exactly.</summary>
/// <remarks>
/// Branch and bound of our own. The rows fall apart into groups that share no set, each solved alone. In a group the row with the fewest
/// sets is branched on; a branch that takes a set leaves out those tried before it. Bounds: rows of which no set covers two need a set
/// each; and no row costs less than its cheapest set still allowed. First the number of sets is found, then the cost with that number.
/// The general solver that was thought of (Google OR-Tools) comes as a native library bound by reflection: it cannot be part of one
/// native file.
/// </remarks>
public static class SetCover
{
    /// <summary>A set: the rows it covers and what each costs in it.</summary>
    /// <param name="Rows">The rows, rising, each once.</param>
    /// <param name="Costs">What each costs, not negative.</param>
    public sealed record Set(int[] Rows, double[] Costs);

    /// <summary>The sets of the cover, rising; and whether their cost is proven to be the minimum.</summary>
    /// <param name="rows">Number of rows.</param>
    /// <param name="sets">The sets; every row is in one of them.</param>
    /// <exception cref="ArgumentException">A row is in no set.</exception>
    public static (int[] Chosen, bool IsCheapest) Solve(int rows, IReadOnlyList<Set> sets)
    {
        var chosen = new List<int>();
        var isCheapest = true;
        foreach (var group in Groups(rows, sets))
        {
            var (found, cheapest) = new CoverGroup(group.Rows, group.Sets, sets).Solve();
            chosen.AddRange(found);
            isCheapest &= cheapest;
        }

        chosen.Sort();
        return ([.. chosen], isCheapest);
    }

    private static IEnumerable<(int[] Rows, int[] Sets)> Groups(int rows, IReadOnlyList<Set> sets)
    {
        // Union of all rows of a set, by path halving.
        var parent = Enumerable.Range(0, rows).ToArray();
        int Root(int row)
        {
            while (parent[row] != row)
            {
                row = parent[row] = parent[parent[row]];
            }

            return row;
        }

        var covered = new bool[rows];
        foreach (var set in sets)
        {
            foreach (var row in set.Rows)
            {
                covered[row] = true;
                parent[Root(row)] = Root(set.Rows[0]);
            }
        }

        if (Array.IndexOf(covered, false) is >= 0 and var bare)
        {
            throw new ArgumentException($"Row {bare} is in no set.", nameof(sets));
        }

        var setsOf = sets.Select((s, i) => (Set: i, Root: s.Rows.Length > 0 ? Root(s.Rows[0]) : -1)).ToLookup(s => s.Root, s => s.Set);
        return Enumerable.Range(0, rows).GroupBy(Root).OrderBy(g => g.Min()).Select(g => (g.ToArray(), setsOf[g.Key].ToArray()));
    }
}
