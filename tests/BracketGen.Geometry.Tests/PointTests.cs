using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Geometry.Tests;

/// <summary>Points that know their frame: the same numbers as the bare vectors, and only named ways from one frame to another.</summary>
public class PointTests
{
    private static readonly Gen<Vector3> Any = Gen.Select(Gen.Double[-500, 500], Gen.Double[-500, 500], Gen.Double[-500, 500], (x, y, z) => new Vector3(x, y, z));

    private static readonly Gen<Frame> Frames = Gen.Select(Any, Any, Any)
        .Where(v => v.Item2.Cross(v.Item3).Length > 1)
        .Select(v => Frame.FromZX(v.Item1, v.Item2, v.Item3));

    [Fact]
    public void A_point_counts_like_its_vector() => Gen.Select(Any, Any).Check(200, t =>
    {
        var (a, b) = t;
        Assert.Equal(a.XY + b.XY, (new FlatPoint(a.XY) + b.XY).Vector);
        Assert.Equal(a.XY - b.XY, (new FlatPoint(a.XY) - b.XY).Vector);
        Assert.Equal(a.XY - b.XY, new FlatPoint(a.XY) - new FlatPoint(b.XY));
        Assert.Equal((a.X, a.Y, a.XY.ToString()), (new FacePoint(a.XY).X, new FacePoint(a.XY).Y, new FacePoint(a.XY).ToString()));
        Assert.Equal(a.XY.DistanceTo(b.XY), new FacePoint(a.XY).DistanceTo(new(b.XY)));
        Assert.Equal(a + b, (new ThrottlePoint(a) + b).Vector);
        Assert.Equal(a - b, (new ThrottlePoint(a) - b).Vector);
        Assert.Equal(a - b, new ThrottlePoint(a) - new ThrottlePoint(b));
        Assert.Equal(a.XY.DistanceTo(b.XY), new FlatPoint(a.XY).DistanceTo(new(b.XY)));
        Assert.Equal(a.DistanceTo(b), new ThrottlePoint(a).DistanceTo(new(b)));
        Assert.Equal(0.5 * (a.XY + b.XY), FlatPoint.Middle(new(a.XY), new(b.XY)).Vector);
        Assert.Equal(0.5 * (a + b), ThrottlePoint.Middle(new(a), new(b)).Vector);
        Assert.Equal((a.X, a.Y, a.Z, a.ToString()), (new ThrottlePoint(a).X, new ThrottlePoint(a).Y, new ThrottlePoint(a).Z, new ThrottlePoint(a).ToString()));
        Assert.Equal(new ThrottlePoint(a), new ThrottlePoint(a).Mirrored().Mirrored());
    });

    [Fact]
    public void A_flat_part_comes_back_from_the_throttle_frame() => Gen.Select(Frames, Any).Check(500, t =>
    {
        var (frame, at) = t;
        FlatPoint flat = new(at.XY);
        Assert.Equal(0, frame.ToFlat(frame.ToThrottle(flat, at.Z)).DistanceTo(flat), 1e-9);

        // Square to the part nothing moves on it, and the height is the distance from its foot.
        Assert.Equal(Math.Abs(at.Z), frame.ToThrottle(flat, at.Z).DistanceTo(frame.ToThrottle(flat)), 1e-9);
    });

    // The image of a part in the plane y = 0 is the part mirrored in its own y axis.
    [Fact]
    public void The_mirror_image_of_a_flat_part_is_the_mirrored_part() => Gen.Select(Frames, Any).Check(500, t =>
    {
        var (frame, at) = t;
        FlatPoint flat = new(at.XY);
        Assert.Equal(0, frame.Mirrored().ToThrottle(flat.MirroredInX, at.Z).DistanceTo(frame.ToThrottle(flat, at.Z).Mirrored()), 1e-9);
    });
}
