using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Views;

/// <summary>A line of a view, in mm of the part: exact where it is straight or a circle seen square on, a chain of points otherwise.</summary>
/// <param name="Segment">The exact line; null for a chain.</param>
/// <param name="Chain">The points of a chain; empty for an exact line.</param>
/// <param name="Kind">How it is drawn.</param>
internal sealed record ViewLine(Segment? Segment, IReadOnlyList<Vector2> Chain, LineKind Kind)
{
    public double Length => Segment?.Length ?? Chain.Zip(Chain.Skip(1), (a, b) => a.DistanceTo(b)).Sum();

    public Bounds Bounds => Segment?.Bounds ?? Bounds.Around(Chain);

    /// <summary>On paper, at a scale; null where it is too short to be drawn there.</summary>
    public SheetItem? AtScale(double scale)
    {
        if (Length * scale < 0.15)
        {
            return null;
        }

        if (Segment is null)
        {
            return new Polyline([.. Chain.Select(p => scale * p)], false, Kind);
        }

        if (Kind == LineKind.Tangent && Segment is LineSegment line)
        {
            // Imaginary intersections stop short of the outlines (ISO 128-3).
            var gap = Math.Min(TangentGap, line.Length * scale / 4);
            var along = gap * line.StartTangent;
            return new Stroke(scale * line.Start + along, scale * line.End - along, Kind);
        }

        return new Stroke(Scaled(Segment, scale), Kind);
    }

    /// <summary>Gap at either end of a tangent edge (mm on paper).</summary>
    private const double TangentGap = 1.2;

    public static Segment Scaled(Segment segment, double scale) => segment is ArcSegment arc
        ? new ArcSegment(scale * arc.Centre, scale * arc.Radius, arc.From, arc.Sweep)
        : new LineSegment(scale * segment.Start, scale * segment.End);
}
