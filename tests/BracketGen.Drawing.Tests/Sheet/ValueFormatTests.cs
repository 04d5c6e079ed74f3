using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.Units;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Tests.Sheet;

public class ValueFormatTests
{
    // ISO 129-1: no trailing zeros. ASME Y14.5-2018, 4.3.1: millimetres below 1 have a leading zero, whole ones no decimal point.
    [Theory]
    [InlineData(40, "40")]
    [InlineData(40.5, "40.5")]
    [InlineData(0.5, "0.5")]
    [InlineData(6.60, "6.6")]
    [InlineData(100, "100")]
    [InlineData(2.005, "2.01")]
    [InlineData(-0.001, "0")]
    [InlineData(12.3456, "12.35")]
    public void Millimetres(double value, string expected) => Assert.Equal(expected, ValueFormat.Millimetre.Length(value));

    // ASME Y14.5-2018, 4.3.2: inches have no leading zero and as many decimals as their tolerance.
    [Theory]
    [InlineData(6.35, ".250")]
    [InlineData(25.4, "1.000")]
    [InlineData(28.575, "1.125")]
    [InlineData(-6.35, "-.250")]
    [InlineData(0, ".000")]
    public void Inches(double value, string expected) => Assert.Equal(expected, ValueFormat.Inch.Length(value));

    [Fact]
    public void Tolerances()
    {
        Assert.Equal("40 ±0.2", ValueFormat.Millimetre.Length(40, LengthTolerance.PlusMinus(0.2)));
        Assert.Equal("40 +0.2/0", ValueFormat.Millimetre.Length(40, new(0, 0.2)));
        Assert.Equal("40 +0.1/-0.3", ValueFormat.Millimetre.Length(40, new(-0.3, 0.1)));
        Assert.Equal(".250 ±.010", ValueFormat.Inch.Length(6.35, LengthTolerance.PlusMinus(0.254)));
        Assert.Equal("37.5° ±1°", ValueFormat.Millimetre.Degrees(Angle.FromDegrees(37.5), LengthTolerance.PlusMinus(Math.PI / 180)));
        Assert.Throws<ArgumentException>(() => new LengthTolerance(0.2, 0.1));
    }

    [Fact]
    public void Marks()
    {
        Assert.Equal("Ø6.6", ValueFormat.Millimetre.Diameter(6.6));
        Assert.Equal("R3", ValueFormat.Millimetre.Radius(3));
        Assert.Equal("R.125", ValueFormat.Inch.Radius(3.175));
        Assert.Equal("90°", ValueFormat.Millimetre.Degrees(Angle.Right));
    }

    [Theory]
    [InlineData("0.118 in thick", ".118 in thick")]
    [InlineData("0.250 to 0.500 in", ".250 to .500 in")]
    [InlineData("0.250; 1.500 in and 10.5 in", ".250; 1.500 in and 10.5 in")]
    [InlineData("a factor of 0.75; mass 0.175 lb", "a factor of 0.75; mass .175 lb")]
    public void On_a_drawing_inches_below_one_have_no_zero_before_the_point(string text, string drawn)
    {
        Assert.Equal(drawn, ValueFormat.Inch.Styled(text));
        Assert.Equal(text, ValueFormat.Tabled(UnitSystem.Inch).Styled(text));
        Assert.Equal(text, ValueFormat.Millimetre.Styled(text));
    }

    [Fact]
    public void Tables_elsewhere_keep_it() => Assert.Equal("0.118", ValueFormat.Tabled(UnitSystem.Inch).Length(3));
}
