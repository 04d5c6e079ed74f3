using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Cutting;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.SheetMetal.Tests;

/// <summary>Which bend rule a shop goes by.</summary>
public class ShopTests
{
    private static readonly Material Sheet = new()
    {
        Designation = "EN AW-5754 H22", Density = 2.66e-9, Modulus = 70_000, Poisson = 0.33, Yield = 130, Endurance = 60,
        MinRadiusAcrossGrain = 1, MinRadiusAlongGrain = 1.5, BendGroup = BendGroup.SoftBrassOrCopper, Source = "for this test",
    };

    private static readonly Shop Saltmarsh = new()
    {
        Name = "Saltmarsh Fabrication", Process = CuttingProcess.Laser, Kerf = 0.2, Stock = [new(Sheet, 2)], Dies = [],
        TestBends = [new("S235", 2, 2.5, 0.31), new("EN AW-5754 H22", 2, 2.5, 0.42), new("EN AW-5754 H22", 3, 2.5, 0.43)],
        BendRule = PublishedBendRule.Din6935,
    };

    [Theory]
    [InlineData(2, 2.5, 0.42)]
    [InlineData(3, 2.5, 0.43)]
    public void The_shops_own_test_bend_goes_first(double thickness, double radius, double k) =>
        Assert.Equal(new TestBendRule(k, "Saltmarsh Fabrication"), Saltmarsh.RuleFor(new(Sheet, thickness), radius) with { KPlusMinus = 0 });

    [Theory]
    [InlineData("EN AW-5754 H22", 2, 3)]
    [InlineData("EN AW-5754 H22", 2.5, 2.5)]
    [InlineData("EN AW-5754 H111", 2, 2.5)]
    public void A_test_bend_of_something_else_does_not_count(string designation, double thickness, double radius)
    {
        Stock stock = new(Sheet with { Designation = designation }, thickness);

        // DIN 6935 is for flat rolled steel.
        Assert.Equal(new MachinerysHandbookRule(BendGroup.SoftBrassOrCopper), Saltmarsh.RuleFor(stock, radius) with { KPlusMinus = 0 });
        Assert.Equal(new Din6935Rule(), Saltmarsh.RuleFor(stock with { Material = stock.Material with { Density = 7.85e-9, Modulus = 210_000 } }, radius) with { KPlusMinus = 0 });
        Assert.Equal(
            new MachinerysHandbookRule(BendGroup.SoftBrassOrCopper),
            (Saltmarsh with { BendRule = PublishedBendRule.MachinerysHandbook }).RuleFor(stock, radius) with { KPlusMinus = 0 });
    }

    [Theory]
    [InlineData(7.85e-9, 210_000, true)] // Carbon steel, EN 1993-1-1, 3.2.6.
    [InlineData(7.9e-9, 200_000, true)] // 1.4301, EN 10088-1.
    [InlineData(2.7e-9, 70_000, false)] // Aluminium, EN 1999-1-1, 3.2.5.
    [InlineData(8.5e-9, 100_000, false)] // Brass, common tables.
    [InlineData(8.9e-9, 120_000, false)] // Copper, common tables.
    public void Steel_is_told_by_density_and_stiffness(double density, double modulus, bool steel) =>
        Assert.Equal(steel, (Sheet with { Density = density, Modulus = modulus }).IsSteel);

    /// <summary>A die that was tried for the sheet goes before a narrower one that was not, but not before one that does not crack it.</summary>
    [Fact]
    public void A_die_with_a_test_bend_goes_first()
    {
        var shop = Saltmarsh with { Dies = [new(12, 1.9), new(16, 2.5), new(20, 3.2), new(40, 6.4)] };
        Assert.Equal([16, 12, 20], shop.DiesFor(new(Sheet, 2), 0.9).Select(d => d.Opening));
        Assert.Equal([20, 16, 12], shop.DiesFor(new(Sheet, 2), 1.5).Select(d => d.Opening));
        Assert.Equal([12, 16, 20], shop.DiesFor(new(Sheet with { Designation = "other" }, 2), 0.9).Select(d => d.Opening));
    }

    /// <summary>
    /// Reading both legs of a strip of 2 mm at 90° to 0.1 mm: √2 · 0.1 / (π/2 · 2) = 0.045. Untested steel, r = t: DIN 6935 has K = 0.325, the handbook (0.64 + 1.57)/(π/2) - 1 = 0.407 for soft steel;
    /// a test bend of 0.45 there is off DIN by 0.125.
    /// </summary>
    [Fact]
    public void An_untested_rule_is_less_sure()
    {
        var steel = Sheet with { Designation = "S", Density = 7.85e-9, Modulus = 210_000, BendGroup = BendGroup.SoftSteelOrAluminium };
        var shop = Saltmarsh with { Stock = [new(steel, 2), new(Sheet, 2)], TestBends = [] };
        Assert.Equal(0.0817, shop.KPlusMinus(new(steel, 2), 2), 1e-3);
        Assert.Equal(0.125, (shop with { TestBends = [new("S", 3, 3, 0.45)] }).KPlusMinus(new(steel, 2), 2), 1e-3);
        Assert.Equal(0.045, (shop with { TestBends = [new("S", 2, 2, 0.45)] }).KPlusMinus(new(steel, 2), 2), 1e-3);

        // For aluminium there is one published rule, with three groups: 0.71 - 0.55 over π/2. A test bend of K = 0.52 is off 0.55/(π/2) by 0.17.
        Assert.Equal(0.1019, shop.KPlusMinus(new(Sheet, 2), 2), 1e-3);
        Assert.Equal(0.17, (shop with { TestBends = [new(Sheet.Designation, 2, 4, 0.52)] }).KPlusMinus(new(Sheet, 2), 2), 1e-3);
    }
}
