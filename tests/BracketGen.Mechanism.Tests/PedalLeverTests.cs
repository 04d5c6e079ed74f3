using BracketGen.Design.Checks;
using BracketGen.Mechanism.Numerics;
using BracketGen.Mechanism.Pedals;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using CsCheck;

namespace BracketGen.Mechanism.Tests;

public class PedalLeverTests
{
    /// <summary>The data RPN 14 of Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980), on which ordinary splines overshoot.</summary>
    private static readonly double[] X = [7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20];

    private static readonly double[] Y = [0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.943740, 0.998636, 0.999919, 0.999994];

    [Fact]
    public void Fritsch_and_carlsons_data_stay_monotone()
    {
        var curve = new MonotoneCubic(X, Y);
        var last = 0.0;
        for (var at = 7.99; at <= 20; at += 0.005)
        {
            var (value, slope) = curve.At(at);
            Assert.True(value >= last - 1e-15 && slope >= -1e-12, $"It turns back at {at}.");
            last = value;
        }

        Assert.All(X.Zip(Y), p => Assert.Equal(p.Second, curve.At(p.First).Value, 1e-14));

        // An ordinary spline through the same data does turn back: the check can fail.
        var spline = CubicSpline.Open(X, Y);
        Assert.Contains(Enumerable.Range(0, 2400), i => spline.At(7.99 + i * 0.005).First < -1e-3);
    }

    /// <summary>Math.NET Numerics' own PCHIP on the same data and on random rising data.</summary>
    [Fact]
    public void The_curve_agrees_with_math_net()
    {
        void Same(double[] x, double[] y)
        {
            var ours = new MonotoneCubic(x, y);
            var theirs = MathNet.Numerics.Interpolation.CubicSpline.InterpolatePchipSorted(x, y);
            for (var i = 0; i <= 200; i++)
            {
                var at = x[0] + (x[^1] - x[0]) * i / 200 * 0.9999;
                Assert.Equal(theirs.Interpolate(at), ours.At(at).Value, 1e-9);
            }
        }

        Same(X, Y);
        Rising.Check(50, points => Same([.. points.Select(p => p.Pad)], [.. points.Select(p => p.Pull)]));
    }

    private static readonly Gen<PedalPoint[]> Rising = Gen.Select(Gen.Double[1, 20], Gen.Double[0.2, 12]).Array[2, 8]
        .Select(steps => steps.Aggregate(
            new List<PedalPoint> { default },
            (list, s) => [.. list, new(list[^1].Pad + s.Item1, list[^1].Pull + s.Item2)]).ToArray());

    [Fact]
    public void Tables_rise_and_invert() => Gen.Select(Rising, Gen.Double[0, 1]).Check(200, t =>
    {
        var lever = new TabulatedLever(t.Item1);
        var pad = t.Item2 * lever.FullStroke;
        Assert.Equal(pad, lever.PadAt(lever.PullAt(pad)), 1e-6 * lever.FullStroke);
        Assert.True(lever.PullPerTravel(pad) >= 0);
        Assert.Equal(t.Item1[^1].Pull, lever.FullPull, 1e-12);
        const double H = 1e-5;
        Assert.Equal((lever.PullAt(pad + H) - lever.PullAt(pad - H)) / (2 * H), lever.PullPerTravel(pad), 1e-4);
    });

    [Fact]
    public void A_straight_table_is_a_constant_lever()
    {
        var table = new TabulatedLever([new(0, 0), new(20, 8), new(70, 28), new(120, 48)]);
        var constant = new ConstantLever(2.5, 120);
        for (var pad = 0.0; pad <= 120; pad += 7)
        {
            Assert.Equal(constant.PullAt(pad), table.PullAt(pad), 1e-12);
            Assert.Equal(constant.PullPerTravel(pad), table.PullPerTravel(pad), 1e-12);
            Assert.Equal(pad, constant.PadAt(constant.PullAt(pad)), 1e-12);
        }

        Pedal pedal = new(48, 2.5);
        Assert.Equal(120, pedal.FullStroke);
        Assert.Equal(constant, pedal.Lever);
        Assert.Equal(table, (pedal with { Table = table }).Lever);
    }

    /// <summary>Past both ends the curve goes on straight, with the value and slope that Math.NET Numerics' PCHIP has there.</summary>
    [Fact]
    public void Past_its_ends_the_curve_is_straight()
    {
        var ours = new MonotoneCubic(X, Y);
        var theirs = MathNet.Numerics.Interpolation.CubicSpline.InterpolatePchipSorted(X, Y);
        double first = theirs.Differentiate(X[0] + 1e-9), last = theirs.Differentiate(X[^1] - 1e-9);
        Assert.Equal(Y[0] - 3 * first, ours.At(X[0] - 3).Value, 1e-6);
        Assert.Equal(Y[^1] + 3 * last, ours.At(X[^1] + 3).Value, 1e-6);
        Assert.Equal(first, ours.At(X[0] - 3).Slope, 1e-6);
        Assert.Equal(last, ours.At(X[^1] + 3).Slope, 1e-6);
    }

    [Fact]
    public void Through_two_points_it_is_the_line()
    {
        var line = new MonotoneCubic([2, 6], [1, 9]);
        foreach (var at in new[] { -1.0, 2, 3, 5.5, 6, 8 })
        {
            Assert.Equal(2 * at - 3, line.At(at).Value, 1e-12);
            Assert.Equal(2, line.At(at).Slope, 1e-12);
        }
    }

    /// <summary>
    /// The rules of Fritsch and Butland (1984) and of PCHIP's ends, by hand for steps of one: level at a peak; at an end (3d₀ - d₁)/2, and
    /// no more than 3d₀ where the secants have opposite signs.
    /// </summary>
    [Theory]
    [InlineData(new double[] { 0, 2, 0, -3 }, 0, 4)] // d = 2, -2: (6 + 2)/2
    [InlineData(new double[] { 0, 2, -18, -21 }, 0, 6)] // d = 2, -20: 13, cut to 6
    [InlineData(new double[] { -21, -18, 2, 0 }, 3, -6)] // the same at the other end
    [InlineData(new double[] { 0, 2, 0, -3 }, 1, 0)] // a peak
    [InlineData(new double[] { 0, 0.5, 2.5, 9 }, 0, 0)] // (1.5 - 2)/2 would fall where the curve rises
    [InlineData(new double[] { 0, 2, 6, 7 }, 1, 8.0 / 3)] // harmonic mean of 2 and 4
    public void Slopes_are_those_of_the_rules(double[] y, int point, double slope) =>
        Assert.Equal(slope, new MonotoneCubic([0, 1, 2, 3], y).At(point).Slope, 1e-12);

    /// <summary>The inverse is as good in any unit and wherever the numbers begin; outside the curve it gives the ends, exactly.</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(0, 1e-6)]
    [InlineData(-9, 1)]
    [InlineData(1000, 1)]
    public void The_inverse_finds_the_value(double start, double unit)
    {
        double[] x = [.. new double[] { 0, 0.2, 0.5, 1 }.Select(v => start + v * unit)];
        var curve = new MonotoneCubic(x, [1, 2, 6, 7]);
        for (var value = 1.1; value < 7; value += 0.1)
        {
            Assert.Equal(value, curve.At(curve.Inverse(value)).Value, 2e-11);
        }

        Assert.Equal([x[0], x[0], x[^1], x[^1]], [curve.Inverse(0), curve.Inverse(1), curve.Inverse(7), curve.Inverse(8)]);
    }

    [Theory]
    [InlineData(new double[] { 0, 0 }, "at least two rows")]
    [InlineData(new double[] { 0, 1, 10, 5 }, "row 1: it must begin with the released pedal")]
    [InlineData(new double[] { 0, 0, 10, 5, 10, 8 }, "row 3 (pad 10 mm, pull 8 mm): both must be more than in row 2 (10 mm, 5 mm)")]
    [InlineData(new double[] { 0, 0, 10, 5, 20, 5 }, "row 3 (pad 20 mm, pull 5 mm): both must be more than in row 2 (10 mm, 5 mm)")]
    public void A_bad_table_is_refused_by_row(double[] rows, string message)
    {
        var error = Assert.Throws<ArgumentException>(() => new TabulatedLever(rows.Chunk(2).Select(r => new PedalPoint(r[0], r[1]))));
        Assert.Contains(message, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Tables_are_equal_where_their_points_are()
    {
        TabulatedLever one = new([new(0, 0), new(20, 8)]);
        Assert.Equal(one, new TabulatedLever([new(0, 0), new(20, 8)]));
        Assert.Equal(one.GetHashCode(), new TabulatedLever([new(0, 0), new(20, 8)]).GetHashCode());
        Assert.NotEqual(one, new TabulatedLever([new(0, 0), new(20, 9)]));
        Assert.False(one.Equals(null));
    }

    /// <summary>
    /// A table that flattens at its end: PCHIP levels it (Math.NET Numerics' as ours), and then no load at the pad holds the wire. The lever's own end
    /// slope is that of the parabola through the last three points with pull and pad changed over (Lagrange, worked by hand).
    /// </summary>
    [Fact]
    public void A_table_that_flattens_still_moves_the_wire_at_the_floor()
    {
        PedalPoint[] rows = [new(0, 0), new(60, 25), new(120, 47), new(170, 51)];
        var lever = new TabulatedLever(rows);
        Assert.Equal(0, new MonotoneCubic([.. rows.Select(r => r.Pad)], [.. rows.Select(r => r.Pull)]).At(170).Slope);
        double h0 = 4, h1 = 22, d0 = 50 / 4.0, d1 = 60 / 22.0;
        Assert.Equal(1 / (((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1)), lever.PullPerTravel(170), 1e-12);
        Assert.InRange(lever.PullPerTravel(170), 0.07, 0.08);
    }

    [Fact]
    public void Every_table_rises_everywhere() => Rising.Check(300, rows =>
    {
        var lever = new TabulatedLever(rows);
        for (var i = 0; i <= 200; i++)
        {
            Assert.True(lever.PullPerTravel(i / 200.0 * lever.FullStroke) > 0);
        }
    });
}
