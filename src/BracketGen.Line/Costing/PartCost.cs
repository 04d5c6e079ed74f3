using System.Collections.Immutable;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Line.Parts;
using BracketGen.Profiles.Family;

namespace BracketGen.Line.Costing;

/// <summary>One position of a part's cost.</summary>
/// <param name="What">What it is for.</param>
/// <param name="Each">For every piece.</param>
/// <param name="Batch">Once for a batch.</param>
public sealed record CostItem(string What, double Each, double Batch);

/// <summary>What a part costs, position by position.</summary>
/// <remarks>
/// Material: the rectangle round the blank in the way it may lie, spacing added, at the price of the sheet; nesting saves some of it.
/// Cutting: length and pierces, each slower in thicker sheet. The rates are the family's.
/// </remarks>
public sealed record PartCost(ImmutableArray<CostItem> Items, double MarkUp)
{
    /// <summary>The cost of <paramref name="bracket"/>.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="plan">Sheets and spacing.</param>
    /// <param name="rates">The rates.</param>
    public static PartCost Of(Bracket bracket, CuttingPlan plan, Rates rates)
    {
        var flat = bracket.Flat;
        var (thickness, bends) = (flat.Thickness, flat.Bends.Length);
        var bolts = bracket.Holes.Count(h => h.Purpose == HolePurpose.Bolt);
        var pierces = flat.Blank.Contours.Count();
        double Hours(double seconds, double rate) => seconds / 3600 * rate;
        return new(
            [
                new("sheet", MaterialArea(bracket, plan) * PricePerArea(bracket, plan, rates), 0),
                new("cutting", Hours(flat.Blank.CutLength / 1000 * rates.CutTime * thickness, rates.CuttingRate), Hours(rates.CuttingSetUp, rates.CuttingRate)),
                new("pierces", Hours(pierces * rates.PierceTime * thickness, rates.CuttingRate), 0),
                new("bending", Hours(bends * rates.BendTime, rates.BendingRate), Hours(bends * rates.BendingSetUp, rates.BendingRate)),
                new("finishing", Hours(rates.FinishingTime, rates.BendingRate), 0),
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

    private static double PricePerArea(Bracket bracket, CuttingPlan plan, Rates rates)
    {
        var stock = bracket.Stock;
        return SheetFor(bracket, plan) is { Price: { } price } sheet
            ? price / (sheet.Length * sheet.Width)
            : stock.Thickness * stock.Material.Density * 1000 * rates.SheetPerKilogram;
    }

    /// <summary>The sheet that a bracket is cut from.</summary>
    public static StockSheet SheetFor(Bracket bracket, CuttingPlan plan) =>
        plan.Sheets.FirstOrDefault(s => s.Material == bracket.Stock.Material.Designation && Math.Abs(s.Thickness - bracket.Stock.Thickness) < Tolerance.SameSize)
        ?? new(bracket.Stock.Material.Designation, bracket.Stock.Thickness, CuttingPlan.UsualSheet.Length, CuttingPlan.UsualSheet.Width, null);
}
