namespace BracketGen.Line.Sharing;

/// <summary>Of the covers with so many sets the cheapest, by branch and bound.</summary>
/// <remarks>
/// A row costs what it costs in the cheapest of the sets taken. The bound is that of the p-median problem: each row has a price, a set is worth what its rows cost less than
/// their prices, and of the sets worth most as many are taken as may be. No cover of so many sets costs less, whatever the prices are.
/// </remarks>
internal sealed class CheapestSets
{
    // A cover counts as cheaper only by more than round-off.
    private const double SameCost = 1e-10;

    // The prices are moved as if the bound were at least so far off: a step of nothing would lead nowhere.
    private const double LeastGap = 1e-6;

    private const int RootSteps = 200, NodeSteps = 8, Patience = 10;

    private readonly CoverTable _table;
    private readonly double[][] _costs;
    private readonly int _number;
    private readonly int[] _covered;
    private readonly bool[] _isOut, _isTaken;
    private readonly double[] _worth;
    private readonly List<int> _chosen = [];
    private int[] _best;
    private double _least;
    private long _work;

    private CheapestSets(CoverTable table, double[][] costs, int[] start, long work)
    {
        (_table, _costs, _number, _best, _work) = (table, costs, start.Length, start, work);
        (_covered, _isOut, _isTaken, _worth) = (new int[table.Rows], new bool[table.Sets], new bool[table.Sets], new double[table.Sets]);
        _least = CostOf(start);
    }

    /// <summary>The cheapest found, and whether it is proven that none is cheaper.</summary>
    /// <param name="table">The table.</param>
    /// <param name="costs">What each row of each set costs in it, in the order of the set's rows; not negative.</param>
    /// <param name="start">A cover with the number of sets that is allowed.</param>
    /// <param name="work">How many links of rows and sets are looked at before it is stopped.</param>
    public static (int[] Chosen, bool IsCheapest) Of(CoverTable table, double[][] costs, int[] start, long work)
    {
        var search = new CheapestSets(table, costs, start, work);
        var prices = new double[table.Rows];
        for (var s = 0; s < table.Sets; s++)
        {
            for (var i = 0; i < table.RowsOf[s].Length; i++)
            {
                prices[table.RowsOf[s][i]] = Math.Max(prices[table.RowsOf[s][i]], costs[s][i]);
            }
        }

        if (search.Climb(prices, RootSteps) < search._least - SameCost)
        {
            search.Branch(prices);
        }

        return (search._best, search._work > 0);
    }

    private void Branch(double[] prices)
    {
        var row = _table.FewestChoices(_covered, _isOut);
        if (row < 0)
        {
            Keep(_chosen);
            return;
        }

        if (_chosen.Count == _number)
        {
            return;
        }

        Value(prices);
        int[] sets = [.. _table.SetsOf[row].Where(s => !_isOut[s]).OrderBy(s => _worth[s])];
        foreach (var set in sets)
        {
            Take(set, true);
            var own = (double[])prices.Clone();
            if (_work > 0 && Climb(own, NodeSteps) < _least - SameCost)
            {
                Branch(own);
            }

            Take(set, false);
            _isOut[set] = true;
        }

        foreach (var set in sets)
        {
            _isOut[set] = false;
        }
    }

    private void Take(int set, bool isTaken)
    {
        _isTaken[set] = isTaken;
        foreach (var row in _table.RowsOf[set])
        {
            _covered[row] += isTaken ? 1 : -1;
        }

        if (isTaken)
        {
            _chosen.Add(set);
        }
        else
        {
            _chosen.RemoveAt(_chosen.Count - 1);
        }
    }

    // Raises the bound by changing the prices, and leaves those that gave the best.
    private double Climb(double[] prices, int steps)
    {
        double most = double.NegativeInfinity, step = 1;
        var (best, times, idle) = ((double[])prices.Clone(), new int[_table.Rows], 0);
        for (var i = 0; i < steps && _work > 0; i++)
        {
            Value(prices);
            int[] taken = [.. _chosen, .. Enumerable.Range(0, _table.Sets).Where(s => !_isOut[s] && !_isTaken[s] && _worth[s] < 0)
                .OrderBy(s => _worth[s]).ThenBy(s => s).Take(_number - _chosen.Count)];
            var bound = prices.Sum() + taken.Sum(s => _worth[s]);
            if (bound > most + SameCost)
            {
                (most, idle) = (bound, 0);
                prices.CopyTo(best, 0);
                Keep(taken);
            }
            else if (++idle >= Patience)
            {
                (step, idle) = (step / 2, 0);
            }

            if (most >= _least - SameCost)
            {
                break;
            }

            Array.Clear(times);
            foreach (var set in taken)
            {
                for (var j = 0; j < _table.RowsOf[set].Length; j++)
                {
                    var row = _table.RowsOf[set][j];
                    times[row] += _costs[set][j] < prices[row] ? 1 : 0;
                }
            }

            var norm = times.Sum(t => (double)(1 - t) * (1 - t));
            if (norm == 0)
            {
                break;
            }

            var length = step * Math.Max(_least - bound, LeastGap) / norm;
            for (var r = 0; r < prices.Length; r++)
            {
                prices[r] = Math.Max(0, prices[r] + length * (1 - times[r]));
            }
        }

        best.CopyTo(prices, 0);
        return most;
    }

    // What each set is worth at these prices: never more than nothing.
    private void Value(double[] prices)
    {
        _work -= _table.Links;
        for (var s = 0; s < _table.Sets; s++)
        {
            var worth = 0.0;
            for (var i = 0; i < _table.RowsOf[s].Length; i++)
            {
                worth += Math.Min(0, _costs[s][i] - prices[_table.RowsOf[s][i]]);
            }

            _worth[s] = worth;
        }
    }

    private void Keep(IReadOnlyList<int> sets)
    {
        var cost = CostOf(sets);
        if (cost < _least - SameCost)
        {
            (_best, _least) = ([.. sets], cost);
        }
    }

    // Infinite where a row is in none of them.
    private double CostOf(IReadOnlyList<int> sets)
    {
        var least = new double[_table.Rows];
        Array.Fill(least, double.PositiveInfinity);
        foreach (var s in sets)
        {
            _work -= _table.RowsOf[s].Length;
            for (var i = 0; i < _table.RowsOf[s].Length; i++)
            {
                var row = _table.RowsOf[s][i];
                least[row] = Math.Min(least[row], _costs[s][i]);
            }
        }

        return least.Sum();
    }
}
