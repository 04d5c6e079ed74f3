using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace BracketGen.Geometry.Tests;

/// <summary>Contours as NetTopologySuite polygons: the independent opinion of these tests.</summary>
internal static class Polygons
{
    public static Polygon ToPolygon(this Contour contour, double chord)
    {
        var ring = contour.Flatten(chord).Select(p => new Coordinate(p.X, p.Y)).ToList();
        ring.Add(ring[0].Copy());
        return new Polygon(new LinearRing([.. ring]));
    }

    public static Polygon ToPolygon(this Region region, double chord) => new(
        (LinearRing)region.Outline.ToPolygon(chord).ExteriorRing,
        [.. region.Holes.Select(h => (LinearRing)h.ToPolygon(chord).ExteriorRing)]);

    public static NetTopologySuite.Geometries.Geometry ToPoint(this Vector2 p) => new Point(p.X, p.Y);

    /// <summary>All that is left of <paramref name="shape"/> where a disc of <paramref name="radius"/> can reach: convex corners rounded.</summary>
    public static NetTopologySuite.Geometries.Geometry Opened(this NetTopologySuite.Geometries.Geometry shape, double radius) =>
        shape.Buffer(-radius, Fine).Buffer(radius, Fine);

    private static readonly BufferParameters Fine = new(256) { SimplifyFactor = 1e-6 };
}
