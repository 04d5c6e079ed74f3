using BracketGen.Design.Checks;
using BracketGen.Words.Checks;

namespace BracketGen.Words.Report;

/// <summary>The checks in the report.</summary>
public static class ChecksText
{
    /// <summary>How to read the tables.</summary>
    public const string HowToRead = "The bar shows the spare, the margin as a part of the limit: to the right of the mark the check passes, and a full bar is as much again as the limit itself; to the left of it the check fails. No bar: not known. First stands what does not pass or passes with less than a quarter of its limit to spare. Open a title to read what a failure means and where the limit comes from.";

    /// <summary>Heads of the columns after the mark.</summary>
    public static IReadOnlyList<string> Heads { get; } = ["check", "value", "limit", "margin"];

    /// <summary>Head of the column of marks, for people who cannot see it.</summary>
    public const string Result = "result";

    /// <summary>Caption of a table.</summary>
    public static string Caption(CheckKind kind) => $"Checks of {CheckText.Kind(kind)}";

    /// <summary>Heading of a kind of checks with what they come to.</summary>
    public static string Heading(CheckKind kind, int failed, int notKnown, int count)
    {
        var parts = new List<string>();
        if (failed > 0)
        {
            parts.Add($"{failed} {(kind == CheckKind.Advice ? "to do" : failed == 1 ? "fails" : "fail")}");
        }

        if (notKnown > 0)
        {
            parts.Add($"{notKnown} not known");
        }

        return $"{Phrases.Capital(CheckText.Kind(kind))}: {(parts.Count == 0 ? $"all {count} pass" : $"of {count}, {string.Join(" and ", parts)}")}";
    }

    /// <summary>A check that passes with less of its limit to spare is near it; common practice, no source.</summary>
    public const double NearSpare = 0.25;

    /// <summary>Over the checks that are folded.</summary>
    /// <param name="count">How many they are.</param>
    /// <param name="shown">How many stand above.</param>
    public static string Others(int count, int shown) =>
        shown == 0 ? count == 1 ? "One check; it passes and is not near its limit" : $"{count} checks; all pass and none is near its limit"
        : count == 1 ? "One more passes and is not near its limit" : $"{count} more pass and are not near their limits";

    /// <summary>What a failure of a kind means.</summary>
    public static string Meaning(CheckKind kind) => kind switch
    {
        CheckKind.Safety => "If one of these fails, somebody can be hurt; the cut file is withheld.",
        CheckKind.Function => "If one of these fails, the throttle does not work as wanted.",
        CheckKind.Making => "If one of these fails, the bracket cannot be made, or not well.",
        _ => "If one of these fails, the bracket works, but something is left to do.",
    };

    /// <summary>What a failure of one check means; what to do about one that is not known.</summary>
    public static string IfItFails(Check check) => check.State == CheckState.NotKnown ? check.Consequence() : $"If it fails: {check.Consequence()}";

    /// <summary>Where a limit comes from.</summary>
    public static string Source(Check check) => $"Limit from: {check.Source()}.";

    /// <summary>Below a failed safety check if there is a bracket.</summary>
    /// <param name="isAccepted">Whether the user accepted it by name.</param>
    public static string CutFile(bool isAccepted) => isAccepted
        ? "It was accepted by name; the person who accepted it answers for it. The drawing carries it too."
        : "The cut file is withheld until this is corrected.";
}
