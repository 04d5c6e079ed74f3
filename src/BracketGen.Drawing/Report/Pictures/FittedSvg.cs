using BracketGen.Drawing.Fitted;
using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.Report.Pictures;

/// <summary>The bracket in its place, as on the drawing.</summary>
internal static class FittedSvg
{
    /// <summary>The picture with its names is drawn for a room of this size (mm); the page scales it.</summary>
    private static readonly Vector2 Room = new(120, 90);

    public static void Write(HtmlWriter html, ReportScene scene)
    {
        var block = FittedPicture.Of(scene.Solution).DrawIn(Room);
        var box = block.Bounds.Grow(1);
        string N(double value) => PathData.Number(value);
        using var svg = html.Open(
            "svg", ("viewBox", $"{N(box.Min.X)} {N(-box.Max.Y)} {N(box.Width)} {N(box.Height)}"), ("role", "img"), ("aria-label", FittedText.Spoken));

        // Lines of one kind in a row make one path.
        var (lines, kind) = (new PathData(), (LineKind?)null);
        foreach (var item in block.Items)
        {
            var own = item switch { Stroke s => s.Kind, Polyline p => p.Kind, _ => (LineKind?)null };
            if (own != kind && kind is { } before)
            {
                html.Void("path", ("class", Style(before)), ("d", lines.ToString()));
                lines = new();
            }

            kind = own;
            switch (item)
            {
                case Stroke { Segment: ArcSegment arc }:
                    lines.Chain(Enumerable.Range(0, 25).Select(i => PathData.Down(arc.PointAt(i / 24.0))));
                    break;
                case Stroke stroke:
                    lines.Chain([PathData.Down(stroke.Segment.Start), PathData.Down(stroke.Segment.End)]);
                    break;
                case Polyline line:
                    lines.Chain(line.Points.Select(PathData.Down));
                    break;
                case Fill fill:
                    html.Void("path", ("class", "tip"), ("d", new PathData().Chain(fill.Points.Select(PathData.Down)).Close().ToString()));
                    break;
                case TextItem text:
                    html.Line(
                        "text", text.Text, ("x", N(text.Start.X)), ("y", N(-text.Start.Y)), ("textLength", N(text.Width)), ("lengthAdjust", "spacingAndGlyphs"),
                        ("class", text.Weight == FontWeight.Bold ? "name" : null));
                    break;
                default:
                    throw new InvalidOperationException($"The page cannot show a {item.GetType().Name}.");
            }
        }

        if (kind is { } last)
        {
            html.Void("path", ("class", Style(last)), ("d", lines.ToString()));
        }
    }

    private static string Style(LineKind kind) => kind switch
    {
        LineKind.Visible => "edge",
        LineKind.Tangent => "tangent",
        LineKind.Wire => "wire",
        LineKind.Hidden => "behind",
        LineKind.Dimension or LineKind.Leader => "pointer",
        _ => "beside",
    };
}
