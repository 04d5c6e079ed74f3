using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Mechanism.Uncertainty;
using BracketGen.Words.Checks;

namespace BracketGen.Design.Tests;

/// <summary>How sure a check is, which measurement helps it, and what is not known without a bracket.</summary>
public class SurenessTests
{
    private static readonly Job Plover = Examples.Read("plover-alder-58");
    private static readonly Solution Answer = Designer.Solve(Plover);

    private static Job With(Measured freeInnerLength, Measured availablePull) => Plover with
    {
        Vehicle = Plover.Vehicle with
        {
            Cable = Plover.Vehicle.Cable with { FreeInnerLength = freeInnerLength },
            Pedal = Plover.Vehicle.Pedal with { AvailablePull = availablePull },
        },
    };

    private static Check Check(Job job, CheckId id) => MechanismReport
        .Of(job, Designer.CheckTravel(job).Travel, Answer.Placement, Answer.Bracket, 4096).Checks.Single(c => c.Id == id);

    [Fact]
    public void Each_check_names_the_input_that_matters_for_it()
    {
        var (length, pull) = (Plover.Vehicle.Cable.FreeInnerLength.Value, Plover.Vehicle.Pedal.AvailablePull.Value);
        var job = With(new(length, 12), new(pull, 12));
        Assert.Equal(new(MeasureHelp.Measure, "free inner length"), Check(job, CheckId.ProbabilityAdjuster).Measure);
        Assert.Equal(new(MeasureHelp.Measure, "available pull"), Check(job, CheckId.ProbabilityWideOpen).Measure);
        Assert.Null(Answer.Checks.Single(c => c.Id == CheckId.ProbabilityWideOpen).Measure);
    }

    [Fact]
    public void Where_the_values_themselves_fail_no_measurement_helps()
    {
        var job = With(Plover.Vehicle.Cable.FreeInnerLength, new(40, 3));
        var check = Check(job, CheckId.ProbabilityWideOpen);
        Assert.Equal(new(MeasureHelp.FailsAsMeasured, null), check.Measure);
        Assert.Contains("No better measurement helps", check.Consequence(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_limit_within_the_sampling_error_is_not_passed()
    {
        var found = new Probability(0.9991, 0.0002, 16_384);
        var check = new Check(CheckId.ProbabilityCloses, found.Value, 0.999) { Unfavourable = found.LowerBound, Doubt = Doubt.Sampling };
        Assert.Equal(CheckState.NotKnown, check.State);
        Assert.Contains("95 % confidence", check.Consequence(), StringComparison.Ordinal);
        Assert.Equal(VerdictKind.NotProven, Verdict.Of([check]).Kind);
    }

    [Fact]
    public void Every_probability_of_the_answer_is_proven()
    {
        Assert.All(
            Answer.Checks.Where(c => c.Code.StartsWith("probability", StringComparison.Ordinal)),
            c => Assert.True(c.Passes && c.Unfavourable < 1 && c.Unfavourable >= c.Limit, $"{c.Code}: {c.Unfavourable}"));
        Assert.Contains(Answer.Checks, c => c.Id == CheckId.ProbabilityInGroove);
    }

    // Round groove, no bulkhead: no bracket is designed, and what rests on it is not known.
    [Fact]
    public void Without_a_bracket_its_give_and_tolerances_are_not_known()
    {
        var study = TravelStudy.Of(Plover with { Bulkhead = null });
        Assert.False(study.StopIsDesigned);
        Assert.False(study.Mechanism.BracketIsKnown);
        Assert.Equal(VerdictKind.NotProven, study.Verdict.Kind);
        Check[] open = [.. study.Verdict.Deciding.Where(c => c.Doubt == Doubt.NoBracket)];
        Assert.Equal(["probability-closes", "probability-adjuster", "probability-in-groove"], open.Select(c => c.Code));
        Assert.All(open, c => Assert.Contains("no bracket is designed yet", c.Consequence(), StringComparison.Ordinal));

        // What is known of the give is its maximum: it is at the unfavourable end.
        var loaded = study.Checks.Single(c => c.Id == CheckId.WideOpenLoaded);
        Assert.Equal(loaded.Value - Plover.Preferences.MaxGive, loaded.Unfavourable!.Value, 1e-9);
        Assert.True(loaded.Passes);
    }

    [Fact]
    public void With_a_bracket_the_travel_says_what_the_answer_says()
    {
        var study = TravelStudy.Of(Plover, effort: SearchEffort.WithoutStrength);
        Assert.True(study.StopIsDesigned);
        Assert.All(study.Mechanism.Checks, c => Assert.Equal(Answer.Checks.Single(a => a.Code == c.Code), c));
    }

    // 7° + 84° = 91°, rotation ±1°: just explained. 86° ± 1° is past square by 2°.
    [Fact]
    public void A_plate_past_square_is_said()
    {
        Check Of(double rotation)
        {
            var quadrant = Plover.Body.Quadrant with { Rotation = new(Angle.FromDegrees(rotation), Angle.FromDegrees(1)) };
            return Designer.CheckTravel(Plover with { Body = Plover.Body with { Quadrant = quadrant } }).Checks.Single(c => c.Id == CheckId.PlatePastSquare);
        }

        Assert.True(Of(84).Passes);
        Assert.True(Of(86).Fails);
        Assert.Equal(93, new Angle(Of(86).Value).Degrees, 1e-9);
    }

    [Fact]
    public void The_groove_left_is_held_against_the_plus_minus_of_the_pocket()
    {
        var check = Answer.Checks.Single(c => c.Id == CheckId.GrooveLength);
        Assert.Equal(Plover.Body.Quadrant.Pocket.PlusMinus.Radians, check.Limit);
        Assert.Equal(check.Value, Answer.Placement!.GrooveLeft.Radians, 1e-9);
    }

    // Whatever the groove's length, the place is not at its end while another costs about the same.
    [Theory]
    [InlineData(110)]
    [InlineData(120)]
    [InlineData(130)]
    [InlineData(140)]
    public void A_margin_of_groove_is_kept_where_it_costs_little(double extent)
    {
        var job = Plover with { Body = Plover.Body with { Quadrant = Plover.Body.Quadrant with { GrooveExtent = Angle.FromDegrees(extent) } } };
        var solution = Designer.Solve(job);
        Assert.True(solution.Placement!.GrooveLeft.Radians >= BracketCost.AmpleGroove.Radians - 1e-9, $"{solution.Placement.GrooveLeft.Degrees}° left");
    }
}
