using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Mechanism;
using BracketGen.SheetMetal;
using BracketGen.Units;

namespace BracketGen.Design.Search;

/// <summary>Which of many brackets are offered, and in which order.</summary>
public static class Ranking
{
    /// <summary>How many brackets beside the best are checked in full in search of others worth offering.</summary>
    private const int MostOthers = 12;

    /// <summary>
    /// The passing brackets that no other beats in mass, stiffness, number of bends and smallest margin at once; the best first, the
    /// others by cost.
    /// </summary>
    /// <remarks>
    /// The front on mass, stiffness and bends is found by the quick checks, and its members are checked in full, side by side.
    /// </remarks>
    /// <param name="pool">All candidates.</param>
    /// <param name="best">The cheapest that passes.</param>
    /// <param name="verify">The offer of a candidate that passes every check in full, or null; called from several threads.</param>
    internal static ImmutableArray<Offer> Of(CandidatePool pool, Offer best, Func<Candidate, Offer?> verify)
    {
        var front = pool.Front().Where(c => c != best.Candidate).Take(MostOthers).ToArray();
        var verified = new Offer?[front.Length];
        Parallel.For(0, front.Length, i => verified[i] = verify(front[i]));
        var others = verified.OfType<Offer>().ToList();
        return
        [
            best,
            .. others.Where(o => !o.IsDominatedBy(best) && !others.Any(o.IsDominatedBy)).OrderBy(o => o.Candidate.Cost),
        ];
    }

    /// <summary>The offer of a candidate, or null where a check stands against it.</summary>
    /// <param name="candidate">The candidate.</param>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="clearanceError">How exactly clearances are told (mm): at most so much too small.</param>
    internal static Offer? Verify(Candidate candidate, Job job, double clearanceError = SpaceDemand.Error)
    {
        if (!CandidateSearch.Promising(candidate) || !BracketChecks.FitsInSpace(candidate.Bracket, job.Body, job.Vehicle.Cable, job.Preferences))
        {
            return null;
        }

        ImmutableArray<Check> checks =
            [.. candidate.QuickChecks, .. BracketChecks.InSpace(candidate.Bracket, job.Body, job.Vehicle.Cable, job.Preferences, clearanceError)];
        return checks.All(CandidateSearch.IsGoodEnough) ? new(candidate, checks) : null;
    }

    /// <summary>Why the first offer stands first, in words.</summary>
    /// <param name="offers">The offers, the best first.</param>
    /// <param name="candidates">How many shapes there were.</param>
    /// <param name="units">Unit of length.</param>
    /// <param name="weak">The shape of least cost, where it was not strong enough; null where it is the first offer.</param>
    public static ImmutableArray<string> Reasons(IReadOnlyList<Offer> offers, int candidates, UnitSystem units, Offer? weak = null)
    {
        var best = offers[0];
        string Give(Offer offer) => units == UnitSystem.Inch
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
