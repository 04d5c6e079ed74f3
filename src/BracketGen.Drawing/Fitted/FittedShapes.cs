using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Fitted;

/// <summary>Puts closed bodies together for a picture in lines: facets that hide, and edges that show.</summary>
/// <remarks>Throttle frame, mm.</remarks>
internal sealed class FittedShapes
{
    /// <summary>Sides of a large and of a small cylinder: the outline of the largest is off its circle by no more than a twentieth of a millimetre.</summary>
    private const int Sides = 96, FewSides = 32;

    /// <summary>Cylinders above this radius (mm) have many sides.</summary>
    private const double LargeRadius = 12;

    /// <summary>Two walls that meet at more than this (sine) meet in an edge, others in a round surface.</summary>
    private const double Corner = 0.3;

    /// <summary>The line in which two bodies meet is drawn this far (mm) outside.</summary>
    private const double Lift = 0.06;

    private readonly List<Vector3> _points = [];
    private readonly List<MeshTriangle> _triangles = [];
    private readonly List<(FittedThing Thing, MeshEdge Edge)> _edges = [];

    public IReadOnlyList<Vector3> Points => _points;

    public IReadOnlyList<MeshTriangle> Triangles => _triangles;

    public IReadOnlyList<(FittedThing Thing, MeshEdge Edge)> Edges => _edges;

    public void Add(FittedThing thing, FoldedMesh mesh)
    {
        var first = _points.Count;
        _points.AddRange(mesh.Vertices);
        _triangles.AddRange(mesh.Triangles.Select(t => new MeshTriangle(first + t.A, first + t.B, first + t.C)));
        _edges.AddRange(mesh.Edges.Select(e => (thing, e with { Points = [.. e.Points.Select(p => first + p)] })));
    }

    /// <summary>A cylinder, or a tube where it has a bore.</summary>
    public void Cylinder(FittedThing thing, Vector3 from, Vector3 to, double radius, double bore = 0)
    {
        var frame = FrameAlong(from, to);
        var height = from.DistanceTo(to);
        var sides = SidesOf(radius);
        Wall(thing, Round(radius, sides), frame, 0, height, radius);
        if (bore <= 0)
        {
            Lid(first: _points.Count - 2 * sides, sides);
            return;
        }

        // The bore's wall runs the other way round: its metal lies outside it.
        Wall(thing, [.. Round(bore, sides).Reverse()], frame, 0, height, bore);
        var (outside, inside) = (_points.Count - 4 * sides, _points.Count - 2 * sides);
        for (var i = 0; i < sides; i++)
        {
            int a = outside + i, b = outside + (i + 1) % sides, c = inside + sides - 1 - i, d = inside + (2 * sides - 2 - i) % sides;
            _triangles.Add(new(a, d, b));
            _triangles.Add(new(a, c, d));
            _triangles.Add(new(a + sides, b + sides, d + sides));
            _triangles.Add(new(a + sides, d + sides, c + sides));
        }
    }

    /// <summary>An outline, counter-clockwise and seen as a whole from its origin, drawn out from one height to another.</summary>
    public void Prism(FittedThing thing, IReadOnlyList<Vector2> outline, Frame frame, double low, double high)
    {
        Wall(thing, outline, frame, low, high, 0);
        var n = outline.Count;
        var first = _points.Count - 2 * n;
        _points.Add(frame.ToWorld(Vector2.Zero, low));
        _points.Add(frame.ToWorld(Vector2.Zero, high));
        for (var i = 0; i < n; i++)
        {
            int a = first + i, b = first + (i + 1) % n;
            _triangles.Add(new(first + 2 * n, b, a));
            _triangles.Add(new(first + 2 * n + 1, a + n, b + n));
        }
    }

    /// <summary>A regular hexagon between two points, by its width across flats.</summary>
    public void Hexagon(FittedThing thing, Vector3 from, Vector3 to, double acrossFlats) =>
        Prism(thing, Round(acrossFlats / Math.Sqrt(3), 6), FrameAlong(from, to), 0, from.DistanceTo(to));

    public void Box(FittedThing thing, Frame corner, Vector3 size)
    {
        var half = 0.5 * size;
        Prism(thing, [new(-half.X, -half.Y), new(half.X, -half.Y), new(half.X, half.Y), new(-half.X, half.Y)], corner.Shift(half), -half.Z, half.Z);
    }

    /// <summary>A round bar along a chain of points.</summary>
    public void Tube(FittedThing thing, IReadOnlyList<Vector3> points, double radius)
    {
        var across = FrameAlong(points[0], points[1]).X;
        var first = _points.Count;
        for (var k = 0; k < points.Count; k++)
        {
            var along = (points[Math.Min(k + 1, points.Count - 1)] - points[Math.Max(k - 1, 0)]).Unit;
            across = (across - across.Dot(along) * along).Unit; // Carried along without a twist.
            var frame = Frame.FromZX(points[k], along, across);
            _points.AddRange(Round(radius, FewSides).Select(p => frame.ToWorld(p)));
            if (k == 0 || k == points.Count - 1)
            {
                Ring(thing, first + k * FewSides, FewSides, points[k], along, radius);
            }
        }

        for (var k = 0; k + 1 < points.Count; k++)
        {
            Walls(thing, first + k * FewSides, first + (k + 1) * FewSides, FewSides);
        }

        var last = first + (points.Count - 1) * FewSides;
        for (var i = 1; i + 1 < FewSides; i++)
        {
            _triangles.Add(new(first, first + i + 1, first + i));
            _triangles.Add(new(last, last + i, last + i + 1));
        }
    }

    /// <summary>Lines along a chain of points that hide nothing.</summary>
    public void Chain(FittedThing thing, IEnumerable<Vector3> points)
    {
        var first = _points.Count;
        _points.AddRange(points);
        for (var i = first; i + 1 < _points.Count; i++)
        {
            Edge(thing, i, i + 1);
        }
    }

    /// <summary>The line in which a cylinder runs into a larger one, as far as it does.</summary>
    /// <param name="thing">What the line belongs to.</param>
    /// <param name="from">Where the cylinder begins.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="radius">Its radius.</param>
    /// <param name="into">The larger one's ends and radius.</param>
    public void Meeting(FittedThing thing, Vector3 from, Vector3 to, double radius, (Vector3 From, Vector3 To, double Radius) into)
    {
        var sides = SidesOf(radius);
        var frame = FrameAlong(from, to);
        var axis = (into.To - into.From).Unit;
        Vector3? last = null;
        foreach (var corner in Round(radius, sides).Append(new(radius, 0)))
        {
            var here = Entry(frame.ToWorld(corner), frame.Z, from.DistanceTo(to));
            if (last is { } a && here is { } b)
            {
                Chain(thing, [a, b]);
            }

            last = here;
        }

        // Square to the larger one's axis: |p + t d - its axis| = its radius, a little larger, so that its facets do not hide the line.
        Vector3? Entry(Vector3 start, Vector3 way, double length)
        {
            Vector3 off = start - into.From, p = off - off.Dot(axis) * axis, d = way - way.Dot(axis) * axis;
            double a = d.Dot(d), b = p.Dot(d), c = p.Dot(p) - (into.Radius + Lift) * (into.Radius + Lift), root = b * b - a * c;
            if (a < Tolerance.Direction || root < 0)
            {
                return null;
            }

            var t = (-b - Math.Sqrt(root)) / a;
            var height = (off + t * way).Dot(axis);
            return t >= 0 && t <= length && height >= 0 && height <= into.From.DistanceTo(into.To) ? start + t * way : null;
        }
    }

    /// <summary>A circle on a face.</summary>
    public void Circle(FittedThing thing, Vector3 centre, Vector3 axis, double radius)
    {
        var frame = FrameAlong(centre, centre + axis);
        var first = _points.Count;
        _points.AddRange(Round(radius, FewSides).Select(p => frame.ToWorld(p)));
        Ring(thing, first, FewSides, centre, frame.Z, radius);
    }

    /// <summary>Corners of a circle, counter-clockwise.</summary>
    public static Vector2[] Round(double radius, int sides) =>
        [.. Enumerable.Range(0, sides).Select(i => Vector2.FromPolar(radius, new(2 * Math.PI * i / sides)))];

    private static int SidesOf(double radius) => radius > LargeRadius ? Sides : FewSides;

    private static Frame FrameAlong(Vector3 from, Vector3 to)
    {
        var along = (to - from).Unit;
        return Frame.FromZX(from, along, Math.Abs(along.X) < 0.7 ? new(1, 0, 0) : new(0, 1, 0));
    }

    // With a radius the ends are circles, and no corner is one of the outline.
    private void Wall(FittedThing thing, IReadOnlyList<Vector2> outline, Frame frame, double low, double high, double radius)
    {
        var n = outline.Count;
        var first = _points.Count;
        _points.AddRange(outline.Select(p => frame.ToWorld(p, low)));
        _points.AddRange(outline.Select(p => frame.ToWorld(p, high)));
        Walls(thing, first, first + n, n);
        foreach (var (start, height) in new[] { (first, low), (first + n, high) })
        {
            if (radius > 0)
            {
                Ring(thing, start, n, frame.ToWorld(Vector2.Zero, height), frame.Z, radius);
                continue;
            }

            for (var i = 0; i < n; i++)
            {
                Edge(thing, start + i, start + (i + 1) % n);
            }
        }
    }

    private void Walls(FittedThing thing, int low, int high, int n)
    {
        Vector3 Normal(int i)
        {
            int a = i % n, b = (i + 1) % n;
            return (_points[low + b] - _points[low + a]).Cross(_points[high + a] - _points[low + a]).Unit;
        }

        var before = Normal(n - 1);
        for (var i = 0; i < n; i++)
        {
            int a = low + i, b = low + (i + 1) % n, c = high + (i + 1) % n, d = high + i;
            _triangles.Add(new(a, b, c));
            _triangles.Add(new(a, c, d));
            var after = Normal(i);
            _edges.Add((thing, before.Cross(after).Length > Corner ? new([a, d], MeshEdgeKind.Sharp) : new([a, d], MeshEdgeKind.Smooth, before, after)));
            before = after;
        }
    }

    private void Lid(int first, int n)
    {
        for (var i = 1; i + 1 < n; i++)
        {
            _triangles.Add(new(first, first + i + 1, first + i));
            _triangles.Add(new(first + n, first + n + i, first + n + i + 1));
        }
    }

    private void Ring(FittedThing thing, int first, int n, Vector3 centre, Vector3 axis, double radius) => _edges.Add((
        thing, new([.. Enumerable.Range(0, n + 1).Select(i => first + i % n)], MeshEdgeKind.Sharp, Circle: new(centre, axis, radius))));

    private void Edge(FittedThing thing, int a, int b) => _edges.Add((thing, new([a, b], MeshEdgeKind.Sharp)));
}
