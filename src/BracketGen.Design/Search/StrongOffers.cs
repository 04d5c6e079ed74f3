using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;

namespace BracketGen.Design.Search;

/// <summary>A bracket with its strength known.</summary>
/// <param name="Offer">The bracket and its checks so far.</param>
/// <param name="Strength">Whether it bends, shakes or cracks.</param>
public sealed record ProvenOffer(Offer Offer, StrengthReport Strength) : IMirrored<ProvenOffer>
{
    /// <inheritdoc/>
    public ProvenOffer Mirrored() => new(Offer.Mirrored(), Strength.Mirrored());

    /// <summary>Whether it passes all strength checks.</summary>
    public bool IsStrong => Strength.Checks.All(CandidateSearch.IsGoodEnough);
}

/// <summary>Which of the brackets worth offering are strong enough, and a stronger one where the best is not.</summary>
public static class StrongOffers
{
    /// <summary>How many brackets beyond those offered are looked at with finite elements in search of one that is strong enough.</summary>
    private const int MostTried = 16;

    /// <summary>How many weak brackets are given a lip.</summary>
    private const int MostStiffened = 3;

    // A prediction from another bracket is good to about this much; one that is worse is not tried.
    private const double Hopeful = 1.15;

    /// <summary>
    /// Those of <paramref name="offers"/> that are strong enough, in their order. Where the first of them is not, the cheapest
    /// candidate found that is goes before them: thicker, wider, or of other shape. Where none is strong, the weak ones.
    /// </summary>
    /// <param name="job">The job.</param>
    /// <param name="offers">The brackets that pass every other check, the best first; at least one.</param>
    /// <param name="candidates">The candidates, by cost.</param>
    /// <param name="verify">The offer of a candidate that passes every other check, or null.</param>
    /// <param name="detail">How finely they are meshed.</param>
    public static ImmutableArray<ProvenOffer> Of(
        Job job, ImmutableArray<Offer> offers, IEnumerable<Candidate> candidates, Func<Candidate, Offer?> verify, StrengthDetail detail)
    {
        var proven = new ProvenOffer[offers.Length];
        Parallel.For(0, offers.Length, i => proven[i] = Prove(job, offers[i], detail));
        var strong = proven.Where(p => p.IsStrong).ToList();
        if (!proven[0].IsStrong && WithLip(job, proven, verify, detail) is { } stiffened)
        {
            strong.Add(stiffened);
            strong.Sort((a, b) => a.Offer.Candidate.Cost.CompareTo(b.Offer.Candidate.Cost));
        }

        if (!proven[0].IsStrong && Stronger(job, proven, candidates, verify, detail) is { } found
            && !strong.Any(s => s.Offer.Candidate.Cost <= found.Offer.Candidate.Cost))
        {
            strong.Insert(0, found);
        }

        return strong.Count > 0 ? [.. strong] : [.. proven];
    }

    /// <summary>An offer with its strength.</summary>
    public static ProvenOffer Prove(Job job, Offer offer, StrengthDetail detail)
    {
        var strength = StrengthStudy.Of(job, offer.Candidate.Travel, offer.Candidate.Placement, offer.Candidate.Bracket, detail);
        return new(offer with { GiveFound = strength.Opening.Give }, strength);
    }

    // A lip does not lower the stress at the bend, but it stiffens the flange a lot: it is tried where only give or vibration fails.
    private static ProvenOffer? WithLip(Job job, ProvenOffer[] weak, Func<Candidate, Offer?> verify, StrengthDetail detail) => weak
        .Where(w => !w.IsStrong && w.Strength.Checks.All(c => CandidateSearch.IsGoodEnough(c) || c.Id is CheckId.StopGive or CheckId.Resonance))
        .Take(MostStiffened)
        .SelectMany(w => ReturnLip.On(w.Offer.Candidate.Bracket, job.Shop, job.Preferences.CornerRadius)
            .Select(b => w.Offer.Candidate.With(job, b)))
        .OrderBy(c => c.Cost)
        .Select(verify).OfType<Offer>()
        .Select(o => Prove(job, o, detail))
        .FirstOrDefault(p => p.IsStrong);

    private static ProvenOffer? Stronger(
        Job job, ProvenOffer[] weak, IEnumerable<Candidate> candidates, Func<Candidate, Offer?> verify, StrengthDetail detail)
    {
        var known = weak.ToList();
        var dearest = weak.Where(w => w.IsStrong).Select(w => w.Offer.Candidate.Cost).DefaultIfEmpty(double.PositiveInfinity).Min();
        var tried = 0;
        foreach (var candidate in candidates)
        {
            if (candidate.Cost >= dearest || tried == MostTried)
            {
                return null;
            }

            if (known.Any(k => k.Offer.Candidate == candidate) || Predicted(candidate, known) > Hopeful || verify(candidate) is not { } offer)
            {
                continue;
            }

            tried++;
            var proof = Prove(job, offer, detail);
            if (proof.IsStrong)
            {
                return proof;
            }

            known.Add(proof);
        }

        return null;
    }

    // How far over its worst limit a candidate would be, from the bracket most like it that was calculated: each of its
    // results in proportion to what beam theory makes of both.
    private static double Predicted(Candidate candidate, List<ProvenOffer> known)
    {
        var like = known.MinBy(k => Unlikeness(k.Offer.Candidate, candidate))!;
        var (there, here) = (BeamEstimate.Of(like.Offer.Candidate), BeamEstimate.Of(candidate));
        var worst = 0.0;
        foreach (var check in like.Strength.Checks.Where(c => !CandidateSearch.IsGoodEnough(c)))
        {
            var over = check.Bound == Bound.AtLeast ? check.Limit / check.Value : check.Value / check.Limit;
            worst = Math.Max(worst, over * check.Id switch
            {
                CheckId.StopGive => here.Give / there.Give,
                CheckId.Resonance => Math.Sqrt(here.Give * here.Mass / (there.Give * there.Mass)),
                CheckId.Endurance => here.Stress / here.Endurance / (there.Stress / there.Endurance),
                _ => here.Stress / here.Yield / (there.Stress / there.Yield),
            });
        }

        return worst;
    }

    private static double Unlikeness(Candidate a, Candidate b) =>
        10 * Math.Abs(a.Bracket.Flat.Bends.Length - b.Bracket.Flat.Bends.Length)
        + Math.Abs(Math.Log(a.Bracket.Flat.Thickness / b.Bracket.Flat.Thickness))
        + (a.Bracket.Stock.Material == b.Bracket.Stock.Material ? 0 : 1)
        + Math.Abs(a.Placement.Leaving.Radians - b.Placement.Leaving.Radians);
}
