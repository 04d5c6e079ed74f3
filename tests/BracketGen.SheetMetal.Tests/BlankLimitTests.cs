using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.TestSupport;
using static BracketGen.SheetMetal.Tests.BlankLayout;

namespace BracketGen.SheetMetal.Tests;

/// <summary>Layouts that just have an outline and those that just have none, worked out by hand: see <see cref="BlankLayout"/>.</summary>
public class BlankLimitTests
{
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
        BlankLayout layout = new([Across(0, 1, new(0, 20), new(0, 0))], [[], []]);
        Assert.Equal(apart, layout.With(flange, Points(new Vector2(x, 10))).KeepApart());
    }

    // The same between bends: bend 1 on x = 8, its near side 2 mm before it on x = 6; or the last bend faces back, its far side 6 mm behind it.
    [Theory]
    [InlineData(1e-9, true)]
    [InlineData(2e-9, false)]
    public void Round_off_reaches_over_no_line_of_another_bend(double over, bool apart)
    {
        var first = Across(0, 1, new(0, 20), new(0, 0));
        Assert.Equal(apart, new BlankLayout([first, Across(1, 2, new(8 - over, 20), new(8 - over, 0))], [[], [], []]).KeepApart());
        Bend up = Across(1, 2, new(30, 40), new(50, 40)), back = Across(2, 3, new(12 - over, 60), new(12 - over, 80));
        Assert.Equal(apart, new BlankLayout([first, up, back], [[], [], [], []]).KeepApart());
    }

    // The press brake's tools are as wide as the bend's whole line. A bend on flange 1 leads up to a flange 2 that lies beside bend 0, past
    // its end: there it must stay behind x = 16 all the same (by hand).
    [Theory]
    [InlineData(25, 9, true)]
    [InlineData(25, 9.01, false)]
    [InlineData(5, 3, false)]
    public void All_that_hangs_on_a_bend_stays_behind_its_whole_line(double x, double radius, bool apart)
    {
        BlankLayout layout = new(
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
        FlatPoint near = new(x, y), far = new(farX, farY);
        var next = turn == 0 ? Across(1, 2, near, far) : Across(1, 2, far, near);
        BlankLayout layout = new([Across(0, 1, new(0, 20), new(0, 0)), next], [[], [], []]);
        Assert.Equal(apart, layout.KeepApart());
    }

    // By hand: the line of bend 1 runs through (30, 20) with a slope of 1/2, past the end (6, 20) or (6, 0) of bend 0: that end would lie
    // behind it and the other does not. Farther up it passes both.
    [Theory]
    [InlineData(20, 25, false)]
    [InlineData(40, 45, true)]
    public void A_bend_s_whole_line_passes_the_bend_that_its_flange_hangs_on(double y, double farY, bool apart)
    {
        FlatPoint near = new(30, y), far = new(40, farY);
        Assert.Equal(apart, new BlankLayout([Across(0, 1, new(0, 20), new(0, 0)), Across(1, 2, near, far)], [[], [], []]).KeepApart());
        FlatPoint below = new(30, 20 - y), farBelow = new(40, 20 - farY);
        Assert.Equal(apart, new BlankLayout([Across(0, 1, new(0, 20), new(0, 0)), Across(1, 2, farBelow, below)], [[], [], []]).KeepApart());
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
        BlankLayout layout = new(
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
        BlankLayout layout = new(
            [Across(0, 1, new(10, 5), new(10, -5)), Across(1, 2, new(25.6, 15.2), new(31.6, 7.2)), Across(0, 3, new(-5, 10), new(5, 10))],
            [[], [], Points(new(38.4, 24.8), new(44.4, 16.8)), Points(point)]);
        foreach (var turn in Turns)
        {
            Assert.True(layout.Turned(turn).KeepApart());
            Assert.Equal(apart, layout.Turned(turn).Draw(1) is not null);
        }
    }
}
