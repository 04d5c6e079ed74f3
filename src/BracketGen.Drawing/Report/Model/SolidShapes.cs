using BracketGen.Geometry;

namespace BracketGen.Drawing.Report.Model;

/// <summary>Puts simple bodies together into one closed-surfaced part.</summary>
internal sealed class SolidShapes
{
    private readonly List<Vector3> _points = [];
    private readonly List<int> _triangles = [];
    private readonly List<int> _edges = [];

    public bool IsEmpty => _points.Count == 0;

    public IReadOnlyList<Vector3> Points => _points;

    public IReadOnlyList<int> Triangles => _triangles;

    /// <summary>A cylinder (or a prism of so many sides) with flat ends.</summary>
    public SolidShapes Cylinder(Vector3 from, Vector3 to, double radius, int sides = 24)
    {
        var frame = Frame.FromZX(from, to - from, Across(to - from));
        var height = from.DistanceTo(to);
        return Prism([.. Enumerable.Range(0, sides).Select(i => Vector2.FromPolar(radius, new(2 * Math.PI * i / sides)))], frame, 0, height);
    }

    /// <summary>An outline, counter-clockwise and seen as a whole from its origin, drawn out from one height to another.</summary>
    public SolidShapes Prism(IReadOnlyList<Vector2> outline, Frame frame, double low, double high)
    {
        var first = _points.Count;
        var n = outline.Count;
        _points.AddRange(outline.Select(p => frame.ToWorld(p, low)));
        _points.AddRange(outline.Select(p => frame.ToWorld(p, high)));
        _points.Add(frame.ToWorld(Vector2.Zero, low));
        _points.Add(frame.ToWorld(Vector2.Zero, high));
        for (var i = 0; i < n; i++)
        {
            int a = first + i, b = first + (i + 1) % n;
            _triangles.AddRange([a, b, b + n, a, b + n, a + n, first + 2 * n, b, a, first + 2 * n + 1, a + n, b + n]);
            _edges.AddRange([a, b, a + n, b + n]);
            var turn = outline[i] - outline[(i + n - 1) % n];
            if (Math.Abs(turn.Unit.Cross((outline[(i + 1) % n] - outline[i]).Unit)) > 0.5)
            {
                _edges.AddRange([a, a + n]);
            }
        }

        return this;
    }

    /// <summary>A round tube with flat ends: the space between two cylinders on one axis.</summary>
    public SolidShapes Ring(Vector3 from, Vector3 to, double outer, double inner, int sides = 40)
    {
        var first = _points.Count;
        var frame = Frame.FromZX(from, to - from, Across(to - from));
        foreach (var (radius, height) in new[] { (outer, 0), (outer, from.DistanceTo(to)), (inner, 0), (inner, from.DistanceTo(to)) })
        {
            _points.AddRange(Enumerable.Range(0, sides).Select(i => frame.ToWorld(Vector2.FromPolar(radius, new(2 * Math.PI * i / sides)), height)));
        }

        for (var i = 0; i < sides; i++)
        {
            var next = (i + 1) % sides;
            int At(int circle, int k) => first + circle * sides + k;
            foreach (var (low, high) in new[] { (0, 1), (3, 2), (2, 0), (1, 3) })
            {
                _triangles.AddRange([At(low, i), At(low, next), At(high, next), At(low, i), At(high, next), At(high, i)]);
            }

            _edges.AddRange(Enumerable.Range(0, 4).SelectMany(circle => (int[])[At(circle, i), At(circle, next)]));
        }

        return this;
    }

    /// <summary>A round post whose lower end follows another surface.</summary>
    /// <param name="top">Middle of its flat upper end.</param>
    /// <param name="up">Direction of the post, length one.</param>
    /// <param name="radius">Its radius (mm).</param>
    /// <param name="depth">How far below each point of the upper end the surface lies (mm).</param>
    /// <param name="sides">Sides of the prism that stands for it.</param>
    public SolidShapes Post(Vector3 top, Vector3 up, double radius, Func<Vector3, double> depth, int sides = 32)
    {
        var (first, frame) = (_points.Count, Frame.FromZX(top, up, Across(up)));
        List<Vector3> rim = [.. Enumerable.Range(0, sides).Select(i => frame.ToWorld(Vector2.FromPolar(radius, new(2 * Math.PI * i / sides))))];
        _points.AddRange(rim.Select(p => p - depth(p) * up));
        _points.AddRange(rim);
        _points.AddRange([top - depth(top) * up, top]);
        for (var i = 0; i < sides; i++)
        {
            int a = first + i, b = first + (i + 1) % sides, n = sides;
            _triangles.AddRange([a, b, b + n, a, b + n, a + n, first + 2 * n, b, a, first + 2 * n + 1, a + n, b + n]);
            _edges.AddRange([a, b, a + n, b + n]);
        }

        return this;
    }

    /// <summary>An upright box between two corners.</summary>
    public SolidShapes Box(Vector3 least, Vector3 most) => TiltedBox(Frame.Identity.Shift(least), most - least);

    /// <summary>A box at any angle.</summary>
    /// <param name="corner">One corner; the edges from it run along the frame's axes.</param>
    /// <param name="size">Lengths of these edges (mm).</param>
    public SolidShapes TiltedBox(Frame corner, Vector3 size)
    {
        var half = 0.5 * size;
        return Prism([new(-half.X, -half.Y), new(half.X, -half.Y), new(half.X, half.Y), new(-half.X, half.Y)], corner.Shift(half), -half.Z, half.Z);
    }

    /// <summary>A round bar along a chain of points.</summary>
    public SolidShapes Tube(IReadOnlyList<Vector3> points, double radius, int sides = 12)
    {
        var first = _points.Count;
        var across = Across(points[1] - points[0]);
        for (var k = 0; k < points.Count; k++)
        {
            var along = (points[Math.Min(k + 1, points.Count - 1)] - points[Math.Max(k - 1, 0)]).Unit;
            across = (across - across.Dot(along) * along).Unit; // Carried along without a twist.
            var other = along.Cross(across);
            _points.AddRange(Enumerable.Range(0, sides).Select(i => 2 * Math.PI * i / sides)
                .Select(a => points[k] + radius * (Math.Cos(a) * across + Math.Sin(a) * other)));
        }

        for (var k = 0; k + 1 < points.Count; k++)
        {
            for (var i = 0; i < sides; i++)
            {
                int a = first + k * sides + i, b = first + k * sides + (i + 1) % sides;
                _triangles.AddRange([a, b, b + sides, a, b + sides, a + sides]);
            }
        }

        foreach (var (start, way) in new[] { (first, -1), (first + (points.Count - 1) * sides, 1) })
        {
            for (var i = 1; i + 1 < sides; i++)
            {
                _triangles.AddRange(way > 0 ? [start, start + i, start + i + 1] : [start, start + i + 1, start + i]);
            }

            _edges.AddRange(Enumerable.Range(0, sides).SelectMany(i => (int[])[start + i, start + (i + 1) % sides]));
        }

        return this;
    }

    public SolidPart Part(string kind, bool turns = false) => Part(kind, _points, _triangles, _edges, turns);

    public static SolidPart Part(string kind, IEnumerable<Vector3> points, IEnumerable<int> triangles, IEnumerable<int> edges, bool turns) => new(
        kind, [.. points.SelectMany(p => (double[])[Short(p.X), Short(p.Y), Short(p.Z)])], [.. triangles], [.. edges], turns);

    /// <summary>To a hundredth of a millimetre: no screen shows more.</summary>
    public static double Short(double value) => Math.Round(value, 2) + 0.0;

    private static Vector3 Across(Vector3 along)
    {
        var unit = along.Unit;
        return Math.Abs(unit.X) < 0.7 ? new Vector3(1, 0, 0) - unit.X * unit : new Vector3(0, 1, 0) - unit.Y * unit;
    }
}
