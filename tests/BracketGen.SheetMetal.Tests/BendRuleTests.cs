using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;

namespace BracketGen.SheetMetal.Tests;

/// <summary>Bend allowances against the published rules.</summary>
public class BendRuleTests
{
    // DIN 6935, correction factor k = 0.65 + 0.5 log10(r/s); the standard's own rounded table gives 0.5 at r/s = 0.5, 0.65 at 1,
    // 0.8 at 2, 1 from 5 on (from memory of the standard's table 1, "k" against r/s).
    [Theory]
    [InlineData(0.5, 0.5)]
    [InlineData(1, 0.65)]
    [InlineData(2, 0.8)]
    [InlineData(5, 1.0)]
    [InlineData(8, 1.0)]
    public void Din_6935_factor(double ratio, double factor) =>
        Assert.Equal(factor, Din6935Rule.CorrectionFactor(ratio * 3, 3), 0.005);

    // DIN 6935, compensation v for opening angle b up to 90° is v = π (180 - b)/180 (r + k s/2) - 2 (r + s); worked for
    // s = 2, r = 2, b = 90: arc 4.163, v = -3.837 (computed from the standard's formula).
    [Fact]
    public void Din_6935_worked_example()
    {
        var arc = new Din6935Rule().Allowance(Angle.Right, 2, 2);
        Assert.Equal(4.163, arc, 0.001);
        Assert.Equal(-3.837, arc - 2 * (2 + 2), 0.001);
    }

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

    // The two published rules are of one opinion, within what air bending scatters: a twentieth of a thickness at r = t.
    [Fact]
    public void The_published_rules_agree_on_soft_steel()
    {
        var din = new Din6935Rule().Allowance(Angle.Right, 3, 3);
        var handbook = new MachinerysHandbookRule(BendGroup.SoftSteelOrAluminium).Allowance(Angle.Right, 3, 3);
        Assert.InRange(Math.Abs(din - handbook), 0, 0.15 * 3);
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
