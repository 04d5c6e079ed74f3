using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Design.Tests;

/// <summary>A keep-out box at any angle.</summary>
public class TiltedBoxTests
{
    private static readonly Gen<Vector3> Vectors = Gen.Select(Gen.Double[-60, 60], Gen.Double[-60, 60], Gen.Double[-60, 60], (x, y, z) => new Vector3(x, y, z));

    private static readonly Gen<(Vector3 Min, Vector3 Size, Vector3 Axis, Angle By, Vector3 Point)> Drawn = Gen.Select(
        Vectors, Gen.Select(Gen.Double[1, 40], Gen.Double[1, 40], Gen.Double[1, 40], (x, y, z) => new Vector3(x, y, z)),
        Vectors.Where(v => v.Length > 1), Gen.Double[-180, 180].Select(Angle.FromDegrees), Vectors);

    // Turned together with the point, the upright box says the same distance: an outside number by a rotation.
    [Fact]
    public void It_is_the_upright_box_turned() => Drawn.Check(1000, drawn =>
    {
        var (min, size, axis, by, point) = drawn;
        Vector3 V(Vector3 v) => v.Rotate(axis.Unit, by);
        ThrottlePoint P(Vector3 v) => new(V(v));
        var upright = new KeepOutBox("box", new(min), new(min + size));
        var tilted = KeepOutTiltedBox.Of("box", P(min), [P(min + new Vector3(0, size.Y, 0)), P(min + new Vector3(size.X, 0, 0)), P(min + new Vector3(0, 0, size.Z))]);
        Assert.Equal(upright.DistanceTo(new(point)), tilted.DistanceTo(P(point)), 1e-9);
        Assert.Equal(tilted.DistanceTo(P(point)), tilted.Mirrored().DistanceTo(P(point).Mirrored()), 1e-9);
        var away = point - min;
        Assert.Equal(upright.Solid.Farthest(away).Dot(away), tilted.Solid.Farthest(V(away)).Dot(V(away)), 1e-6);
    });

    [Fact]
    public void Edges_a_little_off_square_are_laid_square_to_the_first()
    {
        var box = KeepOutTiltedBox.Of("box", new(0, 0, 0), [new(10, 0, 0), new(0.3, 20, 0), new(0.2, -0.4, 30)]);
        Assert.Equal(new Vector3(10, 20, 30), box.Size);
        Assert.Equal(0, box.Corner.X.DistanceTo(new(1, 0, 0)), 1e-12);
    }
}
