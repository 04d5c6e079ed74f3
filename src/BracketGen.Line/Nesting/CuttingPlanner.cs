using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Line.Costing;
using BracketGen.Line.Parts;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Line.Nesting;

/// <summary>What is cut from one kind of sheet.</summary>
/// <param name="Stock">The sheet.</param>
/// <param name="Size">Its size.</param>
/// <param name="Nest">What lies where.</param>
/// <param name="Rows">What lies on the sheets in plain rows of rectangles, to compare.</param>
public sealed record StockNest(Stock Stock, StockSheet Size, SheetNest Nest, SheetNest Rows)
{
    /// <summary>Whether the family lists its size; else <see cref="CuttingPlan.UsualSheet"/> was taken.</summary>
    public bool IsListed { get; init; } = true;

    /// <summary>Sheet saved over plain rows, as a part of what those need.</summary>
    public double Saved => Rows.UsedArea > 0 ? 1 - Nest.UsedArea / Rows.UsedArea : 0;
}

/// <summary>Lays an order on offcuts and sheets, each kind of sheet by itself.</summary>
public static class CuttingPlanner
{
    /// <summary>The nests, by material and thickness.</summary>
    /// <param name="selection">The parts.</param>
    /// <param name="order">How many of each.</param>
    /// <param name="plan">Sheets, spacing and border.</param>
    /// <param name="threads">How many kinds of sheet at once.</param>
    public static ImmutableArray<StockNest> Of(PartSelection selection, CuttingOrder order, CuttingPlan plan, int threads)
    {
        var wanted = order.Quantities.ToDictionary(q => q.PartNumber, q => q.Quantity);
        var kinds = selection.Parts
            .Where(p => wanted.ContainsKey(p.Made.PartNumber))
            .GroupBy(p => (p.Bracket.Stock.Material.Designation, p.Bracket.Stock.Thickness))
            .OrderBy(g => g.Key.Designation, StringComparer.Ordinal).ThenBy(g => g.Key.Thickness).ToArray();
        var nests = new StockNest[kinds.Length];
        Parallel.For(0, kinds.Length, new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, threads) }, i =>
        {
            var first = kinds[i].First().Bracket;
            var size = PartCost.SheetFor(first, plan);
            NestPiece[] pieces =
            [
                .. kinds[i].Select(p => new NestPiece(p.Made.PartNumber, p.Bracket.Flat.Blank.Outline, GrainTurns.Of(p.Bracket), wanted[p.Made.PartNumber])),
            ];
            Offcut[] offcuts =
            [
                .. plan.Offcuts.Where(o => o.Material == first.Stock.Material.Designation && Math.Abs(o.Thickness - first.Stock.Thickness) < Tolerance.SameSize),
            ];
            var nest = Nester.Lay(pieces, offcuts, size.Length, size.Width, plan.Spacing, plan.Border);
            var rows = RowNest.Lay(Nester.Less(pieces, nest.Offcuts.SelectMany(o => o.Laid)), size.Length, size.Width, plan.Spacing, plan.Border);
            nests[i] = new(first.Stock, size, nest, rows) { IsListed = plan.Sheets.Contains(size) };
        });
        return [.. nests];
    }
}
