using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;

namespace BracketGen.SheetMetal.Tests;

/// <summary>Bend allowances against the published rules.</summary>
public class BendRuleTests
{
    // DIN 6935, the standard's table of correction factors by intervals of r/s (from memory): each is the formula's value rounded to a tenth.
    [Theory]
    [InlineData(0.65, 1, 0.6)]
    [InlineData(1, 1.5, 0.7)]
    [InlineData(1.5, 2.4, 0.8)]
    [InlineData(2.4, 3.8, 0.9)]
    [InlineData(3.8, 9, 1.0)]
    public void Din_6935_factor_by_intervals(double over, double upTo, double printed)
    {
        foreach (var ratio in Enumerable.Range(1, 100).Select(i => over + (upTo - over) * i / 100))
        {
            Assert.InRange(Din6935Rule.CorrectionFactor(ratio * 3, 3) - printed, -0.062, 0.051);
        }
    }

    // Worked example of a bent part in a German handbook of tables for the metal trades (public copy, read 2026-11-28): opening angle 60°, legs 16 and 21 mm, r = 6, s = 5.
    // It gives k = 0.689 by the formula, and v = 5.77 mm and 32 mm of flat length with k = 0.7.
    [Fact]
    public void Din_6935_worked_example()
    {
        var k = Din6935Rule.CorrectionFactor(6, 5);
        var v = 2 * (6 + 5) - new Din6935Rule().Allowance(Angle.FromDegrees(120), 6, 5);
        Assert.Equal(0.689, k, 0.001);
        Assert.Equal(5.77, v - 2 * Math.PI / 3 * (0.7 - k) * 5 / 2, 0.005);
        Assert.Equal(32, 16 + 21 - v, 1.0);
    }

    // Compensation v at 90°, tables of DIN 6935's supplement 2 as handbooks for the metal trades reprint them; from memory.
    [Theory]
    [InlineData(1, 1, 1.9)]
    [InlineData(2.5, 2, 4.0)]
    [InlineData(4, 2, 4.5)]
    [InlineData(6, 3, 6.7)]
    public void Din_6935_compensation_at_90(double radius, double thickness, double printed) =>
        Assert.Equal(printed, 2 * (radius + thickness) - new Din6935Rule().Allowance(Angle.Right, radius, thickness), 0.05);

    // DIN 6935, opening angle 135° (bend 45°): v = π/4 (r + k s/2) - 2 (r + s) tan 22.5°.
    [Fact]
    public void Din_6935_at_an_obtuse_opening()
    {
        const double r = 4, s = 2;
        var k = 0.65 + 0.5 * Math.Log10(2);
        Assert.Equal(Math.PI / 4 * (r + k * s / 2), new Din6935Rule().Allowance(Angle.FromDegrees(45), r, s), 1e-12);
    }

    // Machinery's Handbook, "Bending sheet metal": L = 0.55 T + 1.57 R (soft brass, copper), 0.64 T + 1.57 R (half-hard
    // brass and copper, soft steel, aluminium), 0.71 T + 1.57 R (bronze, hard copper, cold-rolled and spring steel), at 90°.
    [Theory]
    [InlineData(BendGroup.SoftBrassOrCopper, 0.55)]
    [InlineData(BendGroup.SoftSteelOrAluminium, 0.64)]
    [InlineData(BendGroup.ColdRolledOrSpringSteel, 0.71)]
    public void Machinerys_handbook(BendGroup group, double factor)
    {
        var rule = new MachinerysHandbookRule(group);
        Assert.Equal(factor * 3 + 1.57 * 4, rule.Allowance(Angle.Right, 4, 3), 1e-12);
        Assert.Equal((factor * 3 + 1.57 * 4) / 2, rule.Allowance(Angle.FromDegrees(-45), 4, 3), 1e-12);
        Assert.Contains("Machinery's Handbook", rule.Name, StringComparison.Ordinal);
    }

    // At r = t the two published rules are 0.13 thicknesses apart: more than air bending scatters. A shop's own test bend decides.
    [Fact]
    public void The_published_rules_differ_on_soft_steel()
    {
        var din = new Din6935Rule().Allowance(Angle.Right, 3, 3);
        var handbook = new MachinerysHandbookRule(BendGroup.SoftSteelOrAluminium).Allowance(Angle.Right, 3, 3);
        Assert.InRange((handbook - din) / 3, 0.12, 0.14);
    }

    // From 5 on the factor stays 1; the formula alone would give 0.9995 just there and stays below 1 up to r/s = 5.01.
    [Fact]
    public void Din_6935_is_one_beyond_five()
    {
        Assert.Equal(0.65 + 0.5 * Math.Log10(5), Din6935Rule.CorrectionFactor(10, 2), 1e-12);
        Assert.Equal(1, Din6935Rule.CorrectionFactor(10.001, 2));
        Assert.Equal(0, Din6935Rule.CorrectionFactor(0.05, 2));
    }

    [Fact]
    public void Rules_say_where_they_come_from()
    {
        Assert.Equal("DIN 6935", new Din6935Rule().Name);
        Assert.Equal("test bend, Saltmarsh Fabrication", new TestBendRule(0.4, "Saltmarsh Fabrication").Name);
        Assert.Equal("Machinery's Handbook, L = 0.64 T + 1.57 R at 90°", new MachinerysHandbookRule(BendGroup.SoftSteelOrAluminium).Name);
    }
}
