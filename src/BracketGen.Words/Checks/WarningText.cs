using BracketGen.Design.Checks;
using BracketGen.Units;

namespace BracketGen.Words.Checks;

/// <summary>A failed check where it cannot be overlooked: drawing, set-up sheet, report, solid.</summary>
public static class WarningText
{
    /// <summary>What was found: "Bracket to quadrant: 1.0 mm (limit: at least 3.0 mm)".</summary>
    public static string Finding(Check check, UnitSystem units) =>
        $"{check.Title()}: {CheckText.Value(check, units)} (limit: {CheckText.Limit(check, units)})";

    /// <summary>Headline of one failed safety check.</summary>
    public static string Headline(Check danger, UnitSystem units) => $"SAFETY CHECK FAILED: {Finding(danger, units)}";

    /// <summary>Headline of several, or of one that stands elsewhere.</summary>
    public static string Headline(int dangers) => dangers == 1 ? "SAFETY CHECK FAILED" : $"{dangers} SAFETY CHECKS FAILED";

    /// <summary>Finding and consequence; of what is not known, what to measure or calculate.</summary>
    public static string Line(Check check, UnitSystem units) => check.State == CheckState.NotKnown
        ? $"{check.Title()}: not known. {check.Consequence()}"
        : $"{Finding(check, units)}. {check.Consequence()}";

    /// <summary>Heading of checks that are mere advice.</summary>
    public const string Advice = "Advice";

    /// <summary>Heading of the failed checks that are no danger, and of those that are not known beside them.</summary>
    public static string OtherChecks(bool someNotKnown) => someNotKnown ? "Checks that fail or are not known" : "Failed checks";

    /// <summary>The verdict as a note.</summary>
    public static string Note(Verdict verdict) => $"Verdict: {VerdictText.Of(verdict)}";
}
