using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.SheetMetal;

namespace BracketGen.Design;

/// <summary>The checks of the bracket itself: can it be cut and bent, bolted on, and does it stay out of the way?</summary>
public static class BracketChecks
{
    /// <summary>How exactly clearances are found for the answer (mm).</summary>
    private const double ClearanceError = 0.05;

    /// <summary>Height above a bolt's seat that a socket needs free (mm), head not counted (common practice, no source).</summary>
    private const double SocketRoom = 20;

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
                $"{name}-hole-edge", $"Centre of hole {worst.Name} to the edge", CheckKind.Making, CheckUnit.Length,
                outline.DistanceTo(worst.Centre), Bound.AtLeast, HoleDistances.CentreToEdge(worst.Diameter), Sources.EdgeDistance,
                "The hole tears out of the edge. Widen the flange.");
        }

        if (bracket.Stop.IsSlot)
        {
            yield return new(
                "slot-edge", "Metal beside the open slot", CheckKind.Making, CheckUnit.Length,
                SlotSide(bracket), Bound.AtLeast, thickness, Sources.CommonPractice,
                "The lips beside the slot bend open. Widen the flange.");
        }

        var smallest = bracket.Holes.Min(h => h.Diameter);
        yield return new(
            "smallest-hole", "Smallest hole or slot", CheckKind.Making, CheckUnit.Length,
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
                "clip-neck", "Sheet thickness in the clip's neck", CheckKind.Function, CheckUnit.Length,
                thickness, Bound.AtMost, clip.NeckLength, Sources.Profile,
                "The outer's neck does not go over the sheet. Use thinner sheet.");
        }

        yield return new(
            "fitting-through-stop", "End fitting through the stop's opening", CheckKind.Function, CheckUnit.Number,
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
            $"hole-bend{suffix}", $"Edge of hole {nearest.Hole.Name} to bend{which}", CheckKind.Making, CheckUnit.Length,
            nearest.Distance, Bound.AtLeast, HoleDistances.EdgeToBend(thickness), Sources.CommonPractice,
            "The hole is pulled out of round by the bend. Move the bend or the hole apart.");

        yield return new(
            $"bend-radius{suffix}", $"Inside radius of bend{which}, grain across it", CheckKind.Making, CheckUnit.Length,
            bend.InsideRadius, Bound.AtLeast, bracket.Stock.Material.LeastRadiusAcrossGrain * thickness, bracket.Stock.Material.Source,
            "The sheet cracks on the outside of the bend. Use a wider die or a softer sheet.");
        if (bracket.Die is { } die)
        {
            yield return new(
                $"shortest-flange{suffix}", $"Shorter flange at bend{which}, outside", CheckKind.Making, CheckUnit.Length,
                ShorterFlange(bracket, bend), Bound.AtLeast, die.ShortestFlange(bend.Turn), "geometry of the V-die, (V/2) / cos(A/2)",
                "The flange drops into the die before the bend is done. Use a narrower die or a longer flange.");
        }

        yield return new(
            $"bend-angle{suffix}", $"Bend angle of bend{which}", CheckKind.Making, CheckUnit.Angle,
            bend.Turn.Magnitude.Radians, Bound.AtMost, Joint.MostTurn.Radians, Sources.CommonPractice,
            "An air bend cannot be made so sharp on a plain die.");
    }

    /// <summary>The checks in space: what moves, what stands around, and the room for tools.</summary>
    /// <param name="bracket">The bracket in place.</param>
    /// <param name="body">The throttle body, opening counter-clockwise like the bracket.</param>
    /// <param name="cable">The cable.</param>
    /// <param name="preferences">The limits wanted.</param>
    public static IEnumerable<Check> InSpace(Bracket bracket, ThrottleBody body, Cable cable, Preferences preferences)
    {
        var folded = bracket.Folded;
        var moving = new MovingParts(body.Quadrant, cable.Fitting);
        yield return new(
            "moving-parts", "Bracket to quadrant and fitting over the sweep", CheckKind.Safety, CheckUnit.Length,
            Clearance.Least(folded, moving.Pieces, ClearanceError, preferences.SweepClearance), Bound.AtLeast, preferences.SweepClearance, Sources.Preference,
            "The quadrant or the end fitting can catch on the bracket and hold the valve open.");

        foreach (var (keepOut, index) in body.KeepOuts.Select((k, i) => (k, i)))
        {
            yield return new(
                $"keep-out-{index + 1}", $"Bracket to {keepOut.Name}", CheckKind.Function, CheckUnit.Length,
                Clearance.Least(folded, [keepOut.DistanceTo], ClearanceError, preferences.KeepOutClearance), Bound.AtLeast, preferences.KeepOutClearance,
                Sources.Preference,
                $"The bracket meets {keepOut.Name}.");
        }

        if (folded.Flat.Bends.IsEmpty)
        {
            yield break;
        }

        var first = folded.Flat.Bends[0];
        var worst = bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt)
            .Select(h => (Hole: h, Room: RoomRadius(folded, first, h), Need: h.Thread!.SocketDiameter / 2))
            .MinBy(h => h.Room - h.Need);
        yield return new(
            "bolt-room", $"Room for the socket on bolt {worst.Hole.Name}, radius", CheckKind.Making, CheckUnit.Length,
            worst.Room, Bound.AtLeast, worst.Need, Sources.CommonPractice,
            "The bolt cannot be tightened: the bent flange is in the socket's way.");

        var last = folded.Flat.Bends[^1];
        yield return new(
            "stop-room", "Room for the nut or shoulder at the stop, radius", CheckKind.Making, CheckUnit.Length,
            StopRoom(bracket, last), Bound.AtLeast, bracket.Seat.RoomDiameter / 2, Sources.CommonPractice,
            "The spanner or the shoulder at the stop runs into the bend.");
    }

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

    private static (Vector3 From, Vector3 To) BoltAxis(FoldedSheet folded, BracketHole hole)
    {
        var seat = folded.Fold(hole.Centre, folded.Flat.Thickness);
        return (seat, seat + (hole.Thread!.HeadHeight + hole.Thread.WasherThickness + SocketRoom) * folded.Flanges[hole.Flange].Z);
    }

    private static double RoomRadius(FoldedSheet folded, Bend beyond, BracketHole bolt)
    {
        var (from, to) = BoltAxis(folded, bolt);
        return Clearance.Least(
            folded, [p => MovingParts.SegmentDistance(p, from, to)], ClearanceError, bolt.Thread!.SocketDiameter / 2, beyond.Depth);
    }

    // The nut, shoulder or spanner on either side of the stop flange must stay clear of all that is not the stop flange.
    private static double StopRoom(Bracket bracket, Bend last)
    {
        var (seat, normal) = bracket.FoldedSeat;
        var (from, to) = (seat - bracket.Seat.Protrusion * normal, seat + StopBodyRoom * normal);
        return Clearance.Least(
            bracket.Folded, [p => MovingParts.SegmentDistance(p, from, to)], ClearanceError, bracket.Seat.RoomDiameter / 2,
            flat => last.Allowance - last.Depth(flat));
    }

    /// <summary>Length of the outer's end behind the seat for which room is kept (mm; common practice, no source).</summary>
    private const double StopBodyRoom = 15;
}
