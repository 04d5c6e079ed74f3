using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Geometry.Tests;

/// <summary>Convex polygons apart or not.</summary>
public class ConvexGapTests
{
    private static readonly Vector2[] Square = [new(0, 0), new(10, 0), new(10, 10), new(0, 10)];

    [Theory]
    [InlineData(13, 0, 2.999, true)]
    [InlineData(13, 0, 3.001, false)]
    [InlineData(0, -14, 3.999, true)]
    [InlineData(5, 5, 0, false)]
    [InlineData(0, 0, 0, false)]
    [InlineData(10, 3, 0, true)]
    public void A_square_beside_its_copy(double x, double y, double gap, bool apart)
    {
        Vector2[] copy = [.. Square.Select(p => p + new Vector2(x, y))];
        Assert.Equal(apart, ConvexGap.IsAtLeast(gap, Square, copy));
        Assert.Equal(apart, ConvexGap.IsAtLeast(gap, copy, Square));
        Assert.Equal(apart, ConvexGap.IsAtLeast(gap, [.. Square.Reverse()], copy));
    }

    // A triangle's corner into a square's side: the strip lies along the side.
    [Fact]
    public void A_corner_that_points_at_a_side() =>
        Assert.True(ConvexGap.IsAtLeast(1.999, [new(12, 5), new(20, 0), new(20, 10)], Square));

    // Two points, 10 apart, by hand: one lies at (30.4, 18.8), and the triangle's farthest corner is 4.0 mm from their line, whichever way all of it lies.
    [Fact]
    public void Two_points_have_two_sides()
    {
        for (var degrees = 0; degrees < 360; degrees += 15)
        {
            Vector2[] Turned(params Vector2[] points) => [.. points.Select(p => p.Rotate(Angle.FromDegrees(degrees)))];
            var two = Turned(new(30.4, 18.8), new(36.4, 10.8));
            var triangle = Turned(new(-5, 16), new(5, 16), new(25.9994, 18.0008));
            Assert.True(ConvexGap.IsAtLeast(3.9, two, triangle), $"turned by {degrees}°");
            Assert.False(ConvexGap.IsAtLeast(4.1, two, triangle), $"turned by {degrees}°");
        }
    }

    // Apart by the strip means apart point by point; and parted by much more than their size they always have one.
    [Fact]
    public void Random_discs_as_polygons() => Gen.Select(RandomShapes.Point, RandomShapes.Point, Gen.Double[1, 20], Gen.Double[1, 20], Gen.Double[0, 10])
        .Check(2000, t =>
        {
            var (a, b, ra, rb, gap) = t;
            var apart = a.DistanceTo(b) - ra - rb;
            var found = ConvexGap.IsAtLeast(
                gap, Contour.Circle(a, ra).Flatten(0.01).AsSpan(), Contour.Circle(b, rb).Flatten(0.01).AsSpan());
            Assert.False(found && apart < gap - 0.03, $"{apart} apart, found {gap}");
            Assert.False(!found && apart > gap + 1, $"{apart} apart, not found {gap}");
        });
}
