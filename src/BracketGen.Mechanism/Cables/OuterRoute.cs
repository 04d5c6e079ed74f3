using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Numerics;

namespace BracketGen.Mechanism.Cables;

/// <summary>A route for the outer from the stop to the bulkhead: an arc, a straight line, an arc, both arcs of one radius.</summary>
/// <remarks>
/// L. E. Dubins (Amer. J. Math. 79 (1957) 497-516) showed that the shortest plane curve of bounded curvature with given ends and
/// directions is made of arcs and lines, arc-line-arc (CSC) when the ends are well apart; S. Hota and D. Ghose ("Optimal
/// geometrical path in 3D with curvature constraint", IROS 2010) find the same form in space by solving for the line's
/// direction u. An arc of angle α from d to u moves on by r tan(α/2) (d + u), so the line must run along
/// Q - P - r tan(α/2) (d + u) - r tan(γ/2) (u + e); that equation is solved here. Arcs of less than half a turn are tried
/// first; arcs up to three quarters only if those give no route. Among the starts are the routes in each plane that two of the directions span:
/// between ends in one plane none is missed, also where an arc is just past half a turn and two ways meet. A real outer takes the smoother shape of an elastic line; the route shows
/// whether its bend limit and length can be kept at all, and its total bend is the minimum that friction sees.
/// Lengths in mm, throttle frame.
/// </remarks>
public sealed record OuterRoute : IMirrored<OuterRoute>
{
    private OuterRoute()
    {
    }

    /// <summary>Where it begins: the seat of the outer end.</summary>
    public required Vector3 From { get; init; }

    /// <summary>Direction in which it begins, away from the quadrant, length one.</summary>
    public required Vector3 Leaving { get; init; }

    /// <summary>Where it ends: at the bulkhead.</summary>
    public required Vector3 To { get; init; }

    /// <summary>Direction in which it arrives, into the bulkhead, length one.</summary>
    public required Vector3 Arriving { get; init; }

    /// <summary>Direction of the straight part, length one.</summary>
    public required Vector3 Along { get; init; }

    // Axis of a half turn, whose plane is open: the same for both bends.
    private Vector3 HalfTurnAxis { get; init; }

    /// <summary>Radius of both bends.</summary>
    public required double Radius { get; init; }

    /// <summary>Length of the straight part, zero or more.</summary>
    public required double Straight { get; init; }

    /// <summary>Bend at the stop's end.</summary>
    public required Angle FirstBend { get; init; }

    /// <summary>Bend at the bulkhead's end.</summary>
    public required Angle LastBend { get; init; }

    /// <summary>Total bend angle: what the capstan formula takes.</summary>
    public Angle TotalBend => FirstBend + LastBend;

    /// <summary>Length of the route.</summary>
    public double Length => Straight + Radius * TotalBend.Radians;

    /// <summary>The shortest route with bends of the given <paramref name="radius"/>; null if there is none of this form.</summary>
    /// <param name="from">The seat of the outer end.</param>
    /// <param name="leaving">Direction in which the outer leaves the seat, away from the quadrant.</param>
    /// <param name="to">Where it meets the bulkhead.</param>
    /// <param name="arriving">Direction in which it goes into the bulkhead.</param>
    /// <param name="radius">Radius of the bends, positive.</param>
    public static OuterRoute? Shortest(Vector3 from, Vector3 leaving, Vector3 to, Vector3 arriving, double radius)
    {
        (leaving, arriving) = (leaving.Unit, arriving.Unit);
        var inPlane = PlaneRoutes.Of(from, leaving, to, arriving, radius);
        foreach (var ways in new[] { new[] { (false, false) }, [(true, false), (false, true), (true, true)] })
        {
            OuterRoute? best = null;
            foreach (var (first, last) in ways)
            {
                foreach (var start in inPlane.Where(p => p.LongFirst == first && p.LongLast == last).Select(p => p.Along).Concat(Starts(from, leaving, to, arriving)))
                {
                    if (Solve(from, leaving, first, to, arriving, last, radius, start) is { } route
                        && (best is null || route.Length < best.Length - Tolerance.OnLimit))
                    {
                        best = route;
                    }
                }
            }

            if (best is not null)
            {
                return best;
            }
        }

        return null;
    }

    /// <summary>The point and direction at a distance (mm) from the stop's seat.</summary>
    public (Vector3 Point, Vector3 Direction) At(double distance)
    {
        double first = Radius * FirstBend.Radians, second = first + Straight;
        var (corner, direction) = Turn(From, Leaving, Along, FirstBend, Math.Min(distance, first));
        if (distance <= first)
        {
            return (corner, direction);
        }

        return distance <= second
            ? (corner + (distance - first) * Along, Along)
            : Turn(corner + Straight * Along, Along, Arriving, LastBend, Math.Min(distance, Length) - second);
    }

    /// <summary>Points along the route, ends included, no two farther apart than <paramref name="step"/> (mm): for pictures.</summary>
    public ImmutableArray<Vector3> Points(double step)
    {
        var count = Math.Max(1, (int)Math.Ceiling(Length / step));
        return [.. Enumerable.Range(0, count + 1).Select(i => At(Length * i / count).Point)];
    }

    /// <inheritdoc/>
    public OuterRoute Mirrored() => this with
    {
        From = From.MirroredInY,
        Leaving = Leaving.MirroredInY,
        To = To.MirroredInY,
        Arriving = Arriving.MirroredInY,
        Along = Along.MirroredInY,
        HalfTurnAxis = -HalfTurnAxis.MirroredInY, // A turn's axis mirrors the other way round from a direction.
    };

    private (Vector3 Point, Vector3 Direction) Turn(Vector3 at, Vector3 from, Vector3 to, Angle bend, double distance)
    {
        if (!IsOpen(from, to) && from.Cross(to).Length < MechanismTolerance.OneLine)
        {
            return (at + distance * from, from);
        }

        var axis = IsOpen(from, to) ? HalfTurnAxis : (bend > Angle.Straight ? -1 : 1) * from.Cross(to).Unit;
        Angle turned = new(distance / Radius);
        var inward = axis.Cross(from);
        return (at + Radius * (inward - inward.Rotate(axis, turned)), from.Rotate(axis, turned));
    }

    // Any line square to the direction and to its opposite alike: with one axis for both, two half turns come back to their line.
    private static Vector3 AxisOfHalfTurn(Vector3 along)
    {
        var axis = along.Cross(Math.Abs(along.X) < 0.8 ? new(1, 0, 0) : new(0, 1, 0)).Unit;
        return axis.X < 0 || (axis.X == 0 && (axis.Y < 0 || (axis.Y == 0 && axis.Z < 0))) ? -axis : axis;
    }

    private static IEnumerable<Vector3> Starts(Vector3 from, Vector3 leaving, Vector3 to, Vector3 arriving)
    {
        var chord = to - from;
        if (chord.Length > Tolerance.OnLimit)
        {
            yield return chord.Unit;
        }

        for (var x = -1; x <= 1; x++)
        {
            for (var y = -1; y <= 1; y++)
            {
                for (var z = -1; z <= 1; z++)
                {
                    if ((x, y, z) != (0, 0, 0))
                    {
                        // Turned a little, so that no start is exactly opposite to a direction of a square-aligned vehicle.
                        yield return new Vector3(x, y, z).Unit.Rotate(new Vector3(0.6, 0.48, 0.64), new(0.35));
                    }
                }
            }
        }

        if ((leaving + arriving).Length > MechanismTolerance.NoStart)
        {
            yield return (leaving + arriving).Unit;
        }
    }

    /// <summary>Newton's method for the line's direction on the sphere, with halved steps where needed.</summary>
    private static OuterRoute? Solve(
        Vector3 from, Vector3 leaving, bool longFirst, Vector3 to, Vector3 arriving, bool longLast, double radius, Vector3 along)
    {
        Vector3 Gap(Vector3 u) => to - from - radius * (Chord(leaving, u, longFirst) + Chord(u, arriving, longLast));
        Vector3 Miss(Vector3 u)
        {
            // What is left for the straight part, across the line: zero on a solution.
            var gap = Gap(u);
            return gap - gap.Dot(u) * u;
        }

        // Change of what is left across the line as the line turns by `turned` (square to u), but for a part along u, which is not needed.
        Vector3 MissChange(Vector3 u, Vector3 gap, Vector3 turned) =>
            -radius * (ChordChange(leaving, u, longFirst, turned) + ChordChange(arriving, u, longLast, turned)) - gap.Dot(u) * turned;

        var scale = radius + from.DistanceTo(to);
        var miss = Miss(along);
        for (var step = 0; step < 30 && miss.Length > MechanismTolerance.RouteSolved * scale; step++)
        {
            var frame = Frame.FromZX(Vector3.Zero, along, Math.Abs(along.X) < 0.8 ? new(1, 0, 0) : new(0, 1, 0));
            Vector3 Moved(double a, double b) => (along + a * frame.X + b * frame.Y).Unit;
            var gap = Gap(along);
            Vector3 byA = MissChange(along, gap, frame.X), byB = MissChange(along, gap, frame.Y);
            if (NewtonStep(frame, miss, byA, byB, scale) is not (var a, var b))
            {
                return null;
            }

            var size = Math.Sqrt(a * a + b * b);
            var factor = Math.Min(1, 0.5 / size);
            var next = Moved(factor * a, factor * b);
            for (var half = 0; half < 12 && !(Miss(next).Length < miss.Length); half++)
            {
                factor /= 2;
                next = Moved(factor * a, factor * b);
            }

            var nextMiss = Miss(next);
            if (!(nextMiss.Length < miss.Length))
            {
                break;
            }

            (along, miss) = (next, nextMiss);
        }

        var straight = Gap(along).Dot(along);
        Angle first = Bend(leaving, along, longFirst), last = Bend(along, arriving, longLast);

        // An exact half turn leads two radii aside, in whatever plane: only another one, back again, compensates.
        var isClosed = IsOpen(leaving, along) == IsOpen(along, arriving);
        return isClosed && miss.Length < MechanismTolerance.RouteMissed * scale && straight >= -MechanismTolerance.RouteStraight * scale
            && first <= MostBend && last <= MostBend
            ? new()
            {
                From = from, Leaving = leaving, To = to, Arriving = arriving, Along = along, Radius = radius,
                FirstBend = first, LastBend = last, Straight = Math.Max(0, straight), HalfTurnAxis = AxisOfHalfTurn(along),
            }
            : null;
    }

    /// <summary>The turns about the two axes of the frame that take away the miss, as far as its changes say; null if they do not say.</summary>
    private static (double A, double B)? NewtonStep(Frame frame, Vector3 miss, Vector3 byA, Vector3 byB, double scale)
    {
        double a11 = byA.Dot(frame.X), a12 = byB.Dot(frame.X), a21 = byA.Dot(frame.Y), a22 = byB.Dot(frame.Y);
        double r1 = -miss.Dot(frame.X), r2 = -miss.Dot(frame.Y), det = a11 * a22 - a12 * a21;
        return Math.Abs(det) > MechanismTolerance.RouteSingular * scale * scale ? ((r1 * a22 - r2 * a12) / det, (a11 * r2 - a21 * r1) / det) : null;
    }

    private static readonly Angle MostBend = Angle.FromDegrees(270);

    // Whether two directions are opposite, so that the plane of the arc between them is not defined.
    private static bool IsOpen(Vector3 a, Vector3 b) => (a + b).Length <= MechanismTolerance.OneLine;

    private static Angle Bend(Vector3 a, Vector3 b, bool wayRound) => wayRound ? 2 * Angle.Straight - a.AngleTo(b) : a.AngleTo(b);

    /// <summary>tan(α/2) (a + b): from end to end of an arc of radius one; α the angle between them, or a whole turn less that.</summary>
    private static Vector3 Chord(Vector3 a, Vector3 b, bool wayRound)
    {
        // Written as 2 sin(α/2) along a + b, it stays finite up to opposite directions, where the arc's plane is open.
        var sum = a + b;
        return IsOpen(a, b) ? Vector3.Zero : (wayRound ? -1 : 1) * (b - a).Length / sum.Length * sum;
    }

    /// <summary>Change of <see cref="Chord"/> as <paramref name="u"/> turns by <paramref name="turned"/>, square to it.</summary>
    private static Vector3 ChordChange(Vector3 a, Vector3 u, bool wayRound, Vector3 turned)
    {
        // With c = a·u the chord is g (a + u), g = √((1 - c)/(1 + c)), g' = -1 / ((1 + c) √(1 - c²)). Near c = 1 the second part tends to
        // zero, because a·turned does; at c = -1 the arc's plane is open and there is none.
        double cosine = Math.Clamp(a.Dot(u), -1, 1), along = a.Dot(turned);
        double less = 1 - cosine, more = 1 + cosine;
        if (more < MechanismTolerance.Nothing)
        {
            return Vector3.Zero;
        }

        var change = Math.Sqrt(less / more) * turned;
        if (less > MechanismTolerance.Nothing)
        {
            change -= along / (more * Math.Sqrt(less * more)) * (a + u);
        }

        return wayRound ? -change : change;
    }
}

/// <summary>Why no route leads from the stop to the bulkhead.</summary>
/// <param name="Radius">Minimum bend radius of the outer (mm).</param>
public abstract record NoOuterRoute(double Radius);

/// <summary>The ends are too close together for their directions.</summary>
/// <param name="Radius">Minimum bend radius of the outer (mm).</param>
/// <param name="Apart">Distance between the ends (mm).</param>
public sealed record EndsTooClose(double Radius, double Apart) : NoOuterRoute(Radius);

/// <summary>The outer is shorter than any line it could take.</summary>
/// <param name="Radius">Minimum bend radius of the outer (mm).</param>
/// <param name="Needed">Length of the shortest route with that radius (mm).</param>
/// <param name="Length">Length of the outer (mm).</param>
public sealed record OuterTooShort(double Radius, double Needed, double Length) : NoOuterRoute(Radius);
