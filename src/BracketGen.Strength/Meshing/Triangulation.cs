namespace BracketGen.Strength.Meshing;

/// <summary>A constrained Delaunay triangulation that points and lines are put into.</summary>
/// <remarks>
/// Points by C. L. Lawson's flips; lines as S. W. Sloan, "A fast algorithm for generating constrained Delaunay triangulations",
/// Computers and Structures 47 (1993) 441-450. Edge i of a triangle runs from its corner i to its corner i + 1. The first three points
/// are far outside. Changes as it is built: internal to the mesher.
/// </remarks>
internal sealed class Triangulation
{
    /// <summary>Number of far corners before the first real point.</summary>
    public const int FarPoints = 3;

    private readonly List<GridPoint> _points = [];
    private readonly List<int> _triangleAt = [];
    private readonly List<int> _corners = [];
    private readonly List<int> _neighbours = [];
    private readonly List<EdgeKind> _kinds = [];
    private readonly List<bool> _inside = [];
    private readonly Stack<int> _toCheck = new();
    private int _last;

    public Triangulation(int extent)
    {
        // Far enough to affect no inner triangle: the borders are constrained.
        var far = 3 * extent;
        _points.AddRange([new(-far, -far), new(far, -far), new(0, far)]);
        _triangleAt.AddRange([0, 0, 0]);
        AddTriangle(0, 1, 2);
    }

    public int PointCount => _points.Count;

    public int TriangleCount => _inside.Count;

    public GridPoint Point(int p) => _points[p];

    public int Corner(int t, int i) => _corners[3 * t + i];

    public int Neighbour(int t, int i) => _neighbours[3 * t + i];

    public EdgeKind Kind(int t, int i) => _kinds[3 * t + i];

    public bool Inside(int t) => _inside[t];

    /// <summary>Triangles made or changed since the list was last cleared.</summary>
    public List<int> Touched { get; } = [];

    /// <summary>Inserts a point; returns its number, or that of the point already there.</summary>
    public int Insert(GridPoint p)
    {
        var t = Locate(p, _last, false, out _, out _);
        for (var i = 0; i < 3; i++)
        {
            if (Point(Corner(t, i)) == p)
            {
                return Corner(t, i);
            }
        }

        for (var i = 0; i < 3; i++)
        {
            if (GridPoint.Orient(Point(Corner(t, i)), Point(Corner(t, (i + 1) % 3)), p) == 0)
            {
                return SplitEdge(t, i, p);
            }
        }

        int n = AddPoint(p), a = Corner(t, 0), b = Corner(t, 1), c = Corner(t, 2);
        int t1 = AddTriangle(b, c, n), t2 = AddTriangle(c, a, n);
        _inside[t1] = _inside[t2] = _inside[t];
        Link(t1, 0, Neighbour(t, 1), Kind(t, 1));
        Link(t2, 0, Neighbour(t, 2), Kind(t, 2));
        var (outer, kind) = (Neighbour(t, 0), Kind(t, 0));
        SetCorners(t, a, b, n);
        Link(t, 0, outer, kind);
        Link(t, 1, t1, EdgeKind.Free);
        Link(t1, 1, t2, EdgeKind.Free);
        Link(t2, 1, t, EdgeKind.Free);
        _toCheck.Push(t);
        _toCheck.Push(t1);
        _toCheck.Push(t2);
        Legalise();
        return n;
    }

    /// <summary>Puts a point on (or within rounding of) an edge; the halves keep its kind.</summary>
    public int SplitEdge(int t, int i, GridPoint p)
    {
        var kind = Kind(t, i);
        int u = Neighbour(t, i), a = Corner(t, i), b = Corner(t, (i + 1) % 3), c = Corner(t, (i + 2) % 3);
        var n = AddPoint(p);
        var (bc, bcKind, ca, caKind) = (Neighbour(t, (i + 1) % 3), Kind(t, (i + 1) % 3), Neighbour(t, (i + 2) % 3), Kind(t, (i + 2) % 3));

        // Every new triangle has the new point as its last corner, as Legalise expects.
        var t1 = AddTriangle(b, c, n);
        _inside[t1] = _inside[t];
        SetCorners(t, c, a, n);
        Link(t, 0, ca, caKind);
        Link(t1, 0, bc, bcKind);
        Link(t1, 1, t, EdgeKind.Free);
        _toCheck.Push(t);
        _toCheck.Push(t1);
        if (u < 0)
        {
            Link(t, 1, -1, kind);
            Link(t1, 2, -1, kind);
        }
        else
        {
            // In u the edge runs from b to a.
            var j = EdgeFrom(u, b);
            var d = Corner(u, (j + 2) % 3);
            var (ad, adKind, db, dbKind) = (Neighbour(u, (j + 1) % 3), Kind(u, (j + 1) % 3), Neighbour(u, (j + 2) % 3), Kind(u, (j + 2) % 3));
            var u1 = AddTriangle(a, d, n);
            _inside[u1] = _inside[u];
            SetCorners(u, d, b, n);
            Link(u, 0, db, dbKind);
            Link(u1, 0, ad, adKind);
            Link(u1, 1, u, EdgeKind.Free);
            Link(t, 1, u1, kind);
            Link(u, 1, t1, kind);
            _toCheck.Push(u);
            _toCheck.Push(u1);
        }

        Legalise();
        return n;
    }

    /// <summary>Makes the straight line between two points a chain of edges of <paramref name="kind"/>.</summary>
    /// <exception cref="MeshException">It crosses another such line.</exception>
    public void InsertLine(int a, int b, EdgeKind kind)
    {
        while (a != b)
        {
            a = InsertLineToNext(a, b, kind);
        }
    }

    /// <summary>The triangle that holds <paramref name="p"/>, walking from <paramref name="from"/>.</summary>
    /// <param name="p">The point.</param>
    /// <param name="from">Where to start.</param>
    /// <param name="stopAtLines">Whether to stop before crossing an edge that is not free.</param>
    /// <param name="blockedBy">The edge of the returned triangle that stopped the walk, or -1.</param>
    /// <param name="lost">Whether the walk left the triangulation.</param>
    public int Locate(GridPoint p, int from, bool stopAtLines, out int blockedBy, out bool lost)
    {
        var t = from;
        blockedBy = -1;
        lost = false;
        for (var step = 0; ; step++)
        {
            var crossed = -1;
            for (var k = 0; k < 3 && crossed < 0; k++)
            {
                // The starting edge turns with the step so that no walk goes round for ever.
                var i = (k + step) % 3;
                if (GridPoint.Orient(Point(Corner(t, i)), Point(Corner(t, (i + 1) % 3)), p) < 0)
                {
                    crossed = i;
                }
            }

            if (crossed < 0 || step > 4 * TriangleCount + 100)
            {
                _last = t;
                lost = crossed >= 0;
                return t;
            }

            if (stopAtLines && Kind(t, crossed) != EdgeKind.Free)
            {
                blockedBy = crossed;
                return t;
            }

            if (Neighbour(t, crossed) < 0)
            {
                lost = true;
                return t;
            }

            t = Neighbour(t, crossed);
        }
    }

    /// <summary>Marks as inside what an odd number of borders separates from the far corners.</summary>
    public void MarkInside()
    {
        var seen = new bool[TriangleCount];
        var start = _triangleAt[0];
        var queue = new Queue<int>([start]);
        seen[start] = true;
        while (queue.TryDequeue(out var t))
        {
            for (var i = 0; i < 3; i++)
            {
                var u = Neighbour(t, i);
                if (u >= 0 && !seen[u])
                {
                    seen[u] = true;
                    _inside[u] = _inside[t] != (Kind(t, i) == EdgeKind.Border);
                    queue.Enqueue(u);
                }
            }
        }
    }

    private int InsertLineToNext(int a, int b, EdgeKind kind)
    {
        var (first, crossing) = LeavingEdge(a, b);
        if (Corner(first, crossing) == a)
        {
            SetKind(first, crossing, kind);
            return Corner(first, (crossing + 1) % 3);
        }

        var (crossed, target) = CrossedEdges(a, b, first, crossing);
        var made = FlipAway(crossed, a, target);
        FindEdge(a, target, out var at, out var edge);
        SetKind(at, edge, kind);
        Restore(made);
        return target;
    }

    // Round a: the edge from a that is part of the line, or the one opposite a that the line crosses.
    private (int Triangle, int Edge) LeavingEdge(int a, int b)
    {
        GridPoint pa = Point(a), pb = Point(b);
        int start = _triangleAt[a], t = start;
        do
        {
            var i = IndexOf(t, a);
            int c = Corner(t, (i + 1) % 3), d = Corner(t, (i + 2) % 3);
            var sideC = GridPoint.Orient(pa, pb, Point(c));
            var sideD = GridPoint.Orient(pa, pb, Point(d));
            if (c == b || (sideC == 0 && Ahead(pa, pb, Point(c))))
            {
                return (t, i);
            }

            if (sideC < 0 && sideD > 0)
            {
                return (t, (i + 1) % 3);
            }

            t = Neighbour(t, (i + 2) % 3);
        }
        while (t != start && t >= 0);

        throw new MeshException("The mesher lost a line of the flat pattern.");
    }

    // The edges that the line crosses from triangle t on, up to the next point on it.
    private (Queue<(int A, int B)> Crossed, int Target) CrossedEdges(int a, int b, int t, int crossing)
    {
        GridPoint pa = Point(a), pb = Point(b);
        var crossed = new Queue<(int, int)>();
        while (true)
        {
            if (Kind(t, crossing) != EdgeKind.Free)
            {
                throw new MeshException("Two lines of the flat pattern cross: its contours must not cut each other.");
            }

            crossed.Enqueue((Corner(t, crossing), Corner(t, (crossing + 1) % 3)));
            int u = Neighbour(t, crossing), j = EdgeFrom(u, Corner(t, (crossing + 1) % 3)), apex = Corner(u, (j + 2) % 3);
            var side = GridPoint.Orient(pa, pb, Point(apex));
            if (apex == b || side == 0)
            {
                return (crossed, apex);
            }

            // The line leaves u through the edge whose ends lie on either side of it.
            crossing = side > 0 ? (j + 1) % 3 : (j + 2) % 3;
            t = u;
        }
    }

    private List<(int, int)> FlipAway(Queue<(int A, int B)> crossed, int a, int b)
    {
        GridPoint pa = Point(a), pb = Point(b);
        var made = new List<(int, int)>();
        for (var guard = 0; crossed.TryDequeue(out var pair); guard++)
        {
            if (guard > 1_000_000)
            {
                throw new MeshException("The mesher lost a line of the flat pattern.");
            }

            FindEdge(pair.A, pair.B, out var t, out var i);
            int u = Neighbour(t, i), c = Corner(t, (i + 2) % 3), d = Corner(u, (EdgeFrom(u, Corner(t, (i + 1) % 3)) + 2) % 3);
            int e0 = Corner(t, i), e1 = Corner(t, (i + 1) % 3);
            var convex = GridPoint.Orient(Point(c), Point(e0), Point(d)) > 0 && GridPoint.Orient(Point(d), Point(e1), Point(c)) > 0;
            if (!convex)
            {
                crossed.Enqueue(pair);
                continue;
            }

            Flip(t, i);
            var crosses = c != a && c != b && d != a && d != b
                && Math.Sign(GridPoint.Orient(pa, pb, Point(c))) * Math.Sign(GridPoint.Orient(pa, pb, Point(d))) < 0;
            if (crosses)
            {
                crossed.Enqueue((c, d));
            }
            else
            {
                made.Add((c, d));
            }
        }

        return made;
    }

    // Delaunay again, for edges turned while a line was put in.
    private void Restore(List<(int A, int B)> edges)
    {
        var queue = new Queue<(int A, int B)>(edges);
        for (var guard = 0; queue.TryDequeue(out var pair) && guard < 1_000_000; guard++)
        {
            if (!FindEdge(pair.A, pair.B, out var t, out var i) || Kind(t, i) != EdgeKind.Free || Neighbour(t, i) < 0)
            {
                continue;
            }

            var u = Neighbour(t, i);
            int a = Corner(t, i), b = Corner(t, (i + 1) % 3), c = Corner(t, (i + 2) % 3), d = Corner(u, (EdgeFrom(u, b) + 2) % 3);
            if (GridPoint.InCircle(Point(a), Point(b), Point(c), Point(d)) > 0)
            {
                Flip(t, i);
                queue.Enqueue((a, c));
                queue.Enqueue((c, b));
                queue.Enqueue((b, d));
                queue.Enqueue((d, a));
            }
        }
    }

    private void Legalise()
    {
        while (_toCheck.TryPop(out var t))
        {
            Touched.Add(t);
            var u = Neighbour(t, 0);
            if (u < 0 || Kind(t, 0) != EdgeKind.Free)
            {
                continue;
            }

            var d = Corner(u, (EdgeFrom(u, Corner(t, 1)) + 2) % 3);
            if (GridPoint.InCircle(Point(Corner(t, 0)), Point(Corner(t, 1)), Point(Corner(t, 2)), Point(d)) > 0)
            {
                Flip(t, 0);
                _toCheck.Push(t);
                _toCheck.Push(u);
            }
        }
    }

    // Edge i of t from a to b, apex c, and u beyond with apex d become (a, d, c) and (d, b, c).
    private void Flip(int t, int i)
    {
        var u = Neighbour(t, i);
        int a = Corner(t, i), b = Corner(t, (i + 1) % 3), c = Corner(t, (i + 2) % 3);
        var j = EdgeFrom(u, b);
        var d = Corner(u, (j + 2) % 3);
        var (bc, bcKind, ca, caKind) = (Neighbour(t, (i + 1) % 3), Kind(t, (i + 1) % 3), Neighbour(t, (i + 2) % 3), Kind(t, (i + 2) % 3));
        var (ad, adKind, db, dbKind) = (Neighbour(u, (j + 1) % 3), Kind(u, (j + 1) % 3), Neighbour(u, (j + 2) % 3), Kind(u, (j + 2) % 3));
        SetCorners(t, a, d, c);
        SetCorners(u, d, b, c);
        Link(t, 0, ad, adKind);
        Link(t, 2, ca, caKind);
        Link(u, 0, db, dbKind);
        Link(u, 1, bc, bcKind);
        Link(t, 1, u, EdgeKind.Free);
    }

    private static bool Ahead(GridPoint a, GridPoint b, GridPoint c) =>
        ((long)b.X - a.X) * ((long)c.X - a.X) + ((long)b.Y - a.Y) * ((long)c.Y - a.Y) > 0;

    /// <summary>Finds the triangle in which the edge runs from <paramref name="a"/> to <paramref name="b"/>.</summary>
    public bool FindEdge(int a, int b, out int t, out int edge)
    {
        var start = _triangleAt[a];
        t = start;
        do
        {
            edge = IndexOf(t, a);
            if (Corner(t, (edge + 1) % 3) == b)
            {
                return true;
            }

            t = Neighbour(t, (edge + 2) % 3);
        }
        while (t != start && t >= 0);

        edge = -1;
        return false;
    }

    private int IndexOf(int t, int point) => Corner(t, 0) == point ? 0 : Corner(t, 1) == point ? 1 : 2;

    private int EdgeFrom(int t, int point) => IndexOf(t, point);

    private int AddPoint(GridPoint p)
    {
        _points.Add(p);
        _triangleAt.Add(-1);
        return _points.Count - 1;
    }

    private int AddTriangle(int a, int b, int c)
    {
        var t = _inside.Count;
        _corners.AddRange([0, 0, 0]);
        _neighbours.AddRange([-1, -1, -1]);
        _kinds.AddRange([EdgeKind.Free, EdgeKind.Free, EdgeKind.Free]);
        _inside.Add(false);
        SetCorners(t, a, b, c);
        return t;
    }

    private void SetCorners(int t, int a, int b, int c)
    {
        _corners[3 * t] = a;
        _corners[3 * t + 1] = b;
        _corners[3 * t + 2] = c;
        _triangleAt[a] = _triangleAt[b] = _triangleAt[c] = t;
        Touched.Add(t);
    }

    // Joins edge i of t to u, both ways.
    private void Link(int t, int i, int u, EdgeKind kind)
    {
        _neighbours[3 * t + i] = u;
        _kinds[3 * t + i] = kind;
        if (u >= 0)
        {
            var j = EdgeFrom(u, Corner(t, (i + 1) % 3));
            _neighbours[3 * u + j] = t;
            _kinds[3 * u + j] = kind;
        }
    }

    private void SetKind(int t, int i, EdgeKind kind)
    {
        // A line along a contour does not make it less of a border.
        if (Kind(t, i) < kind)
        {
            Link(t, i, Neighbour(t, i), kind);
        }
    }
}

/// <summary>What an edge of the triangulation represents.</summary>
internal enum EdgeKind : byte
{
    /// <summary>Nothing: it may be turned.</summary>
    Free,

    /// <summary>Part of a line that edges must follow, metal on both sides.</summary>
    Line,

    /// <summary>Part of a contour: metal on one side.</summary>
    Border,
}
