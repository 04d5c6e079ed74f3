using System.Globalization;
using System.Text;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>Writes one sheet as SVG, in millimetres, for pages that show the drawing.</summary>
public static class SvgWriter
{
    /// <summary>
    /// The SVG document of <paramref name="page"/>. Texts name the sheet font and carry their length, so they keep their room where a
    /// reader's machine sets them in another font.
    /// </summary>
    public static string Write(SheetPage page)
    {
        var svg = new StringBuilder();
        var format = page.Format;
        svg.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").Append(Number(format.Width)).Append("mm\" height=\"")
            .Append(Number(format.Height)).Append("mm\" viewBox=\"0 0 ").Append(Number(format.Width)).Append(' ')
            .Append(Number(format.Height)).Append("\" font-family=\"'").Append(SheetFont.Family).Append("', sans-serif\">\n");
        foreach (var item in page.All)
        {
            Draw(svg, item, format.Height);
        }

        return svg.Append("</svg>\n").ToString();
    }

    // Round a block that stands alone (mm).
    private const double Air = 2;

    /// <summary>Where the SVG document of one block alone has the block's own origin (mm; y runs down).</summary>
    public static Vector2 OriginOf(SheetBlock block) => new(Air - block.Bounds.Min.X, Air + block.Bounds.Max.Y);

    /// <summary>The SVG document of one block alone, as large as it is and a little air round it.</summary>
    public static string Write(SheetBlock block)
    {
        var placed = block.LowerLeftAt(new(Air, Air));
        var (width, height) = (block.Bounds.Width + 2 * Air, block.Bounds.Height + 2 * Air);
        var svg = new StringBuilder();
        svg.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ").Append(Number(width)).Append(' ').Append(Number(height))
            .Append("\" font-family=\"'").Append(SheetFont.Family).Append("', sans-serif\">\n");
        foreach (var item in placed.Items)
        {
            Draw(svg, item, height);
        }

        return svg.Append("</svg>\n").ToString();
    }

    private static void Draw(StringBuilder svg, SheetItem item, double height)
    {
        string At(Vector2 p) => $"{Number(p.X)} {Number(height - p.Y)}";

        switch (item)
        {
            case Stroke { Segment: ArcSegment arc } stroke:
                svg.Append("<path d=\"M").Append(At(arc.Start));
                // SVG cannot say a full circle in one arc: its ends would be the same point.
                foreach (var part in Math.Abs(arc.Sweep.Radians) > Math.PI ? (double[])[0.5, 1] : [1])
                {
                    var radius = Number(arc.Radius);
                    svg.Append('A').Append(radius).Append(' ').Append(radius).Append(" 0 0 ")
                        .Append(arc.Sweep.Radians > 0 ? '0' : '1').Append(' ').Append(At(arc.PointAt(part)));
                }

                svg.Append('"').Append(Line(stroke.Kind)).Append("/>\n");
                break;
            case Stroke stroke:
                svg.Append("<path d=\"M").Append(At(stroke.Segment.Start)).Append('L').Append(At(stroke.Segment.End)).Append('"')
                    .Append(Line(stroke.Kind)).Append("/>\n");
                break;
            case Polyline line:
                svg.Append("<path d=\"M").AppendJoin('L', line.Points.Select(At)).Append(line.Closed ? "Z\"" : "\"")
                    .Append(Line(line.Kind)).Append("/>\n");
                break;
            case Fill fill:
                svg.Append("<path d=\"M").AppendJoin('L', fill.Points.Select(At)).Append("Z\" fill=\"").Append(Colour(fill.Ink)).Append("\"/>\n");
                break;
            case Shade shade:
                svg.Append("<path d=\"M").AppendJoin('L', shade.Points.Select(At)).Append("Z\" fill=\"")
                    .Append(CultureInfo.InvariantCulture, $"#{shade.Red:x2}{shade.Green:x2}{shade.Blue:x2}").Append("\"/>\n");
                break;
            case TextItem text:
                var start = At(text.Start);
                svg.Append("<text x=\"").Append(start.Replace(" ", "\" y=\"")).Append("\" font-size=\"")
                    .Append(Number(text.Height * SheetFont.Of(text.Weight).EmPerCapHeight)).Append("\" textLength=\"").Append(Number(text.Width))
                    .Append("\" lengthAdjust=\"spacingAndGlyphs\"");
                if (text.Weight == FontWeight.Bold)
                {
                    svg.Append(" font-weight=\"bold\"");
                }

                if (text.Direction != Angle.Zero)
                {
                    svg.Append(" transform=\"rotate(").Append(Number(-text.Direction.Degrees)).Append(' ').Append(start).Append(")\"");
                }

                svg.Append(" fill=\"").Append(Colour(text.Ink)).Append("\">").Append(Escape(text.Text)).Append("</text>\n");
                break;
            default:
                throw new InvalidOperationException($"The SVG writer cannot draw a {item.GetType().Name}.");
        }
    }

    private static string Line(LineKind kind)
    {
        var style = LineStyle.Of(kind);
        var dashes = style.Dashes.IsEmpty
            ? " stroke-linecap=\"round\""
            : $" stroke-dasharray=\"{string.Join(' ', style.Dashes.Select(Number))}\"";
        return $" fill=\"none\" stroke=\"{Colour(style.Ink)}\" stroke-width=\"{Number(style.Width)}\" stroke-linejoin=\"round\"{dashes}";
    }

    private static string Colour(Ink ink)
    {
        var (red, green, blue) = InkColour.Of(ink);
        return $"#{red:x2}{green:x2}{blue:x2}";
    }

    private static string Number(double value) => (Math.Round(value, 4) + 0.0).ToString("0.####", CultureInfo.InvariantCulture);

    private static string Escape(string text) =>
        text.Replace("&", "&amp;").Replace("<", "&lt;").Replace(">", "&gt;").Replace("\"", "&quot;");
}
