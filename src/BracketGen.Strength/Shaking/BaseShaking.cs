namespace BracketGen.Strength.Shaking;

/// <summary>How the base shakes: all that is clamped moves as one body, without turning, along any one direction.</summary>
/// <param name="Sine">Amplitude of a sine that dwells at every frequency in turn (mm/s² over Hz); null for none.</param>
/// <param name="Random">One-sided spectral density of a random acceleration ((mm/s²)²/Hz over Hz); null for none.</param>
/// <param name="Damping">Damping ratio of every mode, more than zero and below one.</param>
public sealed record BaseShaking(SpectrumCurve? Sine, SpectrumCurve? Random, double Damping)
{
    /// <summary>How far natural frequencies may be off, as a part: the sine counts with its maximum so far to each side. The sweep is not stretched.</summary>
    /// <remarks>Default: zero.</remarks>
    public double FrequencySpread { get; init; }

    /// <summary>The highest frequency that shakes (Hz).</summary>
    public double Highest => Math.Max(Sine?.To ?? 0, Random?.To ?? 0) * (1 + FrequencySpread);
}
