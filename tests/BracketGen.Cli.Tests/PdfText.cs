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
}
