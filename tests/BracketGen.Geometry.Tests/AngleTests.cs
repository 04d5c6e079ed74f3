using BracketGen.TestSupport;

namespace BracketGen.Geometry.Tests;

public class AngleTests
{
    [Theory]
    [InlineData(0, 0)]
    [InlineData(180, 180)]
    [InlineData(-180, 180)]
    [InlineData(540, 180)]
    [InlineData(190, -170)]
    [InlineData(-190, 170)]
    [InlineData(359, -1)]
    [InlineData(720, 0)]
    public void Normalising_drops_whole_turns(double degrees, double expected) =>
        Assert.Equal(expected, Angle.FromDegrees(degrees).Normalised.Degrees, 1e-9);

    [Fact]
    public void A_half_turn_either_way_is_plus_half_a_turn()
    {
        Assert.Equal(Math.PI, new Angle(-Math.PI).Normalised.Radians);
        Assert.Equal(Math.PI, new Angle(3 * Math.PI).Normalised.Radians);
    }

    [Fact]
    public void Normalising_keeps_the_direction() => RandomShapes.Direction.Check(500, angle =>
    {
        var normal = angle.Normalised.Radians;
        Assert.True(normal is > -Math.PI and <= Math.PI);
        Assert.Equal(Math.Cos(angle.Radians), Math.Cos(normal), 1e-12);
        Assert.Equal(Math.Sin(angle.Radians), Math.Sin(normal), 1e-12);
    });

    [Fact]
    public void Angles_add_turn_round_and_compare()
    {
        var (a, b) = (Angle.FromDegrees(30), Angle.FromDegrees(-45));
        Assert.Equal(-15, (a + b).Degrees, 1e-12);
        Assert.Equal(75, (a - b).Degrees, 1e-12);
        Assert.Equal(45, (-b).Degrees, 1e-12);
        Assert.Equal(45, b.Magnitude.Degrees, 1e-12);
        Assert.Equal(90, (3 * a).Degrees, 1e-12);
        Assert.True(b < a && a > b && a >= b && b <= a && a.CompareTo(b) > 0);
    }

    [Fact]
    public void Messages_give_degrees_with_a_point() => Assert.Equal("12.35°", Angle.FromDegrees(12.3456).ToString());
}
