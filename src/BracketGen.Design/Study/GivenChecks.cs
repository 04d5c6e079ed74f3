using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Motion;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Design.Study;

/// <summary>What goes without saying of a bracket made for a job, and must be checked of one that was not.</summary>
public static class GivenChecks
{
    /// <summary>The checks.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="placed">The bracket in place on it.</param>
    /// <param name="placement">Where its seat is.</param>
    /// <param name="travel">The travel with the stop there.</param>
    public static IEnumerable<Check> Of(Job job, Bracket placed, StopPlacement placement, Travel travel)
    {
        var cable = job.Vehicle.Cable;
        yield return new(CheckId.SheetAllowed, IsAllowed(job, placed) ? 1 : 0, 1);

        // Numbers in a file are rounded: what was drawn on its limit still keeps it.
        var rounded = placed.IsMadeElsewhere ? Tolerance.SameSize : 0;
        var (worst, threads, metal) = Bolts(job.Body.Mount, placed);
        yield return new(CheckId.MountPattern, worst, MountMatch.MostOffFor(placed));
        yield return new(CheckId.MountThreads, threads ? 1 : 0, 1);
        yield return new(CheckId.MountBosses, metal + rounded, 0);

        var (opening, plusMinus) = (placed.Stop.Diameter, placed.Stop.PlusMinus);
        var min = !GoesIn(placed) ? Math.Sqrt(2) * cable.OuterEnd.BodyDiameter : placed.Stop.IsSlot && cable.OuterEnd is NuttedEnd { ThreadFlats: { } flats } ? flats + StopSeat.LeastPlay
            : placed.IsMadeElsewhere ? StopSeat.MinOpening(cable.OuterEnd) : placed.Seat.Opening;
        yield return new(CheckId.StopOpening, opening - min, 0) { Unfavourable = Where(plusMinus > 0, opening - plusMinus - min) };
        yield return new(CheckId.StopPlay, opening - placed.Seat.Opening, StopSeat.MaxPlay(cable.OuterEnd)) { Unfavourable = Where(plusMinus > 0, opening + plusMinus - placed.Seat.Opening) };
        yield return new(CheckId.StopSlot, placed.Stop.IsSlot || !placed.Seat.IsSlot ? 1 : 0, 1);
        yield return new(CheckId.StopMetal, Math.Min(placed.Stop.MetalRadius - placed.Seat.MetalRadius(placed.Stock.Thickness), Flat(placed, placed.Stop) - placed.Seat.SeatRadius) + rounded, 0);
        var (askew, read) = (SeatedStop.Askew(placement, travel), placed.Measured?.NormalPlusMinus.Radians ?? 0);
        yield return new(CheckId.StopSquare, askew, cable.WanderLimit.Radians) { Unfavourable = Where(read > 0, askew + read) };
        if (cable.OuterEnd.AdjusterRange == 0)
        {
            yield return new(CheckId.StopPlace, Math.Abs(placement.AdjusterShift), SlotChecks.WithoutAdjuster);
        }
    }

    // A thread with flats goes into a round hole as well, and is kept from turning by its nuts alone. Else a hole of another shape is too small or does not hold.
    private static bool GoesIn(Bracket placed) =>
        placed.Stop.IsSlot || StopSeat.SameShape(placed.Stop.Outline, placed.Seat.Outline) || (placed.Stop.Outline is null && placed.Seat.Outline is FlatSidedHole);

    // What we shape ourselves keeps its bends farther off than any nut or washer reaches.
    private static double Flat(Bracket placed, BracketHole hole) =>
        placed.IsMadeElsewhere ? MeasuredShape.FlatRound(placed.Flat, hole) : double.PositiveInfinity;

    private static double? Where(bool holds, double value) => holds ? value : null;

    // A sheet that was bought as a part need not be on the shelf; of one whose class alone is known, the class must be that of a sheet that is allowed.
    private static bool IsAllowed(Job job, Bracket placed)
    {
        if (!placed.IsMadeElsewhere)
        {
            return CandidateSearch.StockAllowed(job).Contains(placed.Stock);
        }

        var (allowed, material) = (job.Preferences.Materials, placed.Stock.Material);
        return allowed.IsEmpty || allowed.Contains(material.Designation)
            || SheetClass.Of(material.Designation) is not null && job.Shop.Stock.Any(s => allowed.Contains(s.Material.Designation) && s.Material.IsSteel == material.IsSteel);
    }

    private static (double Worst, bool Threads, double Metal) Bolts(MountFace mount, Bracket placed)
    {
        var holes = placed.Holes.Where(h => h.Purpose == HolePurpose.Bolt).ToArray();
        var places = holes.Select(h => placed.Folded.Flanges[h.Flange].ToThrottle(h.BoltAt)).ToArray();
        var (worst, threads, metal) = (holes.Length == mount.Holes.Length ? 0 : double.PositiveInfinity, true, double.PositiveInfinity);

        // A bolt stands in the line of its slot; what of the pattern is off along it takes nothing of its play.
        foreach (var threaded in mount.Holes)
        {
            var nearest = Enumerable.Range(0, holes.Length).MinBy(i => places[i].DistanceTo(threaded.At));

            // Over the second face only what is along it counts here, less what its larger holes leave.
            var place = threaded.IsOnSecond ? mount.PlaneOf(threaded).FootOf(places[nearest].Vector) : places[nearest].Vector;
            worst = Math.Max(worst, place.DistanceTo(mount.FootOf(threaded).Vector) - (threaded.IsOnSecond ? (threaded.Clearance - threaded.Thread.ClearanceMedium) / 2 : 0));
            threads &= holes[nearest].Thread == threaded.Thread;
            metal = Math.Min(metal, holes[nearest].MetalRadius - BracketShape.BoltMetalRadius(threaded, placed.Stock.Thickness));
            metal = Math.Min(metal, Flat(placed, holes[nearest]) - threaded.Thread.WasherDiameter / 2);
        }

        return (worst, threads, metal);
    }
}
