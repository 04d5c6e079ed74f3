using BracketGen.Design.Study;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.ShopDrawing;

namespace BracketGen.Line.Running;

/// <summary>The drawing of a combination, where it is asked for.</summary>
internal static class LineDrawings
{
    public static IEnumerable<(string Name, byte[] Bytes)> Of(Solution solution)
    {
        var document = solution.Job.Document;
        yield return ("drawing.pdf", PdfWriter.Write(
            BracketDrawing.Compose(solution, DrawingOptions.Standard),
            new PdfInfo($"{document.PartNumber} {document.Title}".Trim(), solution.Job.Shop.Name, document.Date ?? new DateOnly(2000, 1, 1))));
    }
}
