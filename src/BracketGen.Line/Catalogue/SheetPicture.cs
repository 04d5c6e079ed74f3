using System.Globalization;
using System.Text;
using BracketGen.Geometry;
using BracketGen.Line.Nesting;
using BracketGen.Line.Solving;

namespace BracketGen.Line.Catalogue;

/// <summary>A filled sheet as a picture: every piece with the number of its part, its holes and bends.</summary>
internal static class SheetPicture
{
    private const double Chord = 0.3;

    // As many as the page has colours; the numbers tell the parts apart.
    private const int Colours = 6;

    /// <summary>Class of a part's pieces by its place in the legend, from 0.</summary>
    public static string ClassOf(int part) => $"p{(part % Colours).ToString(CultureInfo.InvariantCulture)}";

    /// <summary>The picture (SVG), y downwards.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="border">Metal along its edges (mm).</param>
    /// <param name="parts">The part of every piece by its name.</param>
    public static string Of(LaidSheet sheet, double border, IReadOnlyDictionary<string, LinePart> parts)
    {
        var svg = new StringBuilder(Text($"<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"-2 -2 {sheet.Length + 4:0.##} {sheet.Width + 4:0.##}\">"));
        svg.Append("<path class=\"sheet\" fill-rule=\"evenodd\" d=\"");
        foreach (var contour in sheet.Offcut?.Outline?.Contours ?? [Contour.Polygon([new(0, 0), new(sheet.Length, 0), new(sheet.Length, sheet.Width), new(0, sheet.Width)])])
        {
            Add(svg, contour, sheet.Width);
        }

        svg.Append(Text($"\"/><path class=\"used\" d=\"M{sheet.Used(border):0.##} 0V{sheet.Width:0.##}\"/>"));
        foreach (var (number, (name, _)) in StockNotes.Counts(sheet).Index())
        {
            AddPart(svg, sheet, number, parts[name]);
        }

        return svg.Append("</svg>\n").ToString();
    }

    private static void AddPart(StringBuilder svg, LaidSheet sheet, int number, LinePart part)
    {
        var flat = part.Bracket.Flat;
        LaidPiece[] laid = [.. sheet.Laid.Where(l => l.Piece.Name == part.Made.PartNumber)];
        svg.Append($"<path class=\"{ClassOf(number)}\" d=\"");
        foreach (var piece in laid)
        {
            foreach (var contour in flat.Blank.Contours)
            {
                Add(svg, contour.Rotate(piece.Turn).Shift(piece.Shift), sheet.Width);
            }
        }

        svg.Append("\"/>");
        if (flat.Bends.Length > 0)
        {
            svg.Append("<path class=\"bend\" d=\"");
            foreach (var piece in laid)
            {
                foreach (var bend in flat.Bends)
                {
                    Vector2 start = bend.CentreLine.Start.Vector.Rotate(piece.Turn) + piece.Shift, end = bend.CentreLine.End.Vector.Rotate(piece.Turn) + piece.Shift;
                    svg.Append(Text($"M{start.X:0.#} {sheet.Width - start.Y:0.#}L{end.X:0.#} {sheet.Width - end.Y:0.#}"));
                }
            }

            svg.Append("\"/>");
        }

        var (middle, depth) = Middle(flat.Blank);
        var size = Math.Clamp(1.2 * depth, 6, 30);
        svg.Append(Text($"<g font-size=\"{size:0.#}\">"));
        foreach (var piece in laid)
        {
            var at = middle.Rotate(piece.Turn) + piece.Shift;
            svg.Append(Text($"<text x=\"{at.X:0.#}\" y=\"{sheet.Width - at.Y:0.#}\">{number + 1}</text>"));
        }

        svg.Append("</g>");
    }

    // The place deepest in the metal, on a grid.
    private static (Vector2 At, double Depth) Middle(Region blank)
    {
        const int steps = 24;
        var bounds = blank.Outline.Bounds;
        return (from i in Enumerable.Range(1, steps - 1)
                from j in Enumerable.Range(1, steps - 1)
                let at = bounds.Min + new Vector2(bounds.Width * i / steps, bounds.Height * j / steps)
                select (At: at, Depth: blank.DepthOf(at))).MaxBy(p => Math.Round(p.Depth, 6));
    }

    private static void Add(StringBuilder svg, Contour contour, double width)
    {
        var points = contour.Flatten(Chord);
        for (var i = 0; i < points.Length; i++)
        {
            svg.Append(i == 0 ? 'M' : 'L').Append(Text($"{points[i].X:0.#} {width - points[i].Y:0.#}"));
        }

        svg.Append('Z');
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
