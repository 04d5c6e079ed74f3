using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Design.Part;

/// <summary>The shape of an adapter ring: a smooth outline round a pad at each hole and a land round the bore.</summary>
/// <remarks>Flat coordinates are those of the mount face (<see cref="MountFrame"/>), seen from its top. The outline is convex: the shortest round all pads.</remarks>
/// <param name="Ring">The ring.</param>
/// <param name="Frame">The mount face's frame: its x and y on the ring's top, z out of it.</param>
/// <param name="Blank">Outline, bore and holes.</param>
/// <param name="Bore">The bore as it is cut.</param>
/// <param name="Holes">The holes: those of the bracket first, as the mount has them, then those of the flange bolts.</param>
public sealed record RingShape(AdapterRing Ring, Frame Frame, Region Blank, Disc Bore, ImmutableArray<RingHole> Holes)
{
    /// <summary>Width of metal left round the bore where no pad is wider (mm), or twice the thickness where that is more (our judgement, no source).</summary>
    public const double LeastLand = 8;

    /// <summary>Play that the bore has beside what it must stay clear of (mm; common practice, no source).</summary>
    public const double BorePlay = 0.5;

    // The bore is cut to a size that a rule reads (mm).
    private const double BoreStep = 0.5;

    /// <summary>The ring of a mount; null where it has none.</summary>
    public static RingShape? Of(MountFace mount)
    {
        if (mount.Ring is not { } ring)
        {
            return null;
        }

        var frame = MountFrame.Of(mount).Frame;
        var thickness = ring.Thickness;
        ImmutableArray<RingHole> holes =
        [
            .. mount.Holes.Select((h, i) => Hole(MountFace.HoleName(i), RingHolePurpose.Bracket, frame.ToFlat(h.At), h.Thread, DiameterOf(h), Math.Max(h.BossDiameter / 2, PadOf(h.Thread, DiameterOf(h), thickness)))),
            .. ring.Bolts.Select((b, i) => Hole(AdapterRing.BoltName(i), RingHolePurpose.Flange, frame.ToFlat(b.At), b.Thread, b.Thread.ClearanceMedium, PadOf(b.Thread, b.Thread.ClearanceMedium, thickness))),
        ];
        var centre = frame.ToFlat(ring.BoreCentre);
        var free = ring.BoreRadius + ShiftAt(ring, holes, centre) + Position(holes) + BorePlay;
        var bore = new Disc(centre.Vector, Math.Ceiling(free / BoreStep) * BoreStep);
        var outline = TangentOutline.Around([.. holes.Select(h => new Disc(h.Centre.Vector, h.PadRadius)), new(bore.Centre, bore.Radius + Math.Max(LeastLand, 2 * thickness))]);
        return new(ring, frame, new(outline, [Contour.Circle(bore.Centre, bore.Radius), .. holes.Select(h => Contour.Circle(h.Centre.Vector, h.Diameter / 2))]), bore, holes);
    }

    /// <summary>How far at worst a point of the ring lies off its place on the flange, along the face (mm): the flange bolts' play and the ± of their places.</summary>
    /// <remarks>The two bolts that are farthest apart lead it, as they lead a bracket (<see cref="SeatTolerances.OfBolts"/>).</remarks>
    public double ShiftAt(FlatPoint point) => ShiftAt(Ring, Holes, point);

    /// <summary>Limit deviation of the place of a hole in it (mm, either way): ISO 2768-1 m by the largest distance of two holes.</summary>
    public double HolePosition => Position(Holes);

    /// <summary>How the play of the flange bolts, their ±, and the sheet's thickness move a point fixed to the ring (mm): name, move for one millimetre, ±.</summary>
    internal IEnumerable<(string Name, Vector3 Move, double PlusMinus)> Moves(ThrottlePoint point)
    {
        var (one, other, play) = Leading(Ring, Holes);
        var (from, to) = (Frame.ToWorld(one.Vector), Frame.ToWorld(other.Vector));
        var distance = from.DistanceTo(to);
        yield return ("ring, along bolts", (to - from) / distance, play);
        yield return ("ring, across 1", 1 / distance * Frame.Z.Cross(point.Vector - to), play);
        yield return ("ring, across 2", -1 / distance * Frame.Z.Cross(point.Vector - from), play);
        yield return ("ring, thickness", Frame.Z, AdapterRing.ThicknessDeviation + Ring.Bolts.Max(b => b.PlusMinus.Along(Frame.Z)));
    }

    private static double ShiftAt(AdapterRing ring, ImmutableArray<RingHole> holes, FlatPoint point)
    {
        var (one, other, play) = Leading(ring, holes);
        return play * (1 + 2 * point.DistanceTo(FlatPoint.Middle(one, other)) / one.DistanceTo(other));
    }

    private static (FlatPoint One, FlatPoint Other, double Play) Leading(AdapterRing ring, ImmutableArray<RingHole> holes)
    {
        RingHole[] bolts = [.. holes.Where(h => h.Purpose == RingHolePurpose.Flange)];
        var (one, other) = bolts.SelectMany((a, i) => bolts.Skip(i + 1).Select(b => (One: a, Other: b))).MaxBy(p => p.One.Centre.DistanceTo(p.Other.Centre));
        var play = bolts.Max(b => (b.Diameter - b.Thread.Diameter) / 2) + Position(holes) + ring.Bolts.Max(b => Math.Max(b.PlusMinus.X, Math.Max(b.PlusMinus.Y, b.PlusMinus.Z)));
        return (one.Centre, other.Centre, play);
    }

    private static double Position(ImmutableArray<RingHole> holes) => GeneralTolerance.Linear(holes.Max(a => holes.Max(b => Math.Max(1, a.Centre.DistanceTo(b.Centre)))));

    private static RingHole Hole(string name, RingHolePurpose purpose, FlatPoint at, FastenerThread thread, double diameter, double pad) => new(name, purpose, at, thread, diameter, pad);

    /// <summary>Diameter (mm) that a mount hole of the ring is cut to: the plain hole, or the core of its thread, which is tapped after cutting.</summary>
    private static double DiameterOf(MountHole hole) => hole.Fixing is ThroughHole through ? through.Diameter : hole.Thread.Diameter - hole.Thread.Pitch;

    private static double PadOf(FastenerThread thread, double hole, double thickness) => Math.Max(thread.WasherDiameter / 2 + 1, HoleDistances.AcrossForce(hole, thickness));
}

/// <summary>What a hole of an adapter ring is for.</summary>
public enum RingHolePurpose
{
    /// <summary>A bolt of the bracket.</summary>
    Bracket,

    /// <summary>A flange bolt of the throttle body.</summary>
    Flange,
}

/// <summary>A hole of an adapter ring.</summary>
/// <param name="Name">H1 for a hole of the bracket, F1 for one of a flange bolt.</param>
/// <param name="Purpose">What it is for.</param>
/// <param name="Centre">Its centre (mm).</param>
/// <param name="Thread">The bolt's thread.</param>
/// <param name="Diameter">Diameter as it is cut (mm).</param>
/// <param name="PadRadius">Radius of the metal laid round it (mm).</param>
public sealed record RingHole(string Name, RingHolePurpose Purpose, FlatPoint Centre, FastenerThread Thread, double Diameter, double PadRadius);
