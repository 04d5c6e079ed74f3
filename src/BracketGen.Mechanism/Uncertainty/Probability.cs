using BracketGen.Mechanism.Numerics;

namespace BracketGen.Mechanism.Uncertainty;

/// <summary>A probability found by sampling.</summary>
/// <param name="Value">The share of the samples, 0 to 1.</param>
/// <param name="StandardError">Its standard error from independently shifted parts of the run.</param>
/// <param name="Samples">Number of samples; zero for what was not sampled.</param>
public readonly record struct Probability(double Value, double StandardError, int Samples)
{
    // Student's t for a one-sided 95 % and one less than the number of parts, 7 degrees of freedom.
    private const double Student = 1.8946;

    /// <summary>The probability that can be relied on: with 95 % confidence the true one is not below it.</summary>
    /// <remarks>
    /// The smaller of two: the one-sided bound of C. J. Clopper and E. S. Pearson (Biometrika 26 (1934) 404-413), as if the samples were independent; and
    /// the share less Student's t times its standard error. Where not one sample in n fails, 1 - 3/n is left, never 1.
    /// </remarks>
    public double LowerBound => Samples == 0 ? 0 : Math.Max(0, Math.Min(
        1 - BinomialBound.Upper((int)Math.Round((1 - Value) * Samples), Samples), Value - Student * StandardError));
}
