namespace BracketGen.Strength.Solving;

/// <summary>The order in which to eliminate the nodes of a mesh so that little fills in.</summary>
/// <remarks>
/// Approximate minimum degree on the quotient graph, with element absorption and mass elimination: P. R. Amestoy, T. A. Davis,
/// I. S. Duff, "An approximate minimum degree ordering algorithm", SIAM Journal on Matrix Analysis and Applications 17 (1996)
/// 886-905. Ties go to the node last touched, so the order is the same every time.
/// </remarks>
internal sealed class MinimumDegree
{
    private readonly List<int>[] _variables;
    private readonly List<int>[] _elements;
    private readonly List<int>?[] _members;
    private readonly int[] _degree;
    private readonly Buckets _buckets;
    private readonly List<int> _order;
    private readonly bool[] _done;

    // Nodes that bear the current stamp are in the new element; an element that bears it has its outside counted.
    private readonly int[] _mark;
    private readonly int[] _outside;
    private readonly int[] _outsideStamp;
    private int _stamp;

    private MinimumDegree(BlockPattern pattern)
    {
        var n = pattern.Nodes;
        var (starts, neighbours) = pattern.Neighbours();
        (_variables, _elements, _members) = (new List<int>[n], new List<int>[n], new List<int>?[n]);
        (_degree, _mark, _outside, _outsideStamp) = (new int[n], new int[n], new int[n], new int[n]);
        (_buckets, _order, _done) = (new(n), new(n), new bool[n]);
        for (var i = n - 1; i >= 0; i--)
        {
            _variables[i] = [];
            _elements[i] = [];
            _variables[i].AddRange(neighbours.AsSpan(starts[i], starts[i + 1] - starts[i]));

            _degree[i] = _variables[i].Count;
            _buckets.Insert(i, _degree[i]);
        }
    }

    /// <summary>Node numbers in order of elimination, for the graph of <paramref name="pattern"/>.</summary>
    public static int[] Order(BlockPattern pattern)
    {
        var graph = new MinimumDegree(pattern);
        while (graph._order.Count < pattern.Nodes)
        {
            graph.Eliminate(graph._buckets.TakeSmallest());
        }

        return [.. graph._order];
    }

    private void Eliminate(int pivot)
    {
        _order.Add(pivot);
        _done[pivot] = true;
        _stamp++;
        _mark[pivot] = _stamp;
        var front = NewElement(pivot);
        _members[pivot] = front;
        CountOutside(front);
        var still = _done.Length - _order.Count;
        foreach (var i in front)
        {
            Update(i, pivot, front.Count, still);
        }

        front.RemoveAll(i => _done[i]);
    }

    /// <summary>Everything the pivot touches, through variables and through elements, which it absorbs.</summary>
    private List<int> NewElement(int pivot)
    {
        var front = new List<int>();
        Take(_variables[pivot], front);
        foreach (var e in _elements[pivot])
        {
            if (_members[e] is { } absorbed)
            {
                Take(absorbed, front);
                _members[e] = null;
            }
        }

        return front;
    }

    private void Take(List<int> from, List<int> front)
    {
        foreach (var i in from)
        {
            if (!_done[i] && _mark[i] != _stamp)
            {
                _mark[i] = _stamp;
                front.Add(i);
            }
        }
    }

    /// <summary>For each element that the new one meets, how many of its members lie outside the new one.</summary>
    private void CountOutside(List<int> front)
    {
        foreach (var i in front)
        {
            foreach (var e in _elements[i])
            {
                if (_members[e] is { } list)
                {
                    if (_outsideStamp[e] != _stamp)
                    {
                        _outsideStamp[e] = _stamp;
                        list.RemoveAll(j => _done[j]);
                        _outside[e] = list.Count;
                    }

                    _outside[e]--;
                }
            }
        }
    }

    /// <summary>A node of the new element gets its new degree, or is eliminated with the pivot if nothing else touches it.</summary>
    private void Update(int i, int pivot, int size, int still)
    {
        _variables[i].RemoveAll(j => _done[j] || _mark[j] == _stamp);

        // An element wholly inside the new one adds nothing.
        _elements[i].RemoveAll(e => _members[e] is null || _outside[e] == 0);
        _buckets.Remove(i, _degree[i]);
        if (_variables[i].Count == 0 && _elements[i].Count == 0)
        {
            _order.Add(i);
            _done[i] = true;
            return;
        }

        var sum = _variables[i].Count + size - 1;
        foreach (var e in _elements[i])
        {
            sum += _outside[e];
        }

        _elements[i].Add(pivot);
        _degree[i] = Math.Min(Math.Min(sum, still), _degree[i] + size);
        _buckets.Insert(i, _degree[i]);
    }

    // Nodes by degree, in doubly linked lists.
    private sealed class Buckets
    {
        private readonly int[] _heads;
        private readonly int[] _next;
        private readonly int[] _previous;
        private int _smallest;

        public Buckets(int n)
        {
            _heads = new int[n + 1];
            _next = new int[n];
            _previous = new int[n];
            Array.Fill(_heads, -1);
        }

        public void Insert(int node, int degree)
        {
            _next[node] = _heads[degree];
            _previous[node] = -1;
            if (_heads[degree] >= 0)
            {
                _previous[_heads[degree]] = node;
            }

            _heads[degree] = node;
            _smallest = Math.Min(_smallest, degree);
        }

        public void Remove(int node, int degree)
        {
            if (_previous[node] >= 0)
            {
                _next[_previous[node]] = _next[node];
            }
            else
            {
                _heads[degree] = _next[node];
            }

            if (_next[node] >= 0)
            {
                _previous[_next[node]] = _previous[node];
            }
        }

        public int TakeSmallest()
        {
            while (_heads[_smallest] < 0)
            {
                _smallest++;
            }

            var node = _heads[_smallest];
            Remove(node, _smallest);
            return node;
        }
    }
}
