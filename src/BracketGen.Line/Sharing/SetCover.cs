namespace BracketGen.Line.Sharing;

/// <summary>The fewest sets that cover all rows, and of those covers the cheapest.</summary>
/// <remarks>
/// Branch and bound of our own, with Lagrangian bounds. The rows fall apart into groups that share no set, each solved alone: first the number of
/// sets (<see cref="FewestSets"/>), then the cost with that number (<see cref="CheapestSets"/>). A group that takes too long is stopped, and what is proven of it is said.
/// The general solver that was thought of (Google OR-Tools) comes as a native library bound by reflection: it cannot be part of one
/// native file; the tests compare with it.
/// </remarks>
public static class SetCover
{
    /// <summary>Links of rows and sets that are looked at for a group, in each of both searches, before it is stopped: one to two seconds.</summary>
    public const long UsualWork = 1_000_000_000;

    /// <summary>A set: the rows it covers and what each costs in it.</summary>
    /// <param name="Rows">The rows, rising, each once.</param>
    /// <param name="Costs">What each costs, not negative.</param>
    public sealed record Set(int[] Rows, double[] Costs);

    /// <summary>A cover.</summary>
    /// <param name="Chosen">Its sets, rising.</param>
    /// <param name="AtLeast">The number of sets below which, proven, no cover goes: that of <paramref name="Chosen"/> unless the search was stopped.</param>
    /// <param name="IsCheapest">Whether it is proven that no cover has fewer sets, or as many and costs less.</param>
    public sealed record Cover(int[] Chosen, int AtLeast, bool IsCheapest);

    /// <summary>The cover.</summary>
    /// <param name="rows">Number of rows.</param>
    /// <param name="sets">The sets; every row is in one of them.</param>
    /// <param name="work">When a group is stopped (<see cref="UsualWork"/>).</param>
    /// <exception cref="ArgumentException">A row is in no set.</exception>
    public static Cover Solve(int rows, IReadOnlyList<Set> sets, long work = UsualWork)
    {
        var table = new CoverTable(rows, [.. sets.Select(s => s.Rows)]);
        if (Array.FindIndex(table.SetsOf, s => s.Length == 0) is >= 0 and var bare)
        {
            throw new ArgumentException($"Row {bare} is in no set.", nameof(sets));
        }

        var (chosen, atLeast, isCheapest) = (new List<int>(), 0, true);
        var index = new int[rows];
        foreach (var group in table.Groups())
        {
            for (var i = 0; i < group.Length; i++)
            {
                index[group[i]] = i;
            }

            int[] names = [.. group.SelectMany(r => table.SetsOf[r]).Distinct().Order()];
            var part = new CoverTable(group.Length, Array.ConvertAll(names, s => Array.ConvertAll(table.RowsOf[s], r => index[r])));
            var (fewest, least) = FewestSets.Of(part, work);
            var (cheapest, proven) = CheapestSets.Of(part, Array.ConvertAll(names, s => sets[s].Costs), fewest, work);
            chosen.AddRange(cheapest.Select(s => names[s]));
            atLeast += least;
            isCheapest &= proven && least == fewest.Length;
        }

        chosen.Sort();
        return new([.. chosen], atLeast, isCheapest);
    }
}
