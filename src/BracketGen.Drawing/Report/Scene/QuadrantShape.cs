using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;

namespace BracketGen.Drawing.Report.Scene;

/// <summary>Outline of a quadrant with the valve closed: the grooved sector on its hub.</summary>
/// <remarks>
/// As the clearance checks take it: a sector of the outer radius from just before the pocket to the groove's end, joined to the hub
/// by tangents. Frame opening counter-clockwise, mm.
/// </remarks>
internal static class QuadrantShape
{
    /// <summary>The outline's corners, counter-clockwise; every point of it is seen from the shaft's axis.</summary>
    public static IReadOnlyList<Vector2> Outline(Quadrant quadrant, EndFitting fitting)
    {
        const double step = 0.07;
        var (outer, hub) = (quadrant.OuterRadius, Math.Min(quadrant.HubRadius, 0.98 * quadrant.OuterRadius));
        var before = Math.Asin(Math.Min(1, fitting.ReachRadius / outer));
        double from = quadrant.Pocket.Value - before, to = quadrant.Pocket.Value + quadrant.GrooveExtent;

        // A tangent from the rim touches the hub this far on.
        var tangent = Math.Acos(hub / outer);
        var rest = 2 * Math.PI - (to - from) - 2 * tangent;
        return rest > 0
            ? [.. Arc(outer, from, to - from, step), .. Arc(hub, to + tangent, rest, step)]
            : [.. Arc(outer, from, Math.Min(to - from, 2 * Math.PI - step), step)];
    }

    private static IEnumerable<Vector2> Arc(double radius, double from, double sweep, double step)
    {
        var count = Math.Max(1, (int)Math.Ceiling(sweep / step));
        return Enumerable.Range(0, count + 1).Select(i => Vector2.FromPolar(radius, new(from + sweep * i / count)));
    }
}
