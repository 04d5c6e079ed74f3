using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Geometry.Tests;

/// <summary>Polygons in convex parts, and hulls.</summary>
public class ConvexPartsTests
{
    // Points by rising angle make a polygon that does not cross itself, seldom convex.
    private static readonly Gen<Vector2[]> Stars = Gen.Double[2, 20].Array[3, 16].Select(
        radii => radii.Select((r, i) => Vector2.FromPolar(r, new(2 * Math.PI * i / radii.Length))).ToArray());

    private static double Area(IReadOnlyList<Vector2> polygon) => Enumerable.Range(0, polygon.Count).Sum(i => polygon[i].Cross(polygon[(i + 1) % polygon.Count])) / 2;

    private static bool IsConvex(Vector2[] p) => Enumerable.Range(0, p.Length).All(i => (p[(i + 1) % p.Length] - p[i]).Cross(p[(i + 2) % p.Length] - p[(i + 1) % p.Length]) > -1e-9);

    [Fact]
    public void The_parts_are_convex_and_fill_the_polygon() => TestSupport.Repeatable.Check(Stars, 500, star =>
    {
        var parts = ConvexParts.Of(star);
        Assert.All(parts, p => Assert.True(IsConvex(p)));
        Assert.Equal(Area(star), parts.Sum(Area), 1e-9);

        // No more than one for each corner that turns in, twice, and one (Hertel and Mehlhorn: four times the fewest).
        var reflex = Enumerable.Range(0, star.Length).Count(i =>
            (star[(i + 1) % star.Length] - star[i]).Cross(star[(i + 2) % star.Length] - star[(i + 1) % star.Length]) < 0);
        Assert.True(parts.Count <= 2 * reflex + 1, $"{parts.Count} parts, {reflex} corners turn in.");
    });

    [Fact]
    public void A_convex_polygon_stays_whole() => Assert.Single(ConvexParts.Of([new(0, 0), new(4, 0), new(5, 2), new(2, 4), new(-1, 2)]));

    [Fact]
    public void The_hull_holds_every_point() => TestSupport.Repeatable.Check(Gen.Double[-9, 9].Select(Gen.Double[-9, 9], (x, y) => new Vector2(x, y)).Array[3, 30], 300, points =>
    {
        var hull = ConvexParts.Hull(points);
        Assert.True(IsConvex(hull));
        Assert.All(hull, c => Assert.Contains(c, points));
        for (var i = 0; i < hull.Length; i++)
        {
            Assert.All(points, p => Assert.True((hull[(i + 1) % hull.Length] - hull[i]).Cross(p - hull[i]) > -1e-9));
        }
    });

    [Fact]
    public void Points_on_a_side_are_no_corners() =>
        Assert.Equal([new(0, 0), new(2, 0), new(2, 2), new(0, 2)], ConvexParts.Hull([new(1, 0), new(2, 2), new(0, 0), new(2, 0), new(0, 2), new(1, 1), new(2, 1)]));
}
