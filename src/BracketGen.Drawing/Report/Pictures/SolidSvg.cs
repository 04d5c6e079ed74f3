using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Report.Pictures;

/// <summary>The folded bracket seen along one direction: its silhouette filled, its visible edges drawn.</summary>
internal static class SolidSvg
{
    /// <summary>Two paths, in mm of the part, y down.</summary>
    /// <param name="html">Where to, within an SVG.</param>
    /// <param name="mesh">The bracket.</param>
    /// <param name="view">The view: x to the right, y up, z towards the eye.</param>
    public static void Write(HtmlWriter html, FoldedMesh mesh, Frame view)
    {
        // The facets that face the eye, together in one path: they overlap in the picture, and fill it once.
        var faces = new PathData();
        foreach (var t in mesh.Triangles)
        {
            Vector3 a = mesh.Vertices[t.A], b = mesh.Vertices[t.B], c = mesh.Vertices[t.C];
            if ((b - a).Cross(c - a).Dot(view.Z) > Tolerance.SameSize)
            {
                faces.Chain([On(view, a), On(view, b), On(view, c)]).Close();
            }
        }

        html.Void("path", ("class", "sheet"), ("d", faces.ToString()));
        var (edges, tangents) = (new PathData(), new PathData());
        foreach (var line in HiddenLines.Draw(mesh, view, withHidden: false))
        {
            var points = line.Segment is ArcSegment arc
                ? Enumerable.Range(0, 25).Select(i => arc.PointAt(i / 24.0))
                : line.Segment is { } straight ? [straight.Start, straight.End] : line.Chain;
            (line.Kind == LineKind.Tangent ? tangents : edges).Chain(points.Select(PathData.Down));
        }

        html.Void("path", ("class", "edge"), ("d", edges.ToString()));
        html.Void("path", ("class", "tangent"), ("d", tangents.ToString()));
    }

    /// <summary>A point of the part in the picture.</summary>
    public static Vector2 On(Frame view, Vector3 point) => PathData.Down(view.ToLocal(point).XY);
}
