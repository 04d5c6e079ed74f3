using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Tooling;

namespace BracketGen.SheetMetal.Forming;

/// <summary>Finds what a bend can be placed by: a straight edge, a flange that stands, two points, or a scribed line.</summary>
internal sealed class GaugeSearch
{
    private readonly FlatPattern _flat;
    private readonly PartSlabs _part;
    private readonly Bend _bend;
    private readonly PressBrake _press;
    private readonly double _nearest;
    private readonly Func<ConvexBody, bool> _isClear;

    // What lies in the sheet's plane on the side of the gauge, as straight pieces: behind the bend, and along it (mm).
    private readonly List<(Vector2 A, Vector2 B)> _metal = [];
    private readonly List<Segment> _edges = [];

    private (double Distance, bool IsClear) _bar = (double.NaN, false);

    /// <summary>Prepares the search for one bend.</summary>
    /// <param name="flat">The flat pattern.</param>
    /// <param name="outlines">The outline of each flange.</param>
    /// <param name="part">The part under the tools.</param>
    /// <param name="bend">The bend.</param>
    /// <param name="made">Which bends are made.</param>
    /// <param name="press">The press.</param>
    /// <param name="die">The die.</param>
    /// <param name="isClear">Whether the part stays clear of a finger.</param>
    public GaugeSearch(
        FlatPattern flat, Contour[] outlines, PartSlabs part, Bend bend, bool[] made, PressBrake press, PressBrakeDie die, Func<ConvexBody, bool> isClear)
    {
        (_flat, _part, _bend, _press, _isClear) = (flat, part, bend, press, isClear);
        _nearest = Math.Max(press.GaugeMin, press.FingerDepth > 0 ? die.BodyWidth / 2 : 0);
        for (var i = 0; i < outlines.Length; i++)
        {
            if (part.IsAtGauge(i) && part.IsLeg(i))
            {
                var outline = outlines[i].Flatten(ChordError);
                for (var k = 0; k < outline.Length; k++)
                {
                    _metal.Add((part.InMachine(outline[k]), part.InMachine(outline[(k + 1) % outline.Length])));
                }

                _edges.AddRange(outlines[i].Segments.Where(s => !IsInside(s)));
            }
        }

        foreach (var b in flat.Bends.Where(b => b != bend && !made[b.To - 1] && part.IsAtGauge(b.From) && part.IsLeg(b.From)))
        {
            var across = b.Allowance * b.Across;
            _metal.Add((part.InMachine(b.Start.Vector), part.InMachine((b.Start + across).Vector)));
            _metal.Add((part.InMachine(b.End.Vector), part.InMachine((b.End + across).Vector)));
        }

        Made = made;
    }

    private bool[] Made { get; }

    /// <summary>The best of what there is.</summary>
    public BackGauge Best() => Edge() ?? Flange() ?? TwoPoints() ?? new(GaugeKind.ScribedLine, [], _bend.Length);

    private BackGauge? Edge()
    {
        BackGauge? best = null;
        var straight = new List<(double Distance, double From, double To)>();
        foreach (var segment in _edges)
        {
            if (segment is not LineSegment)
            {
                continue;
            }

            Vector2 a = _part.InMachine(segment.Start), b = _part.InMachine(segment.End);
            if (Math.Abs(a.X - b.X) < ParallelTo * a.DistanceTo(b) && FacesGauge(segment))
            {
                straight.Add((Math.Max(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.Y, b.Y)));
            }
        }

        foreach (var (distance, from, to) in straight)
        {
            Take(Fingers(distance, from, to));
            foreach (var other in straight.Where(o => Math.Abs(o.Distance - distance) < Touching && o.From > to))
            {
                Take(OverSlot((distance, from, to), other));
            }
        }

        return best;

        void Take(BackGauge? found) => best = found is not null && (best is null || found.Span > best.Span) ? found : best;
    }

    // Two fingers against two pieces of one edge, with the mouth of a slot between them.
    private BackGauge? OverSlot((double Distance, double From, double To) left, (double Distance, double From, double To) right)
    {
        double width = _press.FingerWidth, span = right.To - left.From, middle = (left.To + right.From) / 2;
        if (Math.Min(left.To - left.From, right.To - right.From) < LeastPiece - Tolerance.OnLimit || span < width || !InRange(left.Distance))
        {
            return null;
        }

        double one = Math.Min((left.From + left.To) / 2, middle - width / 2), other = Math.Max((right.From + right.To) / 2, middle + width / 2);
        return IsFree(left.Distance, one) && IsFree(left.Distance, other)
            ? new(GaugeKind.Edge, [new(left.Distance, one), new(left.Distance, other)], span)
            : null;
    }

    private BackGauge? Flange()
    {
        BackGauge? best = null;
        foreach (var b in _flat.Bends)
        {
            // Both are bent to the same side, so that it stands up; square, so that it meets the fingers flat.
            if (b == _bend || !Made[b.To - 1] || b.IsUp != _bend.IsUp || Math.Abs(b.Turn.Magnitude.Degrees - 90) > SquareTo)
            {
                continue;
            }

            foreach (var (leg, edge) in new[] { (b.From, 0.0), (b.To, b.Allowance) })
            {
                if (!_part.IsAtGauge(leg) || !_part.IsLeg(leg))
                {
                    continue;
                }

                Vector2 start = _part.InMachine((b.Start + edge * b.Across).Vector), end = _part.InMachine((b.End + edge * b.Across).Vector);
                var face = Math.Max(start.X, end.X) + b.InsideRadius + _flat.Thickness;
                if (Math.Abs(start.X - end.X) < ParallelTo * b.Length && Fingers(face, start.Y, end.Y) is { } found && (best is null || found.Span > best.Span))
                {
                    best = found with { Kind = GaugeKind.Flange };
                }
            }
        }

        return best;
    }

    private BackGauge? TwoPoints()
    {
        var points = _edges.SelectMany(Summits).Where(p => InRange(p.X) && IsFree(p.X, p.Y)).OrderBy(p => p.Y).ToArray();
        if (points.Length < 2 || points[^1].Y - points[0].Y < _press.FingerWidth)
        {
            return null;
        }

        Vector2 left = points[0], right = points[^1];
        return new(GaugeKind.TwoPoints, [new(left.X, left.Y), new(right.X, right.Y)], right.Y - left.Y);
    }

    // Where an edge runs parallel to the bend and faces the gauge: the top of an arc, the middle of a straight piece.
    private IEnumerable<Vector2> Summits(Segment segment)
    {
        if (segment is ArcSegment { Sweep.Radians: > 0 } arc)
        {
            var way = OutWay();
            if (arc.FractionAt(way.Polar) <= 1)
            {
                yield return _part.InMachine(arc.Centre + arc.Radius * way);
            }
        }
        else if (segment is LineSegment && Math.Abs(segment.StartTangent.Dot(_bend.Across)) < ParallelTo && FacesGauge(segment))
        {
            yield return _part.InMachine(segment.PointAt(0.5));
        }
    }

    // Fingers against a straight face from one place to another along the bend: one at either end of what is free of it, or one.
    private BackGauge? Fingers(double distance, double one, double other)
    {
        double width = _press.FingerWidth, from = Math.Min(one, other), to = Math.Max(one, other);
        if (to - from < width - Tolerance.OnLimit || !InRange(distance))
        {
            return null;
        }

        var steps = (int)Math.Ceiling((to - from - width) / (width / 4));
        double? first = null, last = null;
        for (var i = 0; i <= steps; i++)
        {
            var middle = from + width / 2 + (steps == 0 ? 0 : (to - from - width) * i / steps);
            if (IsFree(distance, middle))
            {
                first ??= middle;
                last = middle;
            }
        }

        return first is not { } left || last is not { } right ? null
            : right - left < width ? new(GaugeKind.Edge, [new(distance, (left + right) / 2)], right - left + width)
            : new(GaugeKind.Edge, [new(distance, left), new(distance, right)], right - left + width);
    }

    private bool InRange(double distance) => distance >= _nearest && distance <= _press.GaugeMax;

    // Whether a finger gets to a place from behind: no metal of the sheet's plane beyond it, and nothing that stands in its way.
    private bool IsFree(double distance, double along)
    {
        double from = along - _press.FingerWidth / 2, to = along + _press.FingerWidth / 2;
        foreach (var (a, b) in _metal)
        {
            double low = Math.Max(from, Math.Min(a.Y, b.Y)), high = Math.Min(to, Math.Max(a.Y, b.Y));
            if (low < high && Math.Max(Behind(a, b, low), Behind(a, b, high)) > distance + Touching)
            {
                return false;
            }
        }

        // Where a bar all along is clear, so is each finger.
        if (_bar.Distance != distance)
        {
            _bar = (distance, _isClear(Body(distance, null)));
        }

        return _bar.IsClear || _isClear(Body(distance, (from, to)));
    }

    private ConvexBody Body(double distance, (double, double)? along) => ConvexBody.Box(
        Obstruction.Clamp, Carrier.Machine, new(distance, -_press.FingerDepth), new(distance + FingerLength, _press.FingerHeight), along);

    private static double Behind(Vector2 a, Vector2 b, double along) =>
        b.Y == a.Y ? Math.Max(a.X, b.X) : a.X + (along - a.Y) / (b.Y - a.Y) * (b.X - a.X);

    // The way to the gauge, on the flat pattern.
    private Vector2 OutWay() => _part.IsAtGauge(_bend.To) ? _bend.Across : -_bend.Across;

    // With the metal on the left of travel, the outside is on the right.
    private bool FacesGauge(Segment segment) => (-segment.StartTangent.Left).Dot(OutWay()) > 0;

    // A side that a flange has in common with a bend is no edge of the blank.
    private bool IsInside(Segment segment) => segment is LineSegment && _flat.Bends.Any(b =>
        IsOn(b, segment.Start) && IsOn(b, segment.End));

    private static bool IsOn(Bend bend, Vector2 point)
    {
        var p = point - bend.Start.Vector;
        double across = p.Dot(bend.Across), along = p.Dot(bend.Along);
        return along > -Touching && along < bend.Length + Touching && (Math.Abs(across) < Touching || Math.Abs(across - bend.Allowance) < Touching);
    }

    private const double ChordError = 0.005;

    /// <summary>Minimum length (mm) of each of two pieces of one edge beside a slot (common practice, no source).</summary>
    public const double LeastPiece = 2;

    // Sine of the angle by which an edge may be off the bend's direction: 0.1 mm on 100 mm.
    private const double ParallelTo = 0.001;

    // Degrees by which a flange may be off square and still meets the fingers flat enough.
    private const double SquareTo = 0.5;

    // What lies nearer than this (mm) touches.
    private const double Touching = 0.02;

    // How far back a finger and what carries it reach (mm; common practice, no source).
    public const double FingerLength = 100;
}
