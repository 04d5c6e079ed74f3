using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.SheetMetal.Tests;

/// <summary>A plate of 100 x 70 mm with a tab 20 mm wide bent up from its middle, relief cuts of 4 mm beside it: where everything lies is plain.</summary>
public class NotchTests
{
    private static readonly Bend Bend = new()
    {
        From = 0, To = 1, Start = new(-10, 0), End = new(10, 0), Turn = Angle.Right, InsideRadius = 2, Allowance = 4, Rule = new Din6935Rule(), Relief = 4,
    };

    private static readonly Disc[] Plate = [new(new(-50, -40), 0), new(new(50, -40), 0), new(new(50, 30), 0), new(new(-50, 30), 0)];

    private static readonly Disc[] Tab = [new(new(-10, 40), 0), new(new(10, 40), 0)];

    [Fact]
    public void Both_wings_stay_beside_the_tab()
    {
        var outline = BlankOutline.Draw([Bend], [Plate, Tab], 3, 0)!;

        // The cuts run from 3 mm before the bend to the plate's edge, with half circles of 2 mm at the bottom; the tab stands 10 mm out.
        Assert.Equal(7000 - 2 * 4 * 33 - 4 * Math.PI + 20 * 10, outline.SignedArea, 1e-9);
        Assert.Equal(2 * 170 - 28 + 2 * 33 + 2 * 2 * Math.PI + 2 * 43 + 20, outline.Perimeter, 1e-9);
        Assert.True(outline.Contains(new(30, 10)));
        Assert.False(outline.Contains(new(12, 10)));
        Assert.True(outline.Contains(new(0, 35)));
        Assert.False(outline.Contains(new(20, 35)));
    }

    [Fact]
    public void One_wing_leaves_the_other_side_as_it_is()
    {
        Disc[] left = [new(new(-50, -40), 0), new(new(10, -40), 0), new(new(-50, 30), 0)];
        var outline = BlankOutline.Draw([Bend], [left, Tab], 3, 0)!;

        // To the right of the cut the plate ends at the bend's own corner; its slanting edge from there to (-50, 30) ends at the cut.
        Assert.True(outline.Contains(new(-30, 10)));
        Assert.False(outline.Contains(new(-12, 5)));
        Assert.True(outline.Contains(new(9.9, 20)));
        Assert.False(outline.Contains(new(10.1, -2)));
        Assert.Equal(1, outline.Segments.OfType<ArcSegment>().Count(a => Math.Abs(a.Radius - 2) < 1e-9));
    }

    [Fact]
    public void Wings_belong_to_the_flange_that_stays()
    {
        var flat = new FlatPattern { Blank = new(BlankOutline.Draw([Bend], [Plate, Tab], 3, 0)!, []), Thickness = 2, Bends = [Bend] };
        Assert.Equal((0, null), flat.ZoneOf(new(30, 10)));
        Assert.Equal((0, null), flat.ZoneOf(new(-12.001, 10)));
        Assert.Equal((1, null), flat.ZoneOf(new(-11.999, 10)));
        Assert.Equal((0, Bend), flat.ZoneOf(new(0, 2)));
        Assert.Equal((1, null), flat.ZoneOf(new(0, 39)));
        Assert.Equal(20 * 36, flat.FlangeRegion(1).Area, 1e-9);
        Assert.Equal(flat.Blank.Area - 20 * 40, flat.FlangeRegion(0).Area, 1e-9);

        // Folded, a wing lies where it lay and the tab stands up square.
        var folded = new FoldedSheet(flat, Frame.Identity);
        Assert.Equal(0, folded.Fold(new(30, 20), 0).DistanceTo(new(30, 20, 0)), 1e-12);
        Assert.Equal(1, folded.Flanges[1].Z.Dot(new(0, -1, 0)), 1e-12);
        Assert.Equal(flat.Bends[0].Mirrored().Relief, Bend.Relief);
    }

    [Theory]
    [InlineData(0, 2, 2)]
    [InlineData(9, 10, 3)]
    [InlineData(30, 10, -18)]
    [InlineData(-12, 10, 0)]
    [InlineData(0, -5, -5)]
    public void What_is_bent_ends_at_the_cuts(double x, double y, double beyond) => Assert.Equal(beyond, Bend.Beyond(new(x, y)), 1e-12);

    [Theory]
    [InlineData(16, 20, 3, true)]
    [InlineData(17, 20, 3, false)]
    [InlineData(12, -9, 5, true)]
    [InlineData(12, -11, 5, false)]
    [InlineData(0, 60, 3, true)]
    public void Metal_of_the_plate_stays_out_of_the_notch(double x, double y, double radius, bool isInTheWay) =>
        Assert.Equal(!isInTheWay, BlankOutline.KeepApart([Bend], [[.. Plate, new(new(x, y), radius)], Tab], 3));

    [Fact]
    public void The_tab_is_no_wider_than_its_bend() => Assert.False(BlankOutline.KeepApart([Bend], [Plate, [new(new(8, 30), 3)]], 3));
}
