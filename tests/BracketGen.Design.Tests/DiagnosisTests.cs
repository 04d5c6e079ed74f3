using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.Units;
using BracketGen.Words.Report;

namespace BracketGen.Design.Tests;

/// <summary>What stands in the way of a bracket, and what opens a way.</summary>
public class DiagnosisTests
{
    // A wall across the one place where the bracket could be: it, and nothing else, is named, and making it smaller as printed leads to a bracket.
    [Fact]
    public void A_wall_in_the_way_is_named_and_making_it_smaller_mends_it()
    {
        var job = Walled(Examples.Read("plover-alder-58"));
        var diagnosis = Diagnosed(job);
        Assert.Equal("wall", diagnosis.Obstacles[0].Nearest.Subject);
        var change = Single(diagnosis, ChangedInput.KeepOut);
        Assert.Equal("wall", change.What);
        Assert.True(Designer.Solve(With(job, new KeepOutBox("wall", Least + change.To * new Vector3(1, 1, 1), Most - change.To * new Vector3(1, 1, 1)))).NothingFails);
    }

    [Fact]
    public void A_cable_of_the_length_told_finds_a_bracket()
    {
        var job = Examples.Read("plover-alder-58");
        var cable = job.Vehicle.Cable;
        Job Of(double length) => job with { Vehicle = job.Vehicle with { Cable = cable with { FreeInnerLength = cable.FreeInnerLength with { Value = length } } } };
        var diagnosis = Diagnosed(Of(85));
        var change = Single(diagnosis, ChangedInput.FreeInnerLength);

        // A certainty decides nothing.
        Assert.DoesNotContain(diagnosis.Ways, w => w.Decides is { Unit: Quantity.Fraction, Value: 1 } or { Kind: CheckKind.Making });
        Assert.Equal(0, change.To % 0.5, 9);
        Assert.True(Designer.Solve(Of(change.To)).NothingFails);
        Assert.False(Designer.Solve(Of(change.From)).NothingFails);
    }

    // A pedal that does not pull enough: the hole is set in whole percent, and the whole job passes with it, loaded and with its tolerances.
    [Fact]
    public void The_hole_on_the_pedals_arm_is_told_and_opens_the_valve()
    {
        var job = Examples.Read("dunlin-hornbeam-70");
        var change = Single(Diagnosed(job), ChangedInput.PedalHole);
        Assert.Equal(Math.Round(change.To, 2), change.To, 9);
        var pedal = job.Vehicle.Pedal;
        Assert.True(Designer.Solve(job with
        {
            Vehicle = job.Vehicle with
            {
                Pedal = pedal with { AvailablePull = pedal.AvailablePull with { Value = change.To * pedal.AvailablePull.Value }, LeverRatio = pedal.LeverRatio / change.To },
            },
        }).NothingFails);
    }

    private static Diagnosis Diagnosed(Job job) => Diagnosis.Of(Designer.Solve(job, SearchEffort.BestOnly), SearchEffort.BestOnly)!;

    private static InputChange Single(Diagnosis diagnosis, ChangedInput input) =>
        Assert.Single(diagnosis.Ways, w => w.Changes is [var only] && only.Input == input).Changes[0];

    private static readonly ThrottlePoint Least = new(-200, -60, -30), Most = new(-20, 120, 60);

    private static Job Walled(Job job) => With(job, new KeepOutBox("wall", Least, Most));

    private static Job With(Job job, KeepOut keepOut) => job with { Body = job.Body with { KeepOuts = [keepOut] } };
}
