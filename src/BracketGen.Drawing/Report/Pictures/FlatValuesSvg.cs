using BracketGen.Design.Checks;
using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Report.Pictures;

/// <summary>The flat pattern in the colours of a value of its mesh, and the scale to read it by.</summary>
/// <param name="scene">The report; bracket and strength must be there.</param>
/// <param name="report">The strength.</param>
internal sealed class FlatValuesSvg(ReportScene scene, StrengthReport report)
{
    /// <summary>The picture.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="values">Value of each node of the mesh.</param>
    /// <param name="colours">Their colours.</param>
    /// <param name="label">What it shows, in words.</param>
    /// <param name="at">A place to mark (mm, flat pattern); null for none.</param>
    public void Write(HtmlWriter html, IReadOnlyList<double> values, ValueScale colours, string label, FlatPoint? at)
    {
        var blank = scene.Solution.Bracket!.Flat.Blank;
        var bounds = blank.Outline.Bounds;
        var room = Math.Max(bounds.Width, bounds.Height) / 40;
        var corner = PathData.Down(new(bounds.Min.X, bounds.Max.Y)) - new Vector2(room, room);
        using var svg = html.Open(
            "svg", ("class", "values"), ("viewBox", $"{PathData.Number(corner.X)} {PathData.Number(corner.Y)} {PathData.Number(bounds.Width + 2 * room)} {PathData.Number(bounds.Height + 2 * room)}"),
            ("role", "img"), ("aria-label", label));

        // On the flat nothing hides anything, so all of one colour makes one path. Each polygon is grown a little over its neighbours.
        var paths = new SortedDictionary<int, PathData>();
        foreach (var t in report.Flat.Triangles)
        {
            foreach (var shade in colours.Bands(Corner(t.A, values), Corner(t.B, values), Corner(t.C, values)))
            {
                var colour = shade.Red << 16 | shade.Green << 8 | shade.Blue;
                if (!paths.TryGetValue(colour, out var path))
                {
                    paths[colour] = path = new();
                }

                path.Chain(shade.Points).Close();
            }
        }

        // The pale ones are the little stressed: drawn first, the dark lie over them.
        foreach (var (colour, path) in paths.Reverse())
        {
            html.Void("path", ("class", "band"), ("d", path.ToString()), ("fill", $"#{colour:x6}"), ("stroke", $"#{colour:x6}"));
        }

        var outline = new PathData();
        foreach (var contour in blank.Contours)
        {
            outline.Contour(contour);
        }

        html.Void("path", ("class", "edge"), ("d", outline.ToString()));
        if (at is { } place)
        {
            html.Void("path", ("class", "most"), ("d", new PathData().Circle(PathData.Down(place.Vector), 1.2 * room).ToString()));
        }
    }

    /// <summary>The scale: steps of colour with their values.</summary>
    public static void Scale(HtmlWriter html, ValueScale colours, string unit)
    {
        const double step = 30;
        using var svg = html.Open(
            "svg", ("class", "scale"), ("viewBox", "-10 0 340 34"), ("role", "img"),
            ("aria-label", StrengthFacts.ScaleSpoken($"{ValueScale.Plain(colours.Most)} {unit}".TrimEnd())));
        for (var i = 0; i < ValueScale.Steps; i++)
        {
            var shade = colours.Shade((i + 0.5) / ValueScale.Steps * colours.Most);
            html.Void("path", ("d", $"M{i * step} 0h{step}v14h-{step}Z"), ("fill", $"#{shade.Red:x2}{shade.Green:x2}{shade.Blue:x2}"));
        }

        html.Void("path", ("class", "edge"), ("d", $"M0 0H{ValueScale.Steps * step}V14H0Z"));
        for (var i = 0; i <= ValueScale.Steps; i += 5)
        {
            html.Line("text", ValueScale.Plain(colours.Most * i / ValueScale.Steps) + (i == ValueScale.Steps && unit.Length > 0 ? $" {unit}" : ""), ("x", PathData.Number(i * step)), ("y", "30"), ("text-anchor", "middle"));
        }
    }

    private (Vector2 Point, double Value) Corner(int node, IReadOnlyList<double> values) => (PathData.Down(report.Flat.Nodes[node].Vector), values[node]);
}
