using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.SheetMetal;
using BracketGen.Units;

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
        yield return new(
            "sheet-allowed", "Sheet that the job allows", CheckKind.Making, Quantity.Number,
            CandidateSearch.StockAllowed(job).Contains(placed.Stock) ? 1 : 0, Bound.AtLeast, 1, Sources.Preference,
            "The customer asked for another material.");
        var (worst, threads, metal) = Bolts(job.Body.Mount, placed);
        yield return new(
            "mount-pattern", "Bolt holes off the threaded holes, farthest", CheckKind.Making, Quantity.Length,
            worst, Bound.AtMost, MountMatch.MostOff, Sources.CommonPractice, "The bracket does not go onto the bolts.");
        yield return new(
            "mount-threads", "Bolt holes of the size for the threads", CheckKind.Making, Quantity.Number,
            threads ? 1 : 0, Bound.AtLeast, 1, Sources.Geometry, "The bolts do not fit the bracket's holes.");
        yield return new(
            "mount-bosses", "Metal over bosses and washers, least to spare", CheckKind.Making, Quantity.Length,
            metal, Bound.AtLeast, 0, Sources.Geometry, "A boss or washer stands out over the bracket's edge.");

        var opening = placed.Stop.Diameter;
        yield return new(
            "stop-opening", "Stop's opening larger than the outer's end needs", CheckKind.Function, Quantity.Length,
            opening - placed.Seat.Opening, Bound.AtLeast, 0, Sources.Geometry, "The outer's end does not go into the opening.");
        yield return new(
            "stop-play", "Play of the outer's end in the opening beyond the usual", CheckKind.Function, Quantity.Length,
            opening - placed.Seat.Opening, Bound.AtMost, StopSeat.FerrulePlay, Sources.CommonPractice, "The outer's end sits loose and wanders.");
        yield return new(
            "stop-slot", "Open slot where the outer's end needs one", CheckKind.Function, Quantity.Number,
            placed.Stop.IsSlot || !placed.Seat.IsSlot ? 1 : 0, Bound.AtLeast, 1, Sources.Geometry, "The outer's end cannot be brought into a round hole.");
        yield return new(
            "stop-metal", "Metal round the stop, to spare", CheckKind.Making, Quantity.Length,
            placed.Stop.MetalRadius - placed.Seat.MetalRadius(placed.Stock.Thickness), Bound.AtLeast, 0, Sources.Geometry,
            "Nut or shoulder stands out over the edge.");
        yield return new(
            "stop-square", "Wire off the stop's own direction, and its change over the sweep", CheckKind.Function, Quantity.Angle,
            Askew(placement, travel) + travel.Wander.Radians, Bound.AtMost, cable.WanderLimit, Sources.Profile,
            "The wire pulls sideways at the outer's end: it wears through the liner and rubs.");
        if (cable.OuterEnd.AdjusterRange == 0)
        {
            yield return new(
                "stop-place", "Stop off its place, without an adjuster", CheckKind.Function, Quantity.Length,
                Math.Abs(placement.AdjusterShift), Bound.AtMost, WithoutAdjuster, Sources.CommonPractice,
                "The free play cannot be set.");
        }
    }

    private static (double Worst, bool Threads, double Metal) Bolts(MountFace mount, Bracket placed)
    {
        var holes = placed.Holes.Where(h => h.Purpose == HolePurpose.Bolt).ToArray();
        var places = holes.Select(h => placed.Folded.Flanges[0].ToWorld(h.Centre)).ToArray();
        var (worst, threads, metal) = (holes.Length == mount.Holes.Length ? 0 : double.PositiveInfinity, true, double.PositiveInfinity);
        foreach (var threaded in mount.Holes)
        {
            var nearest = Enumerable.Range(0, holes.Length).MinBy(i => places[i].DistanceTo(threaded.At));
            worst = Math.Max(worst, places[nearest].DistanceTo(mount.Plane.FootOf(threaded.At)));
            threads &= holes[nearest].Thread == threaded.Thread;
            metal = Math.Min(metal, holes[nearest].MetalRadius - BracketShape.BoltMetalRadius(threaded));
        }

        return (worst, threads, metal);
    }

    private static double Askew(StopPlacement placement, Travel travel) =>
        Math.Acos(Math.Clamp(placement.Direction.Dot(Vector3.From(travel.Closed.Direction)), -1, 1));
}
