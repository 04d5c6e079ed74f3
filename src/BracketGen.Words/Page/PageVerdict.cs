using BracketGen.Design.Checks;
using BracketGen.Design.Study;

namespace BracketGen.Words.Page;

/// <summary>The verdict as the page shows it in large type.</summary>
/// <param name="State">Its name: unsafe, fails, not-proven or passes.</param>
/// <param name="Word">The same for a reader.</param>
/// <param name="Sentence">What it rests on.</param>
public sealed record PageVerdict(string State, string Word, string Sentence)
{
    /// <summary>The verdict on a solution. Before strength is calculated it is never "passes".</summary>
    public static PageVerdict Of(Solution solution)
    {
        var failed = solution.Checks.Where(c => !c.Passes && c.Kind != CheckKind.Advice).ToList();
        var dangers = failed.Where(c => c.IsDanger).ToList();
        return (dangers.Count, failed.Count) switch
        {
            ( > 0, _) => new("unsafe", "Unsafe", $"{Count(dangers, "safety check")}: {Titles(dangers)}."),
            (_, > 0) => new("fails", "Fails", $"{Count(failed, "check")}: {Titles(failed)}."),
            _ when solution.Bracket is null => new("fails", "Fails", "There is no bracket."),
            _ when solution.Strength is null => new("not-proven", "Not proven", "Nothing calculated so far fails. Strength is not calculated yet."),
            _ => new("passes", "Passes", "Every check passes. A competent person checks the finished installation all the same."),
        };
    }

    private static string Count(List<Check> checks, string what) => checks.Count == 1 ? $"1 {what} fails" : $"{checks.Count} {what}s fail";

    private static string Titles(IEnumerable<Check> checks) => string.Join("; ", checks.Select(c => c.Title));
}
