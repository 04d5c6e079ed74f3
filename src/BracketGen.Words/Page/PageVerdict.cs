using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Words.Checks;

namespace BracketGen.Words.Page;

/// <summary>The verdict as the page shows it in large type.</summary>
/// <param name="State">Its name, in one word: unsafe, fails, not-proven or passes.</param>
/// <param name="Word">Its name for a reader.</param>
/// <param name="Sentence">What it rests on.</param>
public sealed record PageVerdict(string State, string Word, string Sentence)
{
    /// <summary>The verdict on a solution.</summary>
    public static PageVerdict Of(Solution solution)
    {
        var verdict = solution.Verdict;
        var name = VerdictText.Name(verdict.Kind);
        var isStrengthOpen = verdict.Kind == VerdictKind.NotProven && solution.Strength is null;
        return new(name.Replace(' ', '-'), char.ToUpperInvariant(name[0]) + name[1..], isStrengthOpen ? StrengthOpen(solution) : VerdictText.Reason(verdict));
    }

    /// <summary>The verdict on a bracket that is there already.</summary>
    public static PageVerdict Of(TriedBracket tried)
    {
        if (tried.Trial.Solution is { } solution)
        {
            return Of(solution);
        }

        var name = VerdictText.Name(tried.Trial.Kind);
        return new(name, char.ToUpperInvariant(name[0]) + name[1..], BracketWords.DoesNotGo);
    }

    private static string StrengthOpen(Solution solution)
    {
        var open = StrengthChecks.NotCalculated(solution.Job, solution.Bracket).Select(c => c.Id).ToHashSet();
        var others = solution.Verdict.Deciding.Where(c => !open.Contains(c.Id)).Select(c => c.Code).ToList();
        return others.Count == 0 ? NotYet : $"{NotYet} Also not known: {string.Join(", ", others)}.";
    }

    private const string NotYet = "Nothing fails so far, but strength is not calculated yet.";
}
