using System.Runtime.InteropServices;
using BracketGen.Geometry;

namespace BracketGen.Strength.Meshing;

/// <summary>The edge length wanted at each point of the flat pattern.</summary>
internal sealed class SizeField
{
    private readonly double _size;
    private readonly double _growth;
    private readonly List<Source> _sources = [];
    private readonly List<Near> _near = [];

    public SizeField(MeshRequest request)
    {
        _size = request.Size;
        _growth = request.Growth;
        var (angle, fillet) = (request.AnglePerEdge, Math.Min(request.AnglePerEdge, request.FilletAnglePerEdge));
        foreach (var segment in request.Region.Outline.Segments)
        {
            // The outline runs counter-clockwise: a hollow arc turns the other way.
            Add(segment, request.Size, segment is ArcSegment { Sweep.Radians: < 0 } ? fillet : angle);
        }

        foreach (var segment in request.Region.Holes.SelectMany(h => h.Segments))
        {
            Add(segment, request.HoleSize, angle);
        }

        foreach (var line in request.Lines)
        {
            Add(line.Line, line.Size, angle);
        }

        foreach (var spot in request.Spots)
        {
            Add(new Source(spot.At.Vector), new(spot.At.Vector, spot.At.Vector), spot.Size);
        }
    }

    /// <summary>Edge length wanted at <paramref name="point"/> (mm).</summary>
    public double At(Vector2 point)
    {
        var size = _size;
        foreach (ref readonly var near in CollectionsMarshal.AsSpan(_near))
        {
            if (near.Size + _growth * near.AtLeast(point) < size)
            {
                size = Math.Min(size, near.Size + _growth * _sources[near.Number].DistanceTo(point));
            }
        }

        return size;
    }

    /// <summary>Whether <paramref name="length"/> is more than <paramref name="times"/> the edge length wanted at <paramref name="point"/>.</summary>
    /// <remarks>The first line that says so is enough, and it is asked far more often than <see cref="At"/>.</remarks>
    public bool IsMoreThan(double times, Vector2 point, double length)
    {
        if (length > times * _size)
        {
            return true;
        }

        foreach (ref readonly var near in CollectionsMarshal.AsSpan(_near))
        {
            if (length > times * (near.Size + _growth * near.AtLeast(point)))
            {
                if (length > times * (near.Size + _growth * _sources[near.Number].DistanceTo(point)))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private void Add(Segment segment, double size, double anglePerEdge)
    {
        if (segment is ArcSegment arc)
        {
            size = Math.Min(size, anglePerEdge * arc.Radius);
        }

        if (size < _size)
        {
            Add(new(segment), segment.Bounds, size);
        }
    }

    private void Add(Source source, Bounds bounds, double size)
    {
        _near.Add(new(size, bounds, _sources.Count));
        _sources.Add(source);
    }

    // What rules most lines out, close together in memory.
    private readonly record struct Near(double Size, Bounds Bounds, int Number)
    {
        private readonly double _left = Bounds.Min.X, _right = Bounds.Max.X, _low = Bounds.Min.Y, _high = Bounds.Max.Y;

        // From the upright rectangle around it: never more than the distance.
        public double AtLeast(Vector2 p) => Math.Max(Math.Max(_left - p.X, p.X - _right), Math.Max(0, Math.Max(_low - p.Y, p.Y - _high)));
    }

    // A line with what its distance needs worked out beforehand: it is called a million times, so no angles.
    private sealed class Source
    {
        private readonly Vector2 _start;
        private readonly Vector2 _end;
        private readonly Vector2 _along;
        private readonly Vector2 _centre;
        private readonly Vector2 _middle;
        private readonly double _radius;
        private readonly double _cosHalf;

        public Source(Segment line)
        {
            (_start, _end) = (line.Start, line.End);
            if (line is ArcSegment arc)
            {
                (_centre, _radius) = (arc.Centre, arc.Radius);
                _middle = (arc.PointAt(0.5) - arc.Centre) / arc.Radius;
                _cosHalf = arc.IsFullCircle ? -2 : Math.Cos(arc.Sweep.Radians / 2);
            }
            else
            {
                _along = (_end - _start) / (line.Length * line.Length);
            }
        }

        public Source(Vector2 point) => (_start, _end) = (point, point);

        public double DistanceTo(Vector2 p)
        {
            if (_radius > 0)
            {
                var out_ = p - _centre;
                var length = out_.Length;
                return out_.Dot(_middle) >= _cosHalf * length
                    ? Math.Abs(length - _radius)
                    : Math.Min(p.DistanceTo(_start), p.DistanceTo(_end));
            }

            var fraction = Math.Clamp((p - _start).Dot(_along), 0, 1);
            return p.DistanceTo(_start + fraction * (_end - _start));
        }
    }
}
