using BracketGen.TestSupport;

namespace BracketGen.Geometry.Tests;

public class FilletTests
{
    [Fact]
    public void A_square_corner_loses_what_the_textbook_says()
    {
        var square = Contour.Polygon([new(0, 0), new(10, 0), new(10, 10), new(0, 10)]);
        var rounded = Fillet.Round(square, 0, 2)!;
        Assert.Equal(100 - 4 * (1 - Math.PI / 4), rounded.SignedArea, 1e-10);
        Assert.Equal(40 - 4 + Math.PI, rounded.Perimeter, 1e-10);
        Assert.Null(Fillet.Round(square, 0, 10.001));
    }

    [Fact]
    public void An_inside_corner_gains_the_same()
    {
        var angle = Contour.Polygon([new(0, 0), new(10, 0), new(10, 4), new(4, 4), new(4, 10), new(0, 10)]);
        var rounded = Fillet.Round(angle, 2, 2)!;
        Assert.Equal(angle.SignedArea + 4 * (1 - Math.PI / 4), rounded.SignedArea, 1e-10);
    }

    [Fact]
    public void Smooth_joins_are_left_alone()
    {
        var slot = RandomShapes.Slot(Vector2.Zero, 3, 10, Angle.Zero);
        Assert.Same(slot, Fillet.Round(slot, 1, 1));
    }

    /// <summary>
    /// Rounding every convex corner by r leaves just what a disc of radius r can reach: NetTopologySuite's buffer in, then out.
    /// </summary>
    [Theory]
    [InlineData("triangle: line to line")]
    [InlineData("half disc: line to arc")]
    [InlineData("lens: arc to arc")]
    [InlineData("horn: arc to hollow arc")]
    public void Convex_corners_are_what_a_disc_can_reach(string shape)
    {
        const double radius = 1.5;
        Vector2 a = new(-20, 1), b = new(17, -3), c = new(2, 22);
        var contour = new Contour(shape[..4] switch
        {
            "tria" => [new LineSegment(a, b), new LineSegment(b, c), new LineSegment(c, a)],
            "half" => [new LineSegment(a, b), RandomShapes.Bulged(b, a, 0.8)],
            "lens" => [RandomShapes.Bulged(a, b, 0.3), RandomShapes.Bulged(b, a, 0.5)],
            _ => [RandomShapes.Bulged(a, b, -0.2), RandomShapes.Bulged(b, a, 0.9)],
        });
        var rounded = contour;
        for (var i = contour.Segments.Length - 1; i >= 0; i--)
        {
            rounded = Fillet.Round(rounded, i, radius)!;
        }

        Assert.Equal(2 * contour.Segments.Length, rounded.Segments.Length);
        Assert.True(rounded.SignedArea < contour.SignedArea - 0.1);
        var opened = contour.ToPolygon(1e-5).Opened(radius);
        Assert.Equal(opened.Area, rounded.SignedArea, 2e-3);
        Assert.Equal(opened.Length, rounded.Perimeter, 2e-3);
        Assert.True(opened.SymmetricDifference(rounded.ToPolygon(1e-5)).Area < 5e-3);
    }

    [Fact]
    public void The_arc_touches_both_sides_and_joins_them_smoothly()
    {
        var (rounded, arcs) = (0, 0);
        RandomShapes.Outline.Check(300, contour =>
        {
            for (var i = 0; i < contour.Segments.Length; i++)
            {
                Segment before = contour.Segments[i], after = contour.Segments[(i + 1) % contour.Segments.Length];
                const double radius = 0.7;
                if (Fillet.Round(contour, i, radius) is not { } result || ReferenceEquals(result, contour))
                {
                    continue;
                }

                rounded++;
                arcs += before is ArcSegment || after is ArcSegment ? 1 : 0;
                var arc = Assert.IsType<ArcSegment>(result.Segments[i + 1]);
                Segment shortBefore = result.Segments[i], shortAfter = result.Segments[(i + 2) % result.Segments.Length];
                Assert.Equal(radius, arc.Radius, 1e-12);
                Assert.Equal(radius, before.DistanceTo(arc.Centre), 1e-9);
                Assert.Equal(radius, after.DistanceTo(arc.Centre), 1e-9);
                Assert.True(shortBefore.EndTangent.DistanceTo(arc.StartTangent) < 1e-8);
                Assert.True(arc.EndTangent.DistanceTo(shortAfter.StartTangent) < 1e-8);
                Assert.True(result.Perimeter < contour.Perimeter);
                Assert.Equal(before.Start, shortBefore.Start);
                Assert.Equal(0, after.End.DistanceTo(shortAfter.End), 1e-9);

                // A left turn loses metal, a right turn gains it.
                var left = before.EndTangent.Cross(after.StartTangent) > 0;
                Assert.Equal(left, result.SignedArea < contour.SignedArea);
            }
        });
        Assert.True(rounded > 300 && arcs > 100, $"{rounded} corners, {arcs} of them at arcs.");
    }
}
