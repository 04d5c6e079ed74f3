using BracketGen.Design.Inputs;
using BracketGen.Geometry;

namespace BracketGen.Design.Part;

/// <summary>The mount face's own frame: origin at the first hole, x along the line to the second, z out of the casting.</summary>
/// <remarks>The mount flange lies in it before any bend, its top away from the casting: there flat pattern and face have the same coordinates.</remarks>
/// <param name="Frame">Where it lies in the throttle frame.</param>
public readonly record struct MountFrame(Frame Frame)
{
    /// <summary>The frame of <paramref name="mount"/>; with one hole only, the throttle shaft decides where x points.</summary>
    public static MountFrame Of(MountFace mount)
    {
        var normal = mount.Plane.Normal;
        var holes = mount.OwnHoles;
        var origin = mount.Plane.FootOf(holes[0].At.Vector);

        // Along the holes where there are two, so that a drawing's x runs along the bolt line.
        var along = holes.Length > 1 ? mount.Plane.FootOf(holes[1].At.Vector) - origin : Vector3.Zero;
        if (along.Length < 1)
        {
            // Square to the throttle shaft where the face is not, else straight away from it: so the frame turns with the throttle body about its shaft.
            var away = Vector3.From(origin.XY);
            along = Math.Abs(normal.Z) < 0.9 ? new Vector3(0, 0, 1).Cross(normal) : away.Length < 1 ? new Vector3(1, 0, 0) : away;
        }

        return new(Frame.FromZX(origin, normal, along));
    }

    /// <summary>The foot of a point on the face.</summary>
    public FacePoint ToFace(ThrottlePoint point) => new(Frame.ToLocal(point.Vector).XY);

    /// <summary>Where a point of the face lies.</summary>
    public ThrottlePoint ToThrottle(FacePoint point) => new(Frame.ToWorld(point.Vector));

    /// <summary>The point of the flat pattern that comes to lie on a point of the face: the mount flange is not bent.</summary>
    public static FlatPoint ToFlat(FacePoint point) => new(point.Vector);
}
