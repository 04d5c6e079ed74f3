using System.Collections.Immutable;

namespace BracketGen.Geometry;

/// <summary>The path of the centre of a disc that rolls along a contour on its right: the contour offset by the disc's radius.</summary>
/// <param name="Path">The path, travelled like the contour; null if the disc cannot get round.</param>
/// <param name="Tight">Inside corners (mm) that the disc cannot reach into: it leaves them rounded to its own radius.</param>
/// <param name="Stuck">Where the disc cannot get through (mm); null if it gets round.</param>
public sealed record RollingDisc(Contour? Path, ImmutableArray<Vector2> Tight, Vector2? Stuck)
{
    /// <summary>Ends nearer than this (mm) are joined as they are: half of what a contour takes for one point.</summary>
    private const double Joined = Tolerance.Point / 2;

    /// <summary>Rolls a disc of <paramref name="radius"/> (mm, positive) along <paramref name="contour"/>.</summary>
    /// <remarks>
    /// Exact: lines stay lines and arcs arcs about the same centres. About an outside corner the centre runs an arc. In an inside
    /// corner, and in a hollow rounded tighter than the disc, the disc touches both sides at once. If more than that must be
    /// left out, the disc is stuck: a slot or a neck narrower than the disc, a hole no larger than it.
    /// </remarks>
    /// <exception cref="ArgumentException">The radius is not positive.</exception>
    public static RollingDisc Along(Contour contour, double radius)
    {
        if (!(radius > 0) || !double.IsFinite(radius))
        {
            throw new ArgumentException($"A disc needs a positive radius, not {radius}.", nameof(radius));
        }

        var sides = contour.Segments.Select(s => new Side(s, OffsetOf(s, radius))).ToArray();
        var kept = Enumerable.Range(0, sides.Length).Where(i => sides[i].Offset is not null).ToArray();
        if (kept.Length == 0)
        {
            return StuckAt(contour.Bounds.Centre);
        }

        if (sides is [{ Offset: ArcSegment { IsFullCircle: true } circle }])
        {
            return new(new([circle]), [], null);
        }

        var joints = new Joints(kept.Length);
        for (var k = 0; k < kept.Length; k++)
        {
            if (Join(sides, kept, k, radius, joints) is { } narrow)
            {
                return StuckAt(narrow);
            }
        }

        List<Segment> path = [];
        for (var k = 0; k < kept.Length; k++)
        {
            var offset = sides[kept[k]].Offset!;
            var (start, end) = (joints.Starts[k], joints.Ends[k]);
            if ((end - start) * offset.Length <= Tolerance.Point)
            {
                return StuckAt(sides[kept[k]].Own.PointAt(0.5));
            }

            path.Add(start == 0 && end == 1 ? offset : offset.Part(start, end));
            if (joints.Corners[k] is { } round)
            {
                path.Add(round);
            }
        }

        return FirstFault(path, contour, radius) is { } fault ? StuckAt(fault) : new(new(path), [.. joints.Tight], null);
    }

    /// <inheritdoc/>
    public bool Equals(RollingDisc? other) =>
        other is not null && Equals(Path, other.Path) && Tight.SequenceEqual(other.Tight) && Stuck == other.Stuck;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Path, Tight.Length, Stuck);

    private static RollingDisc StuckAt(Vector2 place) => new(null, [], place);

    /// <summary>Joins the offset of the <paramref name="k"/>th side kept to the next one's. Where the disc is stuck (mm), if it is.</summary>
    private static Vector2? Join(Side[] sides, int[] kept, int k, double radius, Joints joints)
    {
        var next = (k + 1) % kept.Length;
        Side before = sides[kept[k]], after = sides[kept[next]];
        Segment a = before.Offset!, b = after.Offset!;
        if (a.End.DistanceTo(b.Start) <= Joined)
        {
            return null;
        }

        var between = (kept[next] - kept[k] - 1 + sides.Length) % sides.Length;
        var corner = between == 0
            ? before.Own.End
            : sides[(kept[k] + 1 + between / 2) % sides.Length].Own.PointAt(0.5);
        if (between == 0 && a.EndTangent.Cross(b.StartTangent) > 0)
        {
            Angle from = (a.End - corner).Polar, to = (b.Start - corner).Polar;
            joints.Corners[k] = new ArcSegment(corner, radius, from, (to - from).Normalised.Magnitude);
            return null;
        }

        if (Meeting(a, b) is not { } meeting)
        {
            return corner;
        }

        (joints.Ends[k], joints.Starts[next]) = meeting;
        joints.Tight.Add(corner);
        return null;
    }

    /// <summary>The segment moved to its right; null if nothing is left of a hollow arc.</summary>
    private static Segment? OffsetOf(Segment segment, double right)
    {
        if (segment is not ArcSegment arc)
        {
            return segment.Shift(-right * segment.StartTangent.Left);
        }

        var radius = arc.Radius + Math.Sign(arc.Sweep.Radians) * right;
        return radius > Tolerance.Point ? new ArcSegment(arc.Centre, radius, arc.From, arc.Sweep) : null;
    }

    /// <summary>Where one piece ends and the next begins when they are cut off where they cross, as fractions of either.</summary>
    private static (double End, double Start)? Meeting(Segment a, Segment b)
    {
        var crossings = Curve.Of(a).Meet(Curve.Of(b))
            .Select(p => (End: Curve.FractionNearest(a, p), Start: Curve.FractionNearest(b, p)))
            .Where(c => c.End is > 0 and <= 1 && c.Start is >= 0 and < 1)
            .ToList();
        return crossings.Count == 0 ? null : crossings.MinBy(c => (1 - c.End) * a.Length + c.Start * b.Length);
    }

    /// <summary>
    /// Where the path crosses or touches itself, or comes nearer to the contour than it should. An offset that does neither
    /// is complete: anything that must be left out shows as a crossing.
    /// </summary>
    private static Vector2? FirstFault(List<Segment> path, Contour contour, double radius)
    {
        const double slack = 1e-6;
        foreach (var piece in path)
        {
            foreach (var fraction in (double[])[0.25, 0.5, 0.75])
            {
                var point = piece.PointAt(fraction);
                if (contour.DistanceTo(point) < radius - slack)
                {
                    return point;
                }
            }
        }

        for (var i = 0; i < path.Count; i++)
        {
            for (var j = i + 1; j < path.Count; j++)
            {
                if (Clash(path[i], path[j]) is { } clash)
                {
                    return clash;
                }
            }
        }

        return null;
    }

    private static Vector2? Clash(Segment a, Segment b)
    {
        Bounds near = a.Bounds.Grow(Tolerance.Point), other = b.Bounds;
        if (near.Max.X < other.Min.X || other.Max.X < near.Min.X || near.Max.Y < other.Min.Y || other.Max.Y < near.Min.Y)
        {
            return null;
        }

        // Neighbours share an end. Where they meet smoothly their crossing is ill-defined, but never by as much as this (mm).
        const double joint = 1e-3;
        bool IsJoint(Vector2 point) =>
            (point.DistanceTo(a.End) <= joint && point.DistanceTo(b.Start) <= joint)
            || (point.DistanceTo(a.Start) <= joint && point.DistanceTo(b.End) <= joint);
        foreach (var point in Curve.Of(a).Meet(Curve.Of(b)))
        {
            if (!IsJoint(point) && a.DistanceTo(point) <= Tolerance.Point && b.DistanceTo(point) <= Tolerance.Point)
            {
                return point;
            }
        }

        foreach (var point in (Vector2[])[a.Start, a.PointAt(0.5), a.End])
        {
            if (!IsJoint(point) && b.DistanceTo(point) <= Tolerance.Point)
            {
                return point;
            }
        }

        return null;
    }

    private readonly record struct Side(Segment Own, Segment? Offset);

    /// <summary>Where the offsets that are kept begin and end (fractions of each), the arcs between them, the corners out of the disc's reach.</summary>
    private sealed class Joints(int count)
    {
        public double[] Starts { get; } = new double[count];

        public double[] Ends { get; } = [.. Enumerable.Repeat(1.0, count)];

        public ArcSegment?[] Corners { get; } = new ArcSegment?[count];

        public List<Vector2> Tight { get; } = [];
    }
}
