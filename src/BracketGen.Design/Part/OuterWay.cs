using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Rods;

namespace BracketGen.Design.Part;

/// <summary>The outer's way from the stop to the bulkhead, where the job says where that is.</summary>
public static class OuterWay
{
    /// <summary>Bend that spare outer may add (our judgement, no source): at a friction of 0.16 it takes a fifth of the springs' pull.</summary>
    public static readonly Angle MostSpareBend = Angle.Right;

    /// <summary>The outer as an elastic rod at its length, with the bulkhead at another place; null where its length was not measured.</summary>
    /// <param name="cable">The cable.</param>
    /// <param name="placement">Where the stop is.</param>
    /// <param name="bulkhead">The bulkhead, in the frame of the stop.</param>
    /// <param name="near">How it lies with the bulkhead near by; null if that is not known.</param>
    public static ElasticLines? At(Cable cable, StopPlacement placement, Bulkhead bulkhead, ElasticLines? near) =>
        cable.OuterLength is { } length ? Lay(placement, bulkhead, length.Value, near) : null;

    /// <summary>The shortest way with the outer's minimum bend radius; null where there is none, or the job gives no bulkhead.</summary>
    /// <param name="job">The job.</param>
    /// <param name="placement">Where the stop is, in the job's frame.</param>
    public static OuterRoute? Tightest(Job job, StopPlacement placement) => job.Bulkhead is { } bulkhead
        ? OuterRoute.Shortest(
            placement.Seat.Vector, placement.Direction, bulkhead.Point.Vector, -bulkhead.Direction, job.Vehicle.Cable.MinBendRadius)
        : null;

    /// <summary>
    /// Points along the outer's centre line, from the seat to the bulkhead: the line with the most bends at the outer's length, the shortest
    /// route where the length was not given, no two farther apart than <paramref name="step"/> (mm) or a piece of the rod. Empty where the line is not known.
    /// </summary>
    /// <param name="job">The job.</param>
    /// <param name="placement">Where the stop is, in the job's frame.</param>
    /// <param name="step">Step (mm).</param>
    public static ImmutableArray<ThrottlePoint> Line(Job job, StopPlacement placement, double step)
    {
        if (job.Bulkhead is not { } bulkhead)
        {
            return [];
        }

        ImmutableArray<ElasticLines> lines = job.Vehicle.Cable.OuterLength is { } length ? [Lay(placement, bulkhead, length.Value)] : [];
        var fit = new OuterFit { Shortest = lines.IsEmpty || lines[0].IsTooShort ? Tightest(job, placement) : null, AtLengths = lines, Problem = null, Order = null };
        return fit.Points(step);
    }

    /// <summary>How the outer lies; null where the job gives no bulkhead.</summary>
    /// <param name="job">The job.</param>
    /// <param name="placement">Where the stop is, in the job's frame.</param>
    public static OuterFit? Of(Job job, StopPlacement placement)
    {
        if (job.Bulkhead is not { } bulkhead)
        {
            return null;
        }

        var cable = job.Vehicle.Cable;
        var tightest = Tightest(job, placement);
        ElasticLines At(double length) => Lay(placement, bulkhead, length);
        ImmutableArray<ElasticLines> lines = cable.OuterLength is { } length ? [.. Lengths(length).Select(At)] : [];
        var isShort = lines.Any(l => l.IsTooShort);
        return new()
        {
            Shortest = tightest,
            AtLengths = lines,
            Problem = tightest is null && (lines.IsEmpty || isShort) ? new EndsTooClose(cable.MinBendRadius, placement.Seat.DistanceTo(bulkhead.Point))
                : isShort ? new OuterTooShort(cable.MinBendRadius, Math.Max(tightest?.Length ?? 0, lines[0].Chord), lines.Min(l => l.Length))
                : null,
            Order = !lines.IsEmpty && lines.All(l => LiesWell(l, cable)) ? null : ToOrder(At, cable, tightest?.Length ?? 0),
        };
    }

    private static ElasticLines Lay(StopPlacement placement, Bulkhead bulkhead, double length, ElasticLines? near = null) => ElasticRod.Lay(
        new(placement.Seat.Vector, placement.Direction), [.. bulkhead.Clips.Select(c => new RodSupport(c.Point.Vector, c.Direction, c.Along))],
        new(bulkhead.Point.Vector, -bulkhead.Direction), length, near);

    private static IEnumerable<double> Lengths(Measured length) =>
        length.PlusMinus > 0 ? [length.Value, length.Min, length.Max] : [length.Value];

    private static bool LiesWell(ElasticLines lines, Cable cable) =>
        !lines.IsTooShort && !lines.IsTooLong && lines.MinRadius >= cable.MinBendRadius && lines.SpareBend <= MostSpareBend;

    // What an engine that moves in its mounts takes of the outer (mm; common practice, no source): a shorter outer would be pulled taut.
    private const double Room = 10;

    // Among the lengths on offer that lie well, and still do with the room taken off, the one with the fewest bends.
    private static double? ToOrder(Func<double, ElasticLines> at, Cable cable, double shortest)
    {
        const double step = 5, longest = 1.6, growth = 1.03;
        double? best = null;
        var fewest = double.PositiveInfinity;
        var from = Math.Max(shortest, at(Math.Max(1, shortest)).Chord);
        for (var length = from + Room; length < longest * from + 2 * step; length = Math.Max(length * growth, length + step))
        {
            var lines = at(step * Math.Ceiling(length / step));
            if (lines.MaxBend.Radians < fewest && LiesWell(lines, cable) && LiesWell(at(lines.Length - Room), cable))
            {
                (best, fewest) = (lines.Length, lines.MaxBend.Radians);
            }
            else if (best is not null)
            {
                break; // Past the fewest bends they only grow.
            }
        }

        return best;
    }
}
