namespace BracketGen.Strength.Solving;

/// <summary>The order in which to eliminate the nodes of a mesh so that little fills in.</summary>
/// <remarks>
/// Approximate minimum degree on the quotient graph, with element absorption and mass elimination: P. R. Amestoy, T. A. Davis,
/// I. S. Duff, "An approximate minimum degree ordering algorithm", SIAM Journal on Matrix Analysis and Applications 17 (1996)
/// 886-905. Ties go to the node last touched, so the order is the same every time.
/// </remarks>
internal static class MinimumDegree
{
    /// <summary>Node numbers in order of elimination, for the graph of <paramref name="matrix"/>.</summary>
    public static int[] Order(BlockMatrix matrix)
    {
        var n = matrix.Nodes;
        var variables = new List<int>[n];
        var elements = new List<int>[n];
        var members = new List<int>?[n];
        var degree = new int[n];
        var buckets = new Buckets(n);
        for (var i = n - 1; i >= 0; i--)
        {
            variables[i] = [];
            elements[i] = [];
            for (var b = matrix.RowStarts[i]; b < matrix.RowStarts[i + 1]; b++)
            {
                if (matrix.Columns[b] != i)
                {
                    variables[i].Add(matrix.Columns[b]);
                }
            }

            degree[i] = variables[i].Count;
            buckets.Insert(i, degree[i]);
        }

        var order = new List<int>(n);
        var done = new bool[n];
        var mark = new int[n];
        var stamp = 0;
        var outside = new int[n];
        var outsideStamp = new int[n];
        while (order.Count < n)
        {
            var pivot = buckets.TakeSmallest();
            order.Add(pivot);
            done[pivot] = true;

            // The new element: everything the pivot touches, through variables and through elements it absorbs.
            stamp++;
            mark[pivot] = stamp;
            var front = new List<int>();
            void Take(List<int> from)
            {
                foreach (var i in from)
                {
                    if (!done[i] && mark[i] != stamp)
                    {
                        mark[i] = stamp;
                        front.Add(i);
                    }
                }
            }

            Take(variables[pivot]);
            foreach (var e in elements[pivot])
            {
                if (members[e] is { } absorbed)
                {
                    Take(absorbed);
                    members[e] = null;
                }
            }

            members[pivot] = front;

            // For each element met, how many of its members lie outside the new one.
            foreach (var i in front)
            {
                foreach (var e in elements[i])
                {
                    if (members[e] is { } list)
                    {
                        if (outsideStamp[e] != stamp)
                        {
                            outsideStamp[e] = stamp;
                            list.RemoveAll(j => done[j]);
                            outside[e] = list.Count;
                        }

                        outside[e]--;
                    }
                }
            }

            var still = n - order.Count;
            for (var at = 0; at < front.Count; at++)
            {
                var i = front[at];
                variables[i].RemoveAll(j => done[j] || mark[j] == stamp);

                // An element wholly inside the new one adds nothing.
                elements[i].RemoveAll(e => members[e] is null || outside[e] == 0);
                if (variables[i].Count == 0 && elements[i].Count == 0)
                {
                    buckets.Remove(i, degree[i]);
                    order.Add(i);
                    done[i] = true;
                    continue;
                }

                var sum = variables[i].Count + front.Count - 1;
                foreach (var e in elements[i])
                {
                    sum += outside[e];
                }

                elements[i].Add(pivot);
                buckets.Remove(i, degree[i]);
                degree[i] = Math.Min(Math.Min(sum, still), degree[i] + front.Count);
                buckets.Insert(i, degree[i]);
            }

            front.RemoveAll(i => done[i]);
        }

        return [.. order];
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
