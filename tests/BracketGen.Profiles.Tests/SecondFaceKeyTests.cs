using BracketGen.Geometry;
using BracketGen.Words.Profiles;

namespace BracketGen.Profiles.Tests;

/// <summary>The second face of a mount in profiles.</summary>
public sealed class SecondFaceKeyTests
{
    private const string Anchor = "[[keep_out]]\nname = \"body round the bore\"";

    private const string Hole = "[[mount.second_face.holes]]\nat = [-50, -46, 8]\nthread = \"M6\"\nboss_diameter = 14\n";

    private static ProfileResult<Design.Inputs.Job> With(string face, string holes = Hole) =>
        Samples.ReadWith(Samples.Body, Anchor, $"[mount.second_face]\n{face}\n\n{holes}\n{Anchor}");

    [Fact]
    public void ASecondFaceIsRead()
    {
        var mount = With("normal = [0, 2, 0]\ncorner_radius = \"3 mm\"").Value!.Body.Mount;
        Assert.Equal(new Plane(new(-50, -46, 8), new(0, 1, 0)), mount.Second!.Plane);
        Assert.Equal(3, mount.Second.CornerRadius);
        Assert.True(mount.IsInsideCorner);
        Assert.Equal([false, false, true], mount.Holes.Select(h => h.IsOnSecond));
        Assert.Equal(2, mount.OwnHoles.Length);
        Assert.Equal(0, mount.Residual, 1e-12);
        Assert.Null(Samples.ReadJob(Samples.Files).Value!.Body.Mount.Second);
        Assert.Null(With("normal = [0, 1, 0]").Value!.Body.Mount.Second!.CornerRadius);
    }

    // The block falls away below the mount face: its end faces the other way.
    [Fact]
    public void AnOutsideEdgeIsToldByWhereTheHolesLie()
    {
        var mount = With("normal = [0, -1, 0]", Hole.Replace("8]", "-34]", StringComparison.Ordinal)).Value!.Body.Mount;
        Assert.False(mount.IsInsideCorner);
        Assert.Equal(90, mount.Second!.Turn(mount.Plane).Degrees, 1e-9);
    }

    [Theory]
    [InlineData(8, 1)]
    [InlineData(-34, -1)]
    public void PointsDecideTheFaceAndTheHolesItsSide(int z, int towards)
    {
        var points = string.Concat(new[] { "[-70, -46, 20]", "[-30, -46, 20]" }.Select(p => $"[[mount.second_face.points]]\nat = {p}\nplus_minus = [0.2, 0.2, 0.2]\n\n"));
        var mount = With("corner_radius = 0", points + Hole.Replace("8]", $"{z}]", StringComparison.Ordinal)).Value!.Body.Mount;
        Assert.Equal(towards, mount.Second!.Plane.Normal.Y, 1e-9);
        Assert.Equal(3, mount.Holes.Length);
    }

    [Theory]
    [InlineData("normal = [0, 0, 1]", "-50, 40, -20", "mount.second_face", "The two faces stand parallel, 8 mm apart: that is a step. Put its holes under [[mount.holes]]")]
    [InlineData("normal = [0, 1, -2]", "-50, -46, 8", "mount.second_face", "It would take a bend of 153.4°")]
    [InlineData("normal = [0, -1, 0]", "-50, -46, 8", "mount.second_face", "Hole 1 of the mount face lies on the other side of the line")]
    [InlineData("normal = [0, 1, 0]", "-50, -10, 8", "mount.second_face", "Hole 1 of the mount face lies on the other side of the line")]
    [InlineData("normal = [0, 1, 0]", "-50, -46, -7", "mount.second_face", "Hole 1 of the second face is 5 mm from it: its boss would reach past the other face")]
    [InlineData("normal = [0, 1, 0]", "-50, -26, 8", "mount.second_face", "Hole 1 of the mount face is 4 mm from it")]
    [InlineData("normal = [0, 1, 0.1]", "-50, -600, 8", "mount.second_face", "No bracket reaches so far: use the mount face alone")]
    [InlineData("points = [{ at = [-20, -46, 8] }]", "-50, -46, 8", "mount.second_face", "Measure three points of the face far apart from each other, or give its normal")]
    [InlineData("normal = [0, 0, 0]", "-50, -46, 8", "mount.second_face.normal", "direction")]
    [InlineData("normal = [0, 1, 0]\ncorner_radius = -1", "-50, -46, 8", "mount.second_face.corner_radius", "Check the number")]
    public void WhatDoesNotGoWithTheMountFaceIsOneMistake(string face, string at, string key, string says)
    {
        var error = Assert.Single(With(face, Hole.Replace("-50, -46, 8", at, StringComparison.Ordinal)).Errors);
        Assert.Equal(key, error.Key);
        Assert.Contains(says, ProfileErrorText.Format(error), StringComparison.Ordinal);
    }

    [Fact]
    public void AHoleOffTheSecondFaceIsToldAtThatHole()
    {
        var error = Assert.Single(With("normal = [0, 1, 0]", Hole + "\n" + Hole.Replace("-50, -46, 8", "-30, -45, 8", StringComparison.Ordinal)).Errors);
        Assert.Equal("mount.second_face.holes[2].at", error.Key);
        Assert.Contains("the nearest point on the face is [-30, -46, 8]", ProfileErrorText.Format(error), StringComparison.Ordinal);
    }

    [Fact]
    public void ASecondFaceHasAHole()
    {
        var error = Assert.Single(Samples.ReadWith(Samples.Body, Anchor, $"[mount.second_face]\nnormal = [0, 1, 0]\n\n{Anchor}").Errors);
        Assert.Equal("mount.second_face.holes", error.Key);
    }
}
