namespace BracketGen.Words.Line;

/// <summary>One fact that a revision changed.</summary>
/// <param name="Source">Where the fact is from, such as "vehicle PLV"; empty for the part itself.</param>
/// <param name="Key">Which fact.</param>
/// <param name="Before">The value before; null if there was none.</param>
/// <param name="Now">The value now; null if there is none.</param>
public sealed record FactChange(string Source, string Key, string? Before, string? Now);

/// <summary>Revisions and what changed, in lines that the register keeps and people read.</summary>
public static class RevisionText
{
    /// <summary>A change in one line: "vehicle PLV, pedal.available_pull.value: 51, now 52".</summary>
    public static string Of(FactChange change) =>
        $"{(change.Source.Length > 0 ? change.Source + ", " : "")}{change.Key}: {change.Before ?? "nothing before"}, now {change.Now ?? "nothing"}";

    /// <summary>A source that the revision before was not made from.</summary>
    public static string NewSource(string source) => $"{source}: not known before";

    /// <summary>A fact of a part's first revision.</summary>
    public static string Fact(string key, string value) => $"{key}: {value}";

    /// <summary>Head of the list of all revisions.</summary>
    public static string Head(string family) => $"Revisions of {family}";

    /// <summary>Head of one part's revisions.</summary>
    public static string Part(string partNumber, string variant) => $"{partNumber}: {variant}";

    /// <summary>Head of one revision.</summary>
    public static string Revision(string revision) => $"revision {revision}";
}
