using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;

namespace BracketGen.SheetMetal.Tests;

/// <summary>The shortest flange that a V-die holds.</summary>
public class PressBrakeTests
{
    // Common practice, no source: the shortest flange is about 0.7 times the die opening at 90°.
    [Fact]
    public void At_a_right_angle_it_is_the_trades_own_rule() =>
        Assert.Equal(0.7 * 16, new PressBrakeDie(16, 2.5).ShortestFlange(Angle.Right), 0.15);

    [Fact]
    public void A_sharper_bend_needs_more() => Assert.True(
        new PressBrakeDie(16, 2.5).ShortestFlange(Angle.FromDegrees(120)) > new PressBrakeDie(16, 2.5).ShortestFlange(Angle.Right));

    // Common practice, no source: dies of 6 to 12 thicknesses.
    [Theory]
    [InlineData(18, true)]
    [InlineData(36, true)]
    [InlineData(17.9, false)]
    [InlineData(36.1, false)]
    public void Dies_suit_from_six_to_twelve_thicknesses(double opening, bool suits) => Assert.Equal(suits, new PressBrakeDie(opening, 2.5).Suits(3));
}
