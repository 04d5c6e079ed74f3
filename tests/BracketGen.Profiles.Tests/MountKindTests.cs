using BracketGen.SheetMetal.Fasteners;
using BracketGen.Words.Profiles;

namespace BracketGen.Profiles.Tests;

/// <summary>Tapped holes, plain holes and studs of a mount in profiles.</summary>
public sealed class MountKindTests
{
    private const string Old = "thread = \"M6\"\nboss_diameter = 15\n\n[[mount.holes]]";

    private static ProfileResult<Design.Inputs.Job> With(string lines) =>
        Samples.ReadWith(Samples.Body, Old, Old.Replace("\n\n", "\n" + lines + "\n\n", StringComparison.Ordinal));

    [Fact]
    public void EachKindIsRead()
    {
        static Fixing Of(string lines) => With(lines).Value!.Body.Mount.Holes[0].Fixing;
        Assert.Equal(new TappedHole(), Of(""));
        Assert.Equal(new TappedHole(), Of("kind = \"tapped\""));
        Assert.Equal(new ThroughHole(6.6, 8, null), Of("kind = \"through\"\nhole_diameter = 6.6\nflange_thickness = 8"));
        Assert.Equal(new ThroughHole(7, 8, 12.7), Of("kind = \"through\"\nhole_diameter = 7\nflange_thickness = 8\nroom_behind = \"1/2 in\""));
        Assert.Equal(new MountStud(20), Of("kind = \"stud\"\nstands_out = 20"));
        Assert.Equal(9, With("kind = \"stud\"\nstands_out = 20\nthread_depth = 9").Value!.Body.Mount.Holes[0].ThreadDepth);
    }

    private const string Lower = "at = [-50, 12, -12]", Deep = "at = [-50, 12, -17]";

    [Fact]
    public void ASpacerBridgesALowerHole()
    {
        var mount = Samples.ReadWith(Samples.Body, Lower, Deep + "\nspacer = 5").Value!.Body.Mount;
        Assert.Equal((0.0, 5.0), (mount.Holes[0].SpacerLength, mount.Holes[1].SpacerLength));
        Assert.Equal(0, mount.Residual, 1e-12);
        Assert.Equal(Samples.ReadJob(Samples.Files).Value!.Body.Mount.Plane, mount.Plane);

        // The first hole may be the lower one as well.
        var first = Samples.ReadWith(Samples.Body, "at = [-50, -22, -12]", "at = [-50, -22, -17]\nspacer = \"5 mm\"").Value!.Body.Mount;
        Assert.Equal(-12, first.Plane.Point.Z, 1e-12);
    }

    [Theory]
    [InlineData(Deep, "mount.holes[2].at", "add to this hole the line spacer = 5")]
    [InlineData("at = [-50, 12, -7]", "mount.holes[2].at", "add to the lower ones the line spacer = 5")]
    [InlineData("at = [-50, 12, -12.5]", "mount.holes[2].at", "Correct the hole or the normal")]
    [InlineData(Deep + "\nspacer = 6", "mount.holes[2].at", "above the face")]
    [InlineData(Lower + "\nspacer = 0.5", "mount.holes[2].spacer", "Check the number")]
    public void HeightsThatDoNotGoTogetherAreOneMistake(string lines, string key, string advice)
    {
        var error = Assert.Single(Samples.ReadWith(Samples.Body, Lower, lines).Errors);
        Assert.Equal(key, error.Key);
        Assert.Contains(advice, ProfileErrorText.Format(error), StringComparison.Ordinal);
    }

    [Fact]
    public void OneHoleHasNoSpacer()
    {
        var text = Old.Replace("\n\n", "\nspacer = 3\n\n", StringComparison.Ordinal) + "\nspacer = 3";
        Assert.Equal("mount.holes[1].spacer", Assert.Single(Samples.ReadWith(Samples.Body, Old, text).Errors).Key);
    }

    [Theory]
    [InlineData("kind = \"bolt\"", "kind")]
    [InlineData("kind = \"through\"\nhole_diameter = 6.6", "flange_thickness")]
    [InlineData("kind = \"through\"\nflange_thickness = 6", "hole_diameter")]
    [InlineData("kind = \"stud\"", "stands_out")]
    [InlineData("hole_diameter = 6.6", "hole_diameter")]
    [InlineData("kind = \"stud\"\nstands_out = 20\nroom_behind = 20", "room_behind")]
    [InlineData("kind = \"through\"\nhole_diameter = 6.6\nflange_thickness = 8\nthread_depth = 8", "thread_depth")]
    [InlineData("kind = \"through\"\nhole_diameter = 6\nflange_thickness = 8", "hole_diameter")] // the bolt does not go in
    [InlineData("kind = \"through\"\nhole_diameter = 8\nflange_thickness = 8", "hole_diameter")] // its head hardly bears
    public void WhatCannotBeIsOneMistake(string lines, string key) => Assert.Equal($"mount.holes[1].{key}", Assert.Single(With(lines).Errors).Key);
}
