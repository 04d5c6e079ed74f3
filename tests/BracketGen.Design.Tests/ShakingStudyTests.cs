using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Strength.Shaking;
using BracketGen.TestSupport;

namespace BracketGen.Design.Tests;

/// <summary>What shaking of the mount means for a job: what decides, what is only compared, and which rule a bracket passed by.</summary>
public sealed class ShakingStudyTests
{
    private static readonly Job Plover = Examples.Read("plover-alder-58");

    private static readonly Lazy<Solution> Assumed = new(() => Designer.Solve(Plover, SearchEffort.BestOnly));

    [Theory]
    [InlineData(4, 4, 1, 2, 4)]
    [InlineData(6, 4, 1.5, 3, 6)]
    [InlineData(2, 2, 1, 2, 4)]
    public void Orders_of_an_engine(int cylinders, int strokes, double half, double firing, double twice)
    {
        // Any text on engine vibration: a four-stroke of n cylinders fires in the order n/2.
        var engine = new Engine(cylinders, 6000, strokes);
        Assert.Equal([half, firing, twice], engine.Orders.AsEnumerable());
        Assert.Equal(engine.FiringFrequency, Engine.FrequencyOf(engine.Orders[1], engine.MaxSpeed), 1e-9);
    }

    [Fact]
    public void Order_meets_a_frequency_between_idle_and_maximum_speed()
    {
        // Order 2 has 200 Hz at 6000/min, order 4 at 3000; order 1 would need 12000. 30 Hz: order 4 at 450 is below idle, order 2 at 900, order 1 at 1800.
        var engine = new Engine(4, 6500) { IdleSpeed = new(800, 0) };
        Assert.Equal(
            [new OrderCrossing(1, 1, 1800), new OrderCrossing(2, 1, 900), new OrderCrossing(2, 2, 6000), new OrderCrossing(4, 2, 3000)],
            OrderCrossing.Of(engine, [30, 200]));
    }

    [Fact]
    public void Alternating_stress_adds_to_the_amplitude_of_an_opening()
    {
        // By hand: amplitude 100/2 + 50 on 150, mean 100/2 on 300: 2/3 + 1/6 = 1/1.2.
        Assert.Equal(1.2, StrengthStudy.EnduranceFactor(100, 50, 150, 300), 1e-12);
        Assert.Equal(StrengthStudy.EnduranceFactor(100, 150, 300), StrengthStudy.EnduranceFactor(100, 0, 150, 300));
    }

    [Fact]
    public void Published_random_test_has_its_published_root_mean_square()
    {
        // 18.8 g, given with the table of ISO 16750-3:2023, test XI.
        Assert.Equal(18.8, Shaking.SolidManifold.Random!.RootOfArea / Shaking.Gravity, 0.05);
    }

    [Fact]
    public void Assumed_test_is_compared_and_decides_nothing()
    {
        var solution = Assumed.Value;
        var check = solution.Checks.Single(c => c.Id == CheckId.ShakingTest);
        Assert.Equal(CheckKind.Advice, check.Kind);
        Assert.DoesNotContain(solution.Checks, c => c.Id == CheckId.ShakingEndurance);
        var report = solution.Strength!.Shaking!;
        Assert.Equal(report.EnduranceFactor, check.Value);
        Assert.True(report.EnduranceFactorAtWorst < report.EnduranceFactor);
        Assert.Equal(report.Alternating.Max(s => s.Largest), report.LargestStress, 1e-3 * report.LargestStress);
        Assert.Equal(report.Alternating.Length, solution.Strength.Flat.Nodes.Length);
        Assert.Equal(solution.Strength.Frequencies[0], report.Modes[0].Frequency, 1e-3);
    }

    [Fact]
    public void Without_engine_and_shaking_nothing_is_known()
    {
        var job = Plover with { Body = Plover.Body with { Engine = null } };
        var solution = Designer.Solve(job, SearchEffort.BestOnly);
        Assert.Null(solution.Strength!.Shaking);
        Assert.Equal(CheckState.NotKnown, solution.Checks.Single(c => c.Id == CheckId.ShakingTest).State);
    }

    [Fact]
    public void Given_shaking_decides()
    {
        var mild = Designer.Solve(On(Plover, 0.05), SearchEffort.BestOnly);
        var check = mild.Checks.Single(c => c.Id == CheckId.ShakingEndurance);
        Assert.Equal(CheckState.Passes, check.State);
        Assert.Equal(CheckKind.Safety, check.Kind);
        Assert.Equal(Assumed.Value.Bracket!.Mass, mild.Bracket!.Mass);

        // Nothing stands this at resonance, though the screws hold it: every bracket that is judged so far fails by it or by another check.
        var weak = Plover with { Preferences = Plover.Preferences with { MinYieldFactor = 1, MinEnduranceFactor = 1 } };
        var harsh = Designer.Solve(On(weak, 15), SearchEffort.BestOnly with { MaxSolves = 40 });
        Assert.Null(harsh.Search!.Best);
        Assert.Contains(harsh.Search.Obstacles, o => o.Nearest.Id == CheckId.ShakingEndurance);
    }

    [Fact]
    public void Assumed_damping_leaves_a_pass_unproven()
    {
        // Twice the factor that is needed at 1 % damping: not at 0.5 % under a sine at resonance.
        var job = On(Plover, 1) with { };
        job = job with { Body = job.Body with { Shaking = job.Body.Shaking with { Damping = Shaking.Usual.Damping } } };
        var found = Designer.Solve(job, SearchEffort.BestOnly).Strength!.Shaking!;
        Assert.True(found.EnduranceFactorAtWorst < found.EnduranceFactor);
        var known = Designer.Solve(On(Plover, 1), SearchEffort.BestOnly).Strength!.Shaking!;
        Assert.Null(known.EnduranceFactorAtWorst);
    }

    [Fact]
    public void Where_no_bracket_keeps_clear_the_response_decides_and_the_answer_says_so()
    {
        // A firing frequency that no bracket reaches. What comes out is what comes out without the rule, and nothing else is let off.
        var sheet = Plover with { Preferences = Plover.Preferences with { MinThickness = 3, MaxThickness = 3, Materials = ["S235JR"] } };
        var job = On(sheet, 0.05) with { };
        var fast = job with { Body = job.Body with { Engine = new(24, 25000) } };
        var solution = Designer.Solve(fast, SearchEffort.BestOnly);
        Assert.Equal(FrequencyRule.Response, solution.Search!.FrequencyRule);
        Assert.True(solution.Search.IsCertain);
        Assert.Equal(FrequencyRule.Response, solution.Strength!.FrequencyRule);
        Assert.DoesNotContain(solution.Checks, c => c.Id == CheckId.Resonance);
        Assert.True(solution.Checks.Single(c => c.Id == CheckId.FrequencyByResponse) is { Fails: true, Kind: CheckKind.Advice });
        Assert.True(solution.Checks.Single(c => c.Id == CheckId.ShakingEndurance).Passes);
        var free = Designer.Solve(job with { Body = job.Body with { Engine = null } }, SearchEffort.BestOnly);
        Assert.Equal(free.Bracket!.Mass, solution.Bracket!.Mass);
        Assert.Equal(free.Search!.Best!.Candidate.Cost, solution.Search.Best!.Candidate.Cost);

        // Written down as chosen, it is judged by the same rule.
        var again = Designer.Solve(fast with { Chosen = solution.Taken }, SearchEffort.BestOnly);
        Assert.Equal(ChosenState.Passes, again.ChosenIs);
        Assert.Equal(FrequencyRule.Response, again.Strength!.FrequencyRule);
    }

    [Fact]
    public void Separation_factor_is_the_jobs()
    {
        var job = Plover with { Preferences = Plover.Preferences with { MinFrequencyRatio = 2 } };
        Assert.Equal(2 * job.Body.Engine!.FiringFrequency, Designer.Solve(job, SearchEffort.BestOnly).Checks.Single(c => c.Id == CheckId.Resonance).Limit);
    }

    // A sine of so many g, damping known.
    private static Job On(Job job, double g) => job with
    {
        Body = job.Body with
        {
            Shaking = new()
            {
                Profile = ShakingProfile.Own, Sine = new(new(20, g * Shaking.Gravity), new(3000, g * Shaking.Gravity)), Damping = new(0.01, 0, Evidence.Measured), Evidence = Evidence.Measured,
            },
        },
    };
}
