namespace BracketGen.Line.Sharing;

/// <summary>What is left of a table where only the number of sets counts.</summary>
/// <remarks>
/// A set whose rows another has too is not needed; a row that is covered whenever another is asks for nothing. Both are struck out until nothing
/// changes. Large tables are left as they are: comparing all with all would take longer than it saves.
/// </remarks>
internal static class CoverCore
{
    private const long MostCompared = 400_000_000;

    /// <summary>The sets and the rows that are left, rising.</summary>
    public static (int[] Sets, int[] Rows) Of(CoverTable table)
    {
        int[] sets = [.. Enumerable.Range(0, table.Sets)], rows = [.. Enumerable.Range(0, table.Rows)];
        if (Compared(table.Sets, table.Rows) + Compared(table.Rows, table.Sets) > MostCompared)
        {
            return (sets, rows);
        }

        while (true)
        {
            var before = (sets.Length, rows.Length);
            sets = Least(sets, rows, table.RowsOf, table.Rows, keepsLarger: true);
            rows = Least(rows, sets, table.SetsOf, table.Sets, keepsLarger: false);
            if ((sets.Length, rows.Length) == before)
            {
                return (sets, rows);
            }
        }
    }

    private static long Compared(long those, long members) => those * those * (members / 64 + 1);

    // Of two where one lies within the other, the larger is kept or the smaller; of two alike the first.
    private static int[] Least(int[] those, int[] members, int[][] membersOf, int size, bool keepsLarger)
    {
        var all = RowSet.Empty(size);
        foreach (var member in members)
        {
            all.Add(member);
        }

        var bits = Array.ConvertAll(those, t =>
        {
            var set = RowSet.Empty(size);
            foreach (var member in membersOf[t])
            {
                if (all.Has(member))
                {
                    set.Add(member);
                }
            }

            return (Set: set, set.Count);
        });
        bool Yields(int i, int to) => to != i && (bits[i].Count == bits[to].Count ? to < i : bits[to].Count > bits[i].Count == keepsLarger)
            && (keepsLarger ? bits[i].Set.IsWithin(bits[to].Set) : bits[to].Set.IsWithin(bits[i].Set));
        return [.. Enumerable.Range(0, those.Length).Where(i => (bits[i].Count > 0 || !keepsLarger) && !Enumerable.Range(0, those.Length).Any(j => Yields(i, j))).Select(i => those[i])];
    }
}
