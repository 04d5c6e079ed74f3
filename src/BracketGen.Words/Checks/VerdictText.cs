using BracketGen.Design.Checks;

namespace BracketGen.Words.Checks;

/// <summary>The verdict in words; every screen and file says the same.</summary>
public static class VerdictText
{
    /// <summary>The answer in a word or two, as files name it.</summary>
    public static string Name(VerdictKind kind) => kind switch
    {
        VerdictKind.Unsafe => "unsafe",
        VerdictKind.Fails => "fails",
        VerdictKind.NotProven => "not proven",
        _ => "passes",
    };

    /// <summary>The same in capitals, for large type.</summary>
    public static string Banner(VerdictKind kind) => Name(kind).ToUpperInvariant();

    /// <summary>The verdict as one sentence, with the checks that decide it.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <param name="question">What was asked, where that is not the whole job: "the travel".</param>
    public static string Of(Verdict verdict, string? question = null) => verdict.Kind == VerdictKind.Passes
        ? $"PASSES every check{(question is null ? "" : $" of {question}")}. {AllTheSame}"
        : $"{Banner(verdict.Kind)}. {Reason(verdict)}";

    /// <summary>What the verdict rests on, for a place that already shows its name.</summary>
    public static string Reason(Verdict verdict) => verdict.Kind switch
    {
        VerdictKind.Unsafe => $"{Count(verdict, "safety check")}: {Names(verdict)}. Do not fit it.",
        VerdictKind.Fails => $"{Count(verdict, "check")}: {Names(verdict)}.",
        VerdictKind.NotProven => $"Nothing fails, but not known: {Names(verdict)}.",
        _ => $"Every check passes. {AllTheSame}",
    };

    private const string AllTheSame = "A competent person checks the finished installation all the same.";

    /// <summary>What to measure or calculate before the answer can be "passes": a sentence for each thing, none twice; empty if nothing is open.</summary>
    public static IReadOnlyList<string> ToProve(Verdict verdict) =>
        verdict.Kind == VerdictKind.NotProven ? [.. verdict.Deciding.Select(c => c.Consequence()).Distinct()] : [];

    private static string Count(Verdict verdict, string what) =>
        verdict.Deciding.Length == 1 ? $"1 {what} fails" : $"{verdict.Deciding.Length} {what}s fail";

    private static string Names(Verdict verdict) => string.Join(", ", verdict.Deciding.Select(c => c.Code));
}
