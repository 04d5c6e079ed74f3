using System.Numerics;

namespace BracketGen.Strength.Shaking;

/// <summary>What a mode adds to the steady response of a shaken base at one frequency.</summary>
internal static class ModalFactors
{
    /// <summary>
    /// ω₀² H(ω) - 1 with H = 1/(ω₀² - ω² + 2iζω₀ω): how much more than under a steady acceleration the mode answers, in proportion. Zero at rest.
    /// </summary>
    /// <param name="natural">Natural frequency (Hz).</param>
    /// <param name="damping">Damping ratio.</param>
    /// <param name="frequency">Frequency of the base (Hz).</param>
    public static Complex Beyond(double natural, double damping, double frequency)
    {
        var ratio = frequency / natural;
        return Complex.One / new Complex(1 - ratio * ratio, 2 * damping * ratio) - Complex.One;
    }
}
