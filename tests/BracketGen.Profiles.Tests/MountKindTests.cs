using BracketGen.SheetMetal.Fasteners;

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
