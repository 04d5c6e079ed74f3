using BracketGen.Geometry;
using BracketGen.TestSupport;
using static BracketGen.SheetMetal.Tests.BlankLayout;
using LineSegment = BracketGen.Geometry.LineSegment;

namespace BracketGen.SheetMetal.Tests;

/// <summary>Shapes of blanks worked out by hand: see <see cref="BlankLayout"/>.</summary>
public class BlankOutlineTests
{
    /// <summary>Turn whose tangent is 4/3: that of its half is 1/2, so a corner's rounding takes half its radius of either side.</summary>
    private static readonly double Theta = Math.Atan2(4, 3);

    private static int Corners(Contour contour) => contour.Segments
        .Where((s, i) => s.EndTangent.DistanceTo(contour.Segments[(i + 1) % contour.Segments.Length].StartTangent) > 1e-6).Count();

    private static void HasArcs(Contour contour, int count, double radius)
    {
        var arcs = contour.Segments.OfType<ArcSegment>().ToList();
        Assert.Equal(count, arcs.Count);
        Assert.All(arcs, a => Assert.Equal(radius, a.Radius, 1e-9));
    }

    [Fact]
    public void Without_a_bend_it_is_the_tangent_outline_of_the_discs()
    {
        // By hand: a circle; a long hole's outline; a triangle of points, whose corners are nobody's business here.
        Assert.Equal(25 * Math.PI, new BlankLayout([], [[new(new(3, 4), 5)]]).Draw(1)!.SignedArea, 1e-9);
        Assert.Equal(9 * Math.PI + 60, new BlankLayout([], [[new(new(0, 0), 3), new(new(10, 0), 3)]]).Draw(1)!.SignedArea, 1e-9);
        var triangle = new BlankLayout([], [Points(new(0, 0), new(6, 0), new(0, 8))]).Draw(1)!;
        Assert.Equal((24, 24, 3), (triangle.SignedArea, triangle.Perimeter, triangle.Segments.Length));
    }

    [Fact]
    public void There_is_none_around_nothing_or_a_point()
    {
        Assert.Null(new BlankLayout([], [[]]).Draw(1));
        Assert.Null(new BlankLayout([], [Points(new Vector2(3, 4))]).Draw(1));
    }

    [Fact]
    public void A_strip_stays_a_rectangle_however_many_bends_and_however_it_lies()
    {
        foreach (var (length, strip) in new[] { (30.0, Strip(30, 10)), (50, Strip(50, 10, 30)), (70, Strip(70, 10, 30, 50)) })
        {
            foreach (var turn in Turns)
            {
                var outline = strip.Turned(turn).Draw(3)!;
                Assert.Equal(20 * length, outline.SignedArea, 1e-9);
                Assert.Equal(2 * (20 + length), outline.Perimeter, 1e-9);
                Assert.Equal(4, Corners(outline));
                Assert.All(outline.Segments, s => Assert.IsType<LineSegment>(s));

                // Each edge is one piece, wherever the way round begins.
                Assert.Equal(4, outline.Segments.Length);
            }
        }
    }

    // Metal may touch the straight edge beside a bend, and by round-off come over it; the rectangle stays what it is.
    [Theory]
    [InlineData(0)]
    [InlineData(6e-13)]
    [InlineData(-6e-13)]
    [InlineData(9e-10)]
    public void Metal_that_touches_the_edge_beside_a_bend_changes_nothing(double over)
    {
        foreach (var at in new[] { 3, 10, 16.5 })
        {
            foreach (var turn in Turns)
            {
                // Flange 0 ends at x = 8, the middle one reaches from 16 to 28, the last one begins at 36.
                var strip = Strip(50, 10, 30)
                    .With(0, new Disc(new(8 - 3 + over, at), 3))
                    .With(1, new(new(16 + 2.5 - over, at), 2.5), new(new(28 - 2.5 + over, at), 2.5))
                    .With(2, new Disc(new(36 + 3 - over, at), 3));
                var outline = strip.Turned(turn).Draw(3);
                Assert.NotNull(outline);
                Assert.Equal(20 * 50, outline.SignedArea, 1e-6);
                Assert.Equal(4, outline.Segments.Length);
            }
        }
    }

    [Fact]
    public void A_flange_on_which_nothing_lies_ends_with_the_straight_edge()
    {
        // By hand: flange 1 left out, the strip ends at x = 16; flange 0 too, it begins at x = 8. The corners there are rounded like any
        // beside a bend: 1 - π/4 off each.
        var (strip, off) = (Strip(30, 10), 1 - Math.PI / 4);
        Assert.Equal(16 * 20 - 2 * off, (strip with { Discs = [strip.Discs[0], []] }).Draw(1)!.SignedArea, 1e-9);
        Assert.Equal(8 * 20 - 4 * off, (strip with { Discs = [[], []] }).Draw(1)!.SignedArea, 1e-9);
    }

    // By hand: strip 8 by 20, and on either side a trapezium 6 deep, 20 wide at the bend and 20 ± 16 at its end. Rounding a turn θ by r
    // moves r² (tan θ/2 - θ/2) of metal and makes the way r (2 tan θ/2 - θ) shorter.
    [Theory]
    [InlineData(8, 1)] // Wider: inside corners beside the bend, metal added.
    [InlineData(-8, -1)] // Narrower: outside corners, metal taken off.
    public void Corners_beside_a_bend_are_rounded_with_the_radius_asked_both_ways(double wider, int sign)
    {
        double end = 20 + 2 * wider, sharp = 8 * 20 + 2 * 6 * (20 + end) / 2, around = 2 * end + 2 * 8 + 4 * 10;
        foreach (var turn in Turns)
        {
            var layout = Flared(wider).Turned(turn);
            var plain = layout.Draw(0)!;
            Assert.Equal(sharp, plain.SignedArea, 1e-9);
            Assert.Equal(around, plain.Perimeter, 1e-9);
            HasArcs(plain, 0, 0);

            var rounded = layout.Draw(3)!;
            HasArcs(rounded, 4, 3);
            Assert.All(rounded.Segments.OfType<ArcSegment>(), a => Assert.Equal(-sign * Theta, a.Sweep.Radians, 1e-9));
            Assert.Equal(sharp + sign * 4 * 9 * (0.5 - Theta / 2), rounded.SignedArea, 1e-9);
            Assert.Equal(around - 4 * 3 * (1 - Theta), rounded.Perimeter, 1e-9);
            Assert.Equal(4, Corners(rounded)); // The points that were asked for stay sharp.
        }
    }

    // By hand: rounded by 3 the corner at x = 8 takes 1.5 mm; rounded by as much as fits, 0.999 of the 2 mm beside the bend. Over the bend
    // itself, from x = 10 to 14, the edges stay straight whatever radius is asked.
    [Theory]
    [InlineData(3, 3, 9.5, 14.5)]
    [InlineData(5, 3.996, 9.998, 14.002)]
    [InlineData(1000, 3.996, 9.998, 14.002)]
    public void Rounding_uses_up_the_straight_edge_and_no_more(double asked, double radius, double from, double to)
    {
        foreach (var wider in new[] { 8, -8 })
        {
            var outline = Flared(wider).Draw(asked)!;
            HasArcs(outline, 4, radius);
            Assert.Contains(outline.Segments, s => s is LineSegment && Runs(s, new(from, 0), new(to, 0)));
            Assert.Contains(outline.Segments, s => s is LineSegment && Runs(s, new(to, 20), new(from, 20)));
        }

        static bool Runs(Segment s, Vector2 from, Vector2 to) => s.Start.DistanceTo(from) < 1e-9 && s.End.DistanceTo(to) < 1e-9;
    }

    [Fact]
    public void Rounding_uses_up_a_short_edge_of_the_flange_and_no_more()
    {
        // By hand: 10 mm of straight edge, but the flange's edges beside it are 5 mm long: 0.999 · 5 / (1/2).
        BlankLayout layout = new(
            [Across(0, 1, new(20, 20), new(20, 0))],
            [Points(new(7, -4), new(7, 24)), Points(new(37, -4), new(37, 24))]);
        foreach (var turn in Turns)
        {
            HasArcs(layout.Turned(turn).Draw(50, 10)!, 4, 9.99);
        }
    }

    [Fact]
    public void A_radius_that_is_none_leaves_the_corners_sharp()
    {
        foreach (var radius in new[] { -1, 0, 1e-9, Tolerance.Point })
        {
            HasArcs(Flared(8).Draw(radius)!, 0, 0);
        }
    }

    [Fact]
    public void Four_bends_around_a_flange_make_a_cross()
    {
        // By hand: bends 10 mm long 10 mm off the middle; the flange between them is a square of 16 less four corners of 3 by 3, the arms
        // are 10 wide and 18 long. The corners at the arms turn by 45°; behind the bends the arms run straight on.
        var quarter = new[] { 0.0, 90, 180, 270 }.Select(Angle.FromDegrees).ToArray();
        BlankLayout cross = new(
            [.. quarter.Select((q, i) => Across(0, i + 1, new FlatPoint(10, 5).Rotate(q), new FlatPoint(10, -5).Rotate(q)))],
            [[], .. quarter.Select(q => Points(new Vector2(26, -5).Rotate(q), new Vector2(26, 5).Rotate(q)))]);
        var half = Math.Tan(Math.PI / 8);
        foreach (var turn in Turns)
        {
            var outline = cross.Turned(turn).Draw(1)!;
            HasArcs(outline, 8, 1);
            Assert.Equal(256 - 18 + 4 * 180 + 8 * (half - Math.PI / 8), outline.SignedArea, 1e-9);
            Assert.Equal(4 * 46 + 4 * 3 * Math.Sqrt(2) - 8 * (2 * half - Math.PI / 4), outline.Perimeter, 1e-9);
        }
    }
}
