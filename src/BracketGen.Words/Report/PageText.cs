using BracketGen.Design.Inputs;

namespace BracketGen.Words.Report;

/// <summary>Head, foot and headings of the report.</summary>
public static class PageText
{
    /// <summary>Link at the head for people who cannot see the page.</summary>
    public const string SkipToVerdict = "Skip to the verdict";

    /// <summary>Name of the list of contents.</summary>
    public const string Contents = "Contents";

    /// <summary>Heading of the verdict.</summary>
    public const string Verdict = "Verdict";

    /// <summary>Heading of the cautions.</summary>
    public const string Cautions = "Cautions";

    /// <summary>What is assumed.</summary>
    public const string Assumed = "What is assumed";

    /// <summary>Heading of the checks.</summary>
    public const string Checks = "Checks";

    /// <summary>Heading of the sweep.</summary>
    public const string Sweep = "The sweep";

    /// <summary>Heading of the solid.</summary>
    public const string Solid = "The bracket in its place";

    /// <summary>Heading of the charts.</summary>
    public const string Charts = "Forces and travel";

    /// <summary>Heading of the single failures.</summary>
    public const string Failures = Results.FailureText.Heading;

    /// <summary>Heading of the vehicle's other cables.</summary>
    public const string Cables = Results.OtherCableText.Heading;

    /// <summary>Heading of the probabilities.</summary>
    public const string Sure = "How sure the answer is";

    /// <summary>Heading of the strength.</summary>
    public const string Strength = "Strength";

    /// <summary>Heading of the offers.</summary>
    public const string Offers = "Other brackets";

    /// <summary>Heading of the flat pattern.</summary>
    public const string Flat = "Flat pattern";

    /// <summary>Heading of the inputs.</summary>
    public const string Inputs = "What the answer was calculated from";

    /// <summary>Title of the page in the browser.</summary>
    public static string WindowTitle(Job job) => $"{job.Document.PartNumber} {job.Document.Title}".Trim() is { Length: > 0 } title
        ? title
        : $"{job.Vehicle.Name} on {job.Body.Name}";

    /// <summary>Title on the page.</summary>
    public static string Title(Job job) => job.Document.Title.Trim() is { Length: > 0 } title ? title : "Throttle cable bracket";

    /// <summary>Part number, revision, date and people, as far as the job gives them.</summary>
    public static string Identity(DocumentData document) => string.Join(" · ", new[]
    {
        Named("Part ", document.PartNumber),
        Named("revision ", document.Revision),
        Named("issued ", document.Date is { } date ? Phrases.Date(date) : null),
        Named("drawn by ", document.Creator),
        Named("approved by ", document.Approver),
    }.OfType<string>());

    /// <summary>Last line of the page.</summary>
    public static string WrittenBy(DocumentData document, string version) =>
        $"{(document.Date is null ? "No date of issue given. " : "")}Written by BracketGen {version}. Make the part from the drawing and the cut file; this page explains them.";

    private static string? Named(string name, string? value) => string.IsNullOrWhiteSpace(value) ? null : name + value.Trim();
}
