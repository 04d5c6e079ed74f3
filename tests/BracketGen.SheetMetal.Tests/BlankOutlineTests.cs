using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;
using BracketGen.TestSupport;
using CsCheck;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Algorithm.Distance;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.Union;
using LineSegment = BracketGen.Geometry.LineSegment;
using Shape = NetTopologySuite.Geometries.Geometry;

namespace BracketGen.SheetMetal.Tests;

/// <summary>Outlines of blanks worked out by hand, and random ones held against NetTopologySuite and against brute force.</summary>
/// <remarks>
/// By hand: a bend on the line x = 10 across +x, 4 mm of allowance and 2 mm of straight edge on either side: flange 0 ends at x = 8,
/// flange 1 begins at x = 16. Turned in the plane the answers stay, while the outline begins elsewhere.
/// </remarks>
public class BlankOutlineTests
{
    private const double Straight = 2, Allowance = 4;

    /// <summary>Turn whose tangent is 4/3: that of its half is 1/2, so a corner's rounding takes half its radius of either side.</summary>
    private static readonly double Theta = Math.Atan2(4, 3);

    private static readonly double[] Turns = [0, 37, 90, 143, 180, 217, 270, 300];

    private sealed record Layout(Bend[] Bends, Disc[][] Discs)
    {
        public Contour? Draw(double radius, double straight = Straight) => BlankOutline.Draw(Bends, Discs, straight, radius);

        public bool KeepApart(double straight = Straight) => BlankOutline.KeepApart(Bends, Discs, straight);

        public Layout Turned(double degrees)
        {
            var angle = Angle.FromDegrees(degrees);
            return new(
                [.. Bends.Select(b => b with { Start = b.Start.Rotate(angle), End = b.End.Rotate(angle) })],
                [.. Discs.Select(f => f.Select(d => d with { Centre = d.Centre.Rotate(angle) }).ToArray())]);
        }

        /// <summary>With <paramref name="more"/> on <paramref name="flange"/>.</summary>
        public Layout With(int flange, params Disc[] more) =>
            this with { Discs = [.. Discs.Select((d, i) => i == flange ? [.. d, .. more] : d)] };
    }

    private static Bend Across(int from, int to, Vector2 start, Vector2 end, double allowance = Allowance) => new()
    {
        From = from, To = to, Start = start, End = end, Turn = Angle.Right, InsideRadius = 2, Allowance = allowance, Rule = new Din6935Rule(),
    };

    private static Disc[] Points(params Vector2[] corners) => [.. corners.Select(c => new Disc(c, 0))];

    /// <summary>A strip 20 mm wide with a bend at each of <paramref name="at"/>, from x = 0 to <paramref name="length"/>.</summary>
    private static Layout Strip(double length, params double[] at) => new(
        [.. at.Select((x, i) => Across(i, i + 1, new(x, 20), new(x, 0)))],
        [Points(new Vector2(0, 0), new Vector2(0, 20)), .. at.Skip(1).Select(_ => Array.Empty<Disc>()), Points(new(length, 0), new(length, 20))]);

    /// <summary>Two flanges that grow wider (or narrower) away from the bend by <paramref name="wider"/> on either side, over 6 mm.</summary>
    private static Layout Flared(double wider) => new(
        [Across(0, 1, new(10, 20), new(10, 0))],
        [Points(new(2, -wider), new(2, 20 + wider)), Points(new(22, -wider), new(22, 20 + wider))]);

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
        Assert.Equal(25 * Math.PI, new Layout([], [[new(new(3, 4), 5)]]).Draw(1)!.SignedArea, 1e-9);
        Assert.Equal(9 * Math.PI + 60, new Layout([], [[new(new(0, 0), 3), new(new(10, 0), 3)]]).Draw(1)!.SignedArea, 1e-9);
        var triangle = new Layout([], [Points(new(0, 0), new(6, 0), new(0, 8))]).Draw(1)!;
        Assert.Equal((24, 24, 3), (triangle.SignedArea, triangle.Perimeter, triangle.Segments.Length));
    }

    [Fact]
    public void There_is_none_around_nothing_or_a_point()
    {
        Assert.Null(new Layout([], [[]]).Draw(1));
        Assert.Null(new Layout([], [Points(new Vector2(3, 4))]).Draw(1));
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
        Layout layout = new(
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
        Layout cross = new(
            [.. quarter.Select((q, i) => Across(0, i + 1, new Vector2(10, 5).Rotate(q), new Vector2(10, -5).Rotate(q)))],
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

    // Flange 0 ends at x = 8, flange 1 begins at x = 16 (by hand): a disc of radius 3 may touch, not reach over.
    [Theory]
    [InlineData(0, 5, 3, true)]
    [InlineData(0, 5, 3.001, false)]
    [InlineData(0, 12, 1, false)] // In the bend.
    [InlineData(0, 19, 3, false)] // On the other flange.
    [InlineData(1, 19, 3, true)]
    [InlineData(1, 19, 3.001, false)]
    [InlineData(1, 12, 1, false)]
    [InlineData(1, 5, 3, false)]
    public void Metal_that_reaches_over_a_bend_s_straight_edge_leaves_no_outline(int flange, double x, double radius, bool apart)
    {
        foreach (var turn in Turns)
        {
            var layout = Strip(30, 10).With(flange, new Disc(new(x, 10), radius)).Turned(turn);
            Assert.Equal(apart, layout.KeepApart());
            Assert.Equal(apart, layout.Draw(1) is not null);
        }
    }

    // The bend is drawn as long as it is: where the flange would be wider right at its line, there is no edge to bend.
    [Theory]
    [InlineData(0, 8, 25)]
    [InlineData(0, 8, -5)]
    [InlineData(1, 16, 25)]
    [InlineData(1, 16, -5)]
    public void Metal_past_the_ends_of_a_bend_leaves_no_outline(int flange, double x, double y)
    {
        foreach (var turn in Turns)
        {
            var layout = Strip(30, 10).With(flange, Points(new Vector2(x, y))).Turned(turn);
            Assert.True(layout.KeepApart());
            Assert.Null(layout.Draw(1));

            // A tenth of a millimetre off the line it only makes the corner beside the bend steep.
            Assert.NotNull(Strip(30, 10).With(flange, Points(new Vector2(x + (flange == 0 ? -0.1 : 0.1), y))).Turned(turn).Draw(1));
        }
    }

    // Round-off of 1e-9 mm is let pass, twice that is not. The numbers are such that a double holds the limit exactly.
    [Theory]
    [InlineData(0, -2 + 1e-9, true)]
    [InlineData(0, -2 + 2e-9, false)]
    [InlineData(1, 6 - 1e-9, true)]
    [InlineData(1, 6 - 2e-9, false)]
    public void Round_off_reaches_over_no_line(int flange, double x, bool apart)
    {
        Layout layout = new([Across(0, 1, new(0, 20), new(0, 0))], [[], []]);
        Assert.Equal(apart, layout.With(flange, Points(new Vector2(x, 10))).KeepApart());
    }

    // The same between bends: bend 1 on x = 8, its near side 2 mm before it on x = 6; or the last bend faces back, its far side 6 mm behind it.
    [Theory]
    [InlineData(1e-9, true)]
    [InlineData(2e-9, false)]
    public void Round_off_reaches_over_no_line_of_another_bend(double over, bool apart)
    {
        var first = Across(0, 1, new(0, 20), new(0, 0));
        Assert.Equal(apart, new Layout([first, Across(1, 2, new(8 - over, 20), new(8 - over, 0))], [[], [], []]).KeepApart());
        Bend up = Across(1, 2, new(30, 40), new(50, 40)), back = Across(2, 3, new(12 - over, 60), new(12 - over, 80));
        Assert.Equal(apart, new Layout([first, up, back], [[], [], [], []]).KeepApart());
    }

    // The press brake's tools are as wide as the bend's whole line. A bend on flange 1 leads up to a flange 2 that lies beside bend 0, past
    // its end: there it must stay behind x = 16 all the same (by hand).
    [Theory]
    [InlineData(25, 9, true)]
    [InlineData(25, 9.01, false)]
    [InlineData(5, 3, false)]
    public void All_that_hangs_on_a_bend_stays_behind_its_whole_line(double x, double radius, bool apart)
    {
        Layout layout = new(
            [Across(0, 1, new(10, 20), new(10, 0)), Across(1, 2, new(22, 30), new(32, 30))],
            [Points(new(0, 0), new(0, 20)), Points(new Vector2(32, 0)), [new(new(27, 45), 4)]]);
        Assert.NotNull(layout.Draw(1));
        foreach (var turn in Turns)
        {
            var more = layout.With(2, new Disc(new(x, 60), radius)).Turned(turn);
            Assert.Equal(apart, more.KeepApart());
            Assert.Equal(apart, more.Draw(1) is not null);
        }
    }

    // By hand: bend 0 on x = 0 leaves what hangs on it x >= 6; 60 mm up, past its end, each end of bend 1 in turn comes nearer, by its near
    // or by its far side alone, which lie 2 mm before and 6 mm behind it.
    [Theory]
    [InlineData(10, 60, 40, 60, 0, true)]
    [InlineData(5, 60, 40, 60, 0, false)] // Start, both sides.
    [InlineData(6.5, 60, 40, 45, 0, false)] // Start: near side at x = 5.7, far side at x = 8.9.
    [InlineData(7, 60, 40, 45, 0, true)]
    [InlineData(7, 60, 40, 75, 0, false)] // Start: near side at x = 7.8, far side at x = 4.5.
    [InlineData(9, 60, 40, 75, 0, true)]
    [InlineData(6.5, -40, 40, -25, 180, false)] // The same at the end, the bend below.
    [InlineData(7, -40, 40, -25, 180, true)]
    [InlineData(7, -40, 40, -55, 180, false)]
    [InlineData(9, -40, 40, -55, 180, true)]
    public void A_bend_that_hangs_on_another_stays_behind_its_whole_line(double x, double y, double farX, double farY, double turn, bool apart)
    {
        Vector2 near = new(x, y), far = new(farX, farY);
        var next = turn == 0 ? Across(1, 2, near, far) : Across(1, 2, far, near);
        Layout layout = new([Across(0, 1, new(0, 20), new(0, 0)), next], [[], [], []]);
        Assert.Equal(apart, layout.KeepApart());
    }

    // By hand: the line of bend 1 runs through (30, 20) with a slope of 1/2, past the end (6, 20) or (6, 0) of bend 0: that end would lie
    // behind it and the other does not. Farther up it passes both.
    [Theory]
    [InlineData(20, 25, false)]
    [InlineData(40, 45, true)]
    public void A_bend_s_whole_line_passes_the_bend_that_its_flange_hangs_on(double y, double farY, bool apart)
    {
        Vector2 near = new(30, y), far = new(40, farY);
        Assert.Equal(apart, new Layout([Across(0, 1, new(0, 20), new(0, 0)), Across(1, 2, near, far)], [[], [], []]).KeepApart());
        Vector2 below = new(30, 20 - y), farBelow = new(40, 20 - farY);
        Assert.Equal(apart, new Layout([Across(0, 1, new(0, 20), new(0, 0)), Across(1, 2, farBelow, below)], [[], [], []]).KeepApart());
    }

    // By hand: flange 1 leans over with a side from (16, 5) along (7, 24)/25, flange 2 comes from the top with a point across from the
    // middle of that side. Between them lies the straight edge's 2 mm or there is no outline.
    [Theory]
    [InlineData(2.001, true)]
    [InlineData(1.999, false)]
    [InlineData(-3, false)]
    public void Flanges_that_come_nearer_than_the_straight_edge_in_the_flat_leave_no_outline(double gap, bool apart)
    {
        Vector2 point = new(19.5 - 24 * gap / 25, 17 + 7 * gap / 25);
        Layout layout = new(
            [Across(0, 1, new(10, 5), new(10, -5)), Across(0, 2, new(-5, 10), new(5, 10))],
            [[], Points(new(26, -5), new(23, 29)), Points(point)]);
        foreach (var turn in Turns)
        {
            Assert.True(layout.Turned(turn).KeepApart());
            Assert.Equal(apart, layout.Turned(turn).Draw(1) is not null);
        }
    }

    // By hand: bend 1 leads off flange 1 along (4, 3)/5, the left side of its strip from (25.6, 15.2) to (28.8, 17.6); the flange from the
    // top comes with a point across from the middle of that side, 4 mm from the flanges before and behind.
    [Theory]
    [InlineData(2.001, true)]
    [InlineData(1.999, false)]
    [InlineData(1, false)]
    public void A_flange_that_comes_nearer_to_a_bend_of_others_leaves_no_outline(double gap, bool apart)
    {
        Vector2 point = new(27.2 - 0.6 * gap, 16.4 + 0.8 * gap);
        Layout layout = new(
            [Across(0, 1, new(10, 5), new(10, -5)), Across(1, 2, new(25.6, 15.2), new(31.6, 7.2)), Across(0, 3, new(-5, 10), new(5, 10))],
            [[], [], Points(new(38.4, 24.8), new(44.4, 16.8)), Points(point)]);
        foreach (var turn in Turns)
        {
            Assert.True(layout.Turned(turn).KeepApart());
            Assert.Equal(apart, layout.Turned(turn).Draw(1) is not null);
        }
    }

    /// <summary>A bend as it was laid: by the middle of its line, the way across and half its length.</summary>
    private sealed record Laid(int From, int To, Vector2 Middle, Vector2 Way, double Half, double Allowance)
    {
        public Bend Bend => Across(From, To, Middle + Half * Way.Left, Middle - Half * Way.Left, Allowance);

        /// <summary>Corners of its strip and of <paramref name="straight"/> on either side: two before it, two behind it.</summary>
        public Vector2[] Corners(double straight) =>
        [
            Middle - straight * Way + Half * Way.Left, Middle - straight * Way - Half * Way.Left,
            Middle + (Allowance + straight) * Way - Half * Way.Left, Middle + (Allowance + straight) * Way + Half * Way.Left,
        ];

        /// <summary>How far a point lies across its line, as NetTopologySuite measures from a line.</summary>
        public double OffLine(Vector2 p)
        {
            Vector2 a = Middle + Half * Way.Left, b = Middle - Half * Way.Left;
            return -DistanceComputer.PointToLinePerpendicularSigned(Of(p), Of(a), Of(b));
        }
    }

    private sealed record RandomLayout(Laid[] Laid, Disc[][] Discs, double Straight, double Radius)
    {
        public Layout Layout => new([.. Laid.Select(b => b.Bend)], Discs);
    }

    private static Coordinate Of(Vector2 p) => new(p.X, p.Y);

    private static Gen<RandomLayout> Layouts(double reach) => Gen.Select(Gen.Int[0, 3], Gen.Double[0, 1].Array[64]).Select(g =>
    {
        var (bends, at) = (g.Item1, 0);
        double Next(double low, double high) => low + g.Item2[at++] * (high - low);
        var straight = Next(1, 3);
        var (middles, ways, laid) = (new List<Vector2> { default }, new List<double> { 0 }, new List<Laid>());
        for (var i = 0; i < bends; i++)
        {
            var from = (int)Next(0, i + 0.999);
            var angle = from == 0 ? Next(0, 2 * Math.PI) : ways[from] + Next(-1.2, 1.2);
            var way = Vector2.FromPolar(1, new(angle));
            Laid bend = new(from, i + 1, middles[from] + Next(12, 22) * way, way, Next(4, 12), Next(1, 5));
            laid.Add(bend);
            ways.Add(angle);
            middles.Add(bend.Middle + (bend.Allowance + Next(8, 18)) * way);
        }

        var discs = middles.Select(m => Enumerable.Range(0, (int)Next(1, 3.999))
            .Select(_ => new Disc(m + new Vector2(Next(-reach, reach), Next(-reach, reach)), Next(1.5, 5))).ToArray()).ToArray();
        return new RandomLayout([.. laid], discs, straight, Next(0.1, 0.45) * straight);
    });

    [Fact]
    public void Whether_all_keeps_apart_agrees_with_the_distances_of_many_points()
    {
        var outcomes = new int[2];
        Layouts(8).Check(400, layout =>
        {
            // The tightest of all distances, from points on the rims of the discs and the corners of the bends.
            var room = double.PositiveInfinity;
            foreach (var bend in layout.Laid)
            {
                var beyond = new HashSet<int> { bend.To };
                foreach (var next in layout.Laid.Where(b => beyond.Contains(b.From)))
                {
                    beyond.Add(next.To);
                }

                Before(bend, Rims(bend.From));
                Behind(bend, beyond.SelectMany(Rims));
                Behind(bend, layout.Laid.Where(b => beyond.Contains(b.From)).SelectMany(b => b.Corners(layout.Straight)));
                foreach (var next in layout.Laid.Where(b => b.From == bend.To))
                {
                    Before(next, bend.Corners(layout.Straight).Skip(2));
                }
            }

            if (Math.Abs(room) > 0.01)
            {
                outcomes[room > 0 ? 1 : 0]++;
                Assert.Equal(room > 0, layout.Layout.KeepApart(layout.Straight));
            }

            IEnumerable<Vector2> Rims(int flange) => layout.Discs[flange].SelectMany(d => Rim(d, 60));
            void Before(Laid bend, IEnumerable<Vector2> points) =>
                room = points.Aggregate(room, (r, p) => Math.Min(r, -layout.Straight - bend.OffLine(p)));
            void Behind(Laid bend, IEnumerable<Vector2> points) =>
                room = points.Aggregate(room, (r, p) => Math.Min(r, bend.OffLine(p) - bend.Allowance - layout.Straight));
        });
        Assert.All(outcomes, n => Assert.InRange(n, 50, 350));
    }

    private static IEnumerable<Vector2> Rim(Disc disc, int count) =>
        Enumerable.Range(0, count).Select(i => disc.Centre + Vector2.FromPolar(disc.Radius, new(2 * Math.PI * i / count)));

    // Independent: convex hulls of points on the discs and of the bends' ends, the bends' strips between them, all joined by
    // NetTopologySuite. Its buffers out, in and out again round inside and outside corners; discs are larger than that rounding.
    [Fact]
    public void Random_outlines_agree_with_NetTopologySuite()
    {
        int drawn = 0, arcs = 0;
        Layouts(6).Check(50, random =>
        {
            var layout = random.Layout;
            var sharp = layout.Draw(0, random.Straight);
            var rounded = layout.Draw(random.Radius, random.Straight);
            Assert.Equal(sharp is null, rounded is null);
            Assert.False(sharp is not null && !layout.KeepApart(random.Straight));
            if (sharp is null || rounded is null)
            {
                return;
            }

            drawn++;
            Shape[] strips = [.. random.Laid.Select(b => Hull(b.Corners(random.Straight)))];
            Shape[] flanges = [.. random.Discs.Select((discs, i) => Hull([
                .. discs.SelectMany(d => Rim(d, 180)),
                .. random.Laid.Where(b => b.From == i).SelectMany(b => b.Corners(random.Straight).Take(2)),
                .. random.Laid.Where(b => b.To == i).SelectMany(b => b.Corners(random.Straight).Skip(2))]))];
            var expected = CascadedPolygonUnion.Union([.. strips, .. flanges]);
            Agree(expected, sharp, 2e-3);
            var fine = new BufferParameters(24) { SimplifyFactor = 1e-4 };
            Agree(expected.Buffer(random.Radius, fine).Buffer(-2 * random.Radius, fine).Buffer(random.Radius, fine), rounded, 5e-3);

            // Flanges that no bend joins lie apart, but for how exactly that is found out.
            for (var i = 0; i < flanges.Length; i++)
            {
                for (var j = i + 1; j < flanges.Length; j++)
                {
                    Assert.True(
                        random.Laid.Any(b => b.From == i && b.To == j) || flanges[i].Distance(flanges[j]) > random.Straight - 0.2,
                        $"Flanges {i} and {j} are too near each other.");
                }
            }

            Assert.All(random.Discs.SelectMany(d => d), d => Assert.True(
                rounded.Contains(d.Centre) && rounded.DistanceTo(d.Centre) > d.Radius - 1e-9, $"{d} lacks metal."));
            foreach (var bend in random.Laid)
            {
                // Over the bend itself the edges are the strip's own.
                Assert.All(bend.Corners(0), c => Assert.InRange(rounded.DistanceTo(c), 0, 1e-9));
            }

            arcs += rounded.Segments.Length - sharp.Segments.Length;
        });
        Assert.InRange(drawn, 15, 45);
        Assert.InRange(arcs, 50, 500);
    }

    private static Shape Hull(Vector2[] points) => new ConvexHull(points.Select(Of), GeometryFactory.Default).GetConvexHull();

    private static void Agree(Shape expected, Contour found, double within)
    {
        var points = found.Flatten(1e-3).Select(Of).ToList();
        Polygon polygon = new(new([.. points, points[0].Copy()]));
        Assert.True(polygon.IsValid, "The outline crosses itself.");
        Assert.True(found.SignedArea > 0, "The outline runs clockwise.");
        Assert.Equal(expected.Area, found.SignedArea, within * found.Perimeter);
        Assert.InRange(DiscreteHausdorffDistance.Distance(expected.Boundary, polygon.ExteriorRing), 0, within);
    }
}
