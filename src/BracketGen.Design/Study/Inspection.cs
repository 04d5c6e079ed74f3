using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Design.Study;

/// <summary>A finished bracket measured: whether it is as drawn, and whether it is good on this vehicle all the same.</summary>
/// <param name="Items">Every dimension with its reading; null where it was not measured.</param>
/// <param name="Position">Diameter about its true place in which the stop's hole lies (mm), and what the drawing allows; null where the stop was not measured.</param>
/// <param name="Profile">Width about its true place in which the seat lies (mm), and what the drawing allows; null likewise.</param>
/// <param name="OnVehicle">The job solved with the bracket as measured; null where the wire does not reach its seat.</param>
public sealed record Inspection(
    ImmutableArray<(InspectionItem Item, double? Reading)> Items, (double Found, double Allowed)? Position, (double Found, double Allowed)? Profile, Solution? OnVehicle)
{
    // A reading farther from what is drawn than this (mm, rad; our judgement, no source) is of another dimension or another bracket.
    private const double Farthest = 10;

    private static readonly Angle FarthestAngle = Angle.FromDegrees(15);

    /// <summary>Whether every dimension was measured: otherwise a verdict that passes proves nothing of this bracket.</summary>
    public bool IsWhole => Items.All(i => i.Reading is not null);

    /// <summary>Whether all that was measured is within the limits of the drawing.</summary>
    public bool IsAsDrawn => Items.All(i => i.Reading is not { } value || i.Item.Holds(value))
        && (Position is not { } p || p.Found <= p.Allowed + Tolerance.LimitSlack) && (Profile is not { } w || w.Found <= w.Allowed + Tolerance.LimitSlack);

    /// <summary>What is to be measured on a bracket, in the order of the sheet.</summary>
    /// <remarks>
    /// Places are in the frame of the datums: H1 is the origin, x runs to H2, z up from the mount face. A coordinate's limit is what the stop's position and
    /// profile allow along it; both are held against their own limits besides (<see cref="Position"/>, <see cref="Profile"/>).
    /// </remarks>
    /// <param name="job">The job.</param>
    /// <param name="bracket">Its bracket, throttle frame as measured like the job.</param>
    public static ImmutableArray<InspectionItem> ItemsOf(Job job, Bracket bracket)
    {
        var (process, end) = (job.Shop.Process, job.Vehicle.Cable.OuterEnd);
        var items = ImmutableArray.CreateBuilder<InspectionItem>();
        void Add(InspectedThing thing, string of, string? from, int index, double nominal, double plusMinus) =>
            items.Add(new(string.Create(CultureInfo.InvariantCulture, $"D{items.Count + 1}"), thing, of, from, index, nominal, plusMinus));
        HoleMaking Making(BracketHole hole) => HoleMaking.Of(bracket, hole, end, process);
        for (var i = 0; i < bracket.Holes.Length; i++)
        {
            Add(InspectedThing.Size, bracket.Holes[i].Name, null, i, bracket.Holes[i].Diameter, Making(bracket.Holes[i]).Size);
            items[^1] = items[^1] with { IsSlot = bracket.Holes[i].IsSlot, IsSlotted = bracket.Holes[i].IsSlotted, IsSquare = bracket.Holes[i].Outline is SquareHole };
            if (bracket.Holes[i].Outline is SlottedHole slot)
            {
                Add(InspectedThing.SlotLength, bracket.Holes[i].Name, null, i, bracket.Holes[i].Diameter + slot.Travel, Making(bracket.Holes[i]).Size);
            }
        }

        var first = bracket.Holes[0];
        var frame = DatumFrame(bracket);
        var second = bracket.MountBolts.Length > 1 ? bracket.Holes[1].Name : null;
        for (var i = 1; i < bracket.Holes.Length - 1; i++)
        {
            var hole = bracket.Holes[i];
            if (hole.Flange > 0)
            {
                var middle = frame.ToLocal(bracket.Folded.Fold(hole.Centre, 0).Vector);
                foreach (var (thing, way, place) in new[] { (InspectedThing.HoleAlong, frame.X, middle.X), (InspectedThing.HoleAcross, frame.Y, middle.Y), (InspectedThing.HoleHeight, frame.Z, middle.Z) })
                {
                    Add(thing, hole.Name, first.Name, i, place, SecondFlangeTolerance.Along(bracket, hole, process, end, way));
                    items[^1] = items[^1] with { Towards = second };
                }

                continue;
            }

            Add(InspectedThing.Distance, hole.Name, first.Name, i, first.Centre.DistanceTo(hole.Centre), Making(hole).Position);
        }

        for (var i = 0; i < bracket.Flat.Bends.Length; i++)
        {
            Add(
                InspectedThing.IncludedAngle, (i + 1).ToString(CultureInfo.InvariantCulture), null, i, Math.PI - bracket.Flat.Bends[i].Turn.Magnitude.Radians,
                SeatTolerances.BendAngle.Radians);
        }

        var (seat, normal) = bracket.FoldedSeat;
        Vector3 at = frame.ToLocal(seat.Vector), facing = frame.ToLocalDirection(normal);
        var allowed = StopTolerance.Of(bracket, process, end);
        double Limit(double cosine) => allowed.Position / 2 * Math.Sqrt(Math.Max(0, 1 - cosine * cosine)) + allowed.Profile / 2 * Math.Abs(cosine);
        Add(InspectedThing.StopAlong, bracket.Stop.Name, first.Name, 0, at.X, Limit(facing.X));
        items[^1] = items[^1] with { Towards = second };
        Add(InspectedThing.StopAcross, bracket.Stop.Name, first.Name, 1, at.Y, Limit(facing.Y));
        if (!bracket.Flat.Bends.IsEmpty)
        {
            Add(InspectedThing.StopHeight, bracket.Stop.Name, null, 2, at.Z, Limit(facing.Z));
        }

        return items.ToImmutable();
    }

    /// <summary>Whether a reading can be of the dimension at all, or must have been misread or taken of another part.</summary>
    /// <param name="item">The dimension.</param>
    /// <param name="value">The reading (mm, rad).</param>
    public static bool IsOf(InspectionItem item, double value) =>
        Math.Abs(value - item.Nominal) <= item.Thing switch
        {
            InspectedThing.IncludedAngle => FarthestAngle.Radians,
            InspectedThing.Size or InspectedThing.SlotLength => Math.Min(Farthest, item.Nominal / 2),
            _ => Farthest,
        };

    /// <summary>A finished bracket held against its drawing and its vehicle.</summary>
    /// <remarks>
    /// The flat pattern is folded again with the angles measured, and its stop is where it was found. What was not measured is as drawn. Where the stop was measured, the
    /// deviations of cutting and bending are replaced by the ± of its readings; the play of the bolts stays.
    /// </remarks>
    /// <param name="solution">The solution with the bracket as drawn.</param>
    /// <param name="readings">Readings (mm, rad) by the names of <see cref="ItemsOf"/>: all places of the stop, or none of them.</param>
    /// <param name="plusMinus">How exactly the stop's places were read (mm, either way).</param>
    /// <param name="strength">How finely the bracket is meshed; null where its strength is not looked at.</param>
    /// <exception cref="ArgumentException">There is no bracket, a reading has no dimension, or only some places of the stop were measured.</exception>
    public static Inspection Of(Solution solution, IReadOnlyDictionary<string, double> readings, double plusMinus, StrengthDetail? strength)
    {
        var drawn = solution.Bracket ?? throw new ArgumentException("The solution has no bracket.", nameof(solution));
        var job = solution.Job;
        ImmutableArray<(InspectionItem Item, double? Reading)> items =
            [.. ItemsOf(job, drawn).Select(i => (i, readings.TryGetValue(i.Name, out var value) ? value : (double?)null))];
        if (items.Count(i => i.Reading is not null) != readings.Count)
        {
            throw new ArgumentException("A reading has no dimension.", nameof(readings));
        }

        double?[] place = [.. items.Where(i => i.Item.Thing >= InspectedThing.StopAlong).Select(i => i.Reading)];
        if (place.Any(p => p is null) && place.Any(p => p is not null))
        {
            throw new ArgumentException("The stop has some of its places measured only.", nameof(readings));
        }

        var made = WithSizes(WithAngles(drawn, items), items);
        (double, double)? position = null, profile = null;
        if (place[0] is { } x)
        {
            var frame = DatumFrame(drawn);
            var (seat, normal) = drawn.FoldedSeat;
            var found = new Vector3(x, place[1]!.Value, place.Length > 2 ? place[2]!.Value : frame.ToLocal(seat.Vector).Z);
            var off = frame.ToWorld(found) - seat.Vector;
            var along = off.Dot(normal);
            var allowed = StopTolerance.Of(drawn, job.Shop.Process, job.Vehicle.Cable.OuterEnd);
            position = (2 * (off - along * normal).Length, allowed.Position);
            profile = drawn.Flat.Bends.IsEmpty ? null : (2 * Math.Abs(along), allowed.Profile);
            var flange = made.Folded.Flanges[0];
            var local = flange.ToLocal(frame.ToWorld(found));
            made = made with { Measured = new(new(local.XY), local.Z, flange.ToLocalDirection(made.FoldedSeat.Normal), plusMinus) };
        }

        return new(items, position, profile, GivenBracket.On(job, made, made.Folded.Flanges[0], strength));
    }

    // H1 on the mount face, x towards H2, z out of the casting.
    private static Frame DatumFrame(Bracket bracket)
    {
        var flange = bracket.Folded.Flanges[0];
        var bolts = bracket.MountBolts;
        var along = bolts.Length > 1 ? flange.ToWorldDirection(Vector3.From(bolts[1].Centre - bolts[0].Centre)) : flange.X;
        return Frame.FromZX(flange.ToWorld(bolts[0].Centre.Vector), flange.Z, along);
    }

    private static Bracket WithAngles(Bracket bracket, ImmutableArray<(InspectionItem Item, double? Reading)> items)
    {
        var bends = bracket.Flat.Bends;
        foreach (var (item, reading) in items)
        {
            if (item.Thing == InspectedThing.IncludedAngle && reading is { } included)
            {
                var bend = bends[item.Index];
                bends = bends.SetItem(item.Index, bend with { Turn = new(Math.Sign(bend.Turn.Radians) * (Math.PI - included)) });
            }
        }

        return Folded(bracket, bends);
    }

    private static Bracket WithSizes(Bracket bracket, ImmutableArray<(InspectionItem Item, double? Reading)> items)
    {
        var holes = bracket.Holes;
        foreach (var (item, reading) in items)
        {
            // Within its limits a hole is one that the checks and the play of the bolts count already.
            if (reading is not { } value || item.Holds(value) || item.Thing is not (InspectedThing.Size or InspectedThing.SlotLength or InspectedThing.Distance))
            {
                continue;
            }

            var hole = holes[item.Index];
            holes = holes.SetItem(item.Index, item.Thing == InspectedThing.Size ? hole with { Diameter = value }
                : item.Thing == InspectedThing.SlotLength && hole.Outline is SlottedHole slot ? hole with { Outline = slot with { Travel = Math.Max(Tolerance.SameSize, value - hole.Diameter) } }
                : hole with { Centre = holes[0].Centre + value * (hole.Centre - holes[0].Centre).Unit });
        }

        return bracket with { Holes = holes };
    }

    private static Bracket Folded(Bracket bracket, ImmutableArray<Bend> bends) =>
        bracket with { Folded = new(bracket.Flat with { Bends = bends }, bracket.Folded.Flanges[0]) };
}
