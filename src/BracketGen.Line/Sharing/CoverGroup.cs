namespace BracketGen.Line.Sharing;

/// <summary>Rows that share sets with each other and with no other rows: solved by branch and bound.</summary>
internal sealed class CoverGroup
{
    /// <summary>Branches after which a group's cost is taken as found so far; the number of sets is always proven.</summary>
    private const int MaxBranchesForCost = 200_000;

    /// <summary>Costs closer than this are the same: only more than round-off makes a cover cheaper.</summary>
    private const double SameCost = 1e-12;

    private readonly int[] _names;
    private readonly RowSet[] _rowsOf;
    private readonly RowSet[] _neighbours;
    private readonly List<int>[] _setsOf;
    private readonly double[][] _costs;
    private readonly int _rows;
    private readonly bool[] _leftOut;
    private int[] _best = [];
    private double _minCost = double.PositiveInfinity;
    private int _branches;

    public CoverGroup(int[] rows, int[] sets, IReadOnlyList<SetCover.Set> all)
    {
        (_names, _rows) = (sets, rows.Length);
        var index = rows.Select((r, i) => (r, i)).ToDictionary(p => p.r, p => p.i);
        _rowsOf = [.. sets.Select(_ => RowSet.Empty(_rows))];
        _costs = [.. sets.Select(_ => new double[_rows])];
        _setsOf = [.. rows.Select(_ => new List<int>())];
        _neighbours = [.. rows.Select(_ => RowSet.Empty(_rows))];
        _leftOut = new bool[sets.Length];
        for (var s = 0; s < sets.Length; s++)
        {
            var set = all[sets[s]];
            for (var k = 0; k < set.Rows.Length; k++)
            {
                var row = index[set.Rows[k]];
                _rowsOf[s].Add(row);
                _costs[s][row] = set.Costs[k];
                _setsOf[row].Add(s);
            }
        }

        for (var row = 0; row < _rows; row++)
        {
            foreach (var s in _setsOf[row])
            {
                _neighbours[row].Add(_rowsOf[s]);
            }
        }
    }

    public (IEnumerable<int> Chosen, bool IsCheapest) Solve()
    {
        var all = RowSet.Empty(_rows);
        for (var row = 0; row < _rows; row++)
        {
            all.Add(row);
        }

        _best = Greedy(all);
        Fewest(all, []);
        Array.Clear(_leftOut);
        var number = _best.Length;
        var lowest = Enumerable.Range(0, _rows).Select(r => double.PositiveInfinity).ToArray();
        _minCost = CostOf(_best);
        Cheapest(all, [], lowest, number);
        return (_best.Select(s => _names[s]), _branches <= MaxBranchesForCost);
    }

    private int[] Greedy(RowSet all)
    {
        var open = all;
        var chosen = new List<int>();
        while (!open.IsEmpty)
        {
            var best = Enumerable.Range(0, _rowsOf.Length).MaxBy(s => _rowsOf[s].CountWith(open));
            chosen.Add(best);
            open = open.Without(_rowsOf[best]);
        }

        return [.. chosen];
    }

    private void Fewest(RowSet open, List<int> chosen)
    {
        if (open.IsEmpty)
        {
            if (chosen.Count < _best.Length)
            {
                _best = [.. chosen];
            }

            return;
        }

        if (chosen.Count + MinSets(open) >= _best.Length)
        {
            return;
        }

        Branch(open, chosen, s => _rowsOf[s].CountWith(open), (rest, _) => Fewest(rest, chosen));
    }

    private void Cheapest(RowSet open, List<int> chosen, double[] lowest, int number)
    {
        if (++_branches > MaxBranchesForCost)
        {
            return;
        }

        if (open.IsEmpty)
        {
            var cost = lowest.Sum();
            if (cost < _minCost - SameCost)
            {
                (_best, _minCost) = ([.. chosen], cost);
            }

            return;
        }

        if (chosen.Count + MinSets(open) > number || MinCost(lowest) >= _minCost - SameCost)
        {
            return;
        }

        Branch(open, chosen, s => -CostWith(s, open), (rest, set) =>
        {
            var lower = new double[_rows];
            for (var row = 0; row < _rows; row++)
            {
                lower[row] = _rowsOf[set].Has(row) ? Math.Min(lowest[row], _costs[set][row]) : lowest[row];
            }

            Cheapest(rest, chosen, lower, number);
        });
    }

    private void Branch(RowSet open, List<int> chosen, Func<int, double> merit, Action<RowSet, int> go)
    {
        var row = Enumerable.Range(0, _rows).Where(r => open.Has(r)).MinBy(r => _setsOf[r].Count(s => !_leftOut[s]));
        var tried = new List<int>();
        foreach (var set in _setsOf[row].Where(s => !_leftOut[s]).OrderByDescending(merit).ToList())
        {
            chosen.Add(set);
            go(open.Without(_rowsOf[set]), set);
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
    private int MinSets(RowSet open)
    {
        var free = open;
        var count = 0;
        for (var row = 0; row < _rows; row++)
        {
            if (free.Has(row))
            {
                count++;
                free = free.Without(_neighbours[row]);
            }
        }

        return count;
    }

    private double MinCost(double[] lowest)
    {
        var sum = 0.0;
        for (var row = 0; row < _rows; row++)
        {
            var min = lowest[row];
            foreach (var s in _setsOf[row])
            {
                if (!_leftOut[s] && _costs[s][row] < min)
                {
                    min = _costs[s][row];
                }
            }

            sum += min;
        }

        return sum;
    }

    private double CostOf(int[] chosen) => Enumerable.Range(0, _rows).Sum(row =>
        chosen.Where(s => _rowsOf[s].Has(row)).Min(s => _costs[s][row]));

    private double CostWith(int set, RowSet open)
    {
        var sum = 0.0;
        for (var row = 0; row < _rows; row++)
        {
            sum += open.Has(row) && _rowsOf[set].Has(row) ? _costs[set][row] - 1000 : 0;
        }

        return sum;
    }
}
