using System.Collections.Immutable;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Line.Parts;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Line.Costing;

/// <summary>One position of a part's cost.</summary>
/// <param name="What">What it is for.</param>
/// <param name="Each">For every piece.</param>
/// <param name="Batch">Once for a batch.</param>
public sealed record CostItem(string What, double Each, double Batch);

/// <summary>What a part costs, position by position.</summary>
/// <remarks>
/// Material: the rectangle round the blank in the way it may lie, spacing added, at the price of the sheet; nesting saves some of it.
/// Cutting: length and pierces, each slower in thicker sheet. Bending: every bend, angles that are tried out, changes of the die. The rates are the
/// family's, over the shop's.
/// </remarks>
public sealed record PartCost(ImmutableArray<CostItem> Items, double MarkUp)
{
    /// <summary>The cost of <paramref name="bracket"/>.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="plan">Sheets and spacing.</param>
    /// <param name="rates">The rates.</param>
    public static PartCost Of(Bracket bracket, CuttingPlan plan, Rates rates)
    {
        var bolts = bracket.Holes.Count(h => h.Purpose == HolePurpose.Bolt);
        var work = rates.Work;
        var times = PartTimes.Of(bracket, work);
        return new(
            [
                new("sheet", MaterialArea(bracket, plan) * PricePerArea(bracket, plan, work), 0),
                new("cutting", work.Cutting(times.Cut), work.Cutting(times.CuttingSetUp)),
                new("pierces", work.Cutting(times.Pierce), 0),
                new("bending", work.Bending(times.Bend), work.Bending(times.BendingSetUp)),
                new("finishing", work.Bending(times.Finish), 0),
                new("bolts", bolts * rates.BoltPrice, 0),
            ],
            rates.MarkUp);
    }

    /// <summary>Cost of one piece in a batch.</summary>
    public double For(int quantity) => Items.Sum(i => i.Each + i.Batch / quantity);

    /// <summary>Price of one piece in a batch, rounded to hundredths.</summary>
    public double PriceFor(int quantity) => Math.Round(For(quantity) * (1 + MarkUp), 2, MidpointRounding.AwayFromZero);

    /// <summary>Sheet that one piece takes (mm²): its rectangle with the spacing.</summary>
    public static double MaterialArea(Bracket bracket, CuttingPlan plan) => GrainTurns.Of(bracket)
        .Select(turn => bracket.Flat.Blank.Outline.Rotate(turn).Bounds)
        .Min(b => (b.Width + plan.Spacing) * (b.Height + plan.Spacing));

    private static double PricePerArea(Bracket bracket, CuttingPlan plan, ShopRates rates)
    {
        var stock = bracket.Stock;
        return SheetFor(bracket, plan) is { Price: { } price } sheet
            ? price / (sheet.Length * sheet.Width)
            : stock.Thickness * stock.Material.Density * 1000 * rates.PerKilogram(stock.Material);
    }

    /// <summary>The sheet that a bracket is cut from.</summary>
    public static StockSheet SheetFor(Bracket bracket, CuttingPlan plan) =>
        plan.Sheets.FirstOrDefault(s => s.Material == bracket.Stock.Material.Designation && Math.Abs(s.Thickness - bracket.Stock.Thickness) < Tolerance.SameSize)
        ?? new(bracket.Stock.Material.Designation, bracket.Stock.Thickness, CuttingPlan.UsualSheet.Length, CuttingPlan.UsualSheet.Width, null);
}
