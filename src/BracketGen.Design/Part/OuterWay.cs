using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Part;

/// <summary>The outer's way from the stop to the bulkhead, where the job says where that is.</summary>
public static class OuterWay
{
    /// <summary>The shortest way with the outer's minimum bend radius; null where there is none, or the job gives no bulkhead.</summary>
    /// <param name="job">The job.</param>
    /// <param name="placement">Where the stop is, in the job's frame.</param>
    public static OuterRoute? Tightest(Job job, StopPlacement placement) => job.Bulkhead is { } bulkhead
        ? OuterRoute.Shortest(
            placement.Seat.Vector, placement.Direction, bulkhead.Point.Vector, -bulkhead.Direction, job.Vehicle.Cable.MinBendRadius)
        : null;

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
