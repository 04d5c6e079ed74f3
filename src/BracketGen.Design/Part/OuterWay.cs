using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Part;

/// <summary>The outer's way from the stop to the bulkhead, where the job says where that is.</summary>
public static class OuterWay
{
    /// <summary>
    /// Bends of an outer of known length with the bulkhead at another place; null where the outer does not get there with its bends, or its length was not
    /// measured.
    /// </summary>
    /// <param name="cable">The cable.</param>
    /// <param name="placement">Where the stop is.</param>
    /// <param name="bulkhead">The bulkhead, in the frame of the stop.</param>
    public static Angle? Bends(Cable cable, StopPlacement placement, Bulkhead bulkhead) => cable.OuterLength is { } length
        ? OuterRoute.Fit(placement.Seat.Vector, placement.Direction, bulkhead.Point.Vector, bulkhead.Direction, cable.MinBendRadius, length).Route?.TotalBend
        : null;

    /// <summary>The shortest way with the outer's minimum bend radius; null where there is none, or the job gives no bulkhead.</summary>
    /// <param name="job">The job.</param>
    /// <param name="placement">Where the stop is, in the job's frame.</param>
    public static OuterRoute? Tightest(Job job, StopPlacement placement) => job.Bulkhead is { } bulkhead
        ? OuterRoute.Shortest(
            placement.Seat.Vector, placement.Direction, bulkhead.Point.Vector, -bulkhead.Direction, job.Vehicle.Cable.MinBendRadius)
        : null;

    /// <summary>Points along the outer's centre line, from the seat to the bulkhead, no two farther apart than <paramref name="step"/> (mm); empty where the line is not known.</summary>
    /// <param name="job">The job.</param>
    /// <param name="placement">Where the stop is, in the job's frame.</param>
    /// <param name="step">Step (mm).</param>
    public static ImmutableArray<ThrottlePoint> Line(Job job, StopPlacement placement, double step) => Of(job, placement)?.Route?.Points(step) is { } points ? [.. points.Select(p => new ThrottlePoint(p))] : [];

    /// <summary>
    /// The gentlest way for an outer of known length; the tightest for one that was not measured, nothing being said of what is
    /// left over. Null where the job gives no bulkhead.
    /// </summary>
    /// <param name="job">The job.</param>
    /// <param name="placement">Where the stop is, in the job's frame.</param>
    public static OuterFit? Of(Job job, StopPlacement placement)
    {
        if (job.Bulkhead is not { } bulkhead)
        {
            return null;
        }

        if (job.Vehicle.Cable.OuterLength is { } length)
        {
            return OuterRoute.Fit(
                placement.Seat.Vector, placement.Direction, bulkhead.Point.Vector, bulkhead.Direction, job.Vehicle.Cable.MinBendRadius, length);
        }

        var tightest = Tightest(job, placement);
        return new(tightest, double.NaN, tightest is null ? new EndsTooClose(job.Vehicle.Cable.MinBendRadius, placement.Seat.DistanceTo(bulkhead.Point)) : null);
    }
}
