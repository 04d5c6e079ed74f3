using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Design.Checks;

/// <summary>The checks of an adapter ring that no bracket changes, and what of it stands in the way.</summary>
public static class RingChecks
{
    /// <summary>Distance of the bracket from the head and washer of a flange bolt (mm; common practice, no source): they do not touch where every place is off.</summary>
    public const double LeastHeadRoom = 1;

    /// <summary>The checks; none where the mount has no ring.</summary>
    /// <param name="mount">The mount.</param>
    public static IEnumerable<Check> Of(MountFace mount)
    {
        if (RingShape.Of(mount) is not { } shape || mount.Ring is not { } ring)
        {
            yield break;
        }

        yield return shape.Holes.Select(h => new Check(CheckId.RingHoleEdge, ToEdge(shape, h), HoleDistances.AcrossForce(h.Diameter, ring.Thickness)) { Subject = h.Name }).MinBy(c => c.Margin)!;
        yield return new(CheckId.RingBore, shape.Bore.Radius - shape.ShiftAt(new(shape.Bore.Centre)) - shape.HolePosition, ring.BoreRadius);
        var screws = Screws(mount);
        yield return screws.Select(s => new Check(CheckId.RingBoltEngagement, s.Screw.Engagement, MountScrew.LeastEngagement * s.Bolt.Thread.Diameter) { Subject = s.Name }).MinBy(c => c.Margin)!;

        // Farther in than today, a bolt may bottom.
        if (screws.Where(s => s.Screw.Engagement > s.Bolt.Engagement).Select(s => new Check(CheckId.RingBoltDepth, s.Bolt.ThreadDepth ?? double.NaN, s.Screw.ThreadNeeded) { Subject = s.Name }).ToArray() is { Length: > 0 } deeper)
        {
            yield return deeper.MinBy(c => double.IsNaN(c.Value) ? double.NegativeInfinity : c.Margin)!;
        }

        yield return ToolRoom(mount, shape);
    }

    /// <summary>The flange bolts with the screws that they are with the ring.</summary>
    public static ImmutableArray<(string Name, FlangeBolt Bolt, MountScrew Screw)> Screws(MountFace mount) => mount.Ring is { } ring
        ? [.. ring.Bolts.Select((b, i) => (AdapterRing.BoltName(i), b, ring.ScrewFor(b, mount)))]
        : [];

    /// <summary>The ring's sheet; null where there is no ring.</summary>
    internal static KeepOut? Plate(MountFace mount) => RingShape.Of(mount) is { } shape ? new RingPlate(shape.Frame, shape.Blank.Outline, shape.Ring.Thickness) : null;

    /// <summary>The heads of the flange bolts on the ring, with their washers; none where there is no ring.</summary>
    internal static IEnumerable<KeepOutCylinder> Heads(MountFace mount) => mount.Ring is not { } ring ? [] : ring.Bolts.Select((b, i) =>
    {
        var seat = mount.Plane.FootOf(b.At.Vector);
        return new KeepOutCylinder(
            AdapterRing.BoltName(i), new(seat), new(seat + (b.Thread.HeadHeight + b.Thread.WasherThickness) * mount.Plane.Normal), b.Thread.WasherDiameter / 2);
    });

    // To the outline, the bore, or another hole.
    private static double ToEdge(RingShape shape, RingHole hole) => shape.Blank.Contours
        .Where(c => c.Perimeter > Math.PI * hole.Diameter + Tolerance.Point || c.Bounds.Centre.DistanceTo(hole.Centre.Vector) > Tolerance.SameSize)
        .Min(c => c.DistanceTo(hole.Centre.Vector));

    // A socket on a bolt of the bracket beside the head of a flange bolt.
    private static Check ToolRoom(MountFace mount, RingShape shape)
    {
        var bolts = shape.Holes.Where(h => h.Purpose == RingHolePurpose.Flange).ToArray();
        return mount.Holes.Select((hole, i) => (Hole: shape.Holes[i], Socket: hole.Thread.SocketFor(hole.Fixing.AcrossFlats(hole.Thread)) / 2))
            .SelectMany(h => bolts.Select(b => new Check(CheckId.RingToolRoom, h.Hole.Centre.DistanceTo(b.Centre) - b.Thread.WasherDiameter / 2, h.Socket) { Subject = $"{h.Hole.Name}, {b.Name}" }))
            .MinBy(c => c.Margin)!;
    }
}
