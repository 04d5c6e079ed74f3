namespace BracketGen.Mechanism.Numerics;

/// <summary>A cubic spline: piecewise cubic, its second derivative continuous, through every point.</summary>
/// <remarks>
/// Written in its slopes at the points (C. de Boor, <i>A Practical Guide to Splines</i>, 1978, chapter IV). Open at the ends it is
/// "not a knot": the first two pieces are one cubic, and the last two, so that no end condition is invented. Closed it repeats
/// after one period.
/// </remarks>
internal sealed class CubicSpline
{
    private readonly double[] x;
    private readonly double[] y;
    private readonly double[] slope;
    private readonly double period;

    private CubicSpline(double[] x, double[] y, double[] slope, double period) =>
        (this.x, this.y, this.slope, this.period) = (x, y, slope, period);

    /// <summary>Number of cubic pieces.</summary>
    public int Pieces => x.Length - 1;

    /// <summary>Where the pieces join.</summary>
    public double Knot(int i) => x[i];

    /// <summary>The spline through at least four points with rising <paramref name="x"/>.</summary>
    public static CubicSpline Open(double[] x, double[] y)
    {
        var n = x.Length;
        var h = Steps(x);
        var d = Secants(y, h);
        double[] below = new double[n], on = new double[n], above = new double[n], right = new double[n];
        for (var i = 1; i < n - 1; i++)
        {
            (below[i], on[i], above[i]) = (h[i], 2 * (h[i - 1] + h[i]), h[i - 1]);
            right[i] = 3 * (h[i] * d[i - 1] + h[i - 1] * d[i]);
        }

        var sum = h[0] + h[1];
        (on[0], above[0]) = (h[1], sum);
        right[0] = ((h[0] + 2 * sum) * h[1] * d[0] + h[0] * h[0] * d[1]) / sum;
        sum = h[n - 2] + h[n - 3];
        (on[n - 1], below[n - 1]) = (h[n - 3], sum);
        right[n - 1] = ((h[n - 2] + 2 * sum) * h[n - 3] * d[n - 2] + h[n - 2] * h[n - 2] * d[n - 3]) / sum;
        return new(x, y, Solve(below, on, above, right), 0);
    }

    /// <summary>The periodic spline; the last point is the first, one period on.</summary>
    public static CubicSpline Closed(double[] x, double[] y)
    {
        var n = x.Length - 1;
        var h = Steps(x);
        var d = Secants(y, h);
        double[] below = new double[n], on = new double[n], above = new double[n], right = new double[n];
        for (var i = 0; i < n; i++)
        {
            var before = (i + n - 1) % n;
            (below[i], on[i], above[i]) = (h[i], 2 * (h[before] + h[i]), h[before]);
            right[i] = 3 * (h[i] * d[before] + h[before] * d[i]);
        }

        // Sherman and Morrison: the corner entries are a rank-one change of a tridiagonal matrix.
        var (corner, opposite) = (below[0], above[n - 1]);
        var gamma = -on[0];
        on[0] -= gamma;
        on[n - 1] -= corner * opposite / gamma;
        var u = new double[n];
        (u[0], u[n - 1]) = (gamma, opposite);
        var z = Solve(below, [.. on], above, u);
        var s = Solve(below, on, above, right);
        var factor = (s[0] + corner * s[n - 1] / gamma) / (1 + z[0] + corner * z[n - 1] / gamma);
        for (var i = 0; i < n; i++)
        {
            s[i] -= factor * z[i];
        }

        return new(x, y, [.. s, s[0]], x[n] - x[0]);
    }

    /// <summary>Value and first two derivatives; outside an open spline those of its end piece.</summary>
    public (double Value, double First, double Second) At(double at)
    {
        if (period > 0)
        {
            at -= period * Math.Floor((at - x[0]) / period);
        }

        return At(PieceOf(at), at);
    }

    /// <summary>The piece that holds <paramref name="at"/>, within one period of a closed spline; outside, the end's.</summary>
    public int PieceOf(double at)
    {
        var i = Array.BinarySearch(x, at);
        return Math.Clamp(i >= 0 ? i : ~i - 1, 0, Pieces - 1);
    }

    /// <summary>Value and first two derivatives of one piece.</summary>
    public (double Value, double First, double Second) At(int i, double at)
    {
        double h = x[i + 1] - x[i], t = (at - x[i]) / h;
        var secant = (y[i + 1] - y[i]) / h;
        var c = 3 * secant - 2 * slope[i] - slope[i + 1];
        var cube = slope[i] + slope[i + 1] - 2 * secant;
        return (
            y[i] + h * t * (slope[i] + t * (c + t * cube)),
            slope[i] + t * (2 * c + 3 * t * cube),
            (2 * c + 6 * t * cube) / h);
    }

    private static double[] Steps(double[] x) => [.. x.Skip(1).Zip(x, (b, a) => b - a)];

    private static double[] Secants(double[] y, double[] h) => [.. h.Select((step, i) => (y[i + 1] - y[i]) / step)];

    /// <summary>Gauss's elimination of a tridiagonal system that needs no pivoting.</summary>
    private static double[] Solve(double[] below, double[] on, double[] above, double[] right)
    {
        var n = on.Length;
        double[] pivot = [.. on], result = [.. right];
        for (var i = 1; i < n; i++)
        {
            var factor = below[i] / pivot[i - 1];
            pivot[i] -= factor * above[i - 1];
            result[i] -= factor * result[i - 1];
        }

        result[n - 1] /= pivot[n - 1];
        for (var i = n - 2; i >= 0; i--)
        {
            result[i] = (result[i] - above[i] * result[i + 1]) / pivot[i];
        }

        return result;
    }
}
