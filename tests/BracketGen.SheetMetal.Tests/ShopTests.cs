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
        Assert.Equal(new TestBendRule(k, "Saltmarsh Fabrication"), Saltmarsh.RuleFor(new(Sheet, thickness), radius));

    [Theory]
    [InlineData("EN AW-5754 H22", 2, 3)]
    [InlineData("EN AW-5754 H22", 2.5, 2.5)]
    [InlineData("EN AW-5754 H111", 2, 2.5)]
    public void A_test_bend_of_something_else_does_not_count(string designation, double thickness, double radius)
    {
        Stock stock = new(Sheet with { Designation = designation }, thickness);
        Assert.Equal(new Din6935Rule(), Saltmarsh.RuleFor(stock, radius));
        Assert.Equal(
            new MachinerysHandbookRule(BendGroup.SoftBrassOrCopper),
            (Saltmarsh with { BendRule = PublishedBendRule.MachinerysHandbook }).RuleFor(stock, radius));
    }
}
