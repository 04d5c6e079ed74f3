using System.Globalization;
using System.Text;
using BracketGen.Design.Part;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;

namespace BracketGen.Drawing.ShopDrawing;

/// <summary>Small pictures of a bracket for lists and catalogues, as SVG elements: no dimensions, no text.</summary>
/// <remarks>Line widths and colours are the page's: the paths carry the classes "edge", "cut" and "fold".</remarks>
public static class BracketPicture
{
    /// <summary>Facets this coarse (mm) do not show in a small picture.</summary>
    private const double Chord = 0.3;

    /// <summary>The formed bracket as an eye sees it that stands over one of its corners (ISO 5456-3, isometric).</summary>
    /// <param name="bracket">The bracket.</param>
    public static string Formed(Bracket bracket)
    {
        var mount = bracket.Folded.Flanges[0];
        var view = Corners(mount).MaxBy(v => Math.Round(bracket.Folded.Flanges.Min(f => Math.Abs(f.Z.Dot(v.Z))), 6));
        var lines = HiddenLines.Draw(FoldedMesh.Of(bracket.Folded, Chord), view, withHidden: false);
        var path = new StringBuilder();
        foreach (var line in lines.Where(l => l.Kind == LineKind.Visible))
        {
            Append(path, line.Segment is { } segment ? Points(segment) : line.Chain);
        }

        return Svg(lines.Select(l => l.Bounds).Aggregate((a, b) => a.Union(b)), $"<path class=\"edge\" d=\"{path}\"/>");
    }

    /// <summary>The flat pattern seen from the top of the sheet, with the middles of its bends.</summary>
    /// <param name="bracket">The bracket.</param>
    public static string Flat(Bracket bracket)
    {
        StringBuilder cut = new(), fold = new();
        foreach (var contour in bracket.Flat.Blank.Contours)
        {
            Append(cut, [.. contour.Flatten(0.1), contour.Segments[0].Start]);
        }

        foreach (var bend in bracket.Flat.Bends)
        {
            var (start, end) = bend.CentreLine;
            Append(fold, [start.Vector, end.Vector]);
        }

        return Svg(bracket.Flat.Blank.Outline.Bounds, $"<path class=\"cut\" d=\"{cut}\"/><path class=\"fold\" d=\"{fold}\"/>");
    }

    private static IEnumerable<Frame> Corners(Frame mount)
    {
        foreach (var (x, y) in new[] { (1, -1), (-1, -1), (1, 1), (-1, 1) })
        {
            var towards = mount.ToWorldDirection(new(x, y, 1));
            yield return Frame.FromZX(mount.Origin, towards, mount.Z.Cross(towards));
        }
    }

    private static IReadOnlyList<Vector2> Points(Segment segment) => segment is ArcSegment arc
        ? [.. Enumerable.Range(0, 13).Select(i => arc.PointAt(i / 12.0))]
        : [segment.Start, segment.End];

    private static void Append(StringBuilder path, IReadOnlyList<Vector2> points)
    {
        for (var i = 0; i < points.Count; i++)
        {
            path.Append(i == 0 ? 'M' : 'L').Append(Number(points[i].X)).Append(' ').Append(Number(-points[i].Y));
        }
    }

    private static string Svg(Bounds bounds, string content)
    {
        var room = bounds.Grow(2);
        return $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"{Number(room.Min.X)} {Number(-room.Max.Y)} {Number(room.Width)} {Number(room.Height)}\">{content}</svg>";
    }

    private static string Number(double value) => (Math.Round(value, 2) + 0.0).ToString(CultureInfo.InvariantCulture);
}
