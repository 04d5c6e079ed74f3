using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Design.Checks;

/// <summary>The checks of bending: can the shop's tools make the bends, carry the legs, and find the place?</summary>
public static class BendChecks
{
    /// <summary>All checks of a bracket's bends; none for a flat plate.</summary>
    /// <remarks>
    /// Of tools that nobody described, the usual ones stand in. An order found with them holds for one bend, which any shop makes so; for more, and
    /// where none is found, the answer is not known.
    /// </remarks>
    /// <param name="bracket">The bracket.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="leastShare">Minimum part of a bend that the die's shoulders must carry.</param>
    public static IEnumerable<Check> Of(Bracket bracket, Shop shop, double leastShare = ShoulderSupport.LeastShare) =>
        bracket.Flat.Bends.IsEmpty ? [] : [.. OfTools(bracket, Bend(bracket, shop), shop, leastShare), .. OfFlat(bracket).Where(c => c.Id != CheckId.DieShoulders)];

    /// <summary>The bracket bent with a shop's tools, on its own die.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="shop">The shop.</param>
    public static BendResult Bend(Bracket bracket, Shop shop) =>
        BendSimulation.Of(bracket.Flat, bracket.Stock, bracket.Die is { } die ? [die] : [], shop.Tools);

    /// <summary>The checks that only look at the flat pattern: quick. A leg that ends at a bend made before is not seen.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="leastShare">Minimum part of a bend that the die's shoulders must carry.</param>
    public static IEnumerable<Check> OfFlat(Bracket bracket, double leastShare = ShoulderSupport.LeastShare)
    {
        if (bracket.Die is not { } die)
        {
            yield break;
        }

        var bends = bracket.Flat.Bends;
        for (var i = 0; i < bends.Length; i++)
        {
            var number = NumberOf(bracket, i);
            if (NearestHole(bracket, bends[i], die) is { } nearest)
            {
                yield return nearest with { Number = number };
            }

            yield return Shoulders(ShoulderSupport.Of(bracket.Flat, bends[i], die), leastShare) with { Number = number };
        }
    }

    /// <summary>The checks that look at the order of bends that was found.</summary>
    /// <param name="bracket">The bracket, with at least one bend.</param>
    /// <param name="result">What the simulation found.</param>
    /// <param name="shop">The shop whose tools it was made with.</param>
    /// <param name="leastShare">Minimum part of a bend that the die's shoulders must carry.</param>
    public static IEnumerable<Check> OfTools(Bracket bracket, BendResult result, Shop shop, double leastShare = ShoulderSupport.LeastShare)
    {
        var isAssumed = result.Plan is { } plan ? plan.Steps.Any(s => IsAssumed(s, shop)) : AreAssumed(shop);
        yield return new(CheckId.BendOrder, result.Plan is not null ? 1 : isAssumed ? double.NaN : 0, 1)
        {
            Unfavourable = isAssumed && result.Plan is not null && bracket.Flat.Bends.Length > 1 ? double.NaN : null,
        };
        foreach (var step in result.Plan?.Steps.OrderBy(s => s.Bend) ?? Enumerable.Empty<BendStep>())
        {
            var number = NumberOf(bracket, step.Bend);
            if (step.Support is { } support)
            {
                yield return Shoulders(support, leastShare) with { Number = number };
            }

            // Over a clamp every bend is set to its scribed line: no edge would help.
            if (step.Clamp is null)
            {
                yield return new(CheckId.BendGauge, step.Gauge.PlusMinus, BackGauge.FingerError) { Number = number };
            }
        }
    }

    private static int? NumberOf(Bracket bracket, int bend) => bracket.Flat.Bends.Length > 1 ? bend + 1 : null;

    private static Check Shoulders(ShoulderSupport support, double leastShare) =>
        new(CheckId.DieShoulders, support.AtStart && support.AtEnd ? support.Share : 0, leastShare);

    // What a bend is not made with says nothing of it: a tool more, however little is known of it, makes no bracket worse.
    private static bool IsAssumed(BendStep step, Shop shop) => step.Clamp is { } clamp ? clamp.Evidence == Evidence.Assumed
        : step.Die is { Evidence: Evidence.Assumed } || step.Punch is { Evidence: Evidence.Assumed } || shop.Tools.Press is { Evidence: Evidence.Assumed };

    // Where no order was found, one with other tools may be there.
    private static bool AreAssumed(Shop shop) => shop.Dies.Any(d => d.Evidence == Evidence.Assumed)
        || shop.Tools.Punches.Any(p => p.Evidence == Evidence.Assumed) || shop.Tools.Press is { Evidence: Evidence.Assumed } || shop.Tools.Clamps.Any(c => c.Evidence == Evidence.Assumed);

    private static Check? NearestHole(Bracket bracket, Bend bend, PressBrakeDie die)
    {
        var limit = HoleOverDie.LimitOf(bend, die, bracket.Flat.Thickness);
        var nearest = bracket.Holes
            .Where(h => (h.Centre - bend.Start).Dot(bend.Along) is var along && along > -h.Reach && along < bend.Length + h.Reach)
            .Select(h => (Hole: h, Distance: Math.Max(0, Math.Abs(bend.Depth(h.Centre) - bend.Allowance / 2) - h.Reach)))
            .OrderBy(h => h.Distance).FirstOrDefault();
        return nearest.Hole is null ? null : new(CheckId.HoleOverDie, nearest.Distance, limit) { Subject = nearest.Hole.Name };
    }
}
