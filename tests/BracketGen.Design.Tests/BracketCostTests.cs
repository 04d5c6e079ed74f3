using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.SheetMetal.Shops;
using BracketGen.TestSupport;
using BracketGen.Words.Report;
using BracketGen.Words.Results;

namespace BracketGen.Design.Tests;

/// <summary>What a bracket costs, worked out by hand.</summary>
public sealed class BracketCostTests
{
    private static readonly Material Steel = Examples.Read("plover-alder-58").Shop.Stock[0].Material with { PricePerKilogram = 2 };

    private static readonly ShopRates Rates = new()
    {
        CuttingRate = 90, CutTime = 6, PierceTime = 0.5, CuttingSetUp = 600, BendingRate = 60, BendTime = 30, BendingSetUp = 600, AngleSetUp = 120,
        ToolChange = 300, FinishingTime = 60, Batch = 10,
    };

    // 100 g of steel of 2 mm, 400 mm of cut with four pierces, two bends, one not square, on two dies: every number by hand.
    [Fact]
    public void A_bill_is_what_a_pocket_calculator_says()
    {
        var cost = BracketCost.OfWork(new(new(Steel, 2), 1e-4, 400, 4), 2, 1, 1, Rates);
        Assert.Equal(0.2, cost.Sheet, 1e-12);

        // 0.4 m at 12 s, and 4 pierces of 1 s: 8.8 s; 60 s of the set-up; at 1.5 a minute.
        Assert.Equal(68.8 / 60 * 1.5, cost.Cutting, 1e-12);

        // Two bends of 30 s and 60 s of the set-up each; 12 s to try out the angle; 30 s to change the die; at 1 a minute.
        Assert.Equal(3, cost.Bends, 1e-12);
        Assert.Equal(0.2, cost.Angles, 1e-12);
        Assert.Equal(0.5, cost.ToolChanges, 1e-12);
        Assert.Equal(1, cost.Finishing, 1e-12);
        Assert.Equal(0.2 + 1.72 + 3 + 0.2 + 0.5 + 1, cost.Bill, 1e-12);
        Assert.Equal(cost.Bill, cost.Total);
    }

    [Fact]
    public void Without_rates_a_minute_is_a_minute()
    {
        var cost = BracketCost.OfWork(new(new(Steel with { PricePerKilogram = null }, 1), 1e-3, 1000, 0), 1, 0, 0, ShopRates.InMinutes);
        Assert.Equal(3, cost.Sheet, 1e-12);
        Assert.Equal(0.1 + 10, cost.Cutting, 1e-12);
        Assert.Equal(25 / 60.0 + 10, cost.Bends, 1e-12);
        Assert.Equal(1.5, cost.Finishing, 1e-12);
    }

    [Theory]
    [MemberData(nameof(Examples.Names), MemberType = typeof(Examples))]
    public void An_offer_costs_what_its_parts_add_up_to(string name)
    {
        foreach (var rates in new[] { Rates, ShopRates.InMinutes })
        {
            var job = Examples.Read(name);
            job = job with { Shop = job.Shop with { Rates = rates } };
            foreach (var offer in Designer.Solve(job).Offers)
            {
                var cost = CostText.Of(offer, job);
                Assert.Equal(offer.Candidate.Cost, cost.Parts.Sum(p => p.Cost), 1e-9);
                Assert.Equal(offer.Candidate.Cost, cost.Total, 1e-9);
                Assert.Equal(cost.Give, rates.Worth(5 * offer.Give), 1e-12);
            }
        }
    }

    // As a fabricator has it: a bend is dearer than the sheet of a bracket, and an angle to try out is dearer than a millimetre of thickness.
    [Fact]
    public void Bends_come_before_angles_and_angles_before_sheet()
    {
        foreach (var rates in new[] { new(), ShopRates.InMinutes })
        {
            double Of(double mass, double thickness, int bends, int angles) =>
                BracketCost.OfWork(new(new(Steel with { PricePerKilogram = null }, thickness), mass, 400, 4), bends, angles, 0, rates).Bill;
            Assert.True(Of(1e-4, 3, 2, 0) > Of(2e-4, 5, 1, 1));
            Assert.True(Of(1e-4, 3, 1, 1) > Of(2e-4, 5, 1, 0));
            Assert.True(Of(2e-4, 3, 1, 0) > Of(1e-4, 3, 1, 0));
        }
    }
}
