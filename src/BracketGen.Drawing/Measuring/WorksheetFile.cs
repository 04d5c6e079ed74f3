using BracketGen.Drawing.Sheet;
using BracketGen.Units;
using BracketGen.Words.Worksheet;

namespace BracketGen.Drawing.Measuring;

/// <summary>The measuring worksheet as a file: the command and the page give the same bytes.</summary>
public static class WorksheetFile
{
    /// <summary>Its name.</summary>
    public const string Name = "measuring-worksheet.pdf";

    /// <summary>Name of the target that is photographed.</summary>
    public const string TargetName = "photo-target.pdf";

    /// <summary>The sheet with lengths in inches (8.5 x 11 in).</summary>
    public const string InchPaper = "A";

    /// <summary>The sheet with lengths in millimetres.</summary>
    public const string MetricPaper = "A4";

    /// <summary>Its bytes.</summary>
    /// <param name="paper"><see cref="InchPaper"/>; anything else is <see cref="MetricPaper"/>.</param>
    public static byte[] Write(string paper)
    {
        var pages = paper == InchPaper
            ? Worksheet.Compose(PageFormat.AnsiA, UnitSystem.Inch)
            : Worksheet.Compose(PageFormat.A4, UnitSystem.Metric);
        return PdfWriter.Write(pages, Named("Measuring worksheet"));
    }

    /// <summary>Bytes of the target that is photographed.</summary>
    /// <param name="paper">As for the worksheet.</param>
    public static byte[] WriteTarget(string paper) =>
        PdfWriter.Write([TargetSheet.Compose(paper == InchPaper ? PageFormat.AnsiA : PageFormat.A4)], Named(TargetText.Title));

    // The sheets are the same every day: a fixed date keeps their bytes the same.
    private static PdfInfo Named(string title) => new(title, "BracketGen", new DateOnly(2000, 1, 1));
}
