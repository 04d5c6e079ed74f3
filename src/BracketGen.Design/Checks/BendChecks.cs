using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Design.Checks;

/// <summary>The checks of bending: can the shop's tools make the bends, carry the legs, and find the place?</summary>
public static class BendChecks
{
    /// <summary>The checks of a bracket's bends; none for a flat plate.</summary>
    /// <remarks>
    /// Of tools that nobody described, the usual ones stand in. An order found with them holds for one bend, which any shop makes so; for more, and
    /// where none is found, the answer is not known.
    /// </remarks>
    /// <param name="bracket">The bracket.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="leastShare">Minimum part of a bend that the die's shoulders must carry.</param>
    public static IEnumerable<Check> Of(Bracket bracket, Shop shop, double leastShare = ShoulderSupport.LeastShare)
    {
        var bends = bracket.Flat.Bends;
        return bends.IsEmpty ? [] : Of(bracket, BendSimulation.Of(bracket.Folded, bracket.Stock, shop), AreAssumed(shop), leastShare);
    }

    /// <summary>The same for an order that was looked for already.</summary>
    /// <param name="bracket">The bracket, with at least one bend.</param>
    /// <param name="result">What the simulation found.</param>
    /// <param name="isAssumed">Whether some of the tools are assumed.</param>
    /// <param name="leastShare">Minimum part of a bend that the die's shoulders must carry.</param>
    public static IEnumerable<Check> Of(Bracket bracket, BendResult result, bool isAssumed, double leastShare = ShoulderSupport.LeastShare)
    {
        var bends = bracket.Flat.Bends;
        yield return new(CheckId.BendOrder, result.Plan is not null ? 1 : isAssumed ? double.NaN : 0, 1)
        {
            Unfavourable = isAssumed && result.Plan is not null && bends.Length > 1 ? double.NaN : null,
        };
        for (var i = 0; i < bends.Length; i++)
        {
            var step = result.Plan?.Steps.First(s => s.Bend == i);
            if ((step is null ? bracket.Die : step.Die) is not { } die)
            {
                continue;
            }

            int? number = bends.Length > 1 ? i + 1 : null;
            var support = step?.Support ?? ShoulderSupport.Of(bracket.Flat, bends[i], die);
            yield return new(CheckId.DieShoulders, support.AtStart && support.AtEnd ? support.Share : 0, leastShare) { Number = number };
            if (NearestHole(bracket, bends[i], die) is { } nearest)
            {
                yield return nearest with { Number = number };
            }

            if (step is not null)
            {
                yield return new(CheckId.BendGauge, step.Gauge.PlusMinus, BackGauge.FingerError) { Number = number };
            }
        }
    }

    /// <summary>Whether some of a shop's tools are assumed.</summary>
    /// <param name="shop">The shop.</param>
    public static bool AreAssumed(Shop shop) => shop.Dies.Any(d => d.Evidence == Evidence.Assumed)
        || shop.Tools.Punches.Any(p => p.Evidence == Evidence.Assumed) || shop.Tools.Press is { Evidence: Evidence.Assumed };

    private static Check? NearestHole(Bracket bracket, Bend bend, PressBrakeDie die)
    {
        var limit = HoleOverDie.LimitOf(bend, die, bracket.Flat.Thickness);
        var nearest = bracket.Holes
            .Where(h => (h.Centre - bend.Start).Dot(bend.Along) is var along && along > -h.Diameter / 2 && along < bend.Length + h.Diameter / 2)
            .Select(h => (Hole: h, Distance: Math.Max(0, Math.Abs(bend.Depth(h.Centre) - bend.Allowance / 2) - h.Diameter / 2)))
            .OrderBy(h => h.Distance).FirstOrDefault();
        return nearest.Hole is null ? null : new(CheckId.HoleOverDie, nearest.Distance, limit) { Subject = nearest.Hole.Name };
    }
}
