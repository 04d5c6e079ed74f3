namespace BracketGen.Strength.Solving;

/// <summary>Which nodes are eliminated together, in which order, and which later nodes each group touches.</summary>
/// <remarks>
/// The supernodes of J. W. H. Liu, "The multifrontal method for sparse pattern solution: theory and practice", SIAM Review 34
/// (1992) 82-109, in postorder of the elimination tree, small ones merged where that adds few zeros.
/// </remarks>
internal sealed class EliminationPlan
{
    private EliminationPlan(int[] order, Supernode[] supernodes)
    {
        Order = order;
        Supernodes = supernodes;
    }

    /// <summary>Node eliminated at each place.</summary>
    public int[] Order { get; }

    /// <summary>The groups, children before parents.</summary>
    public Supernode[] Supernodes { get; }

    /// <summary>One group: the places First to First + Count - 1, and the later places they touch, ascending.</summary>
    internal sealed record Supernode(int First, int Count, int[] Rows)
    {
        public long Zeros { get; init; }

        public int Parent { get; set; } = -1;

        public int Front => Count + Rows.Length;
    }

    public static EliminationPlan For(BlockPattern pattern)
    {
        var order = MinimumDegree.Order(pattern);
        var (parents, _) = Structure(pattern, order);
        order = [.. Postorder(parents).Select(place => order[place])];
        (parents, var rows) = Structure(pattern, order);

        var groups = new List<Supernode>();
        for (var first = 0; first < order.Length;)
        {
            var last = first;
            while (parents[last] == last + 1 && rows[last].Length == rows[last + 1].Length + 1)
            {
                last++;
            }

            var next = new Supernode(first, last - first + 1, rows[last]);
            while (groups.Count > 0 && Merge(groups[^1], next) is { } merged)
            {
                groups.RemoveAt(groups.Count - 1);
                next = merged;
            }

            groups.Add(next);
            first = last + 1;
        }

        var groupOf = new int[order.Length];
        for (var g = 0; g < groups.Count; g++)
        {
            Array.Fill(groupOf, g, groups[g].First, groups[g].Count);
        }

        foreach (var group in groups)
        {
            group.Parent = group.Rows.Length > 0 ? groupOf[group.Rows[0]] : -1;
        }

        return new(order, [.. groups]);
    }

    private static Supernode? Merge(Supernode child, Supernode parent)
    {
        if (child.Rows.Length == 0 || child.Rows[0] != parent.First)
        {
            return null;
        }

        var zeros = child.Zeros + parent.Zeros + (long)child.Count * (parent.Front - child.Rows.Length);
        var count = child.Count + parent.Count;
        var total = (long)count * (count + 1) / 2 + (long)count * parent.Rows.Length;

        // Thin fronts cost more in bookkeeping than zeros do in arithmetic.
        var allowed = count <= 4 ? 0.4 : count <= 10 ? 0.15 : 0.05;
        return zeros <= allowed * total ? new(child.First, count, parent.Rows) { Zeros = zeros } : null;
    }

    private static (int[] Parents, int[][] Rows) Structure(BlockPattern pattern, int[] order)
    {
        var n = order.Length;
        var (starts, neighbours) = pattern.Neighbours();
        var place = new int[n];
        for (var k = 0; k < n; k++)
        {
            place[order[k]] = k;
        }

        var parents = new int[n];
        var rows = new int[n][];
        var mark = new int[n];
        var children = new List<int>?[n];
        var list = new List<int>();
        for (var k = 0; k < n; k++)
        {
            list.Clear();
            mark[k] = k + 1;
            void Take(int later)
            {
                if (later > k && mark[later] != k + 1)
                {
                    mark[later] = k + 1;
                    list.Add(later);
                }
            }

            var node = order[k];
            for (var b = starts[node]; b < starts[node + 1]; b++)
            {
                Take(place[neighbours[b]]);
            }

            foreach (var child in children[k] ?? [])
            {
                foreach (var later in rows[child])
                {
                    Take(later);
                }
            }

            list.Sort();
            rows[k] = [.. list];
            parents[k] = list.Count > 0 ? list[0] : -1;
            if (parents[k] >= 0)
            {
                (children[parents[k]] ??= []).Add(k);
            }
        }

        return (parents, rows);
    }

    private static List<int> Postorder(int[] parents)
    {
        var n = parents.Length;
        var children = new List<int>?[n];
        var stack = new Stack<(int Node, int Child)>();
        var result = new List<int>(n);
        for (var k = 0; k < n; k++)
        {
            if (parents[k] >= 0)
            {
                (children[parents[k]] ??= []).Add(k);
            }
        }

        for (var root = 0; root < n; root++)
        {
            if (parents[root] >= 0)
            {
                continue;
            }

            stack.Push((root, 0));
            while (stack.TryPop(out var top))
            {
                var below = children[top.Node];
                if (below is not null && top.Child < below.Count)
                {
                    stack.Push((top.Node, top.Child + 1));
                    stack.Push((below[top.Child], 0));
                }
                else
                {
                    result.Add(top.Node);
                }
            }
        }

        return result;
    }
}
