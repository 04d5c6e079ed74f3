using BracketGen.Geometry;
using BracketGen.Mechanism.Uncertainty;
using BracketGen.Words.Report;
using MathNet.Numerics.Statistics;

namespace BracketGen.Mechanism.Tests;

/// <summary>The run over uncertain inputs, on small runs whose every sample is looked at.</summary>
public class UncertaintyRunTests
{
    private static UncertainQuantity[] Uniform(int count, double value = 0, double plusMinus = 1) =>
        [.. Enumerable.Range(0, count).Select(i => UncertainQuantity.Reading($"x{i}", new(value, plusMinus)))];

    /// <summary>All samples of all outputs, one row each, part after part.</summary>
    private static List<double[]> Rows(UncertaintyRun run)
    {
        List<double[]> rows = [];
        run.Probability(row =>
        {
            rows.Add(row.ToArray());
            return true;
        });
        return rows;
    }

    private static double[] Column(UncertaintyRun run, int output) => [.. Rows(run).Select(r => r[output])];

    private static readonly UncertaintyRun Skew = UncertaintyRun.Of(
        Uniform(2), 2, (x, y) => (y[0], y[1]) = (x[0] + 0.7 * x[1] * x[1] - 0.3, -5 - x[1]), 64);

    /// <summary>Math.NET Numerics' quantile definition 5 (Hazen; R. J. Hyndman and Y. Fan, Am. Stat. 50 (1996) 361-365) on the same samples.</summary>
    [Fact]
    public void Quantiles_are_hazens()
    {
        var samples = Column(Skew, 0);
        for (var i = 0; i <= 200; i++)
        {
            var p = i / 200.0;
            Assert.Equal(Statistics.QuantileCustom(samples, p, QuantileDefinition.R5), Skew.Quantile(0, p), 1e-12);
        }

        Assert.Equal((samples.Min(), samples.Max()), (Skew.Quantile(0, 0), Skew.Quantile(0, 1)));
        Assert.Equal((samples.Min(), samples.Max()), (Skew.Quantile(0, -1), Skew.Quantile(0, 2)));
        Assert.Equal(samples.Mean(), Skew.Mean(0), 1e-14);
        Assert.Equal(samples.PopulationStandardDeviation(), Skew.StandardDeviation(0), 1e-14);
    }

    /// <summary>By its definition: at least that part of the magnitudes is not larger, and with the next smaller one it would be fewer.</summary>
    [Fact]
    public void The_magnitude_is_the_smallest_that_suffices()
    {
        double[] sorted = [.. Column(Skew, 0).Select(Math.Abs).Order()];
        Assert.Equal(0, Skew.MagnitudeFor(0, 0));
        Assert.Equal(sorted[^1], Skew.MagnitudeFor(0, 1));
        foreach (var p in new[] { 0.001, 1 / 64.0, 0.3, 0.5, 0.9, 0.99 })
        {
            var found = Skew.MagnitudeFor(0, p);
            Assert.True(sorted.Count(v => v <= found) >= p * 64);
            Assert.True(sorted.Count(v => v < found) < p * 64);
        }
    }

    /// <summary>The eight parts are independent, so the error of their mean is their sample deviation over √8 (Math.NET Numerics).</summary>
    [Fact]
    public void The_standard_error_is_that_of_the_parts()
    {
        var parts = Rows(Skew).Chunk(8).Select(part => part.Average(r => r[0] <= 0.4 ? 1.0 : 0)).ToArray();
        Assert.Equal(UncertaintyRun.Replicates, parts.Length);
        Assert.True(parts.Distinct().Count() > 1);
        var found = Skew.Probability(y => y[0] <= 0.4);
        Assert.Equal(parts.Average(), found.Value, 1e-15);
        Assert.Equal(parts.StandardDeviation() / Math.Sqrt(8), found.StandardError, 1e-15);
    }

    /// <summary>
    /// Pearson's coefficient by Math.NET Numerics over the same samples, so few that their means are far from the nominal; the inputs
    /// are handed out as outputs to see them.
    /// </summary>
    [Fact]
    public void Shares_are_squared_correlations()
    {
        var run = UncertaintyRun.Of(Uniform(2, 4, 0.5), 3, (x, y) => (y[0], y[1], y[2]) = (x[0] * x[0] * x[0] - 40 * x[1], x[0], x[1]), 16);
        Assert.Equal(16, run.Count);
        for (var k = 0; k < 2; k++)
        {
            var r = Correlation.Pearson(Column(run, k + 1), Column(run, 0));
            Assert.InRange(r * r, 0.05, 0.95);
            Assert.Equal(r * r, run.Shares(0)[k], 1e-12);
        }
    }

    /// <summary>y = a + b about values a billion times their ±: half each, because the sums are of deviations from the nominal.</summary>
    [Fact]
    public void Large_values_cancel_nothing()
    {
        var run = UncertaintyRun.Of(Uniform(2, 1e9), 1, (x, y) => y[0] = x[0] + x[1], 1024);
        Assert.All(run.Shares(0), share => Assert.Equal(0.5, share, 0.02));
    }

    /// <summary>Values 2⁶⁰⁰ times smaller, in another unit, change neither who is to blame nor a single digit of it.</summary>
    [Fact]
    public void Shares_do_not_depend_on_the_unit()
    {
        UncertaintyRun In(double unit) => UncertaintyRun.Of(Uniform(2, unit, unit), 1, (x, y) => y[0] = 3 * x[0] / unit + x[1] / unit, 64);
        Assert.Equal([.. In(1).Shares(0)], (double[])[.. In(Math.ScaleB(1, -600)).Shares(0)]);
        Assert.Equal(0.9, In(1).Shares(0)[0], 0.05);
    }

    [Fact]
    public void An_output_that_never_changes_has_nobody_to_blame()
    {
        var run = UncertaintyRun.Of(Uniform(2), 2, (x, y) => (y[0], y[1]) = (3, x[0]), 64);
        Assert.All(run.Shares(0), share => Assert.Equal(0, share));
        Assert.Equal((3.0, 3.0, 0.0), (run.Least[0], run.Most[0], run.StandardDeviation(0)));
    }

    /// <summary>Twenty-one that are uncertain can be followed, and any number of exact ones beside them.</summary>
    [Fact]
    public void Exact_quantities_do_not_count()
    {
        const int Uncertain = 21;
        UncertainQuantity[] inputs = [.. Uniform(3, 2, 0), .. Uniform(Uncertain), .. Uniform(3, 2, 0)];
        var run = UncertaintyRun.Of(inputs, 1, (x, y) => y[0] = x.ToArray().Sum(), 64);
        Assert.Equal((12.0, 12 - 21.0, 12 + 21.0), (run.Nominal[0], run.Least[0], run.Most[0]));
        Assert.Equal([0.0, 0, 0], run.Shares(0).Take(3));
        Assert.Equal([0.0, 0, 0], run.Shares(0).TakeLast(3));
        Assert.All(run.Shares(0).Skip(3).Take(Uncertain), share => Assert.True(share > 0));
    }

    /// <summary>-5 - x over ±1: an extreme on the far side of zero from where a search would begin.</summary>
    [Fact]
    public void An_output_that_never_passes_zero_keeps_its_extremes() => Assert.Equal((-6.0, -4.0), (Skew.Least[1], Skew.Most[1]));

    /// <summary>
    /// A peak in one corner of sixteen that nothing leads to: the inputs pull towards another corner, and no single one turned over helps.
    /// Up to ten inputs all corners are tried, so it is found.
    /// </summary>
    [Theory]
    [InlineData(4)]
    [InlineData(10)]
    public void Few_inputs_have_all_their_corners_tried(int count)
    {
        var run = UncertaintyRun.Of(
            Uniform(count), 1,
            (x, y) => y[0] = x.ToArray().Sum() + 10 * (1 + x[0]) * (1 + x[1]) * (1 - x[2]) * (1 - x[3]) / 16, 8);
        Assert.Equal(10 + count - 4, run.Most[0]);
        Assert.Equal(-count, run.Least[0]);
    }

    // Two inputs that only together do well: 7 where both are up, 3 where both are down, -5 where they differ.
    private static double Pair(double a, double b) => a + b + 5 * a * b;

    // Pulls up in both; in the corners 1 (+,+), 0 (c up), 2 (d up), 4 (-,-): best reached by turning c over, then d.
    private static double Chain(double d, double c) =>
        (7 - 5 * c - d + 3 * c * d) / 4 + 3 * (c * (1 - d * d) + d * (1 - c * c));

    /// <summary>
    /// Eleven inputs whose best corner is found only by beginning where each pulls (pairs that hold each other in place, one of them
    /// pulling down, two of them bent) and by turning single ones over, the first one again after the last. Every corner tried beside it.
    /// </summary>
    [Fact]
    public void Many_inputs_begin_where_each_pulls_and_turn_single_ones_over()
    {
        static double Value(ReadOnlySpan<double> x)
        {
            var bent = 3 * (x[3] * x[3] + x[4] * x[4] - x[5] * x[5] - x[6] * x[6]);
            return Chain(x[0], x[10]) + Pair(x[1], x[2]) + Pair(x[3], x[4]) + Pair(x[5], x[6]) + bent + Pair(-x[7], -x[8]) - x[9] / 2;
        }

        var corners = Enumerable.Range(0, 1 << 11)
            .Select(corner => Value([.. Enumerable.Range(0, 11).Select(k => (corner >> k & 1) == 0 ? -1.0 : 1)])).ToArray();
        var run = UncertaintyRun.Of(Uniform(11), 1, (x, y) => y[0] = Value(x), 8);
        Assert.Equal(4 + 4 * 7 + 0.5, corners.Max(), 1e-12);
        Assert.Equal(corners.Max(), run.Most[0], 1e-12);
        Assert.Equal(corners.Min(), run.Least[0], 1e-12);
    }

    /// <summary>Rising with the probability, for both spreads: three quarters of 3 ± 2 is 4; one standard deviation (Φ(1) = 0.841345) is half of ±.</summary>
    [Fact]
    public void Quantities_rise_with_their_probability()
    {
        Assert.Equal(4, UncertainQuantity.Reading("a", new(3, 2)).Quantile(0.75), 1e-12);
        Assert.Equal(1, UncertainQuantity.Tolerance("b", 2).Quantile(0.8413447460685429), 1e-12);
        Assert.True(UncertainQuantity.Reading("a", 3).MeasuredAgain);
        Assert.False(UncertainQuantity.Tolerance("b", 2).MeasuredAgain);
    }
}
