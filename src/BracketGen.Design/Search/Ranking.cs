using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;

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

    /// <summary>The offer of a candidate, or null where a check rejects it.</summary>
    /// <param name="candidate">The candidate.</param>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="clearanceError">Error of clearances (mm): a clearance given is at most this much too small.</param>
    internal static Offer? Verify(Candidate candidate, Job job, double clearanceError = SpaceDemand.Error)
    {
        if (!CandidateSearch.Promising(candidate) || !BracketChecks.FitsInSpace(candidate.Around(job)))
        {
            return null;
        }

        ImmutableArray<Check> checks =
            [.. candidate.QuickChecks, .. BracketChecks.InSpace(candidate.Around(job), clearanceError)];
        return checks.All(CandidateSearch.IsGoodEnough) ? new(candidate, checks) : null;
    }

    /// <summary>Why the first offer stands first.</summary>
    /// <param name="offers">The offers, the best first.</param>
    /// <param name="candidates">How many shapes there were.</param>
    /// <param name="weak">The shape of minimum cost, where it was not strong enough; null where it is the first offer.</param>
    public static ChoiceReasons Reasons(IReadOnlyList<Offer> offers, int candidates, Offer? weak = null)
    {
        var best = offers[0];
        var others = offers.Skip(1).ToList();
        return new(
            candidates, best, weak,
            others.Where(o => o.Mass < best.Mass * WorthSaying).MinBy(o => o.Mass),
            others.Where(o => o.BestGive < best.BestGive * WorthSaying).MinBy(o => o.BestGive),
            others.Where(o => o.LeastSpare > best.LeastSpare).MaxBy(o => o.LeastSpare));
    }

    // Mass or give that is less by two in a hundred is worth a word.
    private const double WorthSaying = 0.98;
}

/// <summary>Why the first of several brackets stands first, beside those that beat it in something.</summary>
/// <param name="Shapes">How many shapes there were.</param>
/// <param name="Best">The first.</param>
/// <param name="TooWeak">The shape of minimum cost, where it was not strong enough; null where that is the first.</param>
/// <param name="Lighter">The lightest, where it is lighter than the first; null where none is.</param>
/// <param name="Stiffer">The stiffest, likewise.</param>
/// <param name="Roomier">The one with the most spare at its tightest place, likewise.</param>
public sealed record ChoiceReasons(int Shapes, Offer Best, Offer? TooWeak, Offer? Lighter, Offer? Stiffer, Offer? Roomier) : IMirrored<ChoiceReasons>
{
    /// <inheritdoc/>
    public ChoiceReasons Mirrored() => new(
        Shapes, Best.Mirrored(), TooWeak?.Mirrored(), Lighter?.Mirrored(), Stiffer?.Mirrored(), Roomier?.Mirrored());
}
