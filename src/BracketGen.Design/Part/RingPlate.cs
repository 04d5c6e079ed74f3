using BracketGen.Design.Inputs;
using BracketGen.Geometry;

namespace BracketGen.Design.Part;

/// <summary>The space of an adapter ring's sheet, its bore and holes filled.</summary>
/// <param name="Top">The frame of its top, z out of it.</param>
/// <param name="Outline">Its outline, convex (mm).</param>
/// <param name="Thickness">Its thickness (mm).</param>
internal sealed record RingPlate(Frame Top, Contour Outline, double Thickness) : KeepOut("")
{
    // An arc of the outline is looked at in chords that miss it by a hundredth of a millimetre at the most: 4° of 15 mm.
    private const double Chord = Math.PI / 45;

    /// <inheritdoc/>
    public override double DistanceTo(ThrottlePoint point)
    {
        var local = Top.ToLocal(point.Vector);
        var away = Outline.DistanceTo(local.XY);
        var beside = Outline.Contains(local.XY) ? -away : away;
        var past = Math.Max(local.Z, -Thickness - local.Z);
        return Math.Min(Math.Max(beside, past), 0) + new Vector2(Math.Max(beside, 0), Math.Max(past, 0)).Length;
    }

    /// <inheritdoc/>
    public override ConvexSolid Solid => ConvexSolid.Plate(Top, [.. Outline.Segments.SelectMany(Corners)], -Thickness, 0);

    /// <inheritdoc/>
    public override KeepOut Mirrored() => new RingPlate(Top.Mirrored(), Outline.MirroredInX, Thickness);

    private static IEnumerable<Vector2> Corners(Segment segment)
    {
        var pieces = segment is ArcSegment arc ? (int)Math.Ceiling(arc.Sweep.Magnitude.Radians / Chord) : 1;
        return Enumerable.Range(0, pieces).Select(i => segment.PointAt((double)i / pieces));
    }
}
