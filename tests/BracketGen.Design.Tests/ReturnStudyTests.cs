using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Throttles;
using BracketGen.TestSupport;
using CsCheck;
using Check = BracketGen.Design.Checks.Check;

namespace BracketGen.Design.Tests;

/// <summary>Nothing that nobody measured passes: drag, springs one by one, single failures.</summary>
public class ReturnStudyTests
{
    private static readonly Job Plover = Examples.Read("plover-alder-58");
    private static readonly Solution Answer = Designer.Solve(Plover);

    private static Job With(Cable cable) => Plover with { Vehicle = Plover.Vehicle with { Cable = cable } };

    private static MechanismReport Report(Job job) => MechanismReport.Of(job, Answer.Travel, Answer.Placement, Answer.Bracket, samples: 64);

    private static Check Of(MechanismReport report, CheckId id) => report.Checks.Single(c => c.Id == id);

    private static bool Passes(Job job)
    {
        var report = Report(job);
        return Of(report, CheckId.ReturnMargin).Passes && Of(report, CheckId.ReturnOneFailed).Passes;
    }

    [Fact]
    public void Measured_drag_passes_and_assumed_drag_is_not_proven()
    {
        Assert.True(Passes(Plover));
        var assumed = new Cable
        {
            Fitting = Plover.Vehicle.Cable.Fitting, WireDiameter = 1.5, OuterEnd = Plover.Vehicle.Cable.OuterEnd, OuterDiameter = 5,
            FreeInnerLength = 138, FleetLimit = new(0.05), MinBendRadius = 60,
        };
        Assert.Equal((new Measured(5, 0, Evidence.Assumed), new Measured(5, 0, Evidence.Assumed)), (assumed.ClosingDrag, assumed.OpeningDrag));

        // A light pedal and strong springs: 5 N of drag pass, 15 N do not. By hand, closed stop: the springs' 840 N·mm (one broken 420) against 15 N · 31.5 mm = 472.5.
        var job = With(Plover.Vehicle.Cable with { ClosingDrag = assumed.ClosingDrag });
        job = job with
        {
            Vehicle = job.Vehicle with { Pedal = job.Vehicle.Pedal with { PadLoad = -1 } },
            Body = job.Body with { Springs = ReturnSprings.Of([new(420, 600), new(420, 600)]), ShaftDrag = 0 },
        };
        var report = Report(job);
        var margin = Of(report, CheckId.ReturnOneFailed);
        Assert.Equal(CheckState.NotKnown, margin.State);
        Assert.Equal(1 - 5 * 31.5 / 420, margin.Value, 1e-9);
        Assert.Equal(1 - 15 * 31.5 / 420, margin.Unfavourable!.Value, 1e-9);
        Assert.Equal(VerdictKind.NotProven, Verdict.Of(report.Checks).Kind);
        Assert.Contains(InputId.ClosingDrag, margin.Definition.Inputs);
        Assert.Equal(Evidence.Assumed, InputEvidence.Of(job, InputId.ClosingDrag));
    }

    [Fact]
    public void Drag_at_the_shaft_that_nobody_measured_is_not_proven_where_it_matters()
    {
        var job = Plover with { Body = Plover.Body with { ShaftDrag = new(ThrottleBody.UsualShaftDrag, 0, Evidence.Assumed), Springs = ReturnSprings.Of([new(198, 600), new(320, 600)]) } };
        Assert.Equal(CheckState.NotKnown, Of(Report(job), CheckId.ReturnOneFailed).State);
    }

    [Fact]
    public void Springs_not_measured_one_by_one_may_be_unequal()
    {
        // Two of 220 N·mm against some 190 N·mm pass, 0.8 of that do not.
        var job = Plover with { Body = Plover.Body with { Springs = new(440, 940, 2) } };
        var check = Of(Report(job), CheckId.ReturnOneFailed);
        Assert.Equal(CheckState.NotKnown, check.State);
        Assert.True(check.Unfavourable < 0);
        Assert.True(Of(Report(job with { Body = job.Body with { Springs = new(700, 990, 2) } }), CheckId.ReturnOneFailed).Passes);
    }

    /// <summary>Random jobs with everything measured or everything assumed: with the greatest drag every return check passes, 1 % above it one does not.</summary>
    [Fact]
    public void At_the_greatest_drag_every_return_check_passes_and_above_it_one_does_not()
    {
        var tried = 0;
        Gen.Select(
            Gen.Select(Gen.Double[0.05, 0.3], Gen.Double[-3, 1], Gen.Double[0, 20], Gen.Double[1, 3]),
            Gen.Select(Gen.Double[300, 1200], Gen.Double[300, 1200], Gen.Double[0, 800]), Gen.Bool, Gen.Bool).Check(60, t =>
        {
            var ((friction, load, shaft, dirt), (one, other, rise), measured, oneByOne) = t;
            var known = measured ? Evidence.Measured : Evidence.Assumed;
            var springs = ReturnSprings.Of([new(new(one, 10), one + rise), new(new(other, 10), other + rise)]);
            Job By(double drag) => Plover with
            {
                Vehicle = Plover.Vehicle with
                {
                    Cable = Plover.Vehicle.Cable with { Friction = new(friction, 0.02, known), ClosingDrag = drag },
                    Pedal = Plover.Vehicle.Pedal with { PadLoad = new(load, 0.2, known) },
                },
                Body = Plover.Body with { Springs = oneByOne ? springs : springs with { Each = [] }, ShaftDrag = new(shaft, 1, known) },
                Preferences = Plover.Preferences with { DirtAndCold = dirt },
            };
            if (Report(By(3)).Return!.GreatestDrag is not { } drag || drag < 0.01)
            {
                Assert.False(Passes(By(0.01)));
                return;
            }

            tried++;
            Assert.Equal(drag, Report(By(0)).Return!.GreatestDrag!.Value, 1e-9);
            Assert.True(Passes(By(drag)));
            Assert.False(Passes(By(1.01 * drag)));
        });
        Assert.True(tried > 10);
    }

    /// <summary>The shipped Plover by hand at the closed stop: weakest springs 500 N·mm, strongest of two broken 240; shaft 1.5 · 15; pedal as it is; bends of the outer at the worst corner of the engine's movement. Half of 500 must be left, and something of 240.</summary>
    [Fact]
    public void The_greatest_drag_of_the_plover_by_hand()
    {
        var report = Report(Plover);
        var pedal = 0.7 * 3.4 * Math.Exp(0.16 * report.Movement.MaxBend!.Value.Radians) * 31.5;
        var spare = Math.Min(250, 240) - 1.5 * 15 - pedal;
        Assert.Equal(spare / 31.5 / 1.5, report.Return!.GreatestDrag!.Value, 1e-6);
    }

    [Fact]
    public void Dirt_and_cold_multiply_what_was_measured()
    {
        double Left(double factor) => Of(Report(Plover with { Preferences = Plover.Preferences with { DirtAndCold = factor } }), CheckId.ReturnMargin).Value;
        Assert.Equal((1.5 * 31.5 + 15) / 500, Left(1) - Left(2), 1e-9);
    }

    [Fact]
    public void The_closing_time_is_held_against_the_rule()
    {
        var check = Of(Report(Plover), CheckId.ClosingTime);
        Assert.True(check.Passes);
        Assert.Equal(1, check.Limit);
        Assert.Equal(CheckKind.Advice, check.Kind);
        Assert.InRange(check.Value, 0.02, 0.5);
        Assert.Equal(2, Of(Report(Plover with { Vehicle = Plover.Vehicle with { IsHeavy = true } }), CheckId.ClosingTime).Limit);
        var hangs = Of(Report(With(Plover.Vehicle.Cable with { ClosingDrag = 30 })), CheckId.ClosingTime);
        Assert.True(hangs.Fails && double.IsPositiveInfinity(hangs.Value));
    }

    [Fact]
    public void Every_single_failure_has_its_row()
    {
        var failures = Report(Plover).Return!.Failures;
        Assert.Equal(
            [
                FailureId.WireAtQuadrant, FailureId.WireAtPedal, FailureId.FittingOutOfPocket, FailureId.OuterOffStop, FailureId.OuterEndLoose, FailureId.ReturnSpring,
                FailureId.ReturnSpring, FailureId.PedalSpring, FailureId.BracketBolt, FailureId.StrandInOuter, FailureId.OuterSoftened,
            ],
            failures.Select(f => f.Id));
        Assert.Equal([.. Enum.GetValues<FailureId>()], failures.Select(f => f.Id).Distinct());
        Assert.All(failures, f => Assert.Equal(f.Answer is FailureAnswer.NotLookedAt or FailureAnswer.NotFitted, f.TorqueLeft is null));
        SingleFailure Row(FailureId id, int? number = null) => failures.Single(f => f.Id == id && (number is null || f.Number == number));

        // By hand at the closed stop, N·mm: springs 500, each alone 240 and 250; shaft 22.5; 1.5 · 1.5 N of drag on 31.5 mm.
        Assert.Equal(500 - 22.5, Row(FailureId.WireAtQuadrant).TorqueLeft!.Value, 1e-6);
        Assert.Equal(500 - 22.5 - 70.875, Row(FailureId.WireAtPedal).TorqueLeft!.Value, 1e-6);
        var needed = Report(Plover).Returns[0].Needed;
        Assert.Equal(250 - needed, Row(FailureId.ReturnSpring, 1).TorqueLeft!.Value, 1e-6);
        Assert.Equal(240 - needed, Row(FailureId.ReturnSpring, 2).TorqueLeft!.Value, 1e-6);
        Assert.Equal(500 - needed - 9 * 70.875, Row(FailureId.OuterSoftened).TorqueLeft!.Value, 1e-6);
        Assert.Equal(FailureAnswer.Hangs, Row(FailureId.OuterSoftened).Answer);
        Assert.Null(Row(FailureId.OuterSoftened).ClosingTime);
        Assert.Equal(FailureAnswer.NotFitted, Row(FailureId.PedalSpring).Answer);
        Assert.Equal(FailureRule.EnergySource, Row(FailureId.ReturnSpring, 1).Rule);
        Assert.True(Row(FailureId.WireAtQuadrant).ClosingTime < Row(FailureId.WireAtPedal).ClosingTime);
    }

    [Fact]
    public void A_pedal_without_its_spring_pulls_with_its_weight()
    {
        Job By(double load) => Plover with { Vehicle = Plover.Vehicle with { Pedal = Plover.Vehicle.Pedal with { PadLoad = load } } };
        SingleFailure Broken(Job job) => Report(job).Return!.Failures.Single(f => f.Id == FailureId.PedalSpring);
        var row = Broken(By(-1));
        Assert.Equal(FailureRule.Ours, row.Rule);
        Assert.Equal(Report(By(5)).Returns.Min(m => m.Left), row.TorqueLeft!.Value, 1e-6);
        Assert.Equal(FailureAnswer.NotFitted, Broken(By(0.5)).Answer);
    }

    [Fact]
    public void What_is_assumed_leaves_a_single_failure_not_known()
    {
        var job = With(Plover.Vehicle.Cable with { ClosingDrag = new(1, 0, Evidence.Assumed) });
        Assert.Equal(FailureAnswer.NotKnown, Report(job).Return!.Failures.Single(f => f is { Id: FailureId.ReturnSpring, Number: 2 }).Answer);
        Assert.Equal(FailureAnswer.Closes, Report(job).Return!.Failures.Single(f => f.Id == FailureId.WireAtQuadrant).Answer);
    }
}
