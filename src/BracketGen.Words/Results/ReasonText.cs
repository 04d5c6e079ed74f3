using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Words.Results;

/// <summary>Why the first bracket stands first, in words.</summary>
public static class ReasonText
{
    /// <summary>One sentence for each reason; empty where there is none.</summary>
    public static IReadOnlyList<string> Of(ChoiceReasons? reasons, Job job, UnitSystem units)
    {
        if (reasons is null)
        {
            return [];
        }

        string Mass(Offer offer) => units.Write(Quantity.Mass, offer.Mass);
        string Give(Offer offer) => units.WriteFine(Quantity.Length, offer.BestGive);
        string Spare(Offer offer) => units.Write(Quantity.Fraction, offer.LeastSpare);
        string Cost(Offer offer) => CostText.Amount(CostText.Of(offer, job).Total, job.Shop.Rates);
        var best = reasons.Best;
        var cost = CostText.Of(best, job);
        List<string> all =
        [
            $"Of {(reasons.Shapes == 1 ? "1 shape" : $"{reasons.Shapes} shapes")}, judged in the order of their cost, it is the first that passes every check of the bracket itself and so costs the least: {Mass(best)}, {Bends(best, units)}, {Give(best)} of give under the wire's pull.",
            .. reasons.FrequencyRule == FrequencyRule.Response ? (string[])[ShakingText.ByResponse] : [],
            CostText.Bill(cost, job.Shop.Rates),
        ];
        if (CostText.Preferences(cost, job.Shop.Rates) is { } preferences)
        {
            all.Add(preferences);
        }

        all.Add(CostText.Source(job.Shop.Rates));
        if (job.Body.Mount.Ring is not null)
        {
            all.Add(CostText.WithoutRing);
        }

        if (reasons.TooWeak is { } weak)
        {
            all.Add($"The cheapest shape, {Mass(weak)} of {weak.Candidate.Bracket.Stock.Material.Designation}, is out: it is not strong enough.");
        }

        if (reasons.Lighter is { } lighter)
        {
            all.Add($"The lightest, {Mass(lighter)}, gives {Give(lighter)}, has {Bends(lighter, units)} and comes to {Cost(lighter)} in all.");
        }

        if (reasons.Stiffer is { } stiffer)
        {
            all.Add($"The stiffest gives {Give(stiffer)}, but weighs {Mass(stiffer)}, has {Bends(stiffer, units)} and comes to {Cost(stiffer)} in all.");
        }

        if (reasons.Roomier is { } roomier)
        {
            all.Add($"The roomiest has {Spare(roomier)} to spare at its tightest place; this one has {Spare(best)} ({best.Tightest.Title()}). It comes to {Cost(roomier)} in all.");
        }

        return all;
    }

    private static string Bends(Offer offer, UnitSystem units)
    {
        var angles = string.Join(" and ", offer.Candidate.Bracket.Flat.Bends.Select(b => units.Write(Quantity.Angle, b.Turn.Magnitude.Radians)));
        return offer.Bends switch
        {
            0 => "no bend",
            1 => $"one bend of {angles}",
            2 => $"two bends of {angles}",
            _ => $"three bends of {angles}",
        } + (offer.Candidate.Bracket.Lip is not null ? ", the last a return lip" : offer.Candidate.Bracket.ReturnFlange is not null ? ", the last a return flange" : "");
    }
}
