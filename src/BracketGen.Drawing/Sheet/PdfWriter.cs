using BracketGen.Geometry;
using BracketGen.Units;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace BracketGen.Drawing.Sheet;

/// <summary>Writes sheets to PDF, at full size, with the embedded font and nothing that depends on the clock or the machine.</summary>
public static class PdfWriter
{
    // ISO 32000-1, 8.3.2.3: the unit of user space is 1/72 inch.
    private static readonly double PointsPerMillimetre = 72 / UnitTable.InchLength.Factor;

    /// <summary>The PDF file of <paramref name="pages"/> (at least one), in order. The same input gives the same bytes.</summary>
    /// <exception cref="ArgumentException">There is no page.</exception>
    public static byte[] Write(IReadOnlyList<SheetPage> pages, PdfInfo info)
    {
        if (pages.Count == 0)
        {
            throw new ArgumentException("A PDF file has at least one page.", nameof(pages));
        }

        lock (OneAtATime)
        {
            return Compose(pages, info);
        }
    }

    // The library's documents are apart, but they share its fonts, whose tables it reads with a position of their own.
    private static readonly Lock OneAtATime = new();

    private static byte[] Compose(IReadOnlyList<SheetPage> pages, PdfInfo info)
    {
        SheetFontResolver.Install();
        using var document = new PdfDocument();

        // Deflate's output differs between zlib builds and processors, and the library leaves out its checksum, which strict
        // readers report. A sheet is small: it is written plain.
        document.Options.NoCompression = true;
        document.Options.CompressContentStreams = false;

        // Midnight UTC: a local time would put the machine's time zone into the file.
        var date = info.Date.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        document.Info.CreationDate = date;
        document.Info.ModificationDate = date;
        document.Info.Title = PlainForXmp(info.Title);
        document.Info.Author = PlainForXmp(info.Author);
        document.Info.Creator = "BracketGen";
        document.ViewerPreferences.Direction = PdfReadingDirection.LeftToRight;

        // A template is full size, and a drawing is to scale: a viewer proposes to print at 100 % (ISO 32000-1, table 150).
        document.ViewerPreferences.Elements.SetName("/PrintScaling", "/None");
        foreach (var page in pages)
        {
            var target = document.AddPage();
            target.Width = XUnit.FromPoint(page.Format.Width * PointsPerMillimetre);
            target.Height = XUnit.FromPoint(page.Format.Height * PointsPerMillimetre);
            using var graphics = XGraphics.FromPdfPage(target);
            foreach (var item in page.All)
            {
                Draw(graphics, item, page.Format.Height);
            }
        }

        // A fixed identity first, so that the bytes which the real one is made from are fixed too.
        document.Internals.FirstDocumentID = new string('0', 16);
        document.Internals.SecondDocumentID = new string('0', 16);
        using var stream = new MemoryStream();
        document.Save(stream);
        return PdfIdentity.Settle(stream.ToArray(), info.Date);
    }

    /// <summary>The library copies these into XML unescaped, where the marks of XML would break the file.</summary>
    private static string PlainForXmp(string text) => text.Replace("&", "and").Replace('<', '(').Replace('>', ')');

    private static void Draw(XGraphics graphics, SheetItem item, double sheetHeight)
    {
        XPoint At(Vector2 p) => new(p.X * PointsPerMillimetre, (sheetHeight - p.Y) * PointsPerMillimetre);

        switch (item)
        {
            case Stroke { Segment: ArcSegment arc } stroke:
                graphics.DrawBeziers(Pen(stroke.Kind), [.. Bezier.Of(arc).Select(At)]);
                break;
            case Stroke stroke:
                graphics.DrawLine(Pen(stroke.Kind), At(stroke.Segment.Start), At(stroke.Segment.End));
                break;
            case Polyline { Closed: true } line:
                graphics.DrawPolygon(Pen(line.Kind), [.. line.Points.Select(At)]);
                break;
            case Polyline line:
                graphics.DrawLines(Pen(line.Kind), [.. line.Points.Select(At)]);
                break;
            case Fill fill:
                graphics.DrawPolygon(new XSolidBrush(Colour(fill.Ink)), [.. fill.Points.Select(At)], XFillMode.Winding);
                break;
            case Shade shade:
                graphics.DrawPolygon(new XSolidBrush(XColor.FromArgb(shade.Red, shade.Green, shade.Blue)), [.. shade.Points.Select(At)], XFillMode.Winding);
                break;
            case TextItem text:
                DrawText(graphics, text, At(text.Start));
                break;
            default:
                throw new InvalidOperationException($"The PDF writer cannot draw a {item.GetType().Name}.");
        }
    }

    private static void DrawText(XGraphics graphics, TextItem text, XPoint start)
    {
        var size = text.Height * SheetFont.Of(text.Weight).EmPerCapHeight * PointsPerMillimetre;
        var style = text.Weight == FontWeight.Bold ? XFontStyleEx.Bold : XFontStyleEx.Regular;
        var font = new XFont(SheetFont.Family, size, style, new XPdfFontOptions(PdfFontEncoding.Unicode));
        var state = graphics.Save();
        graphics.TranslateTransform(start.X, start.Y);
        graphics.RotateTransform(-text.Direction.Degrees);
        graphics.DrawString(text.Text, font, new XSolidBrush(Colour(text.Ink)), 0, 0, XStringFormats.BaseLineLeft);
        graphics.Restore(state);
    }

    private static XPen Pen(LineKind kind)
    {
        var style = LineStyle.Of(kind);
        var pen = new XPen(Colour(style.Ink), style.Width * PointsPerMillimetre) { LineJoin = XLineJoin.Round };
        if (style.Dashes.IsEmpty)
        {
            pen.LineCap = XLineCap.Round;
        }
        else
        {
            // The library wants dashes in pen widths. Round caps would eat the gaps.
            pen.LineCap = XLineCap.Flat;
            pen.DashPattern = [.. style.Dashes.Select(d => d / style.Width)];
        }

        return pen;
    }

    private static XColor Colour(Ink ink)
    {
        var (red, green, blue) = InkColour.Of(ink);
        return XColor.FromArgb(red, green, blue);
    }
}
