using UglyToad.PdfPig;

namespace BracketGen.Cli.Tests;

/// <summary>The words of a PDF as PdfPig, an independent reader, finds them.</summary>
internal static class PdfText
{
    /// <summary>Words of all pages in the order of the file; height of the letters as type size in mm.</summary>
    public static IReadOnlyList<(int Page, string Text, double Size)> Of(string path)
    {
        using var document = PdfDocument.Open(path);
        return
        [
            .. document.GetPages().SelectMany(p => p.GetWords().Select(w => (p.Number, w.Text, w.Letters[0].PointSize * 25.4 / 72))),
        ];
    }

    /// <summary>Width and height of each page, whole millimetres: 210 x 297.</summary>
    public static IReadOnlyList<string> Sizes(string path)
    {
        using var document = PdfDocument.Open(path);
        return [.. document.GetPages().Select(p => FormattableString.Invariant($"{p.Width / 72 * 25.4:0} x {p.Height / 72 * 25.4:0}"))];
    }
}
