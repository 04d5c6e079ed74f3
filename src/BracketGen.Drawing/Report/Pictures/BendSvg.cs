using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Forming;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.Report.Pictures;

/// <summary>One step of the order of bends: sheet and tools before and after, beside each other.</summary>
internal static class BendSvg
{
    // Between the two pictures (mm).
    private const double Gap = 6;

    public static void Write(HtmlWriter html, BendPlan plan, int step)
    {
        var (before, after) = BendPicture.Of(plan, step);
        var window = before.Window;
        var shift = new Vector2(window.Width + Gap, 0);
        using var svg = html.Open(
            "svg", ("viewBox", $"{PathData.Number(window.Min.X)} {PathData.Number(-window.Max.Y)} {PathData.Number(2 * window.Width + Gap)} {PathData.Number(window.Height)}"), ("role", "img"),
            ("aria-label", BendStepText.Spoken(plan, step)));
        foreach (var (picture, by) in new[] { (before, Vector2.Zero), (after, shift) })
        {
            foreach (var (kind, outline) in picture.Shapes)
            {
                html.Void("path", ("class", kind == SectionKind.Sheet ? "bent" : "tool"), ("d", new PathData().Chain(outline.Select(p => PathData.Down(p + by))).Close().ToString()));
            }
        }
    }
}
