using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Study;

/// <summary>Why no bracket of a job is strong enough, and what would give it one.</summary>
internal static class Weakness
{
    /// <summary>Step in which less pull is tried (mm).</summary>
    private const double Step = 0.25;

    /// <summary>The strength checks in the way, over brackets that pass all others.</summary>
    public static ImmutableArray<Obstacle> Obstacles(ImmutableArray<ProvenOffer> weak) =>
    [
        .. weak.SelectMany(w => w.Strength.Checks)
            .Where(c => !CandidateSearch.IsGoodEnough(c))
            .GroupBy(c => c.Code)
            .Select(g => new Obstacle(g.MaxBy(c => c.Margin)!, g.Count(), weak.Length))
            .OrderByDescending(o => o.Stopped).ThenBy(o => o.Nearest.Code, StringComparer.Ordinal),
    ];

    /// <summary>The smallest changes that make a bracket strong enough: sheet that is not in stock, and less over-travel.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="weak">Its weak brackets, in the same frame.</param>
    /// <param name="detail">How finely they are meshed.</param>
    public static IEnumerable<WayOpened> Ways(Job job, ImmutableArray<ProvenOffer> weak, StrengthDetail detail)
    {
        if (LessPull(job, weak, detail) is { } pull)
        {
            yield return new(ChangedInput.AvailablePull, null, job.Vehicle.Pedal.AvailablePull.Value, pull);
        }

        foreach (var material in job.Shop.Stock.Select(s => s.Material).Distinct())
        {
            var thicker = Diagnosis.UsualThicknesses
                .Except(job.Shop.Stock.Where(s => s.Material == material).Select(s => s.Thickness))
                .Where(t => t > weak[0].Offer.Candidate.Bracket.Flat.Thickness);
            foreach (var thickness in thicker)
            {
                if (!Designer.SolveTurned(Diagnosis.WithOnly(job, material, thickness), 1, detail).Offers.IsEmpty)
                {
                    yield return new(ChangedInput.Stock, material.Designation, 0, thickness);
                    break;
                }
            }
        }
    }

    private static double? LessPull(Job job, ImmutableArray<ProvenOffer> weak, StrengthDetail detail)
    {
        var pull = job.Vehicle.Pedal.AvailablePull;
        for (var less = Step; less < weak[0].Offer.Candidate.Travel.OverTravel - job.Preferences.MinOverTravel; less += Step)
        {
            var changed = job with
            {
                Vehicle = job.Vehicle with { Pedal = job.Vehicle.Pedal with { AvailablePull = pull with { Value = pull.Value - less }, Table = null } },
            };
            foreach (var offer in weak.Select(w => w.Offer))
            {
                var old = offer.Candidate;
                var travel = Travel.Solve(job.Body.Quadrant, old.Placement.Seat.XY, old.Placement.FreePlay, pull.Value - less);
                var candidate = new Candidate(old.Placement, travel, old.Bracket, old.Give, old.Cost, () => old.QuickChecks);
                if (StrongOffers.Prove(changed, new(candidate, offer.Checks), detail).IsStrong)
                {
                    return pull.Value - less;
                }
            }
        }

        return null;
    }
}
