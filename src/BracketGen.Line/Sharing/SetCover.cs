using BracketGen.Geometry;
using BracketGen.Profiles.Forms;

namespace BracketGen.Line.Sharing;

/// <summary>The fewest sets that cover all rows, and of those covers the one that costs least: exactly.</summary>
/// <remarks>
/// Branch and bound of our own. The rows fall apart into groups that share no set, each solved alone. In a group the row with the fewest
/// sets is branched on; a branch that takes a set leaves out those tried before it. Bounds: rows of which no set covers two need a set
/// each; and no row costs less than its cheapest set still allowed. First the number of sets is found, then the cost with that number.
/// The general solver that was thought of (Google OR-Tools) comes as a native library bound by reflection: it cannot be part of one
/// native file.
/// </remarks>
public static class SetCover
{
    /// <summary>Branches after which a group's cost is taken as found so far; the number of sets is always proven.</summary>
    private const int MostBranchesForCost = 200_000;

    /// <summary>A set: the rows it covers and what each costs in it.</summary>
    /// <param name="Rows">The rows, rising, each once.</param>
    /// <param name="Costs">What each costs, not negative.</param>
    public sealed record Set(int[] Rows, double[] Costs);

    /// <summary>The sets of the cover, rising; and whether their cost is proven to be the least.</summary>
    /// <param name="rows">Number of rows.</param>
    /// <param name="sets">The sets; every row is in one of them.</param>
    /// <exception cref="ArgumentException">A row is in no set.</exception>
    public static (int[] Chosen, bool IsCheapest) Solve(int rows, IReadOnlyList<Set> sets)
    {
        var chosen = new List<int>();
        var isCheapest = true;
        foreach (var group in Groups(rows, sets))
        {
            var (found, cheapest) = new Group(group.Rows, group.Sets, sets).Solve();
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

    private sealed class Group
    {
        private readonly int[] _names;
        private readonly ulong[][] _rowsOf;
        private readonly ulong[][] _neighbours;
        private readonly List<int>[] _setsOf;
        private readonly double[][] _costs;
        private readonly int _rows;
        private readonly int _words;
        private readonly bool[] _leftOut;
        private int[] _best = [];
        private double _leastCost = double.PositiveInfinity;
        private int _branches;

        public Group(int[] rows, int[] sets, IReadOnlyList<Set> all)
        {
            (_names, _rows, _words) = (sets, rows.Length, (rows.Length + 63) / 64);
            var index = rows.Select((r, i) => (r, i)).ToDictionary(p => p.r, p => p.i);
            _rowsOf = [.. sets.Select(_ => new ulong[_words])];
            _costs = [.. sets.Select(_ => new double[_rows])];
            _setsOf = [.. rows.Select(_ => new List<int>())];
            _neighbours = [.. rows.Select(_ => new ulong[_words])];
            _leftOut = new bool[sets.Length];
            for (var s = 0; s < sets.Length; s++)
            {
                var set = all[sets[s]];
                for (var k = 0; k < set.Rows.Length; k++)
                {
                    var row = index[set.Rows[k]];
                    _rowsOf[s][row >> 6] |= 1UL << (row & 63);
                    _costs[s][row] = set.Costs[k];
                    _setsOf[row].Add(s);
                }
            }

            for (var row = 0; row < _rows; row++)
            {
                foreach (var s in _setsOf[row])
                {
                    Or(_neighbours[row], _rowsOf[s]);
                }
            }
        }

        public (IEnumerable<int> Chosen, bool IsCheapest) Solve()
        {
            var all = new ulong[_words];
            for (var row = 0; row < _rows; row++)
            {
                all[row >> 6] |= 1UL << (row & 63);
            }

            _best = Greedy(all);
            Fewest(all, []);
            Array.Clear(_leftOut);
            var number = _best.Length;
            var lowest = Enumerable.Range(0, _rows).Select(r => double.PositiveInfinity).ToArray();
            _leastCost = CostOf(_best);
            Cheapest(all, [], lowest, number);
            return (_best.Select(s => _names[s]), _branches <= MostBranchesForCost);
        }

        private int[] Greedy(ulong[] all)
        {
            var open = (ulong[])all.Clone();
            var chosen = new List<int>();
            while (Count(open) > 0)
            {
                var best = Enumerable.Range(0, _rowsOf.Length).MaxBy(s => CountBoth(_rowsOf[s], open));
                chosen.Add(best);
                open = Without(open, _rowsOf[best]);
            }

            return [.. chosen];
        }

        private void Fewest(ulong[] open, List<int> chosen)
        {
            if (Count(open) == 0)
            {
                if (chosen.Count < _best.Length)
                {
                    _best = [.. chosen];
                }

                return;
            }

            if (chosen.Count + LeastSets(open) >= _best.Length)
            {
                return;
            }

            Branch(open, chosen, s => CountBoth(_rowsOf[s], open), (rest, _) => Fewest(rest, chosen));
        }

        private void Cheapest(ulong[] open, List<int> chosen, double[] lowest, int number)
        {
            if (++_branches > MostBranchesForCost)
            {
                return;
            }

            if (Count(open) == 0)
            {
                var cost = lowest.Sum();
                if (cost < _leastCost - 1e-12)
                {
                    (_best, _leastCost) = ([.. chosen], cost);
                }

                return;
            }

            if (chosen.Count + LeastSets(open) > number || LeastCost(lowest) >= _leastCost - 1e-12)
            {
                return;
            }

            Branch(open, chosen, s => -CostWith(s, open), (rest, set) =>
            {
                var lower = new double[_rows];
                for (var row = 0; row < _rows; row++)
                {
                    lower[row] = Has(_rowsOf[set], row) ? Math.Min(lowest[row], _costs[set][row]) : lowest[row];
                }

                Cheapest(rest, chosen, lower, number);
            });
        }

        private void Branch(ulong[] open, List<int> chosen, Func<int, double> merit, Action<ulong[], int> go)
        {
            var row = Enumerable.Range(0, _rows).Where(r => Has(open, r)).MinBy(r => _setsOf[r].Count(s => !_leftOut[s]));
            var tried = new List<int>();
            foreach (var set in _setsOf[row].Where(s => !_leftOut[s]).OrderByDescending(merit).ToList())
            {
                chosen.Add(set);
                go(Without(open, _rowsOf[set]), set);
                chosen.RemoveAt(chosen.Count - 1);
                _leftOut[set] = true;
                tried.Add(set);
            }

            foreach (var set in tried)
            {
                _leftOut[set] = false;
            }
        }

        // Rows of which no set covers two, picked greedily.
        private int LeastSets(ulong[] open)
        {
            var free = (ulong[])open.Clone();
            var count = 0;
            for (var row = 0; row < _rows; row++)
            {
                if (Has(free, row))
                {
                    count++;
                    free = Without(free, _neighbours[row]);
                }
            }

            return count;
        }

        private double LeastCost(double[] lowest)
        {
            var sum = 0.0;
            for (var row = 0; row < _rows; row++)
            {
                var least = lowest[row];
                foreach (var s in _setsOf[row])
                {
                    if (!_leftOut[s] && _costs[s][row] < least)
                    {
                        least = _costs[s][row];
                    }
                }

                sum += least;
            }

            return sum;
        }

        private double CostOf(int[] chosen) => Enumerable.Range(0, _rows).Sum(row =>
            chosen.Where(s => Has(_rowsOf[s], row)).Min(s => _costs[s][row]));

        private double CostWith(int set, ulong[] open)
        {
            var sum = 0.0;
            for (var row = 0; row < _rows; row++)
            {
                sum += Has(open, row) && Has(_rowsOf[set], row) ? _costs[set][row] - 1000 : 0;
            }

            return sum;
        }

        private static bool Has(ulong[] set, int row) => (set[row >> 6] >> (row & 63) & 1) != 0;

        private static int Count(ulong[] set) => set.Sum(System.Numerics.BitOperations.PopCount);

        private static int CountBoth(ulong[] a, ulong[] b)
        {
            var count = 0;
            for (var i = 0; i < a.Length; i++)
            {
                count += System.Numerics.BitOperations.PopCount(a[i] & b[i]);
            }

            return count;
        }

        private static ulong[] Without(ulong[] a, ulong[] b)
        {
            var rest = new ulong[a.Length];
            for (var i = 0; i < a.Length; i++)
            {
                rest[i] = a[i] & ~b[i];
            }

            return rest;
        }

        private static void Or(ulong[] into, ulong[] other)
        {
            for (var i = 0; i < into.Length; i++)
            {
                into[i] |= other[i];
            }
        }
    }
}
