using BracketGen.Design.Part;

namespace BracketGen.Words.Report;

/// <summary>Headings of what is said of a bracket that is there already.</summary>
public static class TrialHeadings
{
    /// <summary>Title of the report.</summary>
    public static string Title(MeasuredBracket bracket) => $"{bracket.Name}, a bracket that is there already";

    /// <summary>Last line of the report.</summary>
    public static string WrittenBy(string version) => $"Written by BracketGen {version}, about the bracket as it was measured or drawn. Measure it again after any work on it.";

    /// <summary>Heading of the section.</summary>
    public const string Section = "The bracket that is there";

    /// <summary>Heading of what corrects it.</summary>
    public const string Correct = "What corrects it";

    /// <summary>Said where nobody looked for what corrects it.</summary>
    public const string NotLooked = "Not looked for yet.";

    /// <summary>Heading of what was read and assumed.</summary>
    public const string Assumed = "Read, assumed, and to be looked at";
}
