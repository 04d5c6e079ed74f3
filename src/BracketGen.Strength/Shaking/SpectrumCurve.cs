using System.Collections.Immutable;

namespace BracketGen.Strength.Shaking;

/// <summary>One corner of a curve over frequency.</summary>
/// <param name="Frequency">Frequency (Hz), more than zero.</param>
/// <param name="Value">The curve there, more than zero.</param>
public readonly record struct SpectrumPoint(double Frequency, double Value);

/// <summary>A curve over frequency: straight from corner to corner where both axes are logarithmic, zero outside.</summary>
/// <remarks>
/// As vibration tests are written down: IEC 60068-2-64 joins the corners of an acceleration spectral density so (from memory). Equality by value.
/// </remarks>
public sealed record SpectrumCurve
{
    /// <summary>A curve.</summary>
    /// <param name="points">Its corners, two or more, frequencies ascending.</param>
    /// <exception cref="ArgumentException">There are fewer than two corners, they do not ascend, or a number is not more than zero.</exception>
    public SpectrumCurve(params ImmutableArray<SpectrumPoint> points)
    {
        if (points.Length < 2)
        {
            throw new ArgumentException("A curve over frequency needs two corners or more.", nameof(points));
        }

        for (var i = 0; i < points.Length; i++)
        {
            if (!(points[i].Frequency > 0 && points[i].Value > 0 && double.IsFinite(points[i].Frequency) && double.IsFinite(points[i].Value)))
            {
                throw new ArgumentException("Frequencies and values of a curve must be more than zero.", nameof(points));
            }

            if (i > 0 && !(points[i].Frequency > points[i - 1].Frequency))
            {
                throw new ArgumentException("The frequencies of a curve must ascend.", nameof(points));
            }
        }

        Points = points;
    }

    /// <summary>The corners.</summary>
    public ImmutableArray<SpectrumPoint> Points { get; }

    /// <summary>The minimum frequency (Hz).</summary>
    public double From => Points[0].Frequency;

    /// <summary>The maximum frequency (Hz).</summary>
    public double To => Points[^1].Frequency;

    /// <summary>The curve at <paramref name="frequency"/> (Hz); zero outside it.</summary>
    public double At(double frequency)
    {
        if (!(frequency >= From && frequency <= To))
        {
            return 0;
        }

        var i = 1;
        while (Points[i].Frequency < frequency)
        {
            i++;
        }

        var (a, b) = (Points[i - 1], Points[i]);
        return a.Value * Math.Pow(frequency / a.Frequency, Math.Log(b.Value / a.Value) / Math.Log(b.Frequency / a.Frequency));
    }

    /// <summary>The maximum of the curve from <paramref name="low"/> to <paramref name="high"/> (Hz).</summary>
    public double MaximumBetween(double low, double high)
    {
        // Between corners it only rises or only falls.
        var most = Math.Max(At(Math.Max(low, From) <= high ? Math.Max(low, From) : low), At(Math.Min(high, To) >= low ? Math.Min(high, To) : high));
        foreach (var point in Points)
        {
            if (point.Frequency >= low && point.Frequency <= high)
            {
                most = Math.Max(most, point.Value);
            }
        }

        return most;
    }

    /// <summary>The square root of the area under the curve: the root mean square of a random acceleration of this spectral density.</summary>
    /// <remarks>In closed form: between corners the density is a power of the frequency.</remarks>
    public double RootOfArea
    {
        get
        {
            var area = 0.0;
            for (var i = 1; i < Points.Length; i++)
            {
                var (a, b) = (Points[i - 1], Points[i]);
                var power = Math.Log(b.Value / a.Value) / Math.Log(b.Frequency / a.Frequency) + 1;
                area += Math.Abs(power) < NoPower
                    ? a.Value * a.Frequency * Math.Log(b.Frequency / a.Frequency)
                    : (b.Value * b.Frequency - a.Value * a.Frequency) / power;
            }

            return Math.Sqrt(area);
        }
    }

    /// <inheritdoc/>
    public bool Equals(SpectrumCurve? other) => other is not null && Points.SequenceEqual(other.Points);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Points.Length, Points[0]);

    // Below it the power's own round-off is larger than what the logarithm leaves out.
    private const double NoPower = 1e-9;
}
