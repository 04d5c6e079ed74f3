using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Study;

/// <summary>What goes without saying of a bracket made for a job, and must be checked of one that was not.</summary>
public static class GivenChecks
{
    /// <summary>How far a stop may be off where there is no adjuster to make up for it (mm; common practice, no source).</summary>
    public const double WithoutAdjuster = 0.1;

    /// <summary>The checks.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="placed">The bracket in place on it.</param>
    /// <param name="placement">Where its seat is.</param>
    /// <param name="travel">The travel with the stop there.</param>
    public static IEnumerable<Check> Of(Job job, Bracket placed, StopPlacement placement, Travel travel)
    {
        var cable = job.Vehicle.Cable;
        yield return new(CheckId.SheetAllowed, CandidateSearch.StockAllowed(job).Contains(placed.Stock) ? 1 : 0, 1);
        var (worst, threads, metal) = Bolts(job.Body.Mount, placed);
        yield return new(CheckId.MountPattern, worst, MountMatch.MostOff);
        yield return new(CheckId.MountThreads, threads ? 1 : 0, 1);
        yield return new(CheckId.MountBosses, metal, 0);

        var opening = placed.Stop.Diameter;
        yield return new(CheckId.StopOpening, opening - placed.Seat.Opening, 0);
        yield return new(CheckId.StopPlay, opening - placed.Seat.Opening, cable.OuterEnd is PushInEnd ? StopSeat.PushInPlay : StopSeat.FerrulePlay);
        yield return new(CheckId.StopSlot, placed.Stop.IsSlot || !placed.Seat.IsSlot ? 1 : 0, 1);
        yield return new(CheckId.StopMetal, placed.Stop.MetalRadius - placed.Seat.MetalRadius(placed.Stock.Thickness), 0);
        yield return new(CheckId.StopSquare, Askew(placement, travel) + travel.Wander.Radians, cable.WanderLimit.Radians);
        if (cable.OuterEnd.AdjusterRange == 0)
        {
            yield return new(CheckId.StopPlace, Math.Abs(placement.AdjusterShift), WithoutAdjuster);
        }
    }

    private static (double Worst, bool Threads, double Metal) Bolts(MountFace mount, Bracket placed)
    {
        var holes = placed.Holes.Where(h => h.Purpose == HolePurpose.Bolt).ToArray();
        var places = holes.Select(h => placed.Folded.Flanges[0].ToThrottle(h.Centre)).ToArray();
        var (worst, threads, metal) = (holes.Length == mount.Holes.Length ? 0 : double.PositiveInfinity, true, double.PositiveInfinity);
        foreach (var threaded in mount.Holes)
        {
            var nearest = Enumerable.Range(0, holes.Length).MinBy(i => places[i].DistanceTo(threaded.At));
            worst = Math.Max(worst, places[nearest].Vector.DistanceTo(mount.Plane.FootOf(threaded.At.Vector)));
            threads &= holes[nearest].Thread == threaded.Thread;
            metal = Math.Min(metal, holes[nearest].MetalRadius - BracketShape.BoltMetalRadius(threaded, placed.Stock.Thickness));
        }

        return (worst, threads, metal);
    }

    private static double Askew(StopPlacement placement, Travel travel) =>
        Math.Acos(Math.Clamp(placement.Direction.Dot(Vector3.From(travel.Closed.Direction)), -1, 1));
}
