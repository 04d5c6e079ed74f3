using BracketGen.Design.Checks;
using BracketGen.Mechanism;
using BracketGen.Units;

namespace BracketGen.Words.Checks;

/// <summary>A failed check where it cannot be overlooked: drawing, set-up sheet, report, solid.</summary>
public static class WarningText
{
    /// <summary>What was found: "Bracket to quadrant: 1.0 mm (limit: at least 3.0 mm)".</summary>
    public static string Finding(Check check, UnitSystem units) =>
        $"{check.Title}: {CheckText.Value(check, units)} (limit: {CheckText.Limit(check, units)})";

    /// <summary>Headline of one failed safety check.</summary>
    public static string Headline(Check danger, UnitSystem units) => $"SAFETY CHECK FAILED: {Finding(danger, units)}";

    /// <summary>Headline of several, or of one that is told elsewhere.</summary>
    public static string Headline(int dangers) => dangers == 1 ? "SAFETY CHECK FAILED" : $"{dangers} SAFETY CHECKS FAILED";

    /// <summary>Finding and consequence.</summary>
    public static string Line(Check check, UnitSystem units) => $"{Finding(check, units)}. {check.Consequence}";

    /// <summary>Heading of the failed checks that are no danger.</summary>
    public const string OthersFailed = "Failed checks";
}
