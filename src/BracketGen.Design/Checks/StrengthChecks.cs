using BracketGen.Design.Inputs;
using BracketGen.Units;

namespace BracketGen.Design.Checks;

/// <summary>The checks of a bracket's strength.</summary>
public static class StrengthChecks
{
    /// <summary>The first frequency over the engine's firing frequency that keeps the bracket out of resonance (common practice, no source).</summary>
    public const double LeastFrequencyRatio = 1.2;

    /// <summary>The checks of <paramref name="report"/>.</summary>
    /// <param name="job">The job.</param>
    /// <param name="report">The report; its own checks are not looked at.</param>
    public static IEnumerable<Check> Of(Job job, StrengthReport report)
    {
        var preferences = job.Preferences;
        yield return new(
            "stamped-yield", "Yield strength over the stress with the pedal stamped on", CheckKind.Safety, Quantity.Number,
            report.YieldFactor, Bound.AtLeast, preferences.MinYieldFactor, Sources.Preference,
            "A foot stamped on the pedal bends the bracket for good: the stop moves, and nothing is where it was set. Take thicker or wider sheet, a stronger one, or give the pedal a stop that takes the over-travel.");
        yield return new(
            "endurance", "Safety against cracking, every opening counted", CheckKind.Safety, Quantity.Number,
            report.EnduranceFactor, Bound.AtLeast, preferences.MinEnduranceFactor, Sources.Preference,
            "In the long run the bracket cracks from being pulled and let go. Take thicker or wider sheet, or a larger bend radius.");
        yield return new(
            "stop-give", "Give of the stop along the wire, largest tension of an opening", CheckKind.Function, Quantity.Length,
            report.Opening.Give, Bound.AtMost, preferences.MaxGive, Sources.Preference,
            "The stop gives way under the wire: the pedal feels soft and pull is lost. Take thicker or wider sheet.");
        if (report.FiringFrequency is { } firing)
        {
            yield return new(
                "resonance", "First natural frequency, engine's firing frequency kept clear of", CheckKind.Function, Quantity.Frequency,
                report.Frequencies[0], Bound.AtLeast, LeastFrequencyRatio * firing, Sources.CommonPractice,
                "At high speed the engine shakes the bracket at its own frequency: the pedal hums and the bracket cracks. Take thicker or wider sheet, or a shorter stop flange.");
        }
    }
}
