using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Views;

/// <summary>One view of the formed bracket before it is put on paper: its lines, in mm of the part.</summary>
internal sealed class ViewSketch
{
    /// <summary>An axis is seen end on if its direction along the line of sight is more than this: its ellipse is a circle to a thousandth of a millimetre.</summary>
    public const double SeenFromAbove = 1 - 1e-6;

    private readonly BracketScene _scene;

    public ViewSketch(BracketScene scene, Frame view, bool withHidden)
    {
        _scene = scene;
        View = view;
        Lines = HiddenLines.Draw(scene.Mesh, view, withHidden);
        Bounds = Bounds.Around(scene.Mesh.Vertices.Select(v => view.ToLocal(v).XY));
    }

    public Frame View { get; }

    public IReadOnlyList<ViewLine> Lines { get; }

    /// <summary>The bare view (mm of the part), its origin in the datum hole.</summary>
    public Bounds Bounds { get; }

    public double VisibleLength => Lines.Where(l => l.Kind == LineKind.Visible).Sum(l => l.Length);

    public double HiddenLength => Lines.Where(l => l.Kind == LineKind.Hidden).Sum(l => l.Length);

    /// <summary>Where a point in front view coordinates comes to lie in this view (mm of the part).</summary>
    public Vector2 At(Vector3 front) => View.ToLocal(_scene.Front.ToWorld(front)).XY;

    public Vector2 Direction(Vector3 front) => View.ToLocalDirection(_scene.Front.ToWorldDirection(front)).XY;

    public IEnumerable<SheetItem> AtScale(double scale) => Lines.Select(l => l.AtScale(scale)).OfType<SheetItem>();

    /// <summary>Centre marks where holes are seen from before, square on or not; axes where they are seen from the side.</summary>
    public IEnumerable<SheetItem> CentreLines(double scale)
    {
        var axes = new LineMerger();
        foreach (var hole in _scene.Bracket.Holes)
        {
            var frame = _scene.Bracket.Folded.Flanges[hole.Flange];
            Vector2 bottom = View.ToLocal(frame.ToWorld(hole.Centre.Vector)).XY, top = View.ToLocal(frame.ToWorld(hole.Centre.Vector, _scene.Thickness)).XY;
            var tilt = Math.Abs(frame.Z.Dot(View.Z));
            if (tilt > SeenFromAbove)
            {
                foreach (var item in Dimensions.CentreMark(scale * top, scale * hole.Reach))
                {
                    yield return item;
                }
            }
            else if (tilt > LeastTilt)
            {
                foreach (var item in EllipseMark(scale * (frame.Z.Dot(View.Z) > 0 ? top : bottom), scale * hole.Reach, View.ToLocalDirection(frame.Z).XY.Unit, tilt))
                {
                    yield return item;
                }
            }
            else if (tilt < 0.05)
            {
                var overrun = Overrun / scale * (top - bottom).Unit;
                axes.AddLine(bottom - overrun, top + overrun, LineKind.Visible);
            }
        }

        foreach (var line in axes.Lines().Select(l => l.Segment!))
        {
            // From the middle outwards, so that a dash and not a gap lies in the hole.
            var middle = scale * line.PointAt(0.5);
            yield return new Stroke(middle, scale * line.End, LineKind.Centre);
            yield return new Stroke(middle, scale * line.Start, LineKind.Centre);
        }
    }

    /// <summary>A hole turned further from the eye than this (cosine) is too narrow an ellipse for two centre lines.</summary>
    private const double LeastTilt = 0.3;

    /// <summary>The centre lines of a round hole seen as an ellipse: along its axes, the short one that of the flange's normal.</summary>
    private static IEnumerable<SheetItem> EllipseMark(Vector2 centre, double radius, Vector2 normal, double tilt)
    {
        const double overrun = 2;
        foreach (var arm in (Vector2[])[(radius + overrun) * normal.Left, (tilt * radius + overrun) * normal])
        {
            yield return new Stroke(centre, centre + arm, LineKind.Centre);
            yield return new Stroke(centre, centre - arm, LineKind.Centre);
        }
    }

    /// <summary>An axis runs past the outline by this (mm on paper).</summary>
    private const double Overrun = 3;
}
