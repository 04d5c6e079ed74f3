using BracketGen.Design.Inputs;

namespace BracketGen.Words.SetupSheet;

/// <summary>Title, headings and closing lines of the set-up sheet.</summary>
public static class SetupText
{
    /// <summary>Said if there is no bracket.</summary>
    public const string NoBracket = "There is no bracket to fit: no shape was found for this job.";

    /// <summary>Title.</summary>
    public const string Title = "Set-up sheet";

    /// <summary>Heading of the cautions.</summary>
    public const string Safety = "Safety";

    /// <summary>Heading of the parts list.</summary>
    public const string Parts = "Parts";

    /// <summary>Heading of the order of fitting.</summary>
    public const string Fitting = "Fitting";

    /// <summary>Heading of what is to be set.</summary>
    public const string Setting = "Setting";

    /// <summary>Heading of the checks.</summary>
    public const string Checks = "Checks before the first start";

    /// <summary>Heading of the sources of the torques.</summary>
    public const string TorqueSources = "Where the torques come from";

    /// <summary>Below the blanks for the readings.</summary>
    public const string GiveReadings = "Give these readings to the command \"fitted\": it says what they mean and which turn of the adjuster corrects them.";

    /// <summary>Number of a sheet.</summary>
    public static string Sheet(int sheet, int sheets) => $"sheet {sheet}/{sheets}";

    /// <summary>Part number, revision and title.</summary>
    public static string Part(DocumentData document) => $"{document.PartNumber}{Revision(document)}: {document.Title}";

    /// <summary>Vehicle, throttle body, shop and date.</summary>
    public static string Subject(Job job) =>
        $"{ShopDrawing.DrawingText.Subject(job)}. {job.Shop.Name}{(job.Document.Date is { } date ? ", " + Phrases.Date(date) : "")}";

    /// <summary>", revision A"; empty if there is none.</summary>
    internal static string Revision(DocumentData document) => document.Revision.Length > 0 ? $", revision {document.Revision}" : "";
}
