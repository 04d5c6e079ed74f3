using BracketGen.Geometry;

namespace BracketGen.Design.Inputs;

/// <summary>A flat face at an angle to the mount face that takes bolts of the bracket too.</summary>
/// <param name="Plane">The face; its normal points out of the part that it belongs to.</param>
public sealed record SecondFace(Plane Plane) : IMirrored<SecondFace>
{
    /// <summary>Radius (mm) of what is between the two faces: of the fillet in an inside corner, of the rounded edge on an outside one; null where nobody measured it.</summary>
    public double? CornerRadius { get; init; }

    /// <summary>
    /// Gap (mm) that may be left at either edge of a washer under the second mount flange, offered up and bent to its face: the thinnest blade of a usual set of feeler gauges, which must not go
    /// in (common practice, no source). The bolts draw it down.
    /// </summary>
    public const double LeftGap = 0.05;

    /// <summary>Gap (mm) that shims fill where the play of the bolts does not take it up (common practice, no source).</summary>
    public const double MostShim = 1;

    /// <summary>Along the line where the faces meet, length one.</summary>
    /// <param name="mount">The mount face.</param>
    public Vector3 Along(Plane mount) => mount.Normal.Cross(Plane.Normal).Unit;

    /// <summary>Bend angle from the one face to the other.</summary>
    /// <param name="mount">The mount face.</param>
    public Angle Turn(Plane mount) => new(Math.Atan2(mount.Normal.Cross(Plane.Normal).Length, mount.Normal.Dot(Plane.Normal)));

    /// <summary>How far (mm) a point of either face lies from the line where the faces meet.</summary>
    /// <param name="mount">The mount face.</param>
    /// <param name="point">A point of one of the faces.</param>
    public double FromLine(Plane mount, ThrottlePoint point)
    {
        var sin = mount.Normal.Cross(Plane.Normal).Length;
        return Math.Max(Math.Abs(mount.HeightOf(point.Vector)), Math.Abs(Plane.HeightOf(point.Vector))) / sin;
    }

    /// <inheritdoc/>
    public SecondFace Mirrored() => this with { Plane = Plane.Mirrored() };
}
