namespace BracketGen.Mechanism.Numerics;

/// <summary>A smooth curve through points that rises where they rise: no overshoot between them.</summary>
/// <remarks>
/// Piecewise cubic with slopes that lie in the monotonicity region of F. N. Fritsch and R. E. Carlson, "Monotone piecewise cubic
/// interpolation", SIAM J. Numer. Anal. 17 (1980) 238-246. The slopes themselves are the weighted harmonic means of
/// F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, which are in that region without being cut back.
/// Past the ends it goes on straight.
/// </remarks>
internal sealed class MonotoneCubic
{
    private readonly double[] x;
    private readonly double[] y;
    private readonly double[] slope;

    /// <summary>The curve through at least two points with rising <paramref name="x"/>.</summary>
    /// <param name="x">Where the points are.</param>
    /// <param name="y">Their values.</param>
    /// <param name="risesAtEnds">Whether the values rise throughout and the curve must still rise at its ends; otherwise it may be level there.</param>
    public MonotoneCubic(double[] x, double[] y, bool risesAtEnds = false)
    {
        (this.x, this.y) = (x, y);
        var n = x.Length;
        double[] h = [.. x.Skip(1).Zip(x, (b, a) => b - a)];
        double[] d = [.. h.Select((step, i) => (y[i + 1] - y[i]) / step)];
        slope = new double[n];
        if (n == 2)
        {
            (slope[0], slope[1]) = (d[0], d[0]);
            return;
        }

        for (var i = 1; i < n - 1; i++)
        {
            double w1 = 2 * h[i] + h[i - 1], w2 = h[i] + 2 * h[i - 1];
            slope[i] = d[i - 1] * d[i] > 0 ? (w1 + w2) / (w1 / d[i - 1] + w2 / d[i]) : 0;
        }

        slope[0] = risesAtEnds ? RisingEnd(h[0], h[1], d[0], d[1]) : End(h[0], h[1], d[0], d[1]);
        slope[n - 1] = risesAtEnds ? RisingEnd(h[n - 2], h[n - 3], d[n - 2], d[n - 3]) : End(h[n - 2], h[n - 3], d[n - 2], d[n - 3]);
    }

    /// <summary>Value and slope.</summary>
    public (double Value, double Slope) At(double at)
    {
        if (at <= x[0])
        {
            return (y[0] + slope[0] * (at - x[0]), slope[0]);
        }

        if (at >= x[^1])
        {
            return (y[^1] + slope[^1] * (at - x[^1]), slope[^1]);
        }

        var i = Array.BinarySearch(x, at);
        i = i >= 0 ? i : ~i - 1;
        double h = x[i + 1] - x[i], t = (at - x[i]) / h, secant = (y[i + 1] - y[i]) / h;
        var c = 3 * secant - 2 * slope[i] - slope[i + 1];
        var cube = slope[i] + slope[i + 1] - 2 * secant;
        return (y[i] + h * t * (slope[i] + t * (c + t * cube)), slope[i] + t * (2 * c + 3 * t * cube));
    }

    /// <summary>Where the curve, rising throughout, has the given value, kept within its ends.</summary>
    public double Inverse(double value)
    {
        if (value <= y[0] || value >= y[^1])
        {
            return value <= y[0] ? x[0] : x[^1];
        }

        var (low, high) = (x[0], x[^1]);
        for (var i = 0; i < 100 && high - low > MechanismTolerance.Root * (x[^1] - x[0]); i++)
        {
            var middle = (low + high) / 2;
            (low, high) = At(middle).Value < value ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    /// <summary>The slope at an end: through three points, kept from turning back (Fritsch, PCHIP final specifications, 1982).</summary>
    private static double End(double h0, double h1, double d0, double d1)
    {
        var slope = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
        return slope * d0 <= 0 ? 0 : d0 * d1 <= 0 && Math.Abs(slope) > 3 * Math.Abs(d0) ? 3 * d0 : slope;
    }

    /// <summary>
    /// The slope at an end where the curve must still rise: through three points, of the curve itself where it grows steeper, of its inverse
    /// where it flattens. Of the two only that one can never come out as zero or less; on a straight line both agree.
    /// </summary>
    /// <remarks>Between 0 and d0 where it flattens, up to 2 d0 where it steepens: within the region of Fritsch and Carlson (1980).</remarks>
    private static double RisingEnd(double h0, double h1, double d0, double d1) =>
        d0 >= d1 ? End(h0, h1, d0, d1) : 1 / End(h0 * d0, h1 * d1, 1 / d0, 1 / d1);
}
