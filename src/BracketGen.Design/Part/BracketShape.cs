using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Shops;
using BracketGen.SheetMetal.Tooling;

namespace BracketGen.Design.Part;

/// <summary>Shapes a bracket: joints in space become a flat pattern with outline and holes.</summary>
public static class BracketShape
{
    /// <summary>What is chosen before a bracket can be shaped.</summary>
    /// <param name="Sheet">The sheet and the face it is bolted to.</param>
    /// <param name="Placement">Where the outer's seat must be.</param>
    /// <param name="Die">The die; null for a flat plate.</param>
    public sealed record Choice(SheetOnMount Sheet, StopPlacement Placement, PressBrakeDie? Die)
    {
        /// <summary>The sheet.</summary>
        public Stock Stock => Sheet.Stock;

        /// <summary>Inside radius of its bends (mm): what the die gives in this sheet, or the bar or clamp it is bent over.</summary>
        public double InsideRadius { get; init; } = Die?.InsideRadiusIn(Sheet.Stock.Material.BendGroup) ?? double.NaN;

        /// <summary>The second mount flange; null where the mount has no second face, and where it cannot be made.</summary>
        public SecondFlange? Second { get; init; }

        /// <summary>The press brake whose back gauge the bends are placed by.</summary>
        public PressBrake Press { get; init; } = new();
    }

    /// <summary>Farthest that any part of a bracket reaches from its first bolt in the flat (mm): beyond it, something else holds a cable.</summary>
    private const double MostReach = 400;

    /// <summary>Straight edge beside a bend (mm) for a thickness: long enough to round a corner in, so that no relief is needed.</summary>
    public static double StraightBesideBend(double thickness) => Math.Max(3, 1.5 * thickness);

    /// <summary>Width (mm) of the relief cut beside a flange that is bent from between bolts: no narrower than what any process cuts clean (common practice, no source).</summary>
    public static double ReliefWidth(double thickness) => Math.Max(2, 1.5 * thickness);

    /// <summary>The stop slab's bottom: the seat is its top face, or its bottom face with the top the other way.</summary>
    public static Plane StopBottom(StopPlacement placement, double thickness, bool seatOnTop) => seatOnTop
        ? new((placement.Seat - thickness * placement.Direction).Vector, placement.Direction)
        : new(placement.Seat.Vector, -placement.Direction);

    /// <summary>The bracket over the given joints; null where it has no outline.</summary>
    /// <param name="choice">What was chosen before.</param>
    /// <param name="joints">The bends from mount to stop, none for a flat plate.</param>
    /// <param name="seatOnTop">Whether the seat is on the top of the sheet.</param>
    /// <param name="widths">
    /// For each bend, 0 (as narrow as what lies behind it) to 1 (as wide as everything beside it); above 1 it is a wider neck, as many times as long.
    /// </param>
    public static Bracket? Make(Choice choice, IReadOnlyList<Joint> joints, bool seatOnTop, IReadOnlyList<double> widths) =>
        Sketch(choice, joints, seatOnTop, widths) is { } draft ? Finish(draft) : null;

    /// <summary>The first half of <see cref="Make"/>: all but the outline; null where it would reach too far.</summary>
    internal static BracketDraft? Sketch(Choice choice, IReadOnlyList<Joint> joints, bool seatOnTop, IReadOnlyList<double> widths)
    {
        var sheet = choice.Sheet;
        var last = joints.Count;
        var stop = (last == 0 ? sheet.Frame : joints[^1].Next).ToFlat(choice.Placement.Seat);
        if (stop.Vector.Length > MostReach || sheet.BoltMetal.Any(d => d.Centre.Length > MostReach)
            || sheet.Mount.Second is not null && (choice.Second is null || choice.Second.Metal.Any(d => d.Centre.Length > MostReach)))
        {
            return null;
        }

        var discs = new IReadOnlyList<Disc>[last + 1 + (choice.Second is null ? 0 : 1)];
        Array.Fill(discs, []);
        var stopMetal = new Disc(stop.Vector, sheet.StopMetalRadius);
        discs[0] = last == 0 ? [.. sheet.BoltMetal, stopMetal] : sheet.BoltMetal;
        if (last > 0)
        {
            discs[last] = [stopMetal];
        }

        var bends = new Bend[discs.Length - 1];
        if (choice.Second is { } second)
        {
            (bends[last], discs[last + 1]) = (second.BendTo(last + 1), second.Metal);
        }

        for (var i = 0; i < last; i++)
        {
            var (from, to) = ExtentOf(
                joints[i], discs[i], discs[i + 1], i > 0 ? bends[i - 1] : null, i + 1 < last ? joints[i + 1] : null, stopMetal, widths[i]);
            bends[i] = joints[i].ToBend(i, from, to);
            if (bends[i].Length > MostReach || bends[i].Start.Vector.Length > MostReach)
            {
                return null;
            }
        }

        discs[last] = [.. discs[last], .. MouthMetal(sheet, stop, last > 0 ? bends[last - 1].Across : null)];
        BendMetal.Add(discs, bends, last, choice);
        return new()
        {
            Choice = choice,
            Joints = joints,
            Discs = discs,
            Bends = bends,
            Stop = stop,
            SeatOnTop = seatOnTop,
        };
    }

    /// <summary>The bracket with a flange that stands in a notch between bolts, or beside one; null where it has no outline.</summary>
    /// <param name="choice">What was chosen before.</param>
    /// <param name="joint">The bend.</param>
    /// <param name="seatOnTop">Whether the seat is on the top of the sheet.</param>
    /// <param name="isWide">Whether the bend is as long as the bolts leave room for, or as narrow as the stop's metal.</param>
    public static Bracket? MakeNotched(Choice choice, Joint joint, bool seatOnTop, bool isWide) =>
        SketchNotched(choice, joint, seatOnTop, isWide) is { } draft ? Finish(draft) : null;

    /// <summary>
    /// A flange bent from between the bolts, or beside one: where the bend's line has bolts beyond it, the mount flange keeps wings round those, and the flange
    /// stands in a notch between them. Null where a bolt is in the way.
    /// </summary>
    /// <param name="choice">What was chosen before.</param>
    /// <param name="joint">The bend.</param>
    /// <param name="seatOnTop">Whether the seat is on the top of the sheet.</param>
    /// <param name="isWide">Whether the bend is as long as the bolts leave room for, or as narrow as the stop's metal.</param>
    internal static BracketDraft? SketchNotched(Choice choice, Joint joint, bool seatOnTop, bool isWide)
    {
        var (sheet, along) = (choice.Sheet, joint.Along);
        var relief = ReliefWidth(sheet.Stock.Thickness);
        var stop = joint.Next.ToFlat(choice.Placement.Seat);
        var stopMetal = new Disc(stop.Vector, sheet.StopMetalRadius);
        var (from, to) = SpanOf(stopMetal, along);
        if (stop.Vector.Length > MostReach || sheet.BoltMetal.Any(d => d.Centre.Length > MostReach) || sheet.Mount.Second is not null)
        {
            return null;
        }

        // The room between the wings; without a wing, as far as the bolts before the line reach.
        double leftWing = double.NegativeInfinity, rightWing = double.PositiveInfinity, low = from, high = to;
        foreach (var bolt in sheet.BoltMetal)
        {
            var (near, far) = SpanOf(bolt, along);
            if ((bolt.Centre - joint.Point.Vector).Dot(joint.Across) + bolt.Radius <= -sheet.Straight + Tolerance.OnLimit)
            {
                (low, high) = (Math.Min(low, near), Math.Max(high, far));
            }
            else if (near >= to + relief)
            {
                rightWing = Math.Min(rightWing, near - relief);
            }
            else if (far <= from - relief)
            {
                leftWing = Math.Max(leftWing, far + relief);
            }
            else
            {
                return null;
            }
        }

        if (isWide)
        {
            var wide = (From: Math.Max(leftWing, low), To: Math.Min(rightWing, high));
            if (from - wide.From < DesignTolerance.SamePlace && wide.To - to < DesignTolerance.SamePlace)
            {
                return null; // As narrow as the other.
            }

            (from, to) = wide;
        }

        var bend = joint.ToBend(0, from, to) with { Relief = relief };

        if (bend.Length > MostReach || bend.Start.Vector.Length > MostReach)
        {
            return null;
        }

        // With no bolt behind the bend, enough metal all the same to clamp it.
        const double round = BendMetal.Corner;
        var behind = sheet.Straight + 2 * round;
        Disc RootAt(FlatPoint end, double inwards) => new((end + inwards * round * bend.Along - (behind - round) * bend.Across).Vector, round);
        IReadOnlyList<Disc>[] discs = [[.. sheet.BoltMetal, RootAt(bend.Start, 1), RootAt(bend.End, -1)], [stopMetal, .. MouthMetal(sheet, stop, bend.Across)]];
        Bend[] bends = [bend];
        BendMetal.Add(discs, bends, 1, choice);
        return new()
        {
            Choice = choice,
            Joints = [joint],
            Discs = discs,
            Bends = bends,
            Stop = stop,
            SeatOnTop = seatOnTop,
        };
    }

    /// <summary>The second half of <see cref="Make"/>: the outline; null where it cannot be drawn.</summary>
    internal static Bracket? Finish(BracketDraft draft)
    {
        var sheet = draft.Choice.Sheet;
        var stopFlange = draft.Joints.Count;
        var stopHole = StopHole(sheet, stopFlange, draft.Stop, stopFlange > 0 ? draft.Bends[stopFlange - 1].Across : null);
        ImmutableArray<BracketHole> bolts = [.. sheet.Bolts, .. draft.SecondBolts];
        var outline = draft.SecondIsApart ? BlankOutline.Draw(draft.Bends, draft.Discs, sheet.Straight, sheet.Preferences.CornerRadius) : null;
        outline = outline is not null && !OpensOverSecond(draft, outline, stopHole) ? WithSlot(outline, stopHole) : null;
        if (outline is null || bolts.Any(b => !outline.Contains(b.Centre.Vector) || b.ToEdge(outline) < b.Beside + Tolerance.Point))
        {
            return null; // Not to be drawn, or the slot runs into a bolt.
        }

        ImmutableArray<BracketHole> holes = [.. bolts, stopHole];
        var flat = new FlatPattern
        {
            Blank = new(outline, holes.Where(h => !h.IsSlot).Select(h => h.Cut())),
            Thickness = sheet.Stock.Thickness,
            Bends = [.. draft.Bends],
        };
        return new()
        {
            Stock = sheet.Stock,
            Die = draft.Bends.Length == 0 ? null : draft.Choice.Die,
            Folded = new(flat, sheet.Frame),
            Holes = holes,
            Seat = sheet.Seat,
            SeatOnTop = draft.SeatOnTop,
        };
    }

    // Whether a slot in the mount flange would run across the bend of the second one, or into the straight edge beside it.
    private static bool OpensOverSecond(BracketDraft draft, Contour outline, BracketHole stop) =>
        draft.Choice.Second is not null && stop is { Flange: 0, Towards: { } towards }
        && outline.Segments.SelectMany(s => s.CrossingsWithLine(stop.Centre.Vector, towards)).Where(c => c.Along > 0).Select(c => c.Along).DefaultIfEmpty(0).Min() is var reach
        && draft.Bends[draft.Joints.Count].Depth(stop.Centre + reach * towards) > -draft.Choice.Sheet.Straight - Tolerance.OnLimit;

    /// <summary>An outline with the stop's slot cut into it; itself where the stop is a hole, null where the slot cannot be cut.</summary>
    internal static Contour? WithSlot(Contour outline, BracketHole stop) => stop.Towards is not { } towards
        ? outline
        : Notch.Cut(outline, stop.Centre.Vector, towards, stop.Diameter) is { } slotted ? RoundMouth(slotted) : null;

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

    internal static BracketHole BoltHole(MountHole hole, int index, FlatPoint centre, Stock stock, SlottedHole? slot) => new(
        MountFace.HoleName(index), HolePurpose.Bolt, 0, centre, hole.Clearance + stock.Material.Finish.HoleAllowance, null, hole.Thread,
        Math.Max(BoltMetalRadius(hole, stock.Thickness), slot is null ? 0 : HoleDistances.RoundSlot(hole.Clearance + stock.Material.Finish.HoleAllowance)))
    {
        Fixing = hole.Fixing,
        SpacerLength = hole.SpacerLength,
        Outline = slot,
    };

    /// <summary>Radius of metal (mm) wanted around a bolt hole: its boss, its washer with a millimetre to spare, its edge distance.</summary>
    public static double BoltMetalRadius(MountHole hole, double thickness) => Math.Max(
        Math.Max(hole.BossDiameter / 2, hole.Thread.WasherDiameter / 2 + 1),
        HoleDistances.AcrossForce(hole.Clearance, thickness));

    /// <summary>
    /// The metal beside the mouth of an open slot (mm): the flange ends square there, with a shoulder on either side as wide as the metal round the stop, and not in two
    /// pointed horns. Empty for a hole.
    /// </summary>
    internal static IEnumerable<Disc> MouthMetal(SheetOnMount sheet, FlatPoint stop, Vector2? acrossBend)
    {
        if (!sheet.Seat.IsSlot)
        {
            yield break;
        }

        var towards = SlotWay(sheet, stop, acrossBend);
        var round = Math.Clamp(sheet.StopMetalRadius - sheet.Seat.Opening / 2 - MouthRadius, MouthRadius, BendMetal.Corner);
        Vector2 outwards = (sheet.StopMetalRadius - round) * towards, aside = outwards.Left;
        yield return new((stop + outwards + aside).Vector, round);
        yield return new((stop + outwards - aside).Vector, round);
    }

    // A slot opens away from what holds the flange: across the bend, or clear of the bolts on a plate.
    private static Vector2 SlotWay(SheetOnMount sheet, FlatPoint centre, Vector2? acrossBend) => acrossBend ?? ClearOf(sheet.Bolts, centre);

    private static BracketHole StopHole(SheetOnMount sheet, int flange, FlatPoint centre, Vector2? acrossBend)
    {
        Vector2? towards = sheet.Seat.IsSlot ? SlotWay(sheet, centre, acrossBend) : null;
        return new(MountFace.HoleName(sheet.Bolts.Length + sheet.SecondBolts.Length), HolePurpose.Stop, flange, centre, sheet.Seat.Opening, towards, null, sheet.StopMetalRadius)
        {
            Outline = sheet.Seat.Outline is { } outline ? outline with { Along = acrossBend ?? outline.Along } : null,
        };
    }

    private static Vector2 ClearOf(ImmutableArray<BracketHole> bolts, FlatPoint from)
    {
        double Room(Vector2 way) => bolts.Min(b =>
        {
            var to = b.Centre - from;
            var along = Math.Max(0, to.Dot(way));
            return (to - along * way).Length - b.MetalRadius - b.HalfTravel.Length;
        });
        // Of ways that leave the same room but for round-off the first one counts, so that a job turned gets the same bracket.
        Vector2[] ways = [.. Enumerable.Range(0, 24).Select(i => Vector2.FromPolar(1, Angle.FromDegrees(15 * i)))];
        var most = ways.Max(Room) - Tolerance.OnLimit;
        return ways.First(w => Room(w) >= most);
    }

    // How long a bend is: from as long as what hangs behind it to as long as all beside it. A middle flange holds nothing of its
    // own; it carries the stop, and stands on the bend before it.
    private static (double From, double To) ExtentOf(
        Joint joint, IReadOnlyList<Disc> before, IReadOnlyList<Disc> behind, Bend? previous, Joint? next, Disc stop, double width)
    {
        var along = joint.Along;
        var near = before.Count > 0 ? SpanOf(before, along) : SpanOf(previous!, along);
        var far = behind.Count > 0 ? SpanOf(behind, along) : near;
        if (behind.Count == 0 && next is not null && Math.Abs(next.Across.Dot(joint.Across)) > 0.5)
        {
            far = SpanOf(stop, along); // Parallel bends: the middle flange may be as narrow as the stop.
        }

        var (wideFrom, wideTo) = (Math.Min(near.From, far.From), Math.Max(near.To, far.To));
        var part = Math.Min(1, width);
        var more = (width - part) * (wideTo - wideFrom) / 2;
        return (far.From + part * (wideFrom - far.From) - more, far.To + part * (wideTo - far.To) + more);
    }

    private static (double From, double To) SpanOf(IReadOnlyList<Disc> discs, Vector2 along)
    {
        var span = SpanOf(discs[0], along);
        for (var i = 1; i < discs.Count; i++)
        {
            var (from, to) = SpanOf(discs[i], along);
            span = (Math.Min(span.From, from), Math.Max(span.To, to));
        }

        return span;
    }

    private static (double From, double To) SpanOf(Disc disc, Vector2 along)
    {
        var middle = disc.Centre.Dot(along);
        return (middle - disc.Radius, middle + disc.Radius);
    }

    private static (double From, double To) SpanOf(Bend bend, Vector2 along)
    {
        double start = bend.Start.Vector.Dot(along), end = bend.End.Vector.Dot(along);
        return (Math.Min(start, end), Math.Max(start, end));
    }
}
