using BracketGen.Geometry;

namespace BracketGen.Drawing.Report.Charts;

/// <summary>Round numbers for the grid of a chart.</summary>
/// <param name="Low">First grid line.</param>
/// <param name="Step">Distance from one to the next: 1, 2 or 5 times a power of ten.</param>
/// <param name="Count">Number of steps.</param>
internal readonly record struct Ticks(double Low, double Step, int Count)
{
    /// <summary>Last grid line.</summary>
    public double High => Low + Count * Step;

    /// <summary>The grid lines.</summary>
    public IEnumerable<double> Values
    {
        get
        {
            var (low, step) = (Low, Step);
            return Enumerable.Range(0, Count + 1).Select(i => low + i * step);
        }
    }

    /// <summary>Decimals that tell one line from the next.</summary>
    public int Decimals => Math.Clamp(-(int)Math.Floor(Math.Log10(Step) + Tolerance.OnLimit), 0, 12);

    /// <summary>A grid of about <paramref name="wanted"/> steps that holds everything from <paramref name="low"/> to <paramref name="high"/>.</summary>
    public static Ticks Over(double low, double high, int wanted)
    {
        if (!(high - low > Tolerance.OnLimit * Math.Max(1, Math.Abs(high))))
        {
            high = low + Math.Max(1, Math.Abs(low));
        }

        var rough = (high - low) / wanted;
        var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        var step = power * (rough / power) switch { <= 1.0 => 1, <= 2.0 => 2, <= 5.0 => 5, _ => 10 };
        double first = Math.Floor(low / step + Tolerance.OnLimit), last = Math.Ceiling(high / step - Tolerance.OnLimit);
        return new(first * step, step, (int)(last - first));
    }
}
