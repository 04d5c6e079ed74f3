using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Words.Checks;
using BracketGen.Words.Results;
using Check = BracketGen.Design.Checks.Check;

namespace BracketGen.Design.Tests;

/// <summary>A vehicle with two cables on a body with one groove: nothing about the second passes before the job says so.</summary>
public class OtherCableTests
{
    private static readonly Job Plover = Examples.Read("plover-alder-58");

    private static Job With(OtherCable cable, CableUse? use = null) =>
        Plover with { Vehicle = Plover.Vehicle with { OtherCables = [cable] }, CableUses = use is null ? [] : [use] };

    private static OtherCable Cable(CableDuty duty, bool? isOnPedal = false) => new("second", duty, "somewhere") { IsOnPedal = isOnPedal };

    private static CableUse LaidBy => new("second", CableFate.LaidBy);

    private static CheckState? StateOf(Job job, CheckId id) => OtherCableChecks.Of(job).SingleOrDefault(c => c.Id == id)?.State;

    [Fact]
    public void A_vehicle_with_one_cable_has_none_of_these_checks()
    {
        Assert.Empty(OtherCableChecks.Of(Plover));
        Assert.DoesNotContain(Designer.CheckTravel(Plover).Checks, OtherCableChecks.IsOne);
    }

    [Theory]
    [InlineData(CableDuty.CruiseControl)]
    [InlineData(CableDuty.HandThrottle)]
    [InlineData(CableDuty.IdleUp)]
    [InlineData(CableDuty.Other)]
    public void What_the_job_does_not_say_is_not_proven(CableDuty duty)
    {
        var job = With(Cable(duty));
        Assert.Equal(CheckState.NotKnown, StateOf(job, CheckId.CableLaidBy));
        Assert.Equal(VerdictKind.NotProven, Verdict.Of(Designer.CheckTravel(job).Checks).Kind);
        Assert.Equal(CheckState.Fails, StateOf(job, CheckId.CableWork));
        Assert.Equal(CheckKind.Advice, CheckCatalogue.Of(CheckId.CableWork).Kind);
    }

    [Fact]
    public void A_cable_laid_by_passes_only_with_its_end_off_the_pedal()
    {
        Assert.Equal(CheckState.Passes, StateOf(With(Cable(CableDuty.HandThrottle), LaidBy), CheckId.CableLaidBy));
        foreach (var isOnPedal in new bool?[] { true, null })
        {
            var cable = Cable(CableDuty.HandThrottle, isOnPedal);
            Assert.Equal(CheckState.NotKnown, StateOf(With(cable, LaidBy), CheckId.CableLaidBy));
            Assert.Equal(CheckState.Passes, StateOf(With(cable, LaidBy with { IsOffPedal = true }), CheckId.CableLaidBy));
            var hooked = With(cable, LaidBy with { IsOffPedal = false });
            Assert.Equal(CheckState.Fails, StateOf(hooked, CheckId.CableLaidBy));
            Assert.Equal(VerdictKind.Unsafe, Verdict.Of(Designer.CheckTravel(hooked).Checks).Kind);
            Assert.Contains("Take it off the pedal", OtherCableChecks.Of(hooked).First().Consequence(), StringComparison.Ordinal);
        }

        Assert.Equal(CheckState.Passes, StateOf(With(Cable(CableDuty.HandThrottle, true), new("second", CableFate.TakenOut)), CheckId.CableLaidBy));
    }

    [Fact]
    public void An_actuator_must_be_dead()
    {
        foreach (var duty in new[] { CableDuty.CruiseControl, CableDuty.IdleUp })
        {
            Assert.Equal(CheckState.NotKnown, StateOf(With(Cable(duty), LaidBy), CheckId.CableActuatorDead));
            Assert.Equal(CheckState.Passes, StateOf(With(Cable(duty), LaidBy with { IsActuatorDead = true }), CheckId.CableActuatorDead));
            var live = With(Cable(duty), LaidBy with { IsActuatorDead = false });
            Assert.Equal(CheckState.Fails, StateOf(live, CheckId.CableActuatorDead));
            Assert.Equal(VerdictKind.Unsafe, Verdict.Of(Designer.CheckTravel(live).Checks).Kind);
        }

        Assert.Null(StateOf(With(Cable(CableDuty.HandThrottle), LaidBy), CheckId.CableActuatorDead));
    }

    [Fact]
    public void A_gearbox_without_its_cable_is_unsafe_until_the_job_says_what_serves_it()
    {
        var cable = Cable(CableDuty.KickDown);
        foreach (var use in new CableUse?[] { null, LaidBy, new("second", CableFate.TakenOut) })
        {
            var job = With(cable, use);
            Assert.Equal(VerdictKind.Unsafe, Verdict.Of(Designer.CheckTravel(job).Checks).Kind);
            Assert.Contains("burns its clutches", OtherCableChecks.Of(job).Single(c => c.Id == CheckId.KickDownServed).Consequence(), StringComparison.Ordinal);
        }

        Assert.Equal(CheckState.Passes, StateOf(With(cable, LaidBy with { ServedBy = "the gearbox's own controller" }), CheckId.KickDownServed));
        var hooked = With(cable, new("second", CableFate.HookedElsewhere) { HookedTo = "a lever on the other end of the shaft" });
        Assert.Equal(CheckState.Passes, StateOf(hooked, CheckId.KickDownServed));
        Assert.Equal(CheckState.Fails, StateOf(hooked, CheckId.CableElsewhere));
        Assert.Null(StateOf(hooked, CheckId.CableLaidBy));
    }

    [Fact]
    public void Two_cables_are_told_apart_by_number_and_name()
    {
        var job = With(Cable(CableDuty.CruiseControl));
        job = job with { Vehicle = job.Vehicle with { OtherCables = [.. job.Vehicle.OtherCables, new("third", CableDuty.KickDown, "gearbox")] } };
        var checks = OtherCableChecks.Of(job).ToList();
        Assert.Equal(["cable-laid-by-1", "cable-actuator-dead-1", "cable-work-1", "cable-laid-by-2", "kick-down-served-2"], checks.Select(c => c.Code));
        Assert.All(checks, c => Assert.Contains(c.Number == 1 ? "\"second\"" : "\"third\"", c.Title(), StringComparison.Ordinal));
        Assert.All(checks, c => Assert.False(string.IsNullOrWhiteSpace(c.Consequence())));
    }

    [Fact]
    public void The_bracket_is_searched_all_the_same_and_no_change_of_numbers_is_offered_against_it()
    {
        var job = With(Cable(CableDuty.KickDown));
        var effort = SearchEffort.WithoutStrength;
        var (plain, two) = (Designer.Solve(Plover, effort), Designer.Solve(job, effort));
        Assert.Equal(plain.Placement, two.Placement);
        Assert.Equal(VerdictKind.Unsafe, two.Verdict.Kind);
        Assert.Null(Diagnosis.Of(two, effort));
    }

    [Fact]
    public void What_is_said_of_a_cable_names_it_what_is_lost_and_what_must_not_be_left_hanging()
    {
        var job = With(Cable(CableDuty.CruiseControl, isOnPedal: null));
        var cable = job.Vehicle.OtherCables[0];
        Assert.Contains("Cruise control does not work any more", OtherCableText.Account(job, cable), StringComparison.Ordinal);
        var steps = string.Join(' ', OtherCableText.Steps(job, cable));
        Assert.All(
            ["hooked to the pedal", "vacuum hose off and cap", "cap over the end fitting", "Tie the outer back to the body", "exhaust and steering", "hangs from the pedal arm"],
            said => Assert.Contains(said, steps, StringComparison.Ordinal));
        Assert.Empty(OtherCableText.Steps(job with { CableUses = [new("second", CableFate.TakenOut)] }, cable));
        Assert.DoesNotContain("Take its end off the pedal", string.Join(' ', OtherCableText.Steps(With(Cable(CableDuty.CruiseControl)), Cable(CableDuty.CruiseControl))), StringComparison.Ordinal);
    }
}
