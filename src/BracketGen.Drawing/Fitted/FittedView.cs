using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Views;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Fitted;

/// <summary>The lines of the fitted bracket as a fitter sees it: from outside along the throttle shaft, from a little aside.</summary>
internal sealed class FittedView
{
    /// <summary>How far the eye stands aside and above or below, for each along the throttle shaft (axonometric view, ISO 5456-3).</summary>
    private static readonly (double Aside, double Above)[] Tilts = [(0.5, 0.4), (0.9, 0.5), (0.5, 0.9), (0.9, 0.9)];

    /// <summary>A face seen at this cosine or more is seen well enough.</summary>
    private const double SeenWell = 0.35;

    private readonly ProjectedMesh _projected;

    public FittedView(FittedScene scene)
        : this(scene, scene.View)
    {
    }

    /// <summary>The same seen another way.</summary>
    public FittedView(FittedScene scene, Frame view)
    {
        View = view;
        _projected = new(scene.Shapes.Points, scene.Shapes.Triangles, view);
        Lines =
        [
            .. InGroove(scene).Select(l => (FittedThing.Wire, l)),
            .. scene.Shapes.Edges.GroupBy(e => e.Thing).OrderByDescending(g => g.Key).SelectMany(g =>
                HiddenLines.Draw(_projected, g.Select(e => e.Edge), false).Select(l => (g.Key, l with { Kind = KindOf(g.Key, l.Kind) }))),
        ];
        Bounds = Lines.Select(l => l.Line.Bounds).Aggregate((a, b) => a.Union(b));
    }

    public Frame View { get; }

    /// <summary>The visible lines (mm, x to the right, y up), the bracket's last; of the wire in its groove also what the rim hides.</summary>
    public IReadOnlyList<(FittedThing Thing, ViewLine Line)> Lines { get; }

    public Bounds Bounds { get; }

    /// <summary>Where a point of the throttle frame comes to lie in the picture (mm).</summary>
    public Vector2 At(Vector3 point) => View.ToLocal(point).XY;

    /// <summary>Those of some points that are seen.</summary>
    public IEnumerable<Vector2> Seen(IEnumerable<Vector3> points) => points.Select(View.ToLocal).Where(p => !_projected.IsHidden(p)).Select(p => p.XY);

    /// <summary>
    /// From outside along the throttle shaft, tilted to the side from which most of the bracket, its mount flange with the bolts, and its
    /// seat are seen; from above rather than from below. What is up points up in the picture.
    /// </summary>
    public static Frame Choose(FittedScene scene)
    {
        var upright = scene.Upright;
        var right = upright.Cross(new(0, 0, 1)).Unit;
        var views =
            from tilt in Tilts
            from above in (int[])[1, -1]
            from aside in (int[])[1, -1]
            select Looking(aside * tilt.Aside * right + above * tilt.Above * upright + new Vector3(0, 0, 1), upright);
        return views.MaxBy(v => Math.Round(Worth(scene, v), 6));
    }

    /// <summary>The view towards the throttle frame from a direction.</summary>
    /// <param name="from">Towards the eye.</param>
    /// <param name="upright">What points up in it.</param>
    public static Frame Looking(Vector3 from, Vector3 upright) => Frame.FromZX(Vector3.Zero, from, upright.Cross(from));

    private static double Worth(FittedScene scene, Frame view)
    {
        double Facing(Vector3 normal) => Math.Clamp(normal.Dot(view.Z) / SeenWell, -1, 1);
        var projected = new ProjectedMesh(scene.Shapes.Points, scene.Shapes.Triangles, view);
        var mesh = scene.Mesh;
        var step = 1 + mesh.Triangles.Length / 400;
        double seen = 0, all = 0;
        for (var i = 0; i < mesh.Triangles.Length; i += step)
        {
            var t = mesh.Triangles[i];
            Vector3 a = mesh.Vertices[t.A], b = mesh.Vertices[t.B], c = mesh.Vertices[t.C];
            var faces = (b - a).Cross(c - a).Dot(view.Z) / 2;
            if (faces <= 0)
            {
                continue;
            }

            all += faces;
            seen += projected.IsHidden(view.ToLocal((a + b + c) / 3)) ? 0 : faces;
        }

        var edgeOn = scene.FlangeNormals.Min(n => Math.Abs(n.Dot(view.Z)));
        return 2 * seen / Math.Max(all, Tolerance.Point) + Facing(scene.MountNormal) + 0.7 * Facing(scene.Seat.Normal) + 0.5 * Math.Min(1, edgeOn / 0.2)
            + (view.Z.Dot(scene.Upright) > 0 ? 0.4 : 0);
    }

    /// <summary>The wire in its groove: dashed where the rim hides it.</summary>
    private IEnumerable<ViewLine> InGroove(FittedScene scene)
    {
        Vector3[] points = [.. scene.InGroove.Select(View.ToLocal)];
        for (var i = 0; i + 1 < points.Length;)
        {
            var hidden = IsHiddenAfter(i);
            List<Vector2> chain = [points[i].XY];
            for (; i + 1 < points.Length && IsHiddenAfter(i) == hidden; i++)
            {
                chain.Add(points[i + 1].XY);
            }

            yield return new(null, chain, hidden ? LineKind.Hidden : LineKind.Wire);
        }

        bool IsHiddenAfter(int i) => _projected.IsHidden(0.5 * (points[i] + points[i + 1]));
    }

    private static LineKind KindOf(FittedThing thing, LineKind kind) => thing switch
    {
        FittedThing.Bracket => kind,
        FittedThing.Wire => LineKind.Wire,
        _ => LineKind.FittedPart,
    };
}
