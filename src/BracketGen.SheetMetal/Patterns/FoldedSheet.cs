using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;

namespace BracketGen.SheetMetal.Patterns;

/// <summary>A flat pattern formed and put in its place.</summary>
/// <remarks>
/// Heights run from 0 (bottom of the sheet: the face against the mount) to the thickness (top). Throttle frame, mm.
/// </remarks>
public sealed class FoldedSheet : IMirrored<FoldedSheet>
{
    // The axis of the bend that carries each flange.
    private readonly (ThrottlePoint Point, Vector3 Direction)[] _axes;

    /// <summary>Folds <paramref name="flat"/> with its mount flange lying in <paramref name="mount"/> (flat coordinates to throttle frame).</summary>
    public FoldedSheet(FlatPattern flat, Frame mount)
    {
        Flat = flat;
        var flanges = new Frame[flat.FlangeCount];
        flanges[0] = mount;
        _axes = new (ThrottlePoint, Vector3)[flat.FlangeCount];
        foreach (var bend in flat.Bends)
        {
            var (point, axis) = _axes[bend.To] = AxisOf(bend, flanges[bend.From]);
            flanges[bend.To] = flanges[bend.From].Shift(Vector3.From(-bend.Allowance * bend.Across)).Rotate(point.Vector, axis, bend.Turn);
        }

        Flanges = [.. flanges];
    }

    /// <summary>The flat pattern.</summary>
    public FlatPattern Flat { get; }

    /// <summary>Where each flange lies: flat coordinates and height to the throttle frame.</summary>
    public ImmutableArray<Frame> Flanges { get; }

    /// <summary>Where a flat point at a height in the sheet comes to lie (mm).</summary>
    public ThrottlePoint Fold(FlatPoint flat, double height)
    {
        var (flange, bend) = Flat.ZoneOf(flat);
        if (bend is null)
        {
            return Flanges[flange].ToThrottle(flat, height);
        }

        // Within the bend the strip rolls up evenly: its near edge is carried round the axis in proportion to the depth.
        var depth = bend.Depth(flat);
        var (point, axis) = _axes[bend.To];
        var edge = Flanges[flange].ToThrottle(flat - depth * bend.Across, height);
        return point + (edge - point).Rotate(axis, depth / bend.Allowance * bend.Turn);
    }

    /// <summary>Direction of the sheet's top at a flat point, length one.</summary>
    public Vector3 TopAt(FlatPoint flat) => (Fold(flat, 1) - Fold(flat, 0)).Unit;

    /// <summary>Axis of a bend in place: a point of it (mm) and its direction (length one), about which the bend turns.</summary>
    public (ThrottlePoint Point, Vector3 Direction) AxisOf(Bend bend) => AxisOf(bend, Flanges[bend.From]);

    private (ThrottlePoint Point, Vector3 Direction) AxisOf(Bend bend, Frame flange)
    {
        var height = bend.IsUp ? Flat.Thickness + bend.InsideRadius : -bend.InsideRadius;
        var axis = Vector3.From(bend.Across).Cross(new(0, 0, 1));
        return (flange.ToThrottle(bend.Start, height), flange.ToWorldDirection(axis));
    }

    /// <inheritdoc/>
    /// <remarks>The flat pattern is mirrored in its own y axis with it.</remarks>
    public FoldedSheet Mirrored() => new(Flat.Mirrored(), Flanges[0].Mirrored());
}
