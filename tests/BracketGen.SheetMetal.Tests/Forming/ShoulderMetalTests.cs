using BracketGen.Geometry;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.SheetMetal.Tests.Forming;

/// <summary>Metal laid beside a bend: the outline that comes of it is carried all along and has an edge to gauge from.</summary>
public class ShoulderMetalTests
{
    [Theory]
    [InlineData(60)]
    [InlineData(90)]
    [InlineData(120)]
    [InlineData(-90)]
    public void All_of_the_bend_is_carried(double turn)
    {
        const double straight = 3, radius = 4;
        var bend = BentStrip.Of([40, 40], [turn]).Bends[0];

        // A bolt far to one side on the one flange, the stop on the other: without more, the outline runs to a waist at the bend.
        Disc[][] discs = [[new(new(15, 60), 7)], [new(new(70, 20), 9)]];
        var (from, to) = ShoulderMetal.Of(bend, BentStrip.Die, BentStrip.Thickness, straight, radius);
        FlatPattern Draw(params Disc[][] all) => new()
        {
            Blank = new(BlankOutline.Draw([bend], all, straight, radius)!, []), Thickness = BentStrip.Thickness, Bends = [bend],
        };
        var bare = Draw(discs);
        var full = Draw([.. discs[0], .. from], [.. discs[1], .. to]);
        var support = ShoulderSupport.Of(full, bend, BentStrip.Die);
        Assert.Equal(1, support.Share, 1e-6);
        Assert.True(support.Suffices());
        Assert.True(ShoulderSupport.Of(bare, bend, BentStrip.Die).Share < 0.9);
        Assert.True(full.Blank.Area > bare.Blank.Area);
    }
}
