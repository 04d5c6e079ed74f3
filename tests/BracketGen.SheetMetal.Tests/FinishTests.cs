using BracketGen.SheetMetal.Shops;

namespace BracketGen.SheetMetal.Tests;

/// <summary>What a finish takes from a hole.</summary>
public class FinishTests
{
    // A layer on both sides of a hole takes twice its thickness from the diameter; of an anodised layer half grows inwards (common practice, no source). 8 µm of zinc
    // takes 0.016 mm, which the play of any clearance hole bears; 0.08 mm of powder takes 0.16 mm.
    [Theory]
    [InlineData(FinishKind.Bare, 0, 0, 0)]
    [InlineData(FinishKind.Zinc, 0.008, 0.008, 0)]
    [InlineData(FinishKind.Zinc, 0.025, 0.025, 0.1)]
    [InlineData(FinishKind.PowderCoat, 0.08, 0.08, 0.2)]
    [InlineData(FinishKind.PowderCoat, 0.1, 0.1, 0.2)]
    [InlineData(FinishKind.PowderCoat, 0.12, 0.12, 0.3)]
    [InlineData(FinishKind.Anodised, 0.025, 0.0125, 0)]
    [InlineData(FinishKind.Anodised, 0.06, 0.03, 0.1)]
    public void Holes_are_made_larger_by_what_the_layer_takes(FinishKind kind, double thickness, double buildUp, double allowance)
    {
        var finish = new Finish(kind, thickness);
        Assert.Equal(buildUp, finish.BuildUp, 1e-12);
        Assert.Equal(allowance, finish.HoleAllowance, 1e-12);
    }

    [Fact]
    public void A_shop_gives_one_finish_to_all_it_makes_but_does_not_anodise_steel()
    {
        Material steel = new()
        {
            Designation = "DC01", Density = 7.85e-9, Modulus = 210_000, Poisson = 0.3, Yield = 140, Endurance = 108,
            MinRadiusAcrossGrain = 0.5, MinRadiusAlongGrain = 1, BendGroup = Bending.BendGroup.ColdRolledOrSpringSteel, Source = "",
        };
        var light = steel with { Designation = "EN AW-5754 H22", Density = 2.67e-9, Modulus = 70_000 };
        var shop = new Shop
        {
            Name = "Saltmarsh Fabrication", Process = Cutting.CuttingProcess.Laser, Kerf = 0.2, Stock = [new(steel, 3), new(light, 3)], Dies = [], TestBends = [],
            BendRule = PublishedBendRule.Din6935,
        };
        Finish anodised = new(FinishKind.Anodised, 0.02), zinc = new(FinishKind.Zinc, 0.008);
        Assert.Equal([Finish.NotStated, anodised], shop.Finished(anodised).Stock.Select(s => s.Material.Finish));
        Assert.Equal([zinc, zinc], shop.Finished(zinc).Stock.Select(s => s.Material.Finish));
    }
}
