using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>Arcs as cubic Bézier curves, for page languages that know no arcs.</summary>
internal static class Bezier
{
    /// <summary>
    /// Control points of the curves: start, then two handles and an end for each piece. A piece turns at most a quarter turn, where
    /// handles of 4/3 tan(turn/4) radii stay within 2.7e-4 of the radius (27 µm at 100 mm; a wide line is 500 µm).
    /// </summary>
    public static List<Vector2> Of(ArcSegment arc)
    {
        var count = Math.Max(1, (int)Math.Ceiling(Math.Abs(arc.Sweep.Radians) / (Math.PI / 2) - Tolerance.Direction));
        var turn = arc.Sweep.Radians / count;
        var handle = 4.0 / 3 * Math.Tan(turn / 4) * arc.Radius;
        var points = new List<Vector2>(1 + 3 * count) { arc.Start };
        for (var i = 0; i < count; i++)
        {
            Angle from = new(arc.From.Radians + i * turn), to = new(arc.From.Radians + (i + 1) * turn);
            Vector2 start = arc.Centre + Vector2.FromPolar(arc.Radius, from), end = arc.Centre + Vector2.FromPolar(arc.Radius, to);
            points.Add(start + handle * Vector2.FromPolar(1, from).Left);
            points.Add(end - handle * Vector2.FromPolar(1, to).Left);
            points.Add(end);
        }

        return points;
    }
}
