using System.Globalization;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Photo;
using BracketGen.Words.Worksheet;

namespace BracketGen.Drawing.Measuring;

/// <summary>The target that is photographed with a throttle body, at full size.</summary>
/// <remarks>The same format gives the same page.</remarks>
public static class TargetSheet
{
    // The window keeps this far from the middles of the marks (mm).
    private const double Rim = 22;

    private const int QuarterPoints = 24;

    /// <summary>The page.</summary>
    /// <param name="format">An upright sheet that the marks fit on.</param>
    public static SheetPage Compose(PageFormat format)
    {
        var middle = format.Sheet.Centre;
        var page = new SheetPage(format, false);
        foreach (var (at, i) in PrintedTarget.Marks.Select((m, i) => (m, i)))
        {
            page = page.With([.. Mark(middle + at, (i + 1).ToString(CultureInfo.InvariantCulture), at)]);
        }

        var bar = ScaleBar.Millimetres((int)PrintedTarget.Bar);
        var barY = middle.Y - PrintedTarget.HalfHeight + 8;
        page = page.With(bar.Shift(new(middle.X - PrintedTarget.Bar / 2, barY)));
        page = page.With(new TextItem(TargetText.Bar, new(middle.X, barY + 9), TextHeight.Small, TextAlign.Centre));

        var window = new Bounds(
            middle - new Vector2(PrintedTarget.HalfWidth - Rim, PrintedTarget.HalfHeight - Rim), middle + new Vector2(PrintedTarget.HalfWidth - Rim, PrintedTarget.HalfHeight - Rim));
        page = page.With(Polyline.Rectangle(window, LineKind.Hidden));
        page = page.With(new TextItem(TargetText.Title, new(middle.X, format.Height - 16), TextHeight.Large, TextAlign.Centre, Weight: FontWeight.Bold));
        var width = window.Width - 12;
        var left = window.Min.X + 6;
        page = page.With(new TextItem(TargetText.CutOut, new(left, window.Max.Y - 8), TextHeight.Small));
        page = page.With(Notes.Numbered("", TargetText.Steps, width).UpperLeftAt(new(left, window.Max.Y - 14)));
        return page.With([.. Axes(new(window.Min.X + 30, window.Min.Y + 30))]);
    }

    // Two black quarters that meet in the mark's middle: where they touch is found to a fraction of a pixel.
    private static IEnumerable<SheetItem> Mark(Vector2 at, string number, Vector2 from)
    {
        const double radius = PrintedTarget.MarkRadius;
        foreach (var start in new[] { 0.0, 180 })
        {
            yield return new Fill(
                [at, .. Enumerable.Range(0, QuarterPoints + 1).Select(i => at + Vector2.FromPolar(radius, Angle.FromDegrees(start + 90.0 * i / QuarterPoints)))], Ink.Black);
        }

        yield return Stroke.Circle(at, radius, LineKind.Rule);
        var inwards = from.X == 0 ? new Vector2(-9, 0) : new Vector2(-Math.Sign(from.X) * 9, 0);
        yield return new TextItem(number, at + inwards + new Vector2(0, -1.8), TextHeight.Large, TextAlign.Centre, Weight: FontWeight.Bold);
    }

    private static IEnumerable<SheetItem> Axes(Vector2 at)
    {
        const double length = 22;
        yield return new Stroke(at, at + new Vector2(length, 0), LineKind.Visible);
        yield return new Stroke(at, at + new Vector2(0, length), LineKind.Visible);
        yield return Arrow.Head(at + new Vector2(length, 0), new(1, 0), DimensionStyle.Standard);
        yield return Arrow.Head(at + new Vector2(0, length), new(0, 1), DimensionStyle.Standard);
        yield return new TextItem(TargetText.AxisX, at + new Vector2(length + 2, -1.2), TextHeight.Large);
        yield return new TextItem(TargetText.AxisY, at + new Vector2(1.5, length + 1), TextHeight.Large);
    }
}
