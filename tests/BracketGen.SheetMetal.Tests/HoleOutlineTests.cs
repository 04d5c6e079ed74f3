using BracketGen.Geometry;
using BracketGen.SheetMetal.Patterns;
using BracketGen.TestSupport;
using CsCheck;
using NetTopologySuite.Algorithm.Construct;
using Coordinate = NetTopologySuite.Geometries.Coordinate;
using LinearRing = NetTopologySuite.Geometries.LinearRing;
using Polygon = NetTopologySuite.Geometries.Polygon;

namespace BracketGen.SheetMetal.Tests;

/// <summary>Holes that are not round, beside elementary mensuration and NetTopologySuite.</summary>
public sealed class HoleOutlineTests
{
    private static readonly Gen<(HoleOutline Outline, double Size)> Holes =
        from turn in Gen.Double[-180, 180]
        from size in Gen.Double[4, 30]
        from part in Gen.Double[0.05, 0.9]
        from kind in Gen.Int[0, 2]
        let along = Vector2.FromPolar(1, Angle.FromDegrees(turn))
        select (kind switch
        {
            0 => new SquareHole(along, 0.49 * part * size),
            2 => new SlottedHole(along, part * size),
            _ => (HoleOutline)new FlatSidedHole(along, (0.5 + 0.5 * part) * size),
        }, size);

    // Square with rounded corners: s² - (4 - π) r²; segment of a circle: R² acos(h/R) - h √(R² - h²) (Machinery's Handbook, areas and volumes; from memory).
    [Fact]
    public void Areas_are_those_of_mensuration() => Holes.Check(300, hole =>
    {
        var (outline, size) = hole;
        var expected = outline switch
        {
            SlottedHole slot => Math.PI * size * size / 4 + slot.Travel * size,
            SquareHole s => size * size - (4 - Math.PI) * s.Corner * s.Corner,
            FlatSidedHole f => Math.PI * size * size / 4 - 2 * (size * size / 4 * Math.Acos(f.AcrossFlats / size) - f.AcrossFlats / 2 * Math.Sqrt(size * size / 4 - f.AcrossFlats * f.AcrossFlats / 4)),
            _ => double.NaN,
        };
        Assert.Equal(expected, outline.Round(new(3, -7), size).SignedArea, 1e-9 * expected);
    });

    [Fact]
    public void No_point_is_farther_from_its_centre_than_it_says_and_some_point_is_as_far() => Holes.Check(300, hole =>
    {
        var (outline, size) = hole;
        var centre = new FlatPoint(3, -7);
        var contour = outline.Round(centre, size);
        var farthest = contour.Segments.SelectMany(s => Enumerable.Range(0, 41).Select(i => s is ArcSegment arc ? arc.PointAt(i / 40.0) : s.Start + i / 40.0 * (s.End - s.Start)))
            .Max(p => centre.Vector.DistanceTo(p));
        Assert.Equal(outline.Reach(size), farthest, 1e-2 * size);
        Assert.True(farthest <= outline.Reach(size) + 1e-9);
        Assert.True(contour.Contains(centre.Vector));
    });

    // Towards a direction no point reaches farther than it says; a slotted hole reaches just as far.
    [Fact]
    public void It_reaches_as_far_towards_a_direction_as_it_says() => Gen.Select(Holes, Gen.Double[-180, 180]).Check(200, at =>
    {
        var ((outline, size), turn) = at;
        var way = Vector2.FromPolar(1, Angle.FromDegrees(turn));
        var farthest = outline.Round(new(0, 0), size).Flatten(1e-4).Max(p => p.Dot(way));
        Assert.True(farthest <= outline.ReachTowards(size, way) + 1e-9);
        if (outline is SlottedHole)
        {
            Assert.Equal(outline.ReachTowards(size, way), farthest, 1e-3);
        }
    });

    // The largest disc that goes through has the least width as its diameter.
    [Fact]
    public void Its_least_width_is_that_of_the_largest_disc_in_it() => Holes.Check(40, hole =>
    {
        var (outline, size) = hole;
        var points = outline.Round(new(0, 0), size).Flatten(1e-3).Select(p => new Coordinate(p.X, p.Y)).ToList();
        var polygon = new Polygon(new LinearRing([.. points, points[0]]));
        Assert.Equal(outline.LeastWidth(size), 2 * MaximumInscribedCircle.GetRadiusLine(polygon, 1e-3 * size).Length, 2e-3 * size);
    });

    [Fact]
    public void Its_mirror_image_is_the_image_of_its_outline() => Holes.Check(300, hole =>
    {
        var (outline, size) = hole;
        var centre = new FlatPoint(3, -7);
        var image = outline.Mirrored().Round(centre.MirroredInX, size);
        var of = outline.Round(centre, size).MirroredInX;
        Assert.Equal(of.SignedArea, image.SignedArea, 1e-9);
        Assert.All(of.Segments, s => Assert.Contains(image.Segments, t => t.Start.DistanceTo(s.Start) < 1e-9));
    });
}
