using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Tests.Sheet;

/// <summary>What poppler paints, measured in pixels at 300 dpi: a drawing at 1:1 must be 1:1.</summary>
public class RenderedScaleTests
{
    private const double PixelsPerMillimetre = 300 / 25.4;

    [SkippableFact]
    public void A_bar_of_150_mm_is_150_mm_long()
    {
        var bar = new Bounds(new(30, 140), new(180, 143));
        var picture = Paint(Fill.Rectangle(bar, Ink.Black));
        var row = (int)((297 - 141.5) * PixelsPerMillimetre);
        var dark = Enumerable.Range(0, picture.Width).Where(x => picture.IsDark(x, row)).ToArray();
        Assert.Equal(150 * PixelsPerMillimetre, dark[^1] - dark[0] + 1, 1.0);
        Assert.Equal(30 * PixelsPerMillimetre, dark[0], 1.0);
    }

    [SkippableFact]
    public void The_millimetre_and_inch_bars_are_as_long_as_they_say()
    {
        foreach (var (bar, length) in new[] { (ScaleBar.Millimetres(100), 100.0), (ScaleBar.Inches(4), 101.6) })
        {
            // Labels stand above the bar; the row through the bar's end ticks just below it shows the two ticks alone.
            var picture = Paint([.. bar.Shift(new(40, 100)).Items]);
            var row = (int)((297 - 99.5) * PixelsPerMillimetre);
            var dark = Enumerable.Range(0, picture.Width).Where(x => picture.IsDark(x, row)).ToArray();
            var tick = LineStyle.Of(LineKind.Rule).Width * PixelsPerMillimetre;
            Assert.Equal(length * PixelsPerMillimetre, dark[^1] - dark[0] + 1 - tick, 1.5);
        }
    }

    [SkippableFact]
    public void A_circle_is_round_and_of_its_size()
    {
        const double radius = 60;
        var picture = Paint(Stroke.Circle(new(105, 148.5), radius, LineKind.Dimension));
        var outermost = 0.0;
        var innermost = double.PositiveInfinity;
        Vector2 centre = new(105 * PixelsPerMillimetre, 148.5 * PixelsPerMillimetre);
        for (var y = 0; y < picture.Height; y++)
        {
            for (var x = 0; x < picture.Width; x++)
            {
                if (picture.IsDark(x, y))
                {
                    var distance = new Vector2(x + 0.5, y + 0.5).DistanceTo(centre);
                    (outermost, innermost) = (Math.Max(outermost, distance), Math.Min(innermost, distance));
                }
            }
        }

        var half = LineStyle.Narrow / 2;
        Assert.Equal((radius + half) * PixelsPerMillimetre, outermost, 1.0);
        Assert.Equal((radius - half) * PixelsPerMillimetre, innermost, 1.0);
    }

    private static GreyPicture Paint(params SheetItem[] items)
    {
        using var folder = new TemporaryFolder();
        var page = new SheetPage(PageFormat.A4, framed: false).With(items);
        File.WriteAllBytes(folder["bar.pdf"], PdfWriter.Write([page], new PdfInfo("Bar", "", new DateOnly(2026, 3, 14))));
        OutsideTool.Require("pdftoppm").RunOrFail(["-r", "300", "-gray", "-singlefile", folder["bar.pdf"], folder["bar"]]);
        return GreyPicture.Read(folder["bar.pgm"]);
    }
}
