using System.Text;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Line.Costing;
using BracketGen.Line.Nesting;
using BracketGen.Line.Numbering;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;
using BracketGen.Words.Report;
using BracketGen.Words.Worksheet;

namespace BracketGen.Line.Tests;

/// <summary>Costs worked out by hand, and orders.</summary>
public class CostTests
{
    // A plate of 100 x 40 mm, 2 mm thick, two holes of 10 mm and a third of 20 mm for the stop, no bend; every number by hand.
    [Fact]
    public void A_plates_cost_is_what_a_pocket_calculator_says()
    {
        var bracket = Plate();
        var plan = new CuttingPlan([new("S235JR", 2, 2000, 1000, 50)], 5, 10, 1);
        var rates = new Rates
        {
            Work = new() { CuttingRate = 90, CutTime = 6, PierceTime = 0.5, CuttingSetUp = 600, BendingRate = 60, BendTime = 30, BendingSetUp = 600, FinishingTime = 60 },
            BoltPrice = 0.3, MarkUp = 0.5,
        };
        var cost = PartCost.Of(bracket, plan, rates).Items.ToDictionary(i => i.What);

        // 105 x 45 mm of 2 m² at 50: 4725 / 2000000 * 50.
        Assert.Equal(0.118125, cost["sheet"].Each, 1e-9);

        // 280 mm outline and 10, 10, 20 times pi: 405.6637 mm; 6 s for a metre and mm, 2 mm: 4.867964 s at 90 an hour.
        Assert.Equal(4.867964 / 40, cost["cutting"].Each, 1e-6);
        Assert.Equal(15, cost["cutting"].Batch, 1e-9);

        // Four contours, half a second for a mm, 2 mm: 4 s.
        Assert.Equal(0.1, cost["pierces"].Each, 1e-9);
        Assert.Equal(0, cost["bending"].Each + cost["bending"].Batch);
        Assert.Equal(1, cost["finishing"].Each, 1e-9);
        Assert.Equal(0.6, cost["bolts"].Each, 1e-9);
        var whole = PartCost.Of(bracket, plan, rates);
        Assert.Equal(0.118125 + 4.867964 / 40 + 0.1 + 1 + 0.6 + 15, whole.For(1), 1e-6);
        Assert.Equal(whole.For(1) - 15 + 1.5, whole.For(10), 1e-9);
        Assert.Equal(Math.Round(1.5 * whole.For(10), 2), whole.PriceFor(10));

        // By mass: 4725 mm² x 2 mm x 7850 kg/m³ = 0.0741825 kg at 2.5.
        Assert.Equal(0.0741825 * 2.5, PartCost.Of(bracket, plan with { Sheets = [] }, rates).Items[0].Each, 1e-9);
    }

    [Fact]
    public void Larger_batches_never_cost_more_a_piece()
    {
        var (_, run, parts) = Estuary.Solved;
        foreach (var part in parts)
        {
            var cost = PartCost.Of(part.Bracket, run.Family.Family.Cutting, run.Family.Family.Rates);
            var prices = new[] { 1, 2, 5, 10, 100, 1000 }.Select(cost.For).ToArray();
            Assert.Equal(prices.OrderDescending(), prices);
            Assert.True(prices[^1] > cost.Items.Sum(i => i.Each));
        }
    }

    [Theory]
    [InlineData("part_number,quantity\nP1,5\nP2,7\n", "P1 5, P2 7")]
    [InlineData("quantity;remark;part_number\n5;x;P1\n\n6;;P1\n", "P1 11")]
    [InlineData("\uFEFF\"part_number\",\"quantity\"\r\n\"P2\",\"3\"\r\n", "P2 3")]
    public void Orders_are_read(string text, string wanted) => Assert.Equal(
        wanted, string.Join(", ", CuttingOrder.Parse(Encoding.UTF8.GetBytes(text), new HashSet<string> { "P1", "P2" }).Order!.Quantities.Select(q => $"{q.PartNumber} {q.Quantity}")));

    [Theory]
    [InlineData("number,count\nP1,5\n", "line 1")]
    [InlineData("part_number,quantity\nP3,5\nP1,-1\nP1\n", "line 2: P3 is no part")]
    [InlineData("part_number,quantity\nP3,5\nP1,-1\nP1\n", "line 3: \"-1\" is not a quantity")]
    [InlineData("part_number,quantity\nP3,5\nP1,-1\nP1\n", "line 4: a column is missing")]
    public void Every_mistake_in_an_order_is_reported(string text, string mistake)
    {
        var (order, mistakes) = CuttingOrder.Parse(Encoding.UTF8.GetBytes(text), new HashSet<string> { "P1" });
        Assert.Null(order);
        Assert.Contains(mistakes, m => m.Text.StartsWith(mistake, StringComparison.Ordinal));
    }

    private static Bracket Plate()
    {
        var some = Estuary.Solved.Parts[0].Bracket;
        BracketHole Hole(double x, double d, HolePurpose purpose) => new("A", purpose, 0, new(x, 20), d, null, null, d);
        System.Collections.Immutable.ImmutableArray<BracketHole> holes = [Hole(10, 10, HolePurpose.Bolt), Hole(30, 10, HolePurpose.Bolt), Hole(80, 20, HolePurpose.Stop)];
        return some with
        {
            Stock = new(some.Stock.Material with { PricePerKilogram = null, Density = 7.85e-9 }, 2),
            Die = null,
            Holes = holes,
            Folded = new(
                new FlatPattern
                {
                    Blank = new(
                        Geometry.Contour.Polygon([new(0, 0), new(100, 0), new(100, 40), new(0, 40)]),
                        holes.Select(h => Geometry.Contour.Circle(h.Centre.Vector, h.Diameter / 2))),
                    Thickness = 2,
                    Bends = [],
                },
                Geometry.Frame.Identity),
        };
    }
}
