using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Geometry.Tests;

public class FrameTests
{
    private static readonly Gen<Vector3> Vector =
        Gen.Select(Gen.Double[-50, 50], Gen.Double[-50, 50], Gen.Double[-50, 50], (x, y, z) => new Vector3(x, y, z));

    private static readonly Gen<(Frame Frame, Vector3 P, Vector3 Q)> Case = Gen.Select(Vector, Vector, Vector, Vector, Vector)
        .Where(t => Apart(t.Item2, t.Item3) && Apart(t.Item5, t.Item3))
        .Select(t => (Frame.FromZX(t.Item1, t.Item2, t.Item3), t.Item4, t.Item5));

    private static bool Apart(Vector3 a, Vector3 b) => a.Cross(b).Length > 0.01 * a.Length * b.Length && a.Length > 0.01;

    private static void Same(Vector3 expected, Vector3 actual) =>
        Assert.True(expected.DistanceTo(actual) < 1e-9, $"{actual} is not {expected}.");

    [Fact]
    public void Frames_are_rigid_and_right_handed() => Case.Check(300, t =>
    {
        foreach (var f in new[] { t.Frame, t.Frame.MirroredInY, t.Frame.Shift(t.P), t.Frame.Rotate(t.P, t.Q.Unit, new(1.3)) })
        {
            Same(f.Z, f.X.Cross(f.Y));
            Assert.Equal(1, f.X.Length, 1e-12);
            Assert.Equal(1, f.Y.Length, 1e-12);
            Assert.Equal(0, f.X.Dot(f.Y), 1e-12);
            Assert.Equal(t.P.DistanceTo(t.Q), f.ToWorld(t.P).DistanceTo(f.ToWorld(t.Q)), 1e-9);
        }
    });

    [Fact]
    public void To_local_undoes_to_world() => Case.Check(300, t =>
    {
        Same(t.P, t.Frame.ToLocal(t.Frame.ToWorld(t.P)));
        Same(t.P, t.Frame.ToWorld(t.Frame.ToLocal(t.P)));
        Same(t.P, t.Frame.ToLocalDirection(t.Frame.ToWorldDirection(t.P)));
        Same(t.Frame.ToWorld(t.P), t.Frame.Shift(t.P).Origin);
    });

    [Fact]
    public void A_mirrored_frame_holds_the_mirrored_part() => Case.Check(300, t =>
    {
        Vector3 mirroredInOwnX = new(-t.P.X, t.P.Y, t.P.Z);
        Same(t.Frame.ToWorld(t.P).MirroredInY, t.Frame.MirroredInY.ToWorld(mirroredInOwnX));
    });

    [Fact]
    public void The_named_axes_are_where_they_were_asked_for() => Case.Check(100, t =>
    {
        var asked = t.Frame.X + 0.1 * t.Frame.Z;
        if (Apart(t.Q, asked))
        {
            var f = Frame.FromZX(t.P, t.Q, asked);
            Same(t.Q.Unit, f.Z);
            Assert.True(f.X.Dot(asked) > 0);
            Assert.Equal(0, f.Y.Dot(asked), 1e-9);
        }
    });

    /// <summary>Rodrigues' formula against the quaternions of System.Numerics (single precision).</summary>
    [Fact]
    public void Turning_agrees_with_quaternions() => Gen.Select(Vector, Vector, RandomShapes.Direction).Check(200, t =>
    {
        var axis = (t.Item1 + new Vector3(0, 0, 0.1)).Unit;
        var q = System.Numerics.Quaternion.CreateFromAxisAngle(
            new((float)axis.X, (float)axis.Y, (float)axis.Z), (float)t.Item3.Radians);
        var turned = System.Numerics.Vector3.Transform(new((float)t.Item2.X, (float)t.Item2.Y, (float)t.Item2.Z), q);
        Assert.True(t.Item2.Rotate(axis, t.Item3).DistanceTo(new(turned.X, turned.Y, turned.Z)) < 1e-3);
    });

    [Fact]
    public void A_turn_about_a_line_leaves_the_line() => Case.Check(100, t =>
    {
        var axis = t.Q.Unit;
        var onLine = t.P + 17 * axis;
        var turned = t.Frame.Rotate(t.P, axis, new(0.8));
        Same(onLine, turned.ToWorld(t.Frame.ToLocal(onLine)));
    });

    [Fact]
    public void Angles_between_directions_are_good_at_both_ends()
    {
        Vector3 x = new(1, 0, 0);
        Assert.Equal(1e-9, x.AngleTo(new(1, 1e-9, 0)).Radians, 1e-15);
        Assert.Equal(Math.PI, x.AngleTo(new(-2, 0, 0)).Radians, 1e-15);
        Assert.Equal(90, x.AngleTo(new(0, 0, 3)).Degrees, 1e-12);
    }

    [Fact]
    public void Planes_measure_height_along_the_normal() => Gen.Select(Vector, Vector, Vector).Check(100, t =>
    {
        Plane plane = new(t.Item1, t.Item2 + new Vector3(0, 0, 0.1));
        var foot = plane.FootOf(t.Item3);
        Assert.Equal(0, plane.HeightOf(foot), 1e-9);
        Assert.Equal(Math.Abs(plane.HeightOf(t.Item3)), foot.DistanceTo(t.Item3), 1e-9);
        Assert.Equal(3, plane.HeightOf(foot + 3 * plane.Normal), 1e-9);
        Assert.Equal(plane.HeightOf(t.Item3), plane.MirroredInY.HeightOf(t.Item3.MirroredInY), 1e-9);
    });

    [Fact]
    public void Directions_without_length_are_refused()
    {
        Assert.Throws<InvalidOperationException>(() => Frame.FromZX(Vector3.Zero, Vector3.Zero, new(1, 0, 0)));
        Assert.Throws<InvalidOperationException>(() => Frame.FromZX(Vector3.Zero, new(1, 0, 0), new(2, 0, 0)));
        Assert.Throws<InvalidOperationException>(() => new Plane(Vector3.Zero, Vector3.Zero));
        Assert.Throws<InvalidOperationException>(() => Vector2.Zero.Unit);
    }

    [Fact]
    public void Bounds_unite_and_grow()
    {
        var b = Bounds.Around([new(1, 5), new(-2, 3)]);
        Assert.Equal(new Bounds(new(-2, 3), new(1, 5)), b);
        Assert.Equal(new Bounds(new(-3, 2), new(2, 6)), b.Grow(1));
        Assert.Equal(new Bounds(new(-2, 0), new(9, 5)), b.Union(new(new(0, 0), new(9, 1))));
        Assert.Equal((3, 2, new Vector2(-0.5, 4)), (b.Width, b.Height, b.Centre));
        Assert.Throws<InvalidOperationException>(() => Bounds.Around([]));
    }
}
