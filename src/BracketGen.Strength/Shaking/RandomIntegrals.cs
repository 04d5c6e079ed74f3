using System.Numerics;

namespace BracketGen.Strength.Shaking;

/// <summary>The mean squares of a random base: integrals over frequency of the spectral density times products of what the modes add.</summary>
/// <remarks>
/// By Simpson's rule on panels that halve towards every resonance. White noise on one mode comes within 1e-4 of the closed form (Miles' equation), with
/// damping from 0.1 to 20 %.
/// </remarks>
internal sealed class RandomIntegrals
{
    private const int Intervals = 8;

    private RandomIntegrals(double whole, double[] single, double[,] pairs) => (Whole, Single, Pairs) = (whole, single, pairs);

    /// <summary>Of the density alone.</summary>
    public double Whole { get; }

    /// <summary>Of the density times the real part of what a mode adds.</summary>
    public double[] Single { get; }

    /// <summary>Of the density times the real part of the product of one and the conjugate of another.</summary>
    public double[,] Pairs { get; }

    /// <summary>The integrals.</summary>
    /// <param name="density">Spectral density.</param>
    /// <param name="naturals">Natural frequencies (Hz).</param>
    /// <param name="damping">Damping ratio.</param>
    public static RandomIntegrals Of(SpectrumCurve density, IReadOnlyList<double> naturals, double damping)
    {
        var n = naturals.Count;
        var (whole, single, pairs, beyond) = (0.0, new double[n], new double[n, n], new Complex[n]);
        var borders = Borders(density, naturals, damping);
        for (var b = 1; b < borders.Count; b++)
        {
            var (low, step) = (borders[b - 1], (borders[b] - borders[b - 1]) / Intervals);
            for (var k = 0; k <= Intervals; k++)
            {
                var f = k == Intervals ? borders[b] : low + k * step;
                var weight = density.At(f) * step / 3 * (k is 0 or Intervals ? 1 : k % 2 == 1 ? 4 : 2);
                whole += weight;
                for (var r = 0; r < n; r++)
                {
                    beyond[r] = ModalFactors.Beyond(naturals[r], damping, f);
                    single[r] += weight * beyond[r].Real;
                    for (var s = 0; s <= r; s++)
                    {
                        pairs[r, s] += weight * (beyond[r].Real * beyond[s].Real + beyond[r].Imaginary * beyond[s].Imaginary);
                    }
                }
            }
        }

        for (var r = 0; r < n; r++)
        {
            for (var s = 0; s < r; s++)
            {
                pairs[s, r] = pairs[r, s];
            }
        }

        return new(whole, single, pairs);
    }

    private static List<double> Borders(SpectrumCurve density, IReadOnlyList<double> naturals, double damping)
    {
        List<double> all = [.. density.Points.Select(p => p.Frequency)];

        // A power of the frequency over many octaves is no polynomial.
        for (var f = density.From; f < density.To; f *= Octave)
        {
            all.Add(f);
        }

        foreach (var natural in naturals)
        {
            all.Add(natural);
            for (var part = damping / 4; part < 1; part *= 2)
            {
                all.Add(natural * (1 - part));
                all.Add(natural * (1 + part));
            }
        }

        return [.. all.Where(f => f >= density.From && f <= density.To).Distinct().Order()];
    }

    private const double Octave = 1.4142135623730951;
}
