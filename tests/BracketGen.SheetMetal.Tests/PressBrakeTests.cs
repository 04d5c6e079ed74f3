using BracketGen.Geometry;

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
}
