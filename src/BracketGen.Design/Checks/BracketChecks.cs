using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.SheetMetal;
using BracketGen.Units;

namespace BracketGen.Design.Checks;

/// <summary>The checks of the bracket itself: can it be cut and bent, bolted on, and does it stay out of the way?</summary>
public static class BracketChecks
{
    /// <summary>The checks that only look at the flat pattern: quick.</summary>
    public static IEnumerable<Check> OfFlat(Bracket bracket, Cable cable, CuttingProcess process)
    {
        var flat = bracket.Flat;
        var thickness = flat.Thickness;
        var outline = flat.Blank.Outline;
        foreach (var group in bracket.Holes.Where(h => !h.IsSlot).GroupBy(h => h.Purpose))
        {
            var worst = group.MinBy(h => outline.DistanceTo(h.Centre) - HoleDistances.CentreToEdge(h.Diameter))!;
            var name = group.Key == HolePurpose.Bolt ? "bolt" : "stop";
            yield return new(
                $"{name}-hole-edge", $"Centre of hole {worst.Name} to the edge", CheckKind.Making, Quantity.Length,
                outline.DistanceTo(worst.Centre), Bound.AtLeast, HoleDistances.CentreToEdge(worst.Diameter), Sources.EdgeDistance,
                "The hole tears out of the edge. Widen the flange.");
        }

        if (bracket.Stop.IsSlot)
        {
            yield return new(
                "slot-edge", "Metal beside the open slot", CheckKind.Making, Quantity.Length,
                SlotSide(bracket), Bound.AtLeast, thickness, Sources.CommonPractice,
                "The lips beside the slot bend open. Widen the flange.");
        }

        var smallest = bracket.Holes.Min(h => h.Diameter);
        yield return new(
            "smallest-hole", "Smallest hole or slot", CheckKind.Making, Quantity.Length,
            smallest, Bound.AtLeast, CuttingLimits.SmallestHole(process, thickness), Sources.CommonPractice,
            "The process does not cut so small a hole clean in this thickness. Drill it, or use thinner sheet.");

        foreach (var (bend, index) in flat.Bends.Select((b, i) => (b, i)))
        {
            foreach (var check in OfBend(bracket, bend, index))
            {
                yield return check;
            }
        }

        if (cable.OuterEnd is SlottedClip clip)
        {
            yield return new(
                "clip-neck", "Sheet thickness in the clip's neck", CheckKind.Function, Quantity.Length,
                thickness, Bound.AtMost, clip.NeckLength, Sources.Profile,
                "The outer's neck does not go over the sheet. Use thinner sheet.");
        }

        yield return new(
            "fitting-through-stop", "End fitting through the stop's opening", CheckKind.Function, Quantity.Number,
            bracket.Seat.FittingPasses ? 1 : 0, Bound.AtLeast, 1, Sources.Geometry,
            "The end fitting cannot be brought through the hole: use an open slot.");
    }

    private static IEnumerable<Check> OfBend(Bracket bracket, Bend bend, int index)
    {
        var flat = bracket.Flat;
        var thickness = flat.Thickness;
        var which = flat.Bends.Length > 1 ? $" {index + 1}" : "";
        var suffix = flat.Bends.Length > 1 ? $"-{index + 1}" : "";
        var nearest = bracket.Holes
            .Select(h => (Hole: h, Distance: DistanceToBend(h, bend)))
            .MinBy(h => h.Distance);
        yield return new(
            $"hole-bend{suffix}", $"Edge of hole {nearest.Hole.Name} to bend{which}", CheckKind.Making, Quantity.Length,
            nearest.Distance, Bound.AtLeast, HoleDistances.EdgeToBend(thickness), Sources.CommonPractice,
            "The hole is pulled out of round by the bend. Move the bend or the hole apart.");

        // The sheet is laid with its grain across the first bend; one that runs askew to that has it along, from halfway on.
        var acrossGrain = Math.Abs(bend.Across.Dot(flat.Bends[0].Across)) >= Math.Sqrt(0.5) - 1e-9;
        var material = bracket.Stock.Material;
        var ratio = acrossGrain ? material.MinRadiusAcrossGrain : material.MinRadiusAlongGrain;
        yield return new(
            $"bend-radius{suffix}", $"Inside radius of bend{which}, grain {(acrossGrain ? "across" : "along")} it", CheckKind.Making,
            Quantity.Length, bend.InsideRadius, Bound.AtLeast, ratio * thickness, material.Source,
            "The sheet cracks on the outside of the bend. Use a wider die or a softer sheet.");
        if (bracket.Die is { } die)
        {
            yield return new(
                $"shortest-flange{suffix}", $"Shorter flange at bend{which}, outside", CheckKind.Making, Quantity.Length,
                ShorterFlange(bracket, bend), Bound.AtLeast, die.ShortestFlange(bend.Turn), "geometry of the V-die, (V/2) / cos(A/2)",
                "The flange drops into the die before the bend is done. Use a narrower die or a longer flange.");
        }

        yield return new(
            $"bend-angle{suffix}", $"Bend angle of bend{which}", CheckKind.Making, Quantity.Angle,
            bend.Turn.Magnitude.Radians, Bound.AtMost, Joint.MostTurn.Radians, Sources.CommonPractice,
            "An air bend cannot be made so sharp on a plain die.");
    }

    /// <summary>The checks in space: what moves, what stands around, and the room for tools.</summary>
    /// <param name="bracket">The bracket in place.</param>
    /// <param name="body">The throttle body, opening counter-clockwise like the bracket.</param>
    /// <param name="cable">The cable.</param>
    /// <param name="preferences">The limits wanted.</param>
    /// <param name="error">How much too small a distance may be told (mm); it never decides whether a limit is kept.</param>
    public static IEnumerable<Check> InSpace(
        Bracket bracket, ThrottleBody body, Cable cable, Preferences preferences, double error = SpaceDemand.Error) => SpaceDemand
        .Of(bracket, body, cable, preferences)
        .Select(d => d.Check(bracket.Folded, error))
        .GroupBy(c => c.Id)
        .Select(g => g.MinBy(c => c.Margin)!);

    /// <summary>Whether all checks in space pass: the same answer, sooner.</summary>
    public static bool FitsInSpace(Bracket bracket, ThrottleBody body, Cable cable, Preferences preferences) =>
        SpaceDemand.Of(bracket, body, cable, preferences).All(d => d.IsMet(bracket.Folded));

    private static double SlotSide(Bracket bracket)
    {
        var stop = bracket.Stop;
        var outline = bracket.Flat.Blank.Outline;
        var across = stop.Towards!.Value.Left;
        double Side(Vector2 direction) => outline.Segments
            .SelectMany(s => s.CrossingsWithLine(stop.Centre, direction))
            .Where(c => c.Along > stop.Diameter / 2 + Tolerance.Point)
            .Select(c => c.Along - stop.Diameter / 2)
            .DefaultIfEmpty(0).Min();
        return Math.Min(Side(across), Side(-across));
    }

    private static double DistanceToBend(BracketHole hole, Bend bend)
    {
        var depth = bend.Depth(hole.Centre);
        return Math.Max(-depth, depth - bend.Allowance) - hole.Diameter / 2;
    }

    private static double ShorterFlange(Bracket bracket, Bend bend)
    {
        // From the outside corner, where the two outsides would meet, to the edge: the setback (r + t) tan(A/2) and the flat part.
        var setback = (bend.InsideRadius + bracket.Stock.Thickness) * Math.Tan(bend.Turn.Magnitude.Radians / 2);
        double beyond = Reach(bracket.Flat, bend, +1), before = Reach(bracket.Flat, bend, -1);
        return setback + Math.Min(beyond, before);
    }

    // How far the metal reaches from the middle of the bend, square to it. The tip may be rounded: what the V's shoulder must
    // carry is the flange's middle.
    private static double Reach(FlatPattern flat, Bend bend, int side)
    {
        var from = 0.5 * (bend.Start + bend.End) + (side > 0 ? bend.Allowance : 0) * bend.Across;
        return flat.Blank.Outline.Segments
            .SelectMany(s => s.CrossingsWithLine(from, side * bend.Across))
            .Where(c => c.Along > Tolerance.Point)
            .Select(c => c.Along)
            .DefaultIfEmpty(0).Min();
    }
}
