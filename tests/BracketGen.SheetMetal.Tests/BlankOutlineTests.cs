using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Tests;

/// <summary>Outlines of blanks against the shape that their definition gives: what lies where is worked out beside the program.</summary>
public class BlankOutlineTests
{
    private const double Straight = 2;

    private static Bend Across(double x, int from, int to, double low = 0, double high = 20) => new()
    {
        From = from, To = to, Start = new(x, high), End = new(x, low), Turn = Angle.Right, InsideRadius = 2, Allowance = 4, Rule = new Din6935Rule(),
    };

    // A bend over a top edge: its flange lies above it.
    private static Bend Above(double y, int from, int to, double left, double right) => Across(0, from, to) with { Start = new(left, y), End = new(right, y) };

    private static Disc Point(double x, double y) => new(new(x, y), 0);

    // Convex hull of many points on every disc and of the given corners (Andrew's monotone chain).
    private static List<Vector2> Hull(IEnumerable<Disc> discs, params Vector2[] corners)
    {
        const int Count = 4000;
        List<Vector2> points = [.. corners];
        foreach (var disc in discs)
        {
            points.AddRange(disc.Radius == 0 ? [disc.Centre]
                : Enumerable.Range(0, Count).Select(i => disc.Centre + Vector2.FromPolar(disc.Radius, new(2 * Math.PI * i / Count))));
        }

        points = [.. points.Distinct().OrderBy(p => p.X).ThenBy(p => p.Y)];
        List<Vector2> Half(IEnumerable<Vector2> sorted)
        {
            List<Vector2> chain = [];
            foreach (var p in sorted)
            {
                while (chain.Count > 1 && (chain[^1] - chain[^2]).Cross(p - chain[^1]) <= 0)
                {
                    chain.RemoveAt(chain.Count - 1);
                }

                chain.Add(p);
            }

            return chain;
        }

        List<Vector2> below = Half(points), above = Half(points.AsEnumerable().Reverse());
        return [.. below.SkipLast(1), .. above.SkipLast(1)];
    }

    private static double Area(List<Vector2> polygon) =>
        polygon.Select((p, i) => p.Cross(polygon[(i + 1) % polygon.Count])).Sum() / 2;

    private static readonly Disc Mount = new(new(0, 10), 15);
    private static readonly Disc Far = new(new(60, 10), 13);

    private static Contour? One(double corner, params Disc[] far) => BlankOutline.Draw([Across(30, 0, 1)], [[Mount], far], Straight, corner);

    /// <summary>Flat strips meet in one straight edge: a rectangle of 60 by 20 comes out with four sides.</summary>
    [Fact]
    public void A_strip_is_a_rectangle()
    {
        var outline = BlankOutline.Draw([Across(30, 0, 1)], [[Point(0, 0), Point(0, 20)], [Point(60, 0), Point(60, 20)]], Straight, 3)!;
        Assert.Equal(60 * 20, outline.SignedArea, 1e-9);
        Assert.Equal(160, outline.Perimeter, 1e-9);
        Assert.InRange(outline.Segments.Length, 4, 5); // where it begins may lie on a side
        Assert.All(outline.Segments, s => Assert.IsType<LineSegment>(s));
    }

    /// <summary>Two hulls and between them the strip, 8 mm long: 4 of bend and 2 of straight edge to either side.</summary>
    [Fact]
    public void A_blank_is_its_hulls_and_the_strip_between()
    {
        var outline = One(0, Far)!;
        var expected = Area(Hull([Mount], new(28, 0), new(28, 20))) + 8 * 20 + Area(Hull([Far], new(36, 0), new(36, 20)));
        Assert.Equal(expected, outline.SignedArea, 1e-2);
        foreach (var corner in (Vector2[])[new(28, 0), new(28, 20), new(36, 0), new(36, 20)])
        {
            Assert.Contains(outline.Segments, s => s.Start.DistanceTo(corner) < 1e-9);
        }

        Assert.Equal(15, outline.Segments.OfType<ArcSegment>().Max(a => a.Radius));
        for (var x = 28.0; x <= 36; x += 0.5)
        {
            Assert.Equal(0, outline.DistanceTo(new(x, 0)), 1e-9);
            Assert.Equal(0, outline.DistanceTo(new(x, 20)), 1e-9);
        }
    }

    /// <summary>
    /// Rounded by r, a corner that turns by β gives or takes r² (tan β/2 - β/2) and the outline is smooth there; where r does not fit into
    /// the straight edge, it is as much smaller as its tangent length r tan β/2 = 2 mm asks.
    /// </summary>
    [Theory]
    [InlineData(3)]
    [InlineData(400)]
    public void Corners_are_rounded_as_far_as_they_fit(double radius)
    {
        Contour sharp = One(0, Far)!, round = One(radius, Far)!;
        var added = 0.0;
        var rounded = 0;
        for (var i = 0; i < sharp.Segments.Length; i++)
        {
            Segment before = sharp.Segments[i], after = sharp.Segments[(i + 1) % sharp.Segments.Length];
            var turn = Math.Asin(before.EndTangent.Cross(after.StartTangent));
            if (Math.Abs(turn) > 1e-3)
            {
                var r = Math.Min(radius, 0.999 * Straight / Math.Tan(Math.Abs(turn) / 2));
                added -= Math.Sign(turn) * r * r * (Math.Tan(Math.Abs(turn) / 2) - Math.Abs(turn) / 2);
                rounded++;
                Assert.Contains(round.Segments, s => s is ArcSegment arc && Math.Abs(arc.Radius - r) < 1e-6);
            }
        }

        Assert.Equal(4, rounded);
        Assert.Equal(sharp.SignedArea + added, round.SignedArea, 1e-6);
        Assert.All(round.Segments.Zip(round.Segments.Skip(1).Append(round.Segments[0])), p =>
            Assert.Equal(0, p.First.EndTangent.Cross(p.Second.StartTangent), 1e-6));
    }

    /// <summary>Three flanges in a row, and a fourth over the top of the mount flange.</summary>
    [Fact]
    public void Flanges_hang_on_flanges()
    {
        Bend[] bends = [Across(30, 0, 1), Across(60, 1, 2, 4, 16), Above(40, 0, 3, -12, 12)];
        Disc middle = new(new(45, 10), 4), last = new(new(90, 10), 9), top = new(new(0, 70), 14);
        var outline = BlankOutline.Draw(bends, [[Mount], [middle], [last], [top]], Straight, 0)!;
        var expected = Area(Hull([Mount], new(28, 0), new(28, 20), new(-12, 38), new(12, 38))) + 8 * 20
            + Area(Hull([middle], new(36, 0), new(36, 20), new(58, 4), new(58, 16))) + 8 * 12
            + Area(Hull([last], new(66, 4), new(66, 16))) + 8 * 24 + Area(Hull([top], new(-12, 46), new(12, 46)));
        Assert.Equal(expected, outline.SignedArea, 2e-2);
        Assert.All((Vector2[])[new(62, 10), new(0, 42), new(45, 10), new(95, 10)], p => Assert.True(outline.Contains(p)));
        Assert.False(outline.Contains(new(62, 18)));
    }

    /// <summary>A flange with nothing but its bend, or with a bend that is not on its edge, cannot be drawn.</summary>
    [Fact]
    public void What_cannot_be_drawn_is_not()
    {
        Assert.NotNull(One(3, Far));
        Assert.Null(One(3, new Disc(new(60, 40), 5), Point(36, 40))); // metal beside the bend's end: the hull covers its edge
        Assert.Null(BlankOutline.Draw([Across(30, 0, 1)], [[Mount, Point(28, 40)], [Far]], Straight, 3)); // and on the near side
        Assert.Null(BlankOutline.Draw([Across(30, 0, 1)], [[Mount, Point(29, 10)], [Far]], Straight, 3)); // metal where the bend begins
        Assert.Null(BlankOutline.Draw([], [[Point(3, 3)]], Straight, 3));
        Assert.Null(BlankOutline.Draw([], [[]], Straight, 3));
        Assert.Equal(Math.PI * 225, BlankOutline.Draw([], [[Mount]], Straight, 3)!.SignedArea, 1e-9);
    }

    /// <summary>Metal two bends on that comes back before the first bend's line, though far off to its side and over nothing else.</summary>
    [Theory]
    [InlineData(60, true)]
    [InlineData(30, false)]
    public void What_hangs_on_a_bend_stays_behind_its_line(double x, bool drawn) => Assert.Equal(drawn, BlankOutline.Draw(
        [Across(30, 0, 1), Above(40, 1, 2, 50, 70)], [[Mount], [], [new(new(x, 60), 8)]], Straight, 0) is not null);

    /// <summary>The near side: metal of the flange that stays ends 2 mm before the bend, 30 - 2 = 28; a disc of 15 mm at 13 just does.</summary>
    [Theory]
    [InlineData(13, true)]
    [InlineData(13.001, false)]
    public void Metal_keeps_off_the_near_side(double x, bool apart) =>
        Assert.Equal(apart, BlankOutline.KeepApart([Across(30, 0, 1)], [[new(new(x, 10), 15)], [Far]], Straight));

    /// <summary>The far side: what hangs on it begins 2 mm behind the strip, 34 + 2 = 36, on whatever flange of the chain it is.</summary>
    [Theory]
    [InlineData(49, true)]
    [InlineData(48.999, false)]
    public void Metal_keeps_off_the_far_side(double x, bool apart)
    {
        Assert.Equal(apart, BlankOutline.KeepApart([Across(30, 0, 1)], [[Mount], [new(new(x, 10), 13)]], Straight));
        Bend[] chain = [Across(30, 0, 1), Above(30, 1, 2, 40, 60)];
        Assert.Equal(apart, BlankOutline.KeepApart(chain, [[Mount], [new(new(50, 10), 1)], [new(new(x, 60), 13)]], Straight));
    }

    /// <summary>A bend that hangs on another keeps twice the straight edge: its near end at 36 at least, so the bend at 38.</summary>
    [Theory]
    [InlineData(38, true)]
    [InlineData(37.999, false)]
    [InlineData(20, false)]
    public void Bends_keep_off_each_other(double x, bool apart) => Assert.Equal(
        apart, BlankOutline.KeepApart([Across(30, 0, 1), Across(x, 1, 2)], [[Mount], [], [new(new(90, 10), 9)]], Straight));

    /// <summary>A bend at a slant: one of its two ends too near is enough, whichever.</summary>
    [Theory]
    [InlineData(45, 45, true)]
    [InlineData(45, 36, false)]
    [InlineData(36, 45, false)]
    public void Either_end_counts(double top, double bottom, bool apart)
    {
        var slanted = Across(0, 1, 2) with { Start = new(top, 20), End = new(bottom, 0) };
        Assert.Equal(apart, BlankOutline.KeepApart([Across(30, 0, 1), slanted], [[Mount], [], [new(new(100, 10), 9)]], Straight));
    }

    /// <summary>
    /// Bends off to the side of the first one's ends, on a flange wider than it. A bend along the top or the bottom of that flange with one
    /// end at 33 reaches past 36 with that end; a slanted one reaches with its near or with its far end only; and one further off has a
    /// line that runs over one of the first bend's ends, (36, 20) or (36, 0), alone.
    /// </summary>
    [Theory]
    [InlineData(37, 40, 60, 40, true)]
    [InlineData(33, 40, 60, 40, false)]
    [InlineData(60, -20, 33, -20, false)]
    [InlineData(38, 40, 58, 20, true)] // slanted, across to the upper right: near ends 1.41 mm before
    [InlineData(37, 40, 57, 20, false)]
    [InlineData(41, 40, 61, 60, true)] // across to the upper left: far ends 4.24 mm back
    [InlineData(40, 40, 60, 60, false)]
    [InlineData(50, 23, 70, 23, true)]
    [InlineData(50, 15, 70, 15, false)]
    [InlineData(70, -3, 50, -3, true)]
    [InlineData(70, 5, 50, 5, false)]
    public void One_end_in_the_way_is_enough(double startX, double startY, double endX, double endY, bool apart)
    {
        var next = Across(0, 1, 2) with { Start = new(startX, startY), End = new(endX, endY) };
        Assert.Equal(apart, BlankOutline.KeepApart([Across(30, 0, 1), next], [[Mount], [], []], Straight));
    }

    /// <summary>A bend on a slant of 4 in 24: the blank is the same hulls and strip, its corners as smooth as any.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(400)]
    public void Slanted_bends_are_drawn_alike(double corner)
    {
        var bend = Above(0, 0, 1, 0, 0) with { Start = new(-12, 40), End = new(12, 44) };
        Vector2 near = -Straight * bend.Across, far = (4 + Straight) * bend.Across;
        Disc top = new(new(0, 75), 16);
        var outline = BlankOutline.Draw([bend], [[Mount], [top]], Straight, corner)!;
        var expected = Area(Hull([Mount], bend.Start + near, bend.End + near)) + 8 * bend.Length + Area(Hull([top], bend.Start + far, bend.End + far));
        if (corner == 0)
        {
            Assert.Equal(expected, outline.SignedArea, 2e-2);
            return;
        }

        Assert.InRange(outline.SignedArea, expected - 10, expected + 10);
        var sharp = BlankOutline.Draw([bend], [[Mount], [top]], Straight, 0)!.Segments;
        foreach (var (before, after) in sharp.Zip(sharp.Skip(1).Append(sharp[0])))
        {
            var turn = Math.Abs(Math.Asin(before.EndTangent.Cross(after.StartTangent)));
            var radius = 0.999 * Straight / Math.Tan(turn / 2);
            Assert.True(turn < 1e-3 || radius > 400 || outline.Segments.OfType<ArcSegment>().Any(a => Math.Abs(a.Radius - radius) < 1e-6));
        }

        Assert.All(outline.Segments.Zip(outline.Segments.Skip(1).Append(outline.Segments[0])), p =>
            Assert.Equal(0, p.First.EndTangent.Cross(p.Second.StartTangent), 1e-6));
        foreach (var end in (Vector2[])[bend.Start, bend.End, bend.Start + 4 * bend.Across, bend.End + 4 * bend.Across])
        {
            Assert.Equal(0, outline.DistanceTo(end), 1e-9); // no rounding reaches into the bend
        }
    }

    /// <summary>
    /// An edge of the flange that is shorter (1.118 mm) than the straight edge beside the bend: the corner, which turns by atan 0.5, is
    /// rounded by what that edge has room for, 0.999 · 1.118/tan(β/2) = 4.73 mm.
    /// </summary>
    [Fact]
    public void Short_edges_get_small_roundings()
    {
        Disc[] mount = [Point(27, -0.5), Point(0, -2), Point(0, 20)];
        var outline = BlankOutline.Draw([Across(30, 0, 1)], [mount, [Point(60, 0), Point(60, 20)]], Straight, 400)!;
        var radius = 0.999 * Math.Sqrt(1.25) / Math.Tan(Math.Atan(0.5) / 2);
        Assert.Contains(outline.Segments, s => s is ArcSegment arc && Math.Abs(arc.Radius - radius) < 1e-6);
    }

    /// <summary>
    /// One flange to the right that reaches up to (60, 60), one over the top: no outline where they would lie over each other in the flat,
    /// or nearer than the straight edge.
    /// </summary>
    [Theory]
    [InlineData(0, true)]
    [InlineData(30, true)]
    [InlineData(34.5, false)]
    [InlineData(45, false)]
    public void Flanges_may_not_lie_over_each_other(double x, bool drawn)
    {
        Bend[] bends = [Across(30, 0, 1), Above(40, 0, 2, -12, 12)];
        // The right flange's left side at the height of the disc is its own disc's, at 60 - 10 = 50; the disc ends at x + 14.
        Assert.Equal(drawn, BlankOutline.Draw(bends, [[Mount], [Far, new(new(60, 66), 10)], [new(new(x, 66), 14)]], Straight, 0) is not null);
        Bend[] turned = [bends[1] with { To = 1 }, bends[0] with { To = 2 }];
        Assert.Equal(drawn, BlankOutline.Draw(turned, [[Mount], [new(new(x, 66), 14)], [Far, new(new(60, 66), 10)]], Straight, 0) is not null);
    }

    /// <summary>
    /// A flange beside a wide bend (20 mm) that another flange hangs on: metal 1 mm off the strip is too near, 11 mm off is not, though
    /// the flanges themselves are 3 mm apart both times.
    /// </summary>
    [Theory]
    [InlineData(24, false)]
    [InlineData(34, true)]
    public void Nor_beside_another_bend(double y, bool drawn)
    {
        // The second bend over the slanted edge from (27, 24) up to the left, 20 mm long; its flange lies where x + y is above 62.3.
        Vector2 across = Vector2.FromPolar(1, Angle.FromDegrees(45)), low = new(27, 24), high = low + 20 * across.Left;
        Bend[] bends =
        [
            Across(30, 0, 1) with { Allowance = 20 },
            Across(0, 0, 2) with { Start = high + Straight * across, End = low + Straight * across },
        ];
        Assert.Equal(drawn, BlankOutline.Draw(bends, [[Mount], [new(new(70, 10), 9)], [new(new(46, y), 3)]], Straight, 0) is not null);
    }
}
