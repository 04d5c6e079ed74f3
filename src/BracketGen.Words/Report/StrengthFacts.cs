using BracketGen.Design.Checks;
using BracketGen.Units;
using BracketGen.Words.Checks;
using BracketGen.Words.Results;

namespace BracketGen.Words.Report;

/// <summary>The strength in the report, beside what drawing and report share.</summary>
public static class StrengthFacts
{
    /// <summary>Heading of the stress picture.</summary>
    public const string StressHeading = "Stress with the pedal stamped on";

    /// <summary>The vibration for people who cannot see it.</summary>
    public const string VibrationSpoken = "How far each place of the flat pattern moves in the first natural vibration, as part of the maximum.";

    /// <summary>Caption of the vibration.</summary>
    public const string VibrationCaption = "How far each place swings, as part of the maximum. How far it really swings depends on what shakes it.";

    /// <summary>The checks of strength.</summary>
    public static IEnumerable<Fact> Of(StrengthReport report, UnitSystem units) => report.Checks.Select(check =>
        new Fact(check.Title(), CheckText.Value(check, units), $"{CheckText.Limit(check, units)}{(check.Passes ? "" : $": {StrengthText.Mark(check)}")}"));

    /// <summary>Caption of the table of loads.</summary>
    public static string LoadsCaption => StrengthText.LoadsTitle;

    /// <summary>The stress picture for people who cannot see it.</summary>
    public static string StressSpoken(StrengthReport report, UnitSystem units) =>
        $"Stress on the flat pattern, maximum {units.Write(Quantity.Stress, report.Stamped.LargestStress)} in the place marked with a ring.";

    /// <summary>Caption of the stress picture.</summary>
    /// <param name="yield">Yield strength of the sheet (MPa).</param>
    /// <param name="units">Units of the job.</param>
    public static string StressCaption(double yield, UnitSystem units) =>
        $"On the flat pattern; the ring marks the maximum. The sheet yields at {units.Write(Quantity.Stress, yield)}.";

    /// <summary>The scale of colours for people who cannot see it.</summary>
    public static string ScaleSpoken(string maximum) => $"Scale of colours from 0, pale, to {maximum}, dark";
}
