using System.Globalization;
using BracketGen.Profiles.Family;
using BracketGen.Units;
using BracketGen.Words.Report;
using CsCheck;

namespace BracketGen.Profiles.Tests;

public class UnitTests
{
    // NIST Special Publication 811 (2008), appendix B.8: factors to SI base units, as printed there (seven figures; bold ones exact).
    [Theory]
    [InlineData("in", 2.54e-2, 1e3)] // inch to m
    [InlineData("ft", 3.048e-1, 1e3)] // foot to m
    [InlineData("deg", 1.745329e-2, 1)] // degree to rad
    [InlineData("lbf", 4.448222, 1)] // pound-force to N
    [InlineData("kgf", 9.80665, 1)] // kilogram-force to N
    [InlineData("lbf in", 1.129848e-1, 1e3)] // pound-force inch to N m
    [InlineData("lbf ft", 1.355818, 1e3)] // pound-force foot to N m
    [InlineData("kgf cm", 9.80665e-2, 1e3)] // kilogram-force metre to N m, a hundredth
    [InlineData("psi", 6.894757e3, 1e-6)] // pound-force per square inch to Pa
    [InlineData("ksi", 6.894757e6, 1e-6)] // kip per square inch to Pa
    [InlineData("lb/in3", 2.767990e4, 1e-12)] // pound per cubic inch to kg/m³
    [InlineData("g/cm3", 1e3, 1e-12)] // gram per cubic centimetre to kg/m³
    public void FactorsAreThoseOfNist(string unit, double toSi, double siToInternal)
    {
        var factor = UnitTable.Find(unit)!.Factor;
        Assert.InRange(factor / (toSi * siToInternal), 1 - 5e-7, 1 + 5e-7);
    }

    // The units of the SI itself.
    [Theory]
    [InlineData("mm", 1)]
    [InlineData("cm", 10)]
    [InlineData("m", 1000)]
    [InlineData("rad", 1)]
    [InlineData("N", 1)]
    [InlineData("kN", 1000)]
    [InlineData("N m", 1000)]
    [InlineData("N·m", 1000)]
    [InlineData("Nm", 1000)]
    [InlineData("N mm", 1)]
    [InlineData("MPa", 1)]
    [InlineData("N/mm2", 1)]
    [InlineData("GPa", 1000)]
    [InlineData("kg/m3", 1e-12)]
    [InlineData("kg/m³", 1e-12)]
    public void SiUnitsAreDecimal(string unit, double factor) => Assert.Equal(factor, UnitTable.Find(unit)!.Factor);

    [Theory]
    [InlineData("1.125 in", 1.125, "in")]
    [InlineData("12lbf", 12, "lbf")]
    [InlineData("1 1/8 in", 1.125, "in")]
    [InlineData("-1-1/8 in", -1.125, "in")]
    [InlineData("5/16in", 0.3125, "in")]
    [InlineData("  .5  N m ", 0.5, "N m")]
    [InlineData("1e-3 m", 1e-3, "m")]
    [InlineData("90°", 90, "°")]
    [InlineData("7", 7, "")]
    public void TextSplitsIntoNumberAndUnit(string text, double number, string unit) => Assert.Equal((number, unit), QuantityText.Split(text));

    [Theory]
    [InlineData("")]
    [InlineData("in")]
    [InlineData("1,5 mm")]
    [InlineData("1.2.3 mm")]
    [InlineData("one mm")]
    [InlineData("٣ mm")]
    public void OtherTextDoesNot(string text) => Assert.Null(QuantityText.Split(text));

    [Fact]
    public void EveryUnitRoundTrips()
    {
        var gen = Gen.Select(Pick(UnitTable.All), Gen.Double[-1e6, 1e6]);
        gen.Sample(
            (unit, number) =>
            {
                var text = number.ToString("R", CultureInfo.InvariantCulture) + " " + unit.Name;
                var (read, word) = QuantityText.Split(text)!.Value;
                var back = read * UnitTable.Find(word)!.Factor / unit.Factor;
                return UnitTable.Find(word) == unit && Math.Abs(back - number) <= 1e-12 * Math.Abs(number);
            },
            seed: "0001u2tbF4C6",
            iter: 500,
            threads: 1);
    }

    private static Gen<T> Pick<T>(IReadOnlyList<T> items) => Gen.Int[0, items.Count - 1].Select(i => items[i]);

    [Theory]
    [InlineData("m m")]
    [InlineData("MM")]
    [InlineData("mN")]
    [InlineData("m N")]
    [InlineData("N")]
    [InlineData("lbf")]
    [InlineData("lbf/in")]
    public void NotEveryLikenessIsATorque(string word) => Assert.NotEqual(Quantity.Torque, UnitTable.Find(word)?.Kind);

    [Fact]
    public void NoSpellingMeansTwoUnits()
    {
        var spellings = UnitTable.All.SelectMany(u => u.Spellings).ToArray();
        Assert.Equal(spellings.Length, spellings.Distinct().Count());
        Assert.All(UnitTable.All, u => Assert.Same(u, UnitTable.Find(u.Name)));
    }
}
