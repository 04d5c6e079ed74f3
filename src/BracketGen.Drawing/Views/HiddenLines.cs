using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Solid.Mesh;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Views;

/// <summary>Draws a solid as an eye far away sees it: which edges show, and which parts of them are hidden.</summary>
internal static class HiddenLines
{
    /// <summary>An edge is probed this far (mm) to either side: it shows where one of the two does.</summary>
    private const double Aside = 1e-3;

    /// <summary>Longest stretch of an edge (mm) that is taken to be hidden or not as a whole.</summary>
    private const double Stretch = 1.0;

    /// <summary>
    /// The lines of <paramref name="mesh"/> in the plane of <paramref name="view"/> (x to the right, y up, z towards the eye), in mm
    /// of the part. Hidden parts are dashed, or left out.
    /// </summary>
    public static IReadOnlyList<ViewLine> Draw(FoldedMesh mesh, Frame view, bool withHidden) => Draw(new ProjectedMesh(mesh, view), mesh.Edges, withHidden);

    /// <summary>The same for some edges of what is seen: all of <paramref name="projected"/> hides them.</summary>
    public static IReadOnlyList<ViewLine> Draw(ProjectedMesh projected, IEnumerable<MeshEdge> edges, bool withHidden)
    {
        var lines = new LineMerger();
        foreach (var edge in edges)
        {
            if (ShownAs(edge, projected.View) is not { } kind)
            {
                continue;
            }

            foreach (var (from, to, hidden) in Stretches(projected, edge))
            {
                // Tangent edges and round outlines behind the part would only blur it.
                if (hidden && (!withHidden || kind == LineKind.Tangent))
                {
                    continue;
                }

                Add(lines, projected, edge, from, to, hidden ? LineKind.Hidden : kind);
            }
        }

        return lines.Lines();
    }

    private static LineKind? ShownAs(MeshEdge edge, Frame view)
    {
        const double edgeOn = 1e-6;
        double a = edge.NormalA.Dot(view.Z), b = edge.NormalB.Dot(view.Z);
        switch (edge.Kind)
        {
            case MeshEdgeKind.Sharp:
                return LineKind.Visible;
            case MeshEdgeKind.Smooth:
                return a > edgeOn != b > edgeOn ? LineKind.Visible : null;
            default:
                // A flat face seen edge-on ends in a full line where the bend begins.
                int Side(double n) => n > edgeOn ? 1 : n < -edgeOn ? -1 : 0;
                return Side(a) != Side(b) ? LineKind.Visible : Side(a) > 0 ? LineKind.Tangent : null;
        }
    }

    private static List<(double From, double To, bool Hidden)> Stretches(ProjectedMesh mesh, MeshEdge edge)
    {
        var result = new List<(double From, double To, bool Hidden)>();
        var last = (At: 0.0, Hidden: false);
        for (var i = 0; i + 1 < edge.Points.Length; i++)
        {
            Vector3 a = mesh[edge.Points[i]], b = mesh[edge.Points[i + 1]];
            var count = Math.Max(1, (int)Math.Ceiling(a.XY.DistanceTo(b.XY) / Stretch));
            for (var k = 0; k < count; k++)
            {
                var at = i + (k + 0.5) / count;
                var hidden = IsHidden(mesh, edge, at);
                if (result.Count == 0)
                {
                    result.Add((0, edge.Points.Length - 1, hidden));
                }
                else if (hidden != last.Hidden)
                {
                    var change = FindChange(mesh, edge, last, at);
                    result[^1] = result[^1] with { To = change };
                    result.Add((change, edge.Points.Length - 1, hidden));
                }

                last = (at, hidden);
            }
        }

        return result;
    }

    private static double FindChange(ProjectedMesh mesh, MeshEdge edge, (double At, bool Hidden) low, double high)
    {
        var from = low.At;
        for (var i = 0; i < 11; i++)
        {
            var middle = (from + high) / 2;
            if (IsHidden(mesh, edge, middle) == low.Hidden)
            {
                from = middle;
            }
            else
            {
                high = middle;
            }
        }

        return (from + high) / 2;
    }

    private static bool IsHidden(ProjectedMesh mesh, MeshEdge edge, double at)
    {
        var i = Math.Min((int)at, edge.Points.Length - 2);
        Vector3 a = mesh[edge.Points[i]], b = mesh[edge.Points[i + 1]];
        var point = a + (at - i) * (b - a);
        var along = b.XY - a.XY;
        if (along.Length < Tolerance.OnLimit)
        {
            return mesh.IsHidden(point);
        }

        var aside = Vector3.From(Aside * along.Unit.Left);
        return mesh.IsHidden(point + aside) && mesh.IsHidden(point - aside);
    }

    private static void Add(LineMerger lines, ProjectedMesh mesh, MeshEdge edge, double from, double to, LineKind kind)
    {
        Vector2 At(double at)
        {
            var i = Math.Min((int)at, edge.Points.Length - 2);
            Vector2 a = mesh[edge.Points[i]].XY, b = mesh[edge.Points[i + 1]].XY;
            return a + (at - i) * (b - a);
        }

        var inner = Enumerable.Range((int)Math.Floor(from) + 1, Math.Max(0, (int)Math.Ceiling(to) - (int)Math.Floor(from) - 1));
        List<Vector2> points = [At(from), .. inner.Select(i => mesh[edge.Points[i]].XY), At(to)];
        if (edge.Circle is not { } circle)
        {
            lines.AddLine(points[0], points[^1], kind);
            return;
        }

        var tilt = Math.Abs(circle.Axis.Dot(mesh.View.Z));
        if (tilt > 1 - Tolerance.OnLimit)
        {
            var centre = mesh.View.ToLocal(circle.Centre).XY;
            var sweep = 0.0;
            for (var i = 0; i + 1 < points.Count; i++)
            {
                Vector2 a = points[i] - centre, b = points[i + 1] - centre;
                sweep += Math.Atan2(a.Cross(b), a.Dot(b));
            }

            if (Math.Abs(sweep) > Tolerance.OnLimit)
            {
                lines.AddArc(new(centre, circle.Radius, (points[0] - centre).Polar, new(sweep)), kind);
            }
        }
        else if (tilt < Tolerance.Smooth)
        {
            var along = circle.Axis.Cross(mesh.View.Z);
            var direction = mesh.View.ToLocalDirection(along).XY.Unit;
            var reach = points.Select(p => (p - points[0]).Dot(direction)).ToList();
            lines.AddLine(points[0] + reach.Min() * direction, points[0] + reach.Max() * direction, kind);
        }
        else
        {
            lines.AddChain(points, kind);
        }
    }
}
