using BracketGen.Geometry;
using BracketGen.Mechanism.Numerics;
using BracketGen.Mechanism.Uncertainty;

namespace BracketGen.Mechanism.Tests;

/// <summary>What a probability from samples proves.</summary>
public class ProbabilityTests
{
    // SciPy 1.10.1: scipy.stats.beta.ppf(0.95, failures + 1, trials - failures). Beyond a thousand failures Wilson's bound, to 1e-4.
    [Theory]
    [InlineData(0, 16384, 0.00018282827227360148, 1e-12)]
    [InlineData(0, 4096, 0.0007311125564754342, 1e-12)]
    [InlineData(1, 4096, 0.0011576408823709594, 1e-12)]
    [InlineData(5, 16384, 0.0006415567766400244, 1e-12)]
    [InlineData(16, 16384, 0.0014828507734818757, 1e-12)]
    [InlineData(30, 1000, 0.040472237280866234, 1e-12)]
    [InlineData(3, 10, 0.6066242161054123, 1e-12)]
    [InlineData(1500, 16384, 0.09534307923210225, 1e-4)]
    public void The_bound_is_that_of_Clopper_and_Pearson(int failures, int trials, double expected, double within) =>
        Assert.Equal(expected, BinomialBound.Upper(failures, trials), within);

    [Fact]
    public void What_never_failed_is_not_certain()
    {
        Assert.Equal(1 - 3.0 / 16384, new Probability(1, 0, 16384).LowerBound, 1e-6); // the rule of three
        Assert.True(new Probability(1, 0, 512).LowerBound < 0.999);
        Assert.Equal(0, default(Probability).LowerBound);
        Assert.Equal(0.9 - 1.8946 * 0.01, new Probability(0.9, 0.01, 100_000).LowerBound, 1e-9); // the scatter of the parts counts too
    }

    // Sum of thirty readings, each uniform over ±1: variance 30/3, and normal to 1 part in 1000 by the central limit (Irwin-Hall).
    [Fact]
    public void More_quantities_than_the_sequence_has_dimensions_are_followed()
    {
        var run = UncertaintyRun.Of(
            Enumerable.Range(0, 30).Select(i => UncertainQuantity.Reading($"x{i}", new(0, 1))), 1,
            (x, y) =>
            {
                y[0] = 0;
                foreach (var value in x)
                {
                    y[0] += value;
                }
            });
        Assert.Equal(Math.Sqrt(10), run.StandardDeviation(0), 0.01 * Math.Sqrt(10));
        Assert.Equal(30, run.Most[0], 1e-9);
        Assert.Equal(0.841, run.Probability(y => y[0] <= Math.Sqrt(10)).Value, 0.005);
        Assert.All(Enumerable.Range(0, 30), i => Assert.InRange(run.Shares(0)[i], 0.025, 0.042));
    }

    // Wrap at the closed stop 130° - 20° = 110°, pocket ±2° uniform, groove of 111°: it runs off where the pocket is more than 1° back, one case in four.
    [Fact]
    public void The_wire_may_run_off_the_end_of_the_groove()
    {
        var travel = Cases.AlderTravel with
        {
            Quadrant = Cases.Alder with { GrooveExtent = Angle.FromDegrees(111), Pocket = new(Cases.Alder.Pocket.Value, Angle.FromDegrees(2)) },
        };
        var sure = TravelUncertainty.Of(travel, 16_384);
        Assert.Equal(110, sure.WrapAtClosed.Nominal * 180 / Math.PI, 1e-9);
        Assert.Equal(0.75, sure.ProbabilityOf(TravelRequirement.InGroove).Value, 1e-3);
        Assert.Equal("pocket angle", sure.ContributionsTo(TravelRequirement.InGroove)[0].Name);
        Assert.Equal(TravelRequirement.InGroove, sure.Nearest);
    }

    // Readings exact: only the tolerance along the wire is left, two standard deviations of 0.8.
    [Fact]
    public void With_readings_exact_only_tolerances_are_left()
    {
        var travel = Cases.AlderTravel with
        {
            FreeInnerLength = new(180, 3),
            SeatTolerances = [new("leg", Vector2.FromPolar(1, Angle.FromDegrees(220)), 0.8), new("hole", new(1, 0), 2) { IsMeasured = true }],
        };
        var sure = TravelUncertainty.Of(travel, 16_384, readingsExact: true);
        Assert.Equal(0.4, sure.FreePlayUntouched.StandardDeviation, 5e-3);
        Assert.Equal(["leg"], sure.ContributionsTo(TravelRequirement.Closes).Select(c => c.Name));
    }

    // Need 1 ± 3 mm of an adjuster that takes up 2 mm: in 99 of 100 it is no more than 3.94, and 1.94 stay beyond the 2 mm wanted.
    [Fact]
    public void Free_play_that_the_adjuster_cannot_take_up_stays()
    {
        var sure = TravelUncertainty.Of(Cases.AlderTravel with { FreeInnerLength = new(181, 3), AdjusterRange = 4 }, 16_384);
        Assert.Equal(2 + 1 + 3 * 0.98 - 2, sure.MostFreePlay(0.99), 5e-3);
        Assert.Equal(2.5, TravelUncertainty.Of(Cases.AlderTravel with { FreePlay = new(2, 0.5) }, 64).MostFreePlay(0.99), 1e-9);
    }
}
