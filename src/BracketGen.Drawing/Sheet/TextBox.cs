using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>The turned rectangle of a text, with the questions an audit asks of it.</summary>
internal sealed class TextBox
{
    private readonly Vector2[] _corners;
    private readonly Vector2 _along;
    private readonly Vector2 _up;
    private readonly double _width;
    private readonly double _height;

    /// <summary>The box of a text, pulled in by <paramref name="slack"/> (mm) on each side so that mere touching is no fault.</summary>
    public TextBox(TextItem text, double slack)
    {
        var corners = text.Corners;
        _along = Vector2.FromPolar(1, text.Direction);
        _up = _along.Left;
        _width = Math.Max((corners[1] - corners[0]).Length - 2 * slack, 0);
        _height = Math.Max((corners[3] - corners[0]).Length - 2 * slack, 0);
        var foot = corners[0] + slack * (_along + _up);
        _corners = [foot, foot + _width * _along, foot + _width * _along + _height * _up, foot + _height * _up];
        Bounds = Bounds.Around(_corners);
    }

    public Bounds Bounds { get; }

    /// <summary>Separating axes: two rectangles are apart where a side of one of them has the other wholly beyond it.</summary>
    public bool Overlaps(TextBox other) =>
        Bounds.Touches(other.Bounds) && !Separates(other) && !other.Separates(this);

    public bool IsCrossedBy(Segment segment)
    {
        if (!Bounds.Touches(segment.Bounds))
        {
            return false;
        }

        if (Contains(segment.Start) || Contains(segment.End))
        {
            return true;
        }

        for (var i = 0; i < 4; i++)
        {
            var edge = _corners[(i + 1) % 4] - _corners[i];
            var length = edge.Length;
            if (length > 0 && segment.CrossingsWithLine(_corners[i], edge / length).Any(c => c.Along >= 0 && c.Along <= length))
            {
                return true;
            }
        }

        return false;
    }

    public bool Contains(Vector2 point)
    {
        var from = point - _corners[0];
        double x = from.Dot(_along), y = from.Dot(_up);
        return x >= 0 && x <= _width && y >= 0 && y <= _height;
    }

    /// <summary>Whether the whole box lies in a convex polygon.</summary>
    public bool LiesIn(IReadOnlyList<Vector2> polygon)
    {
        var turn = Math.Sign(Enumerable.Range(0, polygon.Count).Sum(i => polygon[i].Cross(polygon[(i + 1) % polygon.Count])));
        return Enumerable.Range(0, polygon.Count).All(i =>
        {
            Vector2 a = polygon[i], side = polygon[(i + 1) % polygon.Count] - a;
            return _corners.All(c => turn * side.Cross(c - a) >= 0);
        });
    }

    private bool Separates(TextBox other)
    {
        var x = other._corners.Select(c => (c - _corners[0]).Dot(_along)).ToArray();
        var y = other._corners.Select(c => (c - _corners[0]).Dot(_up)).ToArray();
        return x.Max() < 0 || x.Min() > _width || y.Max() < 0 || y.Min() > _height;
    }
}
