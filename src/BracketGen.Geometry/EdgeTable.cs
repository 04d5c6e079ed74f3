using System.Collections.Immutable;

namespace BracketGen.Geometry;

/// <summary>The segments of a contour arranged for the two most frequent questions: how far, and inside or outside?</summary>
/// <remarks>Lengths in mm.</remarks>
internal sealed class EdgeTable
{
    private readonly Edge[] _edges;

    public EdgeTable(ImmutableArray<Segment> segments)
    {
        _edges = new Edge[segments.Length];
        for (var i = 0; i < _edges.Length; i++)
        {
            _edges[i] = new(segments[i], segments[(i + 1) % segments.Length].Start);
        }
    }

    /// <summary>Distance from a point to the nearest edge.</summary>
    public double DistanceTo(Vector2 point)
    {
        double square = double.PositiveInfinity, round = double.PositiveInfinity;
        foreach (ref readonly var edge in _edges.AsSpan())
        {
            if (edge.Arc is { } arc)
            {
                // Whether it passes the point is asked only where its whole circle is nearer than what was found.
                if (Math.Abs(point.DistanceTo(arc.Centre) - arc.Radius) < round)
                {
                    round = Math.Min(round, arc.DistanceTo(point));
                }
            }
            else
            {
                square = Math.Min(square, edge.SquareToLine(point));
            }
        }

        return Math.Min(Math.Sqrt(square), round);
    }

    /// <summary>Whether a point lies inside (winding number not zero); either answer on the line itself.</summary>
    /// <remarks>
    /// The winding number of the polygon through the joins, counted where its edges cross the ray from the point along x, and one turn
    /// more or less for each arc between whose chord and bow the point lies. The side of the chord is computed once for
    /// both, so that they agree on a point on a chord.
    /// </remarks>
    public bool Contains(Vector2 point)
    {
        var winding = 0;
        foreach (ref readonly var edge in _edges.AsSpan())
        {
            winding += edge.Turns(point);
        }

        return winding != 0;
    }

    private readonly struct Edge
    {
        private readonly Vector2 _start, _next, _along;
        private readonly double _share;

        public Edge(Segment segment, Vector2 next)
        {
            (_start, _next, _along) = (segment.Start, next, segment.End - segment.Start);
            _share = 1 / _along.Dot(_along);
            Arc = segment as ArcSegment;
        }

        /// <summary>The arc; null of a line.</summary>
        public ArcSegment? Arc { get; }

        public double SquareToLine(Vector2 point)
        {
            var from = point - _start;
            var rest = from - Math.Clamp(from.Dot(_along) * _share, 0, 1) * _along;
            return rest.Dot(rest);
        }

        public int Turns(Vector2 point)
        {
            var side = (_next - _start).Cross(point - _start);
            var turns = _start.Y <= point.Y
                ? _next.Y > point.Y && side > 0 ? 1 : 0
                : _next.Y <= point.Y && side < 0 ? -1 : 0;
            return Arc is { } arc && point.DistanceTo(arc.Centre) < arc.Radius ? turns + TurnsRoundBow(arc, side) : turns;
        }

        // A bow travelled counter-clockwise lies to the right of its chord. On the chord, the answer is that of the side on which the chord's own
        // crossing was counted.
        private int TurnsRoundBow(ArcSegment arc, double side)
        {
            var rises = _next.Y > _start.Y || (_next.Y == _start.Y && _next.X < _start.X);
            return arc.Sweep.Radians > 0
                ? arc.IsFullCircle || side < 0 || (side == 0 && rises) ? 1 : 0
                : arc.IsFullCircle || side > 0 || (side == 0 && !rises) ? -1 : 0;
        }
    }
}
