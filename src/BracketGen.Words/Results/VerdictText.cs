using BracketGen.Design.Checks;

namespace BracketGen.Words.Results;

/// <summary>What the checks come to, in words; screen and report say the same.</summary>
public static class VerdictText
{
    /// <summary>The verdict on <paramref name="checks"/>: how many failed, and how many of those are a matter of safety.</summary>
    public static string Of(IReadOnlyCollection<Check> checks)
    {
        var failed = checks.Where(c => !c.Passes && c.Kind != CheckKind.Advice).ToList();
        return failed.Count == 0
            ? "every check passes. A competent person checks the finished installation all the same."
            : $"{failed.Count} of {checks.Count} checks failed, {(failed.Any(c => c.IsDanger) ? $"{failed.Count(c => c.IsDanger)}" : "none")} of them a matter of safety.";
    }

    /// <summary>One word or two on a check: what the table marks it with.</summary>
    public static string Mark(Check check) => check switch
    {
        { Passes: true } => "ok",
        { Kind: CheckKind.Safety } => "DANGER",
        { Kind: CheckKind.Advice } => "to do",
        _ => "FAILED",
    };
}
