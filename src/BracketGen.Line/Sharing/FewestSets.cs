namespace BracketGen.Line.Sharing;

/// <summary>The fewest sets that cover all rows of a table, by branch and bound.</summary>
/// <remarks>
/// The bound is Lagrangian: every row that is not covered yet has a price, a set is worth taking where the prices of its rows exceed it, and the
/// prices rise where a row is left out and fall where it is covered twice (subgradient steps; Fisher, Management Science 27, 1981). Whatever the prices are, no cover
/// has fewer sets than the bound says. The row with the fewest sets is branched on; a branch that takes a set leaves out those tried before it.
/// </remarks>
internal sealed class FewestSets
{
    // Taken off before rounding up: far more than the round-off of the sums, far less than a set.
    private const double RoundOff = 1e-6;

    // What a set costs at the least where sets are compared by cost for each row: of those that cost nothing the one with most rows comes first.
    private const double LeastScore = 1e-3;

    private const int RootSteps = 300, NodeSteps = 10, Patience = 15;

    private readonly CoverTable _table;
    private readonly int[] _covered;
    private readonly bool[] _isOut;
    private readonly double[] _reduced;
    private readonly List<int> _chosen = [];
    private int[] _best;
    private long _work;

    private FewestSets(CoverTable table, long work)
    {
        (_table, _work) = (table, work);
        (_covered, _isOut, _reduced) = (new int[table.Rows], new bool[table.Sets], new double[table.Sets]);
        Array.Fill(_reduced, 1);
        _best = Greedy()!;
    }

    /// <summary>The fewest sets found, and the number below which no cover goes: the same number where that is proven.</summary>
    /// <param name="table">The table.</param>
    /// <param name="work">How many links of rows and sets are looked at before it is stopped: a count, so that every machine gives the same answer.</param>
    public static (int[] Chosen, int AtLeast) Of(CoverTable table, long work)
    {
        var chosen = new List<int>();
        var atLeast = 0;
        var (sets, rows) = CoverCore.Of(table);
        var index = Index(table.Rows, rows);
        var core = new CoverTable(rows.Length, Array.ConvertAll(sets, s => table.RowsOf[s].Where(r => index[r] >= 0).Select(r => index[r]).ToArray()));
        foreach (var group in core.Groups())
        {
            var inGroup = Index(core.Rows, group);
            int[] own = [.. Enumerable.Range(0, core.Sets).Where(s => core.RowsOf[s].Length > 0 && inGroup[core.RowsOf[s][0]] >= 0)];
            var part = new FewestSets(new(group.Length, Array.ConvertAll(own, s => Array.ConvertAll(core.RowsOf[s], r => inGroup[r]))), work);
            atLeast += part.Solve();
            chosen.AddRange(part._best.Select(s => sets[own[s]]));
        }

        return ([.. chosen], atLeast);
    }

    private static int[] Index(int all, int[] some)
    {
        var index = new int[all];
        Array.Fill(index, -1);
        for (var i = 0; i < some.Length; i++)
        {
            index[some[i]] = i;
        }

        return index;
    }

    // The number below which no cover goes.
    private int Solve()
    {
        var prices = new double[_table.Rows];
        for (var r = 0; r < prices.Length; r++)
        {
            prices[r] = 1.0 / _table.SetsOf[r].Max(s => _table.RowsOf[s].Length);
        }

        var atLeast = Climb(prices, RootSteps);
        if (atLeast < _best.Length)
        {
            Branch(prices);
        }

        return _work > 0 ? _best.Length : Math.Min(atLeast, _best.Length);
    }

    private void Branch(double[] prices)
    {
        var row = _table.FewestChoices(_covered, _isOut);
        if (row < 0)
        {
            if (_chosen.Count < _best.Length)
            {
                _best = [.. _chosen];
            }

            return;
        }

        Reduce(prices);
        int[] sets = [.. _table.SetsOf[row].Where(s => !_isOut[s]).OrderBy(s => _reduced[s]).ThenByDescending(CountOpen)];
        foreach (var set in sets)
        {
            Take(set, 1);
            _chosen.Add(set);
            var own = (double[])prices.Clone();
            if (_work > 0 && _chosen.Count + 1 <= _best.Length && _chosen.Count + Climb(own, NodeSteps) < _best.Length)
            {
                Branch(own);
            }

            _chosen.RemoveAt(_chosen.Count - 1);
            Take(set, -1);
            _isOut[set] = true;
        }

        foreach (var set in sets)
        {
            _isOut[set] = false;
        }
    }

    private void Take(int set, int by)
    {
        foreach (var row in _table.RowsOf[set])
        {
            _covered[row] += by;
        }
    }

    // Raises the bound by changing the prices, and leaves those that gave the best; how many sets at least the open rows still need.
    private int Climb(double[] prices, int steps)
    {
        double most = double.NegativeInfinity, step = 1;
        var (best, times, idle) = ((double[])prices.Clone(), new int[_table.Rows], 0);
        for (var i = 0; i < steps && _work > 0; i++)
        {
            var bound = Reduce(prices);
            if (bound > most + RoundOff)
            {
                (most, idle) = (bound, 0);
                prices.CopyTo(best, 0);
                TryGreedy();
            }
            else if (++idle >= Patience)
            {
                (step, idle) = (step / 2, 0);
            }

            var goal = _best.Length - _chosen.Count;
            if (Whole(most) >= goal)
            {
                break;
            }

            Array.Clear(times);
            for (var s = 0; s < _table.Sets; s++)
            {
                if (!_isOut[s] && _reduced[s] < 0)
                {
                    foreach (var row in _table.RowsOf[s])
                    {
                        times[row]++;
                    }
                }
            }

            var norm = 0.0;
            for (var r = 0; r < times.Length; r++)
            {
                norm += _covered[r] == 0 ? (1 - times[r]) * (1 - times[r]) : 0;
            }

            if (norm == 0)
            {
                break;
            }

            var length = step * (goal - bound) / norm;
            for (var r = 0; r < times.Length; r++)
            {
                prices[r] = _covered[r] == 0 ? Math.Max(0, prices[r] + length * (1 - times[r])) : 0;
            }
        }

        best.CopyTo(prices, 0);
        return double.IsFinite(most) ? Math.Max(0, Whole(most)) : 0;
    }

    private static int Whole(double bound) => (int)Math.Ceiling(bound - RoundOff);

    // What each set costs over the prices of its open rows; and the bound.
    private double Reduce(double[] prices)
    {
        _work -= _table.Links;
        var bound = 0.0;
        for (var r = 0; r < prices.Length; r++)
        {
            bound += _covered[r] == 0 ? prices[r] : 0;
        }

        for (var s = 0; s < _table.Sets; s++)
        {
            var reduced = 1.0;
            foreach (var row in _table.RowsOf[s])
            {
                reduced -= _covered[row] == 0 ? prices[row] : 0;
            }

            _reduced[s] = reduced;
            bound += _isOut[s] ? 0 : Math.Min(0, reduced);
        }

        return bound;
    }

    private void TryGreedy()
    {
        if (Greedy() is { } found && _chosen.Count + found.Length < _best.Length)
        {
            _best = [.. _chosen, .. found];
        }
    }

    // Takes what covers most for what it costs over the prices, and leaves out again what is not needed; null where rows are left that no set may cover.
    private int[]? Greedy()
    {
        _work -= _table.Links;
        var covered = (int[])_covered.Clone();
        var queue = new PriorityQueue<int, (double, int)>();
        int Open(int set) => _table.RowsOf[set].Count(r => covered[r] == 0);
        double Score(int set, int open) => Math.Max(_reduced[set], LeastScore) / open;
        for (var s = 0; s < _table.Sets; s++)
        {
            if (!_isOut[s] && Open(s) is > 0 and var open)
            {
                queue.Enqueue(s, (Score(s, open), s));
            }
        }

        var chosen = new List<int>();
        var left = covered.Count(c => c == 0);
        while (left > 0)
        {
            if (!queue.TryDequeue(out var set, out var was))
            {
                return null;
            }

            // Others may have covered some of its rows since it was put in.
            if (Open(set) is not (> 0 and var open))
            {
                continue;
            }

            if (Score(set, open) > was.Item1)
            {
                queue.Enqueue(set, (Score(set, open), set));
                continue;
            }

            left -= open;
            chosen.Add(set);
            Array.ForEach(_table.RowsOf[set], r => covered[r]++);
        }

        for (var i = chosen.Count - 1; i >= 0; i--)
        {
            var rows = _table.RowsOf[chosen[i]];
            if (rows.All(r => covered[r] > 1))
            {
                Array.ForEach(rows, r => covered[r]--);
                chosen.RemoveAt(i);
            }
        }

        return [.. chosen];
    }

    private int CountOpen(int set) => _table.RowsOf[set].Count(r => _covered[r] == 0);
}
