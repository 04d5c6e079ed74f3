using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.SheetMetal.Tests;

/// <summary>A strip with two bends that stand 30 mm apart, 4 mm wide each, on a 20 mm wide blank: where everything lies is plain.</summary>
public class FlatPatternTests
{
    private static Bend At(double x, int from, int to, double turn = 90) => new()
    {
        From = from, To = to, Start = new(x, 20), End = new(x, 0), Turn = Angle.FromDegrees(turn), InsideRadius = 2, Allowance = 4,
        Rule = new Din6935Rule(),
    };

    private static readonly FlatPattern Strip = new()
    {
        Blank = new(Contour.Polygon([new(-40, 0), new(80, 0), new(80, 20), new(-40, 20)]), [Contour.Circle(new(10, 10), 3), Contour.Circle(new(50, 10), 2)]),
        Thickness = 2,
        Bends = [At(30, 0, 1), At(60, 1, 2, -90)],
    };

    [Fact]
    public void A_bend_knows_its_line()
    {
        var bend = Strip.Bends[0];
        Assert.Equal((20.0, new Vector2(0, -1), new Vector2(1, 0)), (bend.Length, bend.Along, bend.Across));
        Assert.Equal((new FlatPoint(32, 20), new FlatPoint(32, 0)), bend.CentreLine);
        Assert.True(bend.IsUp);
        Assert.False(Strip.Bends[1].IsUp);
        Assert.False((bend with { Turn = Angle.Zero }).IsUp);
        var shifted = bend.Shift(new(3, -5));
        Assert.Equal((new FlatPoint(33, 15), new FlatPoint(33, -5)), (shifted.Start, shifted.End));
        Assert.Throws<InvalidOperationException>(() => (bend with { End = bend.Start }).Along);
    }

    /// <summary>The near and the far edge of a strip belong to the flanges that begin there.</summary>
    [Theory]
    [InlineData(-10, 0, false)]
    [InlineData(30, 0, false)]
    [InlineData(30.001, 0, true)]
    [InlineData(33.999, 0, true)]
    [InlineData(34, 1, false)]
    [InlineData(60, 1, false)]
    [InlineData(62, 1, true)]
    [InlineData(64, 2, false)]
    [InlineData(80, 2, false)]
    public void Every_point_has_its_zone(double x, int flange, bool inBend)
    {
        var zone = Strip.ZoneOf(new(x, 7));
        Assert.Equal(flange, zone.Flange);
        Assert.Equal(inBend ? Strip.Bends[flange] : null, zone.Bend);
    }

    /// <summary>Two flanges on the same mount flange, one to each side: a point behind the one has nothing to do with the other.</summary>
    [Fact]
    public void Bends_to_both_sides_do_not_mix()
    {
        var left = At(-10, 0, 2) with { Start = new(-10, 0), End = new(-10, 20) };
        var both = Strip with { Bends = [At(30, 0, 1), left, At(60, 1, 3)] };
        Assert.Equal((2, null), both.ZoneOf(new(-20, 5)));
        Assert.Equal((0, left), both.ZoneOf(new(-12, 5)));
        Assert.Equal((0, null), both.ZoneOf(new(5, 5)));
        Assert.Equal((3, null), both.ZoneOf(new(70, 5)));

        // A bend over the top edge of flange 1: what is as high on flange 2 is not behind it.
        var above = both with { Bends = [At(30, 0, 1), left, At(60, 1, 3) with { Start = new(40, 12), End = new(60, 12) }] };
        Assert.Equal((3, null), above.ZoneOf(new(50, 18)));
        Assert.Equal((2, null), above.ZoneOf(new(-20, 18)));
    }

    [Fact]
    public void Holes_go_with_their_flange()
    {
        Assert.Equal([Strip.Blank.Holes[0]], Strip.FlangeRegion(0).Holes.AsEnumerable());
        Assert.Equal([Strip.Blank.Holes[1]], Strip.FlangeRegion(1).Holes.AsEnumerable());
        Assert.Empty(Strip.FlangeRegion(2).Holes);
        Assert.Equal(70 * 20 - 9 * Math.PI, Strip.FlangeRegion(0).Area, 1e-9);
        Assert.Equal(26 * 20 - 4 * Math.PI, Strip.FlangeRegion(1).Area, 1e-9);
        Assert.Equal(16 * 20, Strip.FlangeRegion(2).Area, 1e-9);
    }

    [Fact]
    public void Patterns_are_equal_where_all_of_them_is()
    {
        Assert.Equal(Strip, Strip with { Bends = [At(30, 0, 1), At(60, 1, 2, -90)] });
        Assert.False(Strip.Equals(null));
        Assert.NotEqual(Strip, Strip with { Thickness = 3 });
        Assert.NotEqual(Strip, Strip with { Bends = [At(30, 0, 1)] });
        Assert.NotEqual(Strip, Strip with { Blank = new(Strip.Blank.Outline, []) });
    }

    /// <summary>Up by a right angle and down again: the top of the sheet looks back along x on the second flange, and up on the third.</summary>
    [Fact]
    public void The_top_turns_with_the_bends()
    {
        var folded = new FoldedSheet(Strip, Frame.Identity);
        Assert.Equal(0, folded.TopAt(new(10, 5)).DistanceTo(new(0, 0, 1)), 1e-12);
        Assert.Equal(0, folded.TopAt(new(50, 5)).DistanceTo(new(-1, 0, 0)), 1e-12);
        Assert.Equal(0, folded.TopAt(new(75, 5)).DistanceTo(new(0, 0, 1)), 1e-12);
    }
}
