using BracketGen.Geometry;

namespace BracketGen.Strength.Meshing;

/// <summary>The edge length wanted at each point of the flat pattern.</summary>
internal sealed class SizeField
{
    // Twelve edges round a hole, three round a quarter fillet.
    private const double AnglePerEdge = Math.PI / 6;

    private readonly double _size;
    private readonly double _growth;
    private readonly List<Source> _sources = [];

    public SizeField(MeshRequest request)
    {
        _size = request.Size;
        _growth = request.Growth;
        foreach (var segment in request.Region.Outline.Segments)
        {
            Add(segment, request.Size);
        }

        foreach (var segment in request.Region.Holes.SelectMany(h => h.Segments))
        {
            Add(segment, request.HoleSize);
        }

        foreach (var line in request.Lines)
        {
            Add(line.Line, line.Size);
        }
    }

    /// <summary>Edge length wanted at <paramref name="point"/> (mm).</summary>
    public double At(Vector2 point)
    {
        var size = _size;
        foreach (var source in _sources)
        {
            if (source.Size + _growth * source.AtLeast(point) < size)
            {
                size = Math.Min(size, source.Size + _growth * source.DistanceTo(point));
            }
        }

        return size;
    }

    private void Add(Segment segment, double size)
    {
        if (segment is ArcSegment arc)
        {
            size = Math.Min(size, AnglePerEdge * arc.Radius);
        }

        if (size < _size)
        {
            _sources.Add(new(segment, size));
        }
    }

    // A line with what its distance needs worked out beforehand: it is called a million times, so no angles.
    private sealed class Source
    {
        private readonly Bounds _bounds;
        private readonly Vector2 _start;
        private readonly Vector2 _end;
        private readonly Vector2 _along;
        private readonly Vector2 _centre;
        private readonly Vector2 _middle;
        private readonly double _radius;
        private readonly double _cosHalf;

        public Source(Segment line, double size)
        {
            Size = size;
            _bounds = line.Bounds;
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

        public double Size { get; }

        // From the upright rectangle around it: never more than the distance.
        public double AtLeast(Vector2 p) => Math.Max(
            Math.Max(_bounds.Min.X - p.X, p.X - _bounds.Max.X), Math.Max(0, Math.Max(_bounds.Min.Y - p.Y, p.Y - _bounds.Max.Y)));

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
