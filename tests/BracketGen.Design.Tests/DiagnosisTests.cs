using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Words.Report;

namespace BracketGen.Design.Tests;

/// <summary>What stands in the way of a bracket, and what opens a way.</summary>
public class DiagnosisTests
{
    // A wall across the one place where the bracket could be: it, and nothing else, is named, and moving it as printed leads to a bracket.
    [Fact]
    public void A_wall_in_the_way_is_named_and_moving_it_off_mends_it()
    {
        var job = Walled(Examples.Read("plover-alder-58"));
        Assert.Empty(Designer.Solve(job).Offers);
        var diagnosis = Diagnosis.Of(Designer.Solve(job), SearchEffort.WithoutStrength)!;
        Assert.Equal("keep-out-1", diagnosis.Obstacles[0].Nearest.Code);
        var way = Assert.Single(diagnosis.Ways, w => w.Input == ChangedInput.KeepOut);
        Assert.Equal("wall", way.What);
        Assert.NotEmpty(Designer.Solve(With(job, new KeepOutBox("wall", Least + way.To * new Vector3(1, 1, 1), Most - way.To * new Vector3(1, 1, 1)))).Offers);
    }

    // Each way that is printed is a way: the job so changed has a passing bracket.
    [Fact]
    public void A_cable_of_the_length_told_finds_a_bracket()
    {
        var job = Examples.Read("plover-alder-58");
        var cable = job.Vehicle.Cable;
        Job Of(double length) => job with { Vehicle = job.Vehicle with { Cable = cable with { FreeInnerLength = length } } };
        var tooShort = Of(45);
        Assert.Empty(Designer.Solve(tooShort).Offers);
        var way = Assert.Single(Diagnosis.Of(Designer.Solve(tooShort), SearchEffort.WithoutStrength)!.Ways, w => w.Input == ChangedInput.FreeInnerLength);
        Assert.NotEmpty(Designer.Solve(Of(way.To)).Offers);
        Assert.Empty(Designer.Solve(Of(way.From)).Offers);
    }

    private static readonly ThrottlePoint Least = new(-200, -60, -30), Most = new(-20, 120, 60);

    private static Job Walled(Job job) => With(job, new KeepOutBox("wall", Least, Most));

    private static Job With(Job job, KeepOut keepOut) => job with { Body = job.Body with { KeepOuts = [keepOut] } };
}
