using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Pedals;
using BracketGen.Profiles.Family;
using BracketGen.TestSupport;
using BracketGen.Words.Checks;
using BracketGen.Words.Report;
using BracketGen.Words.Worksheet;

namespace BracketGen.Design.Tests;

/// <summary>The answers to jobs.</summary>
public class DesignerTests
{
    [Theory]
    [InlineData("plover-alder-58", true)]
    [InlineData("dunlin-rowan-64", true)]
    [InlineData("whimbrel-hornbeam-70", true)]
    [InlineData("dunlin-hornbeam-70", false)]
    public void The_examples_answer_what_they_are_for(string name, bool passes)
    {
        var solution = Designer.Solve(Examples.Read(name));
        Assert.Equal(passes, solution.NothingFails);
        Assert.Equal(passes, solution.Travel.ReachesWideOpen);
        Assert.Empty(solution.Dangers);
    }

    [Fact]
    public void The_examples_hold_both_opening_senses() => Assert.Equal(
        2, Examples.All.Select(n => Examples.Read(n).Body.Opens).Distinct().Count());

    [Fact]
    public void One_spring_is_a_danger()
    {
        var job = Examples.Read("plover-alder-58");
        var solution = Designer.Solve(job with { Body = job.Body with { Springs = job.Body.Springs with { Count = 1 } } });
        Assert.Equal("return-springs", Assert.Single(solution.Dangers).Code);
        Assert.False(solution.Passes);
    }

    // A clockwise body is the mirror image of a counter-clockwise one, and so is its bracket.
    [Fact]
    public void Mirrored_bodies_get_mirrored_brackets()
    {
        var job = Examples.Read("plover-alder-58");
        Solution one = Designer.Solve(job), other = Designer.Solve(job.Mirrored());
        Assert.Equal(0, one.Placement!.Seat.Mirrored().DistanceTo(other.Placement!.Seat), 1e-9);
        Assert.Equal(one.Bracket!.Flat.Blank.Area, other.Bracket!.Flat.Blank.Area, 1e-6);
        Assert.Equal(one.Bracket.Flat.Bends[0].IsUp, other.Bracket.Flat.Bends[0].IsUp);
        Assert.Equal(one.Checks.Select(c => (c.Code, Math.Round(c.Value, 6))), other.Checks.Select(c => (c.Code, Math.Round(c.Value, 6))));
    }

    // Stop face parallel to the mount face and in its plane: a flat plate will do, and is best.
    [Fact]
    public void A_flat_plate_where_the_planes_coincide()
    {
        var job = Examples.Read("plover-alder-58");
        var quadrant = job.Body.Quadrant;
        var leaving = quadrant.PocketNormal + quadrant.Rotation.Value + Angle.FromDegrees(30);
        var placement = StopPlacement.At(quadrant, job.Vehicle.Cable.FreeInnerLength.Value, job.Preferences.FreePlay.Value, leaving)!;
        var thread = job.Body.Mount.Holes[0].Thread;
        var along = new Vector3(0, 0, 1);
        var face = placement.Seat - 3 * placement.Direction;
        var mount = new MountFace(
            new(face.Vector, placement.Direction),
            [new(face - 40 * along + 15 * along.Cross(placement.Direction), thread, 14), new(face - 40 * along - 15 * along.Cross(placement.Direction), thread, 14)]);
        var solution = Designer.Solve(job with
        {
            Body = job.Body with { Mount = mount, KeepOuts = [] },
            Preferences = job.Preferences with { Materials = [], MinThickness = 3, MaxThickness = 3 },
        });
        Assert.True(solution.NothingFails, string.Join(", ", solution.Checks.Where(c => !c.Passes).Select(c => c.Code)));
        Assert.Empty(solution.Bracket!.Flat.Bends);
    }

    [Fact]
    public void A_wire_too_short_is_said_in_plain_words()
    {
        var job = Examples.Read("plover-alder-58");
        var cable = job.Vehicle.Cable with { FreeInnerLength = 40 };
        var solution = Designer.Solve(job with { Vehicle = job.Vehicle with { Cable = cable } });
        Assert.Null(solution.Bracket);
        Assert.Contains("too short", solution.Checks.Single(c => c.Code == "bracket-shape").Consequence(), StringComparison.Ordinal);
    }

    [Fact]
    public void Random_jobs_never_throw_and_always_answer() => RandomJobs.Job.Check(LongRun.Of(100), job =>
    {
        var solution = Designer.Solve(job);
        Assert.NotEmpty(solution.Checks);
        Assert.All(solution.Checks, c => Assert.True(double.IsFinite(c.Value) || c.State == CheckState.NotKnown, c.Code));
        Assert.False(solution.Passes, "Nothing passes whose strength was not calculated.");
        Assert.Equal(solution.Checks.Length, solution.Checks.Select(c => c.Code).Distinct().Count());
        Assert.Equal(solution.Bracket is null, solution.Placement is null);
    });

    [Fact]
    public void The_same_job_has_the_same_answer()
    {
        var job = Examples.Read("dunlin-rowan-64");
        Solution a = Designer.Solve(job), b = Designer.Solve(job);
        Assert.Equal(a.Checks.AsEnumerable(), b.Checks.AsEnumerable());
        Assert.Equal(a.Bracket!.Flat, b.Bracket!.Flat);
    }
}
