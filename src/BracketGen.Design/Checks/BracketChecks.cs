using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Motion;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Cutting;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Design.Checks;

/// <summary>The checks of the bracket itself: can it be cut and bent, bolted on, and does it stay out of the way?</summary>
public static class BracketChecks
{
    /// <summary>The checks that only look at the flat pattern: quick.</summary>
    public static IEnumerable<Check> OfFlat(Bracket bracket, Cable cable, CuttingProcess process)
    {
        var flat = bracket.Flat;
        var thickness = flat.Thickness;
        var finish = bracket.Stock.Material.Finish;
        var outline = flat.Blank.Outline;

        // Numbers in a file are rounded: what was drawn on its limit still keeps it.
        var rounded = bracket.IsMadeElsewhere ? Tolerance.SameSize : 0;
        foreach (var group in bracket.Holes.Where(h => !h.IsSlot).GroupBy(h => h.Purpose))
        {
            var worst = group.MinBy(h => h.ToEdge(outline) - h.EdgeDistance(thickness))!;
            yield return new(
                group.Key == HolePurpose.Bolt ? CheckId.BoltHoleEdge : CheckId.StopHoleEdge,
                worst.ToEdge(outline) + rounded, worst.EdgeDistance(thickness))
            {
                Subject = worst.Name,
                IsVariant = worst.IsSlotted,
            };
        }

        if (bracket.Stop.IsSlot)
        {
            yield return new(CheckId.SlotEdge, SlotSide(bracket), thickness);
        }

        if (bracket.Holes.Where(h => !HoleMaking.Of(bracket, h, cable.OuterEnd, process).IsDrilled).MinBy(h => h.LeastWidth) is { } smallest)
        {
            // A slot is not drilled out: the narrowest that the process may leave must take its bolt.
            var taken = smallest is { IsSlotted: true, Thread: { } thread } ? thread.Diameter + HoleMaking.Of(bracket, smallest, cable.OuterEnd, process).Size : 0;
            yield return new(CheckId.SmallestHole, smallest.LeastWidth, Math.Max(taken, CuttingLimits.SmallestHole(process, thickness))) { Subject = smallest.Name };
        }

        foreach (var (bend, index) in flat.Bends.Select((b, i) => (b, i)))
        {
            foreach (var check in OfBend(bracket, bend, index))
            {
                yield return check;
            }
        }

        foreach (var check in BendChecks.OfFlat(bracket))
        {
            yield return check;
        }

        yield return new(CheckId.Finish, !bracket.Stock.Material.IsSteel || finish.Protects ? 1 : finish.Kind == FinishKind.NotStated ? double.NaN : 0, 1);
        if (cable.OuterEnd is SlottedClip clip)
        {
            // Of a part made elsewhere the thickness was read without its paint: it may be powder coated.
            yield return new(CheckId.ClipNeck, thickness + 2 * finish.BuildUp, clip.NeckLength)
            {
                Unfavourable = bracket.IsMadeElsewhere ? thickness + 2 * ThickestCoat : null,
            };
        }
        else if (double.IsFinite(cable.OuterEnd.MaxSheet))
        {
            yield return new(CheckId.EndMaxSheet, thickness + 2 * finish.BuildUp, cable.OuterEnd.MaxSheet);
        }

        if (cable.OuterEnd.MinSheet > 0)
        {
            yield return new(CheckId.EndMinSheet, thickness, cable.OuterEnd.MinSheet);
        }

        // Into a slot the outer end slips from the side: then its own body is what has to go in. What sits only in a slot has no way through a hole.
        var seat = bracket.Seat;
        yield return bracket.Stop.IsSlot
            ? new(CheckId.FittingThroughStop, bracket.Stop.Diameter, (cable.OuterEnd as NuttedEnd)?.ThreadFlats ?? cable.OuterEnd.BodyDiameter) { IsVariant = true }
            : new(CheckId.FittingThroughStop, Math.Min(bracket.Stop.LeastWidth - finish.HoleAllowance, seat.Passage ?? StopSeat.For(cable, StopOpening.Hole, thickness, finish).Passage ?? 0), seat.FittingSize);
    }

    /// <summary>Layer on each face of a part that is powder coated thickly (mm; common practice, no source).</summary>
    public const double ThickestCoat = 0.1;

    private static IEnumerable<Check> OfBend(Bracket bracket, Bend bend, int index)
    {
        var flat = bracket.Flat;
        var thickness = flat.Thickness;
        int? number = flat.Bends.Length > 1 ? index + 1 : null;
        var nearest = bracket.Holes
            .Select(h => (Hole: h, Distance: DistanceToBend(h, bend)))
            .MinBy(h => h.Distance);
        yield return new(CheckId.HoleBend, nearest.Distance, HoleDistances.EdgeToBend(thickness)) { Number = number, Subject = nearest.Hole.Name };

        var acrossGrain = BendGrain.IsAcross(bend.Across, flat.Bends[0].Across);
        var material = bracket.Stock.Material;
        var ratio = acrossGrain ? material.MinRadiusAcrossGrain : material.MinRadiusAlongGrain;
        yield return new(CheckId.BendRadius, bend.InsideRadius, ratio * thickness)
        {
            Number = number,
            IsVariant = !acrossGrain,
            GivenSource = material.Source,

            // Its class has the radius of the softest sheet; a stronger one of the kind asks for more.
            Unfavourable = SheetClass.Of(material.Designation) is null ? null : double.NaN,
        };
        if (bracket.Die is { } die)
        {
            yield return new(CheckId.ShortestFlange, ShorterFlange(bracket, bend), die.ShortestFlange(bend.Turn)) { Number = number };
        }

        yield return new(CheckId.BendAngle, bend.Turn.Magnitude.Radians, Joint.MostTurn.Radians) { Number = number };
    }

    /// <summary>The checks in space: what moves, what stands around, and the room for tools.</summary>
    /// <param name="bracket">The bracket in place.</param>
    /// <param name="job">The job, opening counter-clockwise like the bracket.</param>
    /// <param name="placement">Where the stop is.</param>
    /// <param name="travel">The travel with the stop there.</param>
    /// <param name="error">How much too small a distance may come out (mm); it never decides whether a limit is kept.</param>
    public static IEnumerable<Check> InSpace(
        Bracket bracket, Job job, StopPlacement placement, Travel travel, double error = SpaceDemand.Error) =>
        InSpace(new(bracket, job, placement, travel), error);

    /// <summary>The same for surroundings that are known.</summary>
    internal static IEnumerable<Check> InSpace(Surroundings around, double error)
    {
        return SpaceDemand.Of(around)
            .Select(d => d.Check(around.Bracket.Folded, error))
            .Concat(ObstacleChecks.Of(around))
            .GroupBy(c => (c.Id, c.Number))
            .Select(g => g.MinBy(c => c.Margin)!);
    }

    /// <summary>The first check in space that fails, its value good to <see cref="Roughly"/>; null where all pass: the same answer as of all of them, sooner.</summary>
    internal static Check? Obstacle(Surroundings around) =>
        SpaceDemand.Of(around).FirstOrDefault(d => !d.IsMet(around.Bracket.Folded))?.Check(around.Bracket.Folded, Roughly)
            ?? ObstacleChecks.Of(around).FirstOrDefault(c => !c.Passes);

    /// <summary>Whether all checks in space pass.</summary>
    internal static bool FitsInSpace(Surroundings around) => Obstacle(around) is null;

    // Good enough to say which of several brackets is the nearest (mm).
    private const double Roughly = 1;

    private static double SlotSide(Bracket bracket)
    {
        var stop = bracket.Stop;
        var outline = bracket.Flat.Blank.Outline;
        var across = stop.Towards!.Value.Left;

        // Somebody who measured the outline may have drawn the slot in it, a little wider or narrower than the opening was read.
        var own = bracket.IsMadeElsewhere ? MeasuredShape.OnLine : Tolerance.Point;
        double Side(Vector2 direction) => outline.Segments
            .SelectMany(s => s.CrossingsWithLine(stop.Centre.Vector, direction))
            .Where(c => c.Along > stop.Diameter / 2 + own)
            .Select(c => c.Along - stop.Diameter / 2)
            .DefaultIfEmpty(0).Min();
        return Math.Min(Side(across), Side(-across));
    }

    private static double DistanceToBend(BracketHole hole, Bend bend)
    {
        // The tools press along the whole line, but where relief cuts end it.
        var depth = bend.Depth(hole.Centre);
        var beside = bend.Relief > 0
            ? -Math.Min((hole.Centre - bend.Start).Dot(bend.Along), (bend.End - hole.Centre).Dot(bend.Along)) - hole.ReachTowards(bend.Along)
            : double.NegativeInfinity;
        return Math.Max(beside, Math.Max(-depth, depth - bend.Allowance) - hole.ReachTowards(bend.Across));
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
        var from = bend.Middle + (side > 0 ? bend.Allowance : 0) * bend.Across;
        return flat.Blank.Outline.Segments
            .SelectMany(s => s.CrossingsWithLine(from.Vector, side * bend.Across))
            .Where(c => c.Along > Tolerance.Point)
            .Select(c => c.Along)
            .DefaultIfEmpty(0).Min();
    }
}
