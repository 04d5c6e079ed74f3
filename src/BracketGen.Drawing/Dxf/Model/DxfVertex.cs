using BracketGen.Geometry;

namespace BracketGen.Drawing.Dxf.Model;

/// <summary>A corner of a polyline, and how the polyline goes on from it.</summary>
/// <param name="Point">Where it is (mm).</param>
/// <param name="Bulge">
/// tan(sweep/4) of the arc to the next vertex, positive counter-clockwise; zero: a straight line. (DXF Reference, LWPOLYLINE,
/// group 42.)
/// </param>
public readonly record struct DxfVertex(Vector2 Point, double Bulge = 0)
{
    /// <summary>The piece of contour from this vertex to <paramref name="next"/>.</summary>
    internal Segment To(Vector2 next)
    {
        if (Bulge == 0)
        {
            return new LineSegment(Point, next);
        }

        // With b the bulge and c the chord: radius c (1 + b²)/(4 |b|), centre (1 - b²)/(4 b) chords to the chord's left.
        var chord = next - Point;
        var centre = Point + 0.5 * chord + (1 - Bulge * Bulge) / (4 * Bulge) * chord.Left;
        var radius = chord.Length * (1 + Bulge * Bulge) / (4 * Math.Abs(Bulge));
        return new ArcSegment(centre, radius, (Point - centre).Polar, new(4 * Math.Atan(Bulge)));
    }
}
