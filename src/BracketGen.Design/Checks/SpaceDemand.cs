using System.Collections.Immutable;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Design.Checks;

/// <summary>Room that the folded bracket, or a part of it, must leave to something.</summary>
/// <remarks>Demands of one id and number are one check, that of the tightest of them.</remarks>
/// <param name="Id">Which check.</param>
/// <param name="Things">What must be left room, as convex pieces.</param>
/// <param name="Limit">Distance (mm) to be kept.</param>
/// <param name="Within">The part of the sheet that keeps it: positive there, a signed distance (mm) in the flat; null for all.</param>
internal sealed record SpaceDemand(CheckId Id, ImmutableArray<ConvexDistance> Things, double Limit, Func<FlatPoint, double>? Within)
{
    /// <summary>What is kept apart; null where the check's words say it.</summary>
    public Pair? Pair { get; init; }

    /// <summary>Number of the keep-out, from 1; null for all others.</summary>
    public int? Number { get; init; }

    /// <summary>Name of the keep-out, the hole or the spring; null where there is none.</summary>
    public string? Subject { get; init; }

    /// <summary>How exactly clearances are found for the answer (mm).</summary>
    public const double Error = 0.05;

    /// <summary>Height above a bolt's seat that a socket needs free (mm), head not counted (common practice, no source).</summary>
    private const double SocketRoom = 20;

    /// <summary>Gap between flanges of one bracket that touch nowhere in the flat (mm; common practice, no source): room for paint and a brush.</summary>
    private const double FlangeGap = 2;

    /// <summary>The check, with the distance found.</summary>
    public Check Check(FoldedSheet sheet, double error) =>
        new(Id, Clearance.Least(sheet, Things, error, Limit, Within), Limit) { Number = Number, Subject = Subject, Pair = Pair };

    /// <summary>Whether the distance is kept.</summary>
    public bool IsMet(FoldedSheet sheet) => Clearance.Keeps(sheet, Things, Limit, Within);

    /// <summary>All demands on a bracket.</summary>
    public static IEnumerable<SpaceDemand> Of(Surroundings around)
    {
        var (bracket, body, preferences) = (around.Bracket, around.Job.Body, around.Job.Preferences);
        foreach (var (keepOut, index) in body.KeepOuts.Select((k, i) => (k, i)))
        {
            yield return new(CheckId.KeepOut, [keepOut.DistanceTo], preferences.KeepOutClearance, null) { Number = index + 1, Subject = keepOut.Name };
        }

        yield return new(CheckId.MovingParts, around.Moving.Pieces, preferences.SweepClearance, null) { Pair = new(Thing.Quadrant, Thing.Bracket) };
        foreach (var spring in body.SpringRooms)
        {
            yield return new(CheckId.MovingParts, [spring.DistanceTo], preferences.SweepClearance, null) { Pair = new(Thing.Spring, Thing.Bracket), Subject = spring.Name };
        }

        foreach (var other in around.OtherWires.Where(w => w.IsSeatGiven))
        {
            yield return new(CheckId.MovingParts, [.. other.Rods.Select(r => r.Distance)], preferences.SweepClearance, null)
            {
                Pair = new(Thing.OtherWire, Thing.Bracket), Subject = other.Other.Name,
            };
        }

        foreach (var demand in OfBody(around).Concat(bracket.Flat.Bends.IsEmpty ? [] : OfBends(around)))
        {
            yield return demand;
        }

        if (around.Outer is { IsEmpty: false } outer)
        {
            yield return new(CheckId.OuterClearance, [.. outer.Select(p => p.Distance)], preferences.OuterClearance, null) { Pair = new(Thing.Outer, Thing.Bracket) };
        }
    }

    // The mount flange lies on the bosses, and may lie on the casting as well, and so does the second one; what is bent away from them keeps the clearance.
    private static IEnumerable<SpaceDemand> OfBody(Surroundings around)
    {
        var (body, clearance, second) = (around.Job.Body, around.Job.Preferences.KeepOutClearance, around.Bracket.SecondBend);
        ImmutableArray<Bend> bends = second is null ? around.Bracket.Flat.Bends : [.. around.Bracket.Flat.Bends.Where(b => b.To != second.To)];
        double OffMount(FlatPoint point) => OffMountFlange(bends, point);
        if (body.Casting is { } casting)
        {
            Pair pair = new(Thing.Bracket, Thing.Casting);
            Func<FlatPoint, double>? onFace = bends.IsEmpty ? null : p => -OffMount(p);
            yield return new(CheckId.BodyClearance, [casting.DistanceTo], 0, onFace) { Pair = pair };
            if (!bends.IsEmpty)
            {
                yield return new(CheckId.BodyClearance, [casting.DistanceTo], clearance, OffMount) { Pair = pair };
            }
        }

        // The bracket lies on the ring beside the heads of its bolts.
        foreach (var head in RingChecks.Heads(body.Mount))
        {
            yield return new(CheckId.RingHeadRoom, [head.DistanceTo], RingChecks.LeastHeadRoom, null) { Subject = head.Name };
        }

        if (!bends.IsEmpty && RingChecks.Plate(body.Mount) is { } plate)
        {
            yield return new(CheckId.BodyClearance, [plate.DistanceTo], clearance, OffMount) { Pair = new(Thing.Bracket, Thing.Ring) };
        }

        foreach (var boss in bends.IsEmpty ? [] : body.Bosses)
        {
            yield return new(CheckId.BodyClearance, [boss.DistanceTo], clearance, OffMount) { Pair = new(Thing.Bracket, Thing.Boss), Subject = boss.Name };
        }
    }

    // Past any bend of the mount flange.
    private static double OffMountFlange(ImmutableArray<Bend> bends, FlatPoint point)
    {
        var past = double.NegativeInfinity;
        foreach (var bend in bends)
        {
            past = bend.From == 0 ? Math.Max(past, bend.Beyond(point)) : past;
        }

        return past;
    }

    private static IEnumerable<SpaceDemand> OfBends(Surroundings around)
    {
        var (bracket, flat) = (around.Bracket, around.Bracket.Flat);
        foreach (var bolt in bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt))
        {
            var thread = bolt.Thread!;
            var seat = bracket.Folded.Fold(bolt.BoltAt, flat.Thickness);
            var top = seat + (bolt.Fixing.Above(thread, bracket.Stock.Thickness + bolt.SpacerLength) + SocketRoom) * bracket.Folded.Flanges[bolt.Flange].Z;
            Func<FlatPoint, double> off = bolt.Flange == 0 ? p => OffMountFlange(flat.Bends, p) : p => -flat.Bends[bolt.Flange - 1].Beyond(p);
            yield return new(CheckId.BoltRoom, [p => MovingParts.SegmentDistance(p, seat, top)], thread.SocketFor(bolt.Fixing.AcrossFlats(thread)) / 2, off) { Subject = bolt.Name };
        }

        // The nut, shoulder or spanner on either side of the stop flange, and the wire, must stay clear of all that is not the stop flange.
        var (last, second) = (bracket.StopBend, bracket.SecondBend);
        var lip = bracket.Lip;
        double OffStopFlange(FlatPoint point) => last is null ? second!.Beyond(point)
            : Math.Max(Math.Max(last.Allowance - last.Depth(point), -last.Beyond(point)), lip?.Depth(point) ?? double.NegativeInfinity);
        var (stop, normal) = bracket.FoldedSeat;
        var (from, to) = (stop - bracket.Seat.Protrusion * normal, stop + Surroundings.StopBodyRoom * normal);
        yield return new(CheckId.StopRoom, [p => MovingParts.SegmentDistance(p, from, to)], bracket.Seat.RoomDiameter / 2, OffStopFlange);
        yield return new(CheckId.MovingParts, [.. around.Wire.Select(w => w.Distance)], around.Job.Preferences.SweepClearance, OffStopFlange)
        {
            Pair = new(Thing.Wire, Thing.Bracket),
        };

        if (lip is not null)
        {
            yield return new(CheckId.LipApart, [ConvexPlate.Around(bracket.Folded, 0)], FlangeGap, lip.Depth);
        }

        if (bracket.ReturnFlange is { } side)
        {
            // What follows past the next bend, and on a middle flange the mount flange, stay clear of it.
            var next = flat.Bends[side.From];
            yield return new(CheckId.FlangesApart, [ConvexPlate.Around(bracket.Folded, side.To)], FlangeGap, next.Beyond);
            if (side.From > 0)
            {
                yield return new(CheckId.FlangesApart, [ConvexPlate.Around(bracket.Folded, side.To)], FlangeGap, p => -OffMountFlange(flat.Bends, p));
            }
        }

        if (second is not null && flat.Bends.Any(b => b.From == 0 && b.To != second.To))
        {
            ImmutableArray<Bend> others = [.. flat.Bends.Where(b => b.To != second.To)];
            yield return new(CheckId.FlangesApart, [ConvexPlate.Around(bracket.Folded, second.To)], FlangeGap, p => OffMountFlange(others, p));
        }

        if (last is not null && last.From != 0)
        {
            yield return new(CheckId.FlangesApart, [ConvexPlate.Around(bracket.Folded, 0)], FlangeGap, last.Depth);
        }
    }
}
