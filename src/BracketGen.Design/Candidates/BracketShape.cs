using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.SheetMetal;

namespace BracketGen.Design;

/// <summary>Shapes a bracket: joints in space become a flat pattern with outline and holes.</summary>
public static class BracketShape
{
    /// <summary>What is chosen before a bracket can be shaped.</summary>
    /// <remarks>Immutable.</remarks>
    /// <param name="Mount">The face it is bolted to.</param>
    /// <param name="Placement">Where the outer's seat must be.</param>
    /// <param name="Cable">The cable.</param>
    /// <param name="Preferences">What is wanted.</param>
    /// <param name="Stock">The sheet.</param>
    /// <param name="Die">The die; null for a flat plate.</param>
    public sealed record Choice(
        MountFace Mount, StopPlacement Placement, Cable Cable, Preferences Preferences, Stock Stock, PressBrakeDie? Die);

    /// <summary>Farthest that any part of a bracket reaches from its first bolt in the flat (mm): beyond it, something else holds a cable.</summary>
    private const double MostReach = 400;

    /// <summary>Straight edge beside a bend (mm) for a thickness: long enough to round a corner in, so that no relief is needed.</summary>
    public static double StraightBesideBend(double thickness) => Math.Max(3, 1.5 * thickness);

    /// <summary>The mount flange's frame before any bend: origin at the first hole, top away from the casting.</summary>
    public static Frame MountFrame(MountFace mount)
    {
        var normal = mount.Plane.Normal;
        var origin = mount.Plane.FootOf(mount.Holes[0].At);

        // Along the holes where there are two, so that a drawing's x runs along the bolt line.
        var along = mount.Holes.Length > 1 ? mount.Plane.FootOf(mount.Holes[1].At) - origin : Vector3.Zero;
        if (along.Length < 1)
        {
            along = Math.Abs(normal.Z) < 0.9 ? new Vector3(0, 0, 1).Cross(normal) : new Vector3(1, 0, 0);
        }

        return Frame.FromZX(origin, normal, along);
    }

    /// <summary>The stop slab's bottom: the seat is its top face, or its bottom face with the top the other way.</summary>
    public static Plane StopBottom(StopPlacement placement, double thickness, bool seatOnTop) => seatOnTop
        ? new(placement.Seat - thickness * placement.Direction, placement.Direction)
        : new(placement.Seat, -placement.Direction);

    /// <summary>The bracket over the given joints; null where it has no outline.</summary>
    /// <param name="choice">What was chosen before.</param>
    /// <param name="joints">The bends from mount to stop, none for a flat plate.</param>
    /// <param name="seatOnTop">Whether the seat is on the top of the sheet.</param>
    /// <param name="widths">For each bend, 0 (as narrow as what lies behind it) to 1 (as wide as everything beside it).</param>
    public static Bracket? Make(Choice choice, IReadOnlyList<Joint> joints, bool seatOnTop, IReadOnlyList<double> widths)
    {
        var thickness = choice.Stock.Thickness;
        var seat = StopSeat.For(choice.Cable, choice.Preferences.StopOpening, thickness);
        var mountFrame = MountFrame(choice.Mount);
        var stopFrame = joints.Count > 0 ? joints[^1].Next : mountFrame;
        var stop = stopFrame.ToLocal(choice.Placement.Seat).XY;
        var last = joints.Count;

        var discs = Enumerable.Range(0, last + 1).Select(_ => new List<Disc>()).ToArray();
        var bolts = choice.Mount.Holes.Select((hole, i) => BoltHole(hole, i, mountFrame.ToLocal(hole.At).XY)).ToList();
        discs[0].AddRange(bolts.Select(b => new Disc(b.Centre, b.MetalRadius)));
        discs[last].Add(new(stop, seat.MetalRadius(thickness)));

        var bends = new List<Bend>();
        for (var i = 0; i < last; i++)
        {
            var (from, to) = ExtentOf(
                joints[i], discs[i], discs[i + 1], bends.LastOrDefault(), i + 1 < last ? joints[i + 1] : null, discs[last], widths[i]);
            bends.Add(joints[i].ToBend(i, from, to));
        }

        if (discs[0].Concat(discs[last]).Any(d => d.Centre.Length > MostReach) || bends.Any(b => b.Length > MostReach || b.Start.Length > MostReach))
        {
            return null;
        }

        var outline = BlankOutline.Draw(bends, discs, StraightBesideBend(thickness), choice.Preferences.CornerRadius);
        var stopHole = StopHole(seat, last, stop, bolts, bends, thickness);
        outline = outline is not null && stopHole.Towards is { } towards
            ? Notch.Cut(outline, stop, towards, seat.Opening) is { } slotted ? RoundMouth(slotted) : null
            : outline;
        if (outline is null || bolts.Any(b => !outline.Contains(b.Centre) || outline.DistanceTo(b.Centre) < b.Diameter / 2 + Tolerance.Point))
        {
            return null; // Not to be drawn, or the slot runs into a bolt.
        }

        List<BracketHole> holes = [.. bolts, stopHole];
        var flat = new FlatPattern
        {
            Blank = new(outline, holes.Where(h => !h.IsSlot).Select(h => Contour.Circle(h.Centre, h.Diameter / 2))),
            Thickness = thickness,
            Bends = [.. bends],
        };
        return new()
        {
            Stock = choice.Stock,
            Die = last > 0 ? choice.Die : null,
            Folded = new(flat, mountFrame),
            Holes = [.. holes],
            Seat = seat,
            SeatOnTop = seatOnTop,
        };
    }

    /// <summary>An outline with the stop's slot cut into it; itself where the stop is a hole, null where the slot cannot be cut.</summary>
    internal static Contour? WithSlot(Contour outline, BracketHole stop) => stop.Towards is not { } towards
        ? outline
        : Notch.Cut(outline, stop.Centre, towards, stop.Diameter) is { } slotted ? RoundMouth(slotted) : null;

    // The two sharp corners where an open slot meets the edge; the cut puts the slot's three pieces last.
    private static Contour RoundMouth(Contour slotted)
    {
        foreach (var back in new[] { 1, 4 })
        {
            for (var radius = MouthRadius; radius > MouthRadius / 5; radius /= 2)
            {
                var index = slotted.Segments.Length - back - (back == 4 ? 1 : 0);
                if (index >= 0 && Fillet.Round(slotted, index, radius) is { } rounded)
                {
                    slotted = rounded;
                    break;
                }
            }
        }

        return slotted;
    }

    /// <summary>Radius (mm) at the mouth of a slot: what a hand does not cut itself on (common practice, no source).</summary>
    private const double MouthRadius = 1;

    private static BracketHole BoltHole(MountHole hole, int index, Vector2 centre)
    {
        return new(
            ((char)('A' + index)).ToString(), HolePurpose.Bolt, 0, centre, hole.Thread.ClearanceMedium, null, hole.Thread,
            BoltMetalRadius(hole));
    }

    /// <summary>Radius of metal (mm) wanted around a bolt hole: its boss, its washer with a millimetre to spare, its edge distance.</summary>
    public static double BoltMetalRadius(MountHole hole) => Math.Max(
        Math.Max(hole.BossDiameter / 2, hole.Thread.WasherDiameter / 2 + 1),
        HoleDistances.CentreToEdge(hole.Thread.ClearanceMedium));

    private static BracketHole StopHole(
        StopSeat seat, int flange, Vector2 centre, List<BracketHole> bolts, List<Bend> bends, double thickness)
    {
        // A slot opens away from what holds the flange: across the bend, or clear of the bolts on a plate.
        Vector2? towards = !seat.IsSlot ? null : bends.Count > 0 ? bends[^1].Across : ClearOf(bolts, centre);
        var name = ((char)('A' + bolts.Count)).ToString();
        return new(name, HolePurpose.Stop, flange, centre, seat.Opening, towards, null, seat.MetalRadius(thickness));
    }

    private static Vector2 ClearOf(List<BracketHole> bolts, Vector2 from)
    {
        double Room(Vector2 way) => bolts.Min(b =>
        {
            var to = b.Centre - from;
            var along = Math.Max(0, to.Dot(way));
            return (to - along * way).Length - b.MetalRadius;
        });
        return Enumerable.Range(0, 24).Select(i => Vector2.FromPolar(1, Angle.FromDegrees(15 * i))).MaxBy(Room);
    }

    // How long a bend is: from as long as what hangs behind it to as long as all beside it. A middle flange holds nothing of its
    // own; it carries the stop, and stands on the bend before it.
    private static (double From, double To) ExtentOf(
        Joint joint, List<Disc> before, List<Disc> behind, Bend? previous, Joint? next, List<Disc> stop, double width)
    {
        var near = before.Count > 0 ? SpanOf(before, joint.Along) : SpanOf([previous!.Start, previous.End], joint.Along);
        var far = behind.Count > 0 ? SpanOf(behind, joint.Along) : near;
        if (behind.Count == 0 && next is not null && Math.Abs(next.Across.Dot(joint.Across)) > 0.5)
        {
            far = SpanOf(stop, joint.Along); // Parallel bends: the middle flange may be as narrow as the stop.
        }

        var (wideFrom, wideTo) = (Math.Min(near.From, far.From), Math.Max(near.To, far.To));
        return (far.From + width * (wideFrom - far.From), far.To + width * (wideTo - far.To));
    }

    private static (double From, double To) SpanOf(List<Disc> discs, Vector2 along) =>
        (discs.Min(d => d.Centre.Dot(along) - d.Radius), discs.Max(d => d.Centre.Dot(along) + d.Radius));

    private static (double From, double To) SpanOf(Vector2[] points, Vector2 along) =>
        (points.Min(p => p.Dot(along)), points.Max(p => p.Dot(along)));
}
