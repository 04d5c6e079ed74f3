using System.Collections.Immutable;
using BracketGen.SheetMetal;

namespace BracketGen.Design;

/// <summary>Which of many brackets are offered, and in which order.</summary>
public static class Ranking
{
    /// <summary>How many brackets beside the best are checked in full in search of others worth offering.</summary>
    private const int MostOthers = 12;

    /// <summary>
    /// The passing brackets that no other beats in mass, stiffness, number of bends and smallest margin at once; the best first, the
    /// others by cost. Empty where none passes.
    /// </summary>
    /// <remarks>
    /// The best is the cheapest of all that pass: candidates are checked in the order of their cost until one does. For the others,
    /// the front on mass, stiffness and bends is found by the quick checks, and its members are checked in full.
    /// </remarks>
    /// <param name="candidates">All candidates by cost.</param>
    /// <param name="verify">The offer of a candidate that passes every check in full, or null: <see cref="Verify"/>.</param>
    public static ImmutableArray<Offer> Of(IReadOnlyList<Candidate> candidates, Func<Candidate, Offer?> verify)
    {
        var best = candidates.Select(verify).FirstOrDefault(o => o is not null);
        if (best is null)
        {
            return [];
        }

        var others = QuickFront(candidates)
            .Where(c => c != best.Candidate).Take(MostOthers)
            .Select(verify).OfType<Offer>().ToList();
        return
        [
            best,
            .. others.Where(o => !o.IsDominatedBy(best) && !others.Any(o.IsDominatedBy)).OrderBy(o => o.Candidate.Cost),
        ];
    }

    /// <summary>The offer of a candidate, or null where a check stands against it.</summary>
    /// <param name="candidate">The candidate.</param>
    /// <param name="inSpace">The checks in space.</param>
    /// <param name="fits">Whether it passes them: the same answer, sooner.</param>
    public static Offer? Verify(Candidate candidate, Func<Candidate, IEnumerable<Check>> inSpace, Func<Candidate, bool> fits)
    {
        if (!CandidateSearch.Promising(candidate) || !fits(candidate))
        {
            return null;
        }

        ImmutableArray<Check> checks = [.. candidate.QuickChecks, .. inSpace(candidate)];
        return checks.All(CandidateSearch.IsGoodEnough) ? new(candidate, checks) : null;
    }

    private static IEnumerable<Candidate> QuickFront(IReadOnlyList<Candidate> candidates)
    {
        // By mass: a heavier one is only worth while where it is stiffer than all lighter ones of as few bends.
        foreach (var bends in candidates.GroupBy(c => c.Bracket.Flat.Bends.Length).OrderBy(g => g.Key))
        {
            var stiffest = double.PositiveInfinity;
            foreach (var candidate in bends.OrderBy(c => c.Bracket.Mass).ThenBy(c => c.Give))
            {
                // A step of a tenth, or the list fills with twins.
                if (candidate.Give < 0.9 * stiffest && CandidateSearch.Promising(candidate))
                {
                    stiffest = candidate.Give;
                    yield return candidate;
                }
            }
        }
    }

    /// <summary>Why the first offer stands first, in words.</summary>
    /// <param name="offers">The offers, the best first.</param>
    /// <param name="candidates">How many shapes there were.</param>
    /// <param name="units">Unit of length.</param>
    /// <param name="weak">The shape of least cost, where it was not strong enough; null where it is the first offer.</param>
    public static ImmutableArray<string> Reasons(IReadOnlyList<Offer> offers, int candidates, LengthUnit units, Offer? weak = null)
    {
        var best = offers[0];
        string Give(Offer offer) => units == LengthUnit.Inch
            ? FormattableString.Invariant($"{offer.BestGive / 25.4:0.0000} in")
            : FormattableString.Invariant($"{offer.BestGive:0.000} mm");
        var reasons = ImmutableArray.CreateBuilder<string>();
        reasons.Add(FormattableString.Invariant(
            $"Of {candidates} shapes it has the least cost{(weak is null ? "" : " of those strong enough that were found")}: {best.Mass * 1e6:0} g, {Bends(best)}, {Give(best)} of give under the wire's pull."));
        if (weak is not null)
        {
            reasons.Add(FormattableString.Invariant(
                $"The cheapest shape, {weak.Mass * 1e6:0} g of {weak.Candidate.Bracket.Stock.Material.Designation}, was set aside: it is not strong enough."));
        }

        if (offers.Skip(1).Where(o => o.Mass < best.Mass * 0.98).MinBy(o => o.Mass) is { } lighter)
        {
            reasons.Add(FormattableString.Invariant(
                $"The lightest, {lighter.Mass * 1e6:0} g, gives {Give(lighter)} and has {Bends(lighter)}."));
        }

        if (offers.Skip(1).Where(o => o.BestGive < best.BestGive * 0.98).MinBy(o => o.BestGive) is { } stiffer)
        {
            reasons.Add(FormattableString.Invariant(
                $"The stiffest gives {Give(stiffer)}, but weighs {stiffer.Mass * 1e6:0} g and has {Bends(stiffer)}."));
        }

        if (offers.Skip(1).Where(o => o.LeastSpare > best.LeastSpare).MaxBy(o => o.LeastSpare) is { } roomier)
        {
            reasons.Add(FormattableString.Invariant(
                $"The roomiest has {100 * roomier.LeastSpare:0} % to spare at its tightest place, where this one has {100 * best.LeastSpare:0} % ({best.Tightest.Title})."));
        }

        return reasons.ToImmutable();
    }

    private static string Bends(Offer offer) => offer.Bends switch
    {
        0 => "no bend",
        1 => FormattableString.Invariant($"one bend of {Angles(offer)}"),
        _ => FormattableString.Invariant($"two bends of {Angles(offer)}"),
    };

    private static string Angles(Offer offer) => string.Join(
        " and ", offer.Candidate.Bracket.Flat.Bends.Select((Bend b) => FormattableString.Invariant($"{b.Turn.Magnitude.Degrees:0.#}°")));
}
