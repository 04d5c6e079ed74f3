using BracketGen.Geometry;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.SheetMetal.Tests.Forming;

/// <summary>Die shoulders and holes beside the die.</summary>
public class ShoulderTests
{
    // V 16, shoulder radius 16/12: 8/cos 45° + 1.333 = 12.647 mm from the outside mould line; setback 4.6 mm, so 8.047 mm of flat.
    private const double Flat = 8.047;

    private static ShoulderSupport Of(FlatPattern flat, int bend = 0) => ShoulderSupport.Of(flat, flat.Bends[bend], BentStrip.Die);

    private static FlatPattern With(params Vector2[] corners)
    {
        var flat = BentStrip.Of([40, 40], [90]);
        return flat with { Blank = new(Contour.Polygon(corners), []) };
    }

    [Fact]
    public void A_leg_needs_half_the_opening_over_the_cosine()
    {
        Assert.Equal(12.647, ShoulderSupport.LegNeeded(BentStrip.Die, Angle.Right), 1e-3);
        Assert.Equal(8 + 16.0 / 12, ShoulderSupport.LegNeeded(BentStrip.Die, Angle.Zero), 1e-9);
    }

    [Theory]
    [InlineData(Flat + 0.01, 1, true)]
    [InlineData(Flat - 0.01, 0, false)]
    public void A_straight_leg_is_long_enough_or_not(double leg, double share, bool suffices)
    {
        foreach (var flats in new[] { new[] { leg, 40 }, [40, leg] })
        {
            var support = Of(BentStrip.Of(flats, [90]));
            Assert.Equal(share, support.Share, 1e-9);
            Assert.Equal(suffices, support.Suffices());
            Assert.Equal(suffices ? 12.647 : 4.6 + leg, support.ShortestLeg, 1e-3);
        }
    }

    /// <summary>The leg falls off from 20 mm in the middle to nothing at both ends of a bend of 40 mm: 8.047 mm are reached 8.047 mm from either end.</summary>
    [Fact]
    public void A_pointed_leg_is_carried_in_the_middle()
    {
        var flat = BentStrip.Of([40, 40], [90]);
        var far = 40 + flat.Bends[0].Allowance;
        var support = Of(With(new(0, 0), new(far, 0), new(far + 20, 20), new(far, 40), new(0, 40)));
        Assert.Equal((40 - 2 * Flat) / 40, support.Share, 1e-3);
        Assert.Equal((false, false, false), (support.AtStart, support.AtEnd, support.Suffices(0.5)));
        var carried = Assert.Single(support.Carried);
        Assert.Equal((Flat, 40 - Flat), (Math.Round(carried.From, 2), Math.Round(carried.To, 2)), Close);
    }

    private static readonly Comparer Close = new();

    private sealed class Comparer : IEqualityComparer<(double, double)>
    {
        public bool Equals((double, double) a, (double, double) b) => Math.Abs(a.Item1 - b.Item1) < 0.01 && Math.Abs(a.Item2 - b.Item2) < 0.01;

        public int GetHashCode((double, double) _) => 0;
    }

    /// <summary>A slot 6 mm wide to 5 mm from the bend: what it opens is not carried.</summary>
    [Fact]
    public void A_slot_is_not_carried()
    {
        var flat = BentStrip.Of([40, 40], [90]);
        double near = 40 + flat.Bends[0].Allowance, end = near + 40;
        var support = Of(With(new(0, 0), new(end, 0), new(end, 17), new(near + 5, 17), new(near + 5, 23), new(end, 23), new(end, 40), new(0, 40)));
        Assert.Equal(34.0 / 40, support.Share, 1e-6);
        Assert.Equal(2, support.Carried.Length);
        Assert.True(support.Suffices());
        Assert.False(support.Suffices(0.9));
    }

    /// <summary>A bend made before ends the leg: 8 mm between two bends are too short for the second, but not for the first.</summary>
    [Fact]
    public void A_bend_made_before_ends_the_leg()
    {
        var flat = BentStrip.Of([40, 8, 40], [90, -90]);
        Assert.Equal(1, Of(flat, 1).Share, 1e-9);
        var support = ShoulderSupport.Of(flat, flat.Bends[1], BentStrip.Die, flat.Bends[0]);
        Assert.Equal((0, 12.6), (support.Share, Math.Round(support.ShortestLeg, 6)));
    }

    /// <summary>12.647 - 4.6 + half the allowance, from the middle of the bend: more than half the opening.</summary>
    [Fact]
    public void Holes_keep_off_the_opening()
    {
        var flat = BentStrip.Of([40, 40], [90]);
        var bend = flat.Bends[0];
        var limit = HoleOverDie.LimitOf(bend, BentStrip.Die, flat.Thickness);
        Assert.Equal(12.647 - 4.6 + bend.Allowance / 2, limit, 1e-3);
        var middle = 40 + bend.Allowance / 2;
        var holes = flat with { Blank = new(flat.Blank.Outline, [Contour.Circle(new(middle - 15, 20), 3), Contour.Circle(new(middle + 13, 10), 3)]) };
        var nearest = HoleOverDie.Nearest(holes, bend, BentStrip.Die)!;
        Assert.Equal((1, 10.0), (nearest.Hole, Math.Round(nearest.Distance, 6)));
        Assert.True(nearest.Distance < nearest.Limit);
        Assert.Equal(0, HoleOverDie.Nearest(holes with { Blank = new(flat.Blank.Outline, [Contour.Circle(new(middle + 2, 20), 3)]) }, bend, BentStrip.Die)!.Distance);
        Assert.Null(HoleOverDie.Nearest(flat, bend, BentStrip.Die));

        // A flat bend only needs the opening.
        var shallow = bend with { Turn = Angle.FromDegrees(5), Allowance = 0.3 };
        Assert.Equal(8 + 16.0 / 12, HoleOverDie.LimitOf(shallow, BentStrip.Die, flat.Thickness), 0.2);
    }
}
