using BracketGen.Design.Checks;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Numerics;
using BracketGen.Mechanism.Uncertainty;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using CsCheck;
using MathNet.Numerics.Distributions;

namespace BracketGen.Mechanism.Tests;

public class UncertaintyTests
{
    /// <summary>The first ten points in three dimensions as printed on the page of Joe and Kuo's direction numbers.</summary>
    [Fact]
    public void Sobols_first_points_are_the_published_ones()
    {
        double[][] published =
        [
            [0, 0, 0], [0.5, 0.5, 0.5], [0.75, 0.25, 0.25], [0.25, 0.75, 0.75], [0.375, 0.375, 0.625], [0.875, 0.875, 0.125],
            [0.625, 0.125, 0.875], [0.125, 0.625, 0.375], [0.1875, 0.3125, 0.9375], [0.6875, 0.8125, 0.4375],
        ];
        var sequence = new SobolSequence(3);
        var point = new double[3];
        foreach (var expected in published)
        {
            sequence.Next(point);
            Assert.All(expected.Zip(point), p => Assert.Equal(p.First, p.Second, 1e-9));
        }
    }

    /// <summary>
    /// Each coordinate of the first 2^m points falls once into each of 2^m equal cells, shifted or not (a (0, m, 1)-net: Sobol' 1967); so
    /// do the pairs of the first two dimensions in every division into 2^m boxes.
    /// </summary>
    [Theory]
    [InlineData(null)]
    [InlineData(77)]
    public void Sobols_points_are_stratified(int? seed)
    {
        const int M = 10, Count = 1 << M;
        var sequence = new SobolSequence(SobolSequence.MostDimensions, seed is { } s ? (ulong)s : null);
        var points = Enumerable.Range(0, Count).Select(_ =>
        {
            var point = new double[SobolSequence.MostDimensions];
            sequence.Next(point);
            return point;
        }).ToArray();
        for (var k = 0; k < SobolSequence.MostDimensions; k++)
        {
            Assert.Equal(Count, points.Select(p => (int)(p[k] * Count)).Distinct().Count());
        }

        for (var split = 0; split <= M; split++)
        {
            Assert.Equal(Count, points.Select(p => ((int)(p[0] * (1 << split)), (int)(p[1] * (1 << (M - split))))).Distinct().Count());
        }
    }

    /// <summary>SplitMix64 from seed 1234567, as listed with the algorithm's public-domain reference code (S. Vigna).</summary>
    [Fact]
    public void The_seeds_come_from_splitmix()
    {
        ulong state = 1234567;
        Assert.Equal(6457827717110365317UL, SobolSequence.SplitMix(ref state));
        Assert.Equal(3203168211198807973UL, SobolSequence.SplitMix(ref state));
    }

    /// <summary>Math.NET Numerics' own inverse, and the textbook values 1.959964 and 2.326348.</summary>
    [Fact]
    public void The_normal_quantile_is_right()
    {
        Assert.Equal(1.959964, NormalQuantile.At(0.975), 5e-7);
        Assert.Equal(-2.326348, NormalQuantile.At(0.01), 5e-7);
        foreach (var p in new[] { 1e-12, 1e-6, 0.001, 0.05, 0.0751, 0.3, 0.5, 0.77, 0.93, 0.9999, 1 - 1e-9 })
        {
            Assert.Equal(Normal.InvCDF(0, 1, p), NormalQuantile.At(p), 1e-8);
            Assert.Equal(p, Normal.CDF(0, 1, NormalQuantile.At(p)), 1e-12);
        }
    }

    /// <summary>
    /// The values that M. J. Wichura prints to check AS 241 with (1988, from memory), and far tails by Math.NET Numerics' own Φ, which
    /// is exact there relative to itself.
    /// </summary>
    [Fact]
    public void The_normal_quantile_is_right_far_out()
    {
        Assert.Equal(-0.6744897501960817, NormalQuantile.At(0.25), 1e-15);
        Assert.Equal(-3.090232306167814, NormalQuantile.At(0.001), 1e-14);
        Assert.Equal(-9.262340089798408, NormalQuantile.At(1e-20), 1e-14);
        foreach (var p in new[] { 1e-11, 1e-12, 1e-15, 1e-30, 1e-100, 1e-300 })
        {
            Assert.Equal(1, Normal.CDF(0, 1, NormalQuantile.At(p)) / p, 1e-10);
        }
    }

    private static readonly UncertainQuantity[] Gaussian =
    [
        new("a", new(3, 2), Spread.Normal, true), new("b", new(-1, 1), Spread.Normal, true), new("c", new(5, 0.5), Spread.Normal, false),
        new("exact", 7, Spread.Normal, true),
    ];

    private static readonly UncertaintyRun Linear = UncertaintyRun.Of(
        Gaussian, 1, (x, y) => y[0] = 2 * x[0] - 3 * x[1] + x[2] - x[3]);

    /// <summary>
    /// A sum of independent normal variables is normal, exactly: y = 2a - 3b + c - 7 has mean 7, variance 2² 1 + 3² 0.25 + 0.25²
    /// (standard deviations are ±/2).
    /// </summary>
    [Fact]
    public void A_linear_problem_gives_the_exact_gaussian_sum()
    {
        var sigma = Math.Sqrt(4 * 1 + 9 * 0.25 + 0.0625);
        Assert.Equal(7, Linear.Mean(0), 1e-3);
        Assert.Equal(sigma, Linear.StandardDeviation(0), 2e-3 * sigma);
        foreach (var p in new[] { 0.01, 0.1, 0.5, 0.9, 0.99 })
        {
            Assert.Equal(Normal.InvCDF(7, sigma, p), Linear.Quantile(0, p), 0.02);
            var limit = Normal.InvCDF(7, sigma, p);
            var found = Linear.Probability(y => y[0] <= limit);
            Assert.Equal(p, found.Value, 5e-4);
            Assert.InRange(found.StandardError, 0, 5e-4);
        }

        Assert.Equal(4 / (sigma * sigma), Linear.Shares(0)[0], 2e-3);
        Assert.Equal(2.25 / (sigma * sigma), Linear.Shares(0)[1], 2e-3);
        Assert.Equal(1, Linear.Shares(0).Sum(), 2e-3);
        Assert.Equal(0, Linear.Shares(0)[3]);
    }

    /// <summary>Worst case of a linear sum: nominal ± the sum of all, 7 ± (4 + 3 + 0.5).</summary>
    [Fact]
    public void The_worst_case_of_a_sum_is_the_sum()
    {
        Assert.Equal(7, Linear.Nominal[0]);
        Assert.Equal(-0.5, Linear.Least[0], 1e-12);
        Assert.Equal(14.5, Linear.Most[0], 1e-12);
    }

    /// <summary>With more inputs than corners can be tried for, the search finds the same extreme of a monotone function.</summary>
    [Fact]
    public void Many_inputs_find_their_worst_corner() => Gen.Double[-2, 2].Array[14].Check(40, slopes =>
    {
        var inputs = slopes.Select((_, i) => new UncertainQuantity($"x{i}", new(1, 0.3), Spread.Uniform, true));
        double Value(Func<int, double> x) => Math.Exp(0.2 * Enumerable.Range(0, 14).Sum(i => slopes[i] * Math.Pow(x(i), 3)));
        var run = UncertaintyRun.Of(
            inputs, 1,
            (x, y) =>
            {
                var copy = x.ToArray();
                y[0] = Value(i => copy[i]);
            },
            64);
        Assert.Equal(Value(i => 1 + 0.3 * Math.Sign(slopes[i])), run.Most[0], 1e-9 * run.Most[0]);
        Assert.Equal(Value(i => 1 - 0.3 * Math.Sign(slopes[i])), run.Least[0], 1e-9);
    });

    /// <summary>The sum of two equal uniform variables is triangular: exact quantiles, and variance 2 (2h)²/12.</summary>
    [Fact]
    public void Two_readings_add_to_a_triangle()
    {
        var run = UncertaintyRun.Of(
            [UncertainQuantity.Reading("a", new(0, 1)), UncertainQuantity.Reading("b", new(0, 1))], 1, (x, y) => y[0] = x[0] + x[1]);
        Assert.Equal(Math.Sqrt(2 / 3.0), run.StandardDeviation(0), 1e-4);
        Assert.Equal(-2 + Math.Sqrt(8 * 0.05), run.Quantile(0, 0.05), 2e-3); // P(y < t) = (t + 2)²/8
        Assert.Equal(0.875, run.Probability(y => y[0] <= 1).Value, 5e-4);
    }

    /// <summary>
    /// Over-travel on a constant radius is S - f - RΘ. With only tolerances along the wire and across it, free play moves by the part
    /// along the wire: normal, in closed form.
    /// </summary>
    [Fact]
    public void Seat_tolerances_move_the_free_play_along_the_wire()
    {
        var along = Vector2.FromPolar(1, Angle.FromDegrees(220));
        var travel = Cases.AlderTravel with
        {
            SeatTolerances = [new("leg", along, 0.8), new("bend", 60 * along.Left, Angle.FromDegrees(0.5).Radians), new("cut", 0.6 * along, 0.5)],
        };
        var sure = TravelUncertainty.Of(travel);
        var sigma = Math.Sqrt(0.4 * 0.4 + 0.15 * 0.15);
        Assert.Equal(2, sure.FreePlayUntouched.Nominal, 1e-9);
        Assert.Equal(sigma, sure.FreePlayUntouched.StandardDeviation, 0.005);
        Assert.Equal(2 - 0.8 - 0.3, sure.FreePlayUntouched.Least, 0.01);
        Assert.Equal(Normal.InvCDF(2, sigma, 0.02), sure.FreePlayUntouched.Quantile(0.02), 0.01);
        Assert.Equal(Normal.CDF(0, sigma, 1), sure.Run.Probability(o => o[0] >= 1).Value, 1e-3);
        Assert.Equal(0, sure.OverTravel.StandardDeviation, 1e-9);
    }

    /// <summary>Over-travel S - f - RΘ from uniform readings: the variance of the linear sum, (±)²/3 each.</summary>
    [Fact]
    public void Readings_spread_the_over_travel()
    {
        var travel = Cases.AlderTravel with
        {
            Quadrant = Cases.Alder with
            {
                Groove = new CircularGroove(new(31.5, 0.2)),
                Rotation = new(Angle.FromDegrees(82), Angle.FromDegrees(1)),
                Pocket = new(Cases.Alder.Pocket.Value, new(0.02)),
            },
            AvailablePull = new(48, 1),
            FreePlay = new(2, 0.5),
            FreeInnerLength = new(180, 1.5),
        };
        var sure = TravelUncertainty.Of(travel);
        var theta = Angle.FromDegrees(82).Radians;
        double[] parts = [0.2 * theta, 31.5 * Angle.FromDegrees(1).Radians, 1, 0.5];
        var variance = parts.Sum(p => p * p / 3);
        Assert.Equal(Math.Sqrt(variance), sure.OverTravel.StandardDeviation, 2e-3);
        Assert.Equal(48 - 2 - 31.5 * theta, sure.OverTravel.Mean, 1e-3);
        Assert.Equal(sure.OverTravel.Nominal - parts.Sum(), sure.OverTravel.Least, 0.02); // R and Θ multiply: second order

        // The shares are those of the variance, and the pull is the reading to take again.
        var (requirement, ranking) = sure.Ranking;
        Assert.Equal("valve fully open", requirement);
        Assert.Equal("available pull", ranking[0].Name);
        Assert.Equal(1 / 3.0 / variance, ranking[0].Share, 3e-3);
        Assert.Equal(["available pull", "rotation", "free play as set", "groove radius"], ranking.Take(4).Select(c => c.Name));
        Assert.All(ranking, c => Assert.True(c.MeasuredAgain));
        Assert.InRange(sure.ReachesWideOpen.Value, 0.85, 0.97);
        Assert.Equal(1, sure.WithinAdjuster.Value, 1e-12);
        Assert.True(sure.WrapWideOpen.Least > 0);
    }

    /// <summary>The adjuster's need is F - f - L: only F uncertain, ±3 mm uniform, gives ranges in closed form.</summary>
    [Fact]
    public void The_adjuster_takes_up_what_the_cable_leaves()
    {
        var sure = TravelUncertainty.Of(Cases.AlderTravel with { FreeInnerLength = new(180, 3), AdjusterRange = 4 });
        Assert.Equal(0, sure.AdjusterNeed.Mean, 1e-3);
        Assert.Equal(2 / 3.0, sure.WithinAdjuster.Value, 1e-3);
        Assert.Equal(6, sure.AdjusterRangeFor(1), 1e-9);
        Assert.Equal(0.9 * 6, sure.AdjusterRangeFor(0.9), 0.01);
        Assert.Equal(5 / 6.0, sure.ClosesUntouched.Value, 1e-3); // free play 2 ± 3 mm, uniform
        Assert.Equal("within the adjuster's range", sure.Ranking.Requirement);
    }

    [Fact]
    public void Without_an_adjuster_it_must_be_right_as_built()
    {
        var sure = TravelUncertainty.Of(Cases.AlderTravel with { FreeInnerLength = new(180, 3), AdjusterRange = 0 });
        Assert.Equal("valve fully open", sure.Ranking.Requirement);
    }

    /// <summary>The closed form for the constant radius and the general solver give the same numbers.</summary>
    [Fact]
    public void The_quick_way_is_the_general_way()
    {
        var quick = Cases.AlderTravel with
        {
            Quadrant = Cases.Alder with { Groove = new CircularGroove(new(31.5, 0.3)), Rotation = new(new(1.43), new(0.02)), Pocket = new(new(0.35), new(0.03)) },
            SeatTolerances = [new("leg", new(1, 0), 0.5), new("cut", new(0, 1), 0.5)],
        };
        var general = quick with { Quadrant = quick.Quadrant with { Groove = new EccentricGroove(new(31.5, 0.3), 0, Angle.Zero) } };
        TravelUncertainty a = TravelUncertainty.Of(quick, 4096), b = TravelUncertainty.Of(general, 4096);
        for (var output = 0; output < 5; output++)
        {
            Assert.Equal(b.Run.Mean(output), a.Run.Mean(output), 1e-10);
            Assert.Equal(b.Run.Quantile(output, 0.1), a.Run.Quantile(output, 0.1), 1e-10);
            Assert.Equal(b.Run.Least[output], a.Run.Least[output], 1e-10);
        }
    }

    [Fact]
    public void The_same_seed_gives_the_same_numbers()
    {
        UncertaintyRun Run(ulong seed) => UncertaintyRun.Of(Gaussian, 1, (x, y) => y[0] = x[0] * x[1], 1024, seed);
        Assert.Equal(Run(5).Quantile(0, 0.3), Run(5).Quantile(0, 0.3));
        Assert.NotEqual(Run(5).Quantile(0, 0.3), Run(6).Quantile(0, 0.3));
    }
}
