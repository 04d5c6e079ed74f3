using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Study;

/// <summary>From a job to a verified bracket.</summary>
public static class Designer
{
    /// <summary>Solves <paramref name="job"/>: the best bracket that passes every check, or the one that fails least.</summary>
    /// <param name="job">The job.</param>
    /// <param name="choice">Number of the offer to take, 1 for the best; the last one where there are not so many.</param>
    /// <param name="strength">How finely the brackets are meshed to see whether they bend, shake or crack; null where that is not looked at.</param>
    public static Solution Solve(Job job, int choice = 1, StrengthDetail? strength = null) =>
        AsMeasured(job, SolveTurned(job.OpeningCounterClockwise(), choice, strength));

    /// <summary>A solution of <paramref name="job"/> opening counter-clockwise, in the frame as measured.</summary>
    internal static Solution AsMeasured(Job job, Solution turned) => job.Body.Turned(turned) with { Job = job };

    /// <summary>The same as <see cref="Solve"/> for a job that opens counter-clockwise.</summary>
    internal static Solution SolveTurned(Job job, int choice = 1, StrengthDetail? strength = null)
    {
        var pool = new CandidatePool(job);
        Offer? Verify(Candidate c) => Ranking.Verify(c, job);
        var best = pool.Cheapest(Verify);

        // Most ask for the best one without its strength: its mechanism is worked out while others are looked for.
        var mechanism = best is not null && choice == 1 && strength is null
            ? Task.Run(() => MechanismReport.Of(job, best.Candidate.Travel, best.Candidate.Placement, best.Candidate.Bracket))
            : null;
        var offers = best is null ? [] : Ranking.Of(pool, best, Verify);
        var proven = ImmutableArray<ProvenOffer>.Empty;
        if (strength is not null && offers.Length > 0)
        {
            proven = StrongOffers.Of(job, offers, pool.ByCost(), Verify, strength);
            offers = proven[0].IsStrong ? [.. proven.Select(p => p.Offer)] : [];
        }

        var number = Math.Clamp(choice, 1, Math.Max(1, offers.Length));
        var taken = offers.Length > 0 ? offers[number - 1] : proven.Length > 0 ? proven[0].Offer : LeastFaulty(pool.All(), c => BracketChecks.InSpace(c.Around(job), SpaceDemand.Error));
        var proof = proven.Length > 0 ? proven[number - 1]
            : strength is not null && taken is not null ? StrongOffers.Prove(job, taken, strength) : null;
        return Answer(job, taken, proof, MechanismReport.UsualSamples, mechanism?.Result) with
        {
            CandidateCount = pool.Count,
            Offers = offers,
            Weak = offers.IsEmpty ? proven : [],
            Choice = number,
            Reasons = offers.Length > 0 ? Ranking.Reasons(offers, pool.Count, offers[0].Candidate == best!.Candidate ? null : best) : null,
        };
    }

    /// <summary>
    /// The solution of a job that opens counter-clockwise with <paramref name="taken"/> for a bracket, and its strength and mechanism where
    /// they are known; offers and reasons are left open.
    /// </summary>
    internal static Solution Answer(Job job, Offer? taken, ProvenOffer? proof, int samples, MechanismReport? known = null)
    {
        var travel = taken?.Candidate.Travel ?? NominalTravel(job);
        var checks = taken?.Checks ?? [.. BodyChecks.Of(job.Body), .. TravelChecks.Of(job.Body, job.Vehicle, job.Preferences, travel), CandidateSearch.NoShape(job)];
        var mechanism = known ?? MechanismReport.Of(
            job, travel, taken?.Candidate.Placement, taken?.Candidate.Bracket, proof is null ? samples : MechanismReport.UsualSamples, proof?.Strength.GivePerTension);
        return new()
        {
            Job = job,
            Mechanism = mechanism,
            Strength = proof?.Strength,
            Travel = travel,
            Quadrant = QuadrantPicture.Of(job.Body.Quadrant, job.Vehicle.Cable.Fitting, travel),
            Placement = taken?.Candidate.Placement,
            Bracket = taken?.Candidate.Bracket,
            Checks = [.. checks, .. mechanism.Checks, .. proof?.Strength.Checks ?? (taken is null ? [] : StrengthChecks.NotCalculated(job))],
            Remedy = TravelRemedy.For(travel, job.Preferences.MinOverTravel),
            CandidateCount = 0,
        };
    }

    /// <summary>The travel verdict alone: what the pedal does, with the stop where the cable would want it, bracket or not.</summary>
    public static (Travel Travel, ImmutableArray<Check> Checks, TravelRemedy? Remedy) CheckTravel(Job job)
    {
        var (travel, checks, remedy) = CheckTravelTurned(job.OpeningCounterClockwise());
        return (job.Body.Turned(travel), checks, remedy);
    }

    /// <summary>The same as <see cref="CheckTravel"/> for a job that opens counter-clockwise.</summary>
    internal static (Travel Travel, ImmutableArray<Check> Checks, TravelRemedy? Remedy) CheckTravelTurned(Job job)
    {
        var travel = NominalTravel(job);
        return (travel, [.. TravelChecks.Of(job.Body, job.Vehicle, job.Preferences, travel)],
            TravelRemedy.For(travel, job.Preferences.MinOverTravel));
    }

    // Farther from the shaft (mm) than any groove reaches.
    private const double FarOff = 1000;

    private static Travel NominalTravel(Job job)
    {
        var quadrant = job.Body.Quadrant;
        var angles = LeavingAngles.Of(quadrant, job.Body.Mount.Plane.Normal, job.Preferences.MinWrap, Angle.FromDegrees(5));
        var middle = angles[angles.Count / 2];
        var placement = StopPlacement.At(
            quadrant, job.Vehicle.Cable.FreeInnerLength.Value, job.Preferences.FreePlay.Value, middle);

        // A cable too short to reach has no stop; the travel itself does not depend on the straight part, so any will do.
        var seat = placement?.Seat.XY ?? quadrant.Groove.PointWithNormal(middle) + quadrant.OuterRadius * Vector2.FromPolar(1, middle).Left;
        double freePlay = job.Preferences.FreePlay.Value, pull = job.Vehicle.Pedal.AvailablePull.Value;
        return Travel.TrySolve(quadrant, seat, freePlay, pull)
            ?? Travel.Solve(quadrant, seat + FarOff * Vector2.FromPolar(1, middle).Left, freePlay, pull);
    }

    // Nothing passes: the one with the least against it, looking in full at no more than shows which that is.
    private static Offer? LeastFaulty(IReadOnlyList<Candidate> candidates, Func<Candidate, IEnumerable<Check>> inSpace)
    {
        const int most = 40;
        Offer? best = null;
        var leastFaults = double.PositiveInfinity;
        foreach (var candidate in candidates.OrderBy(c => FaultsOf(c.QuickChecks)).ThenBy(c => c.Cost).Take(most))
        {
            if (FaultsOf(candidate.QuickChecks) >= leastFaults)
            {
                break; // The checks in space can only add to the faults.
            }

            ImmutableArray<Check> checks = [.. candidate.QuickChecks, .. inSpace(candidate)];
            var faults = FaultsOf(checks);
            if (faults < leastFaults)
            {
                (best, leastFaults) = (new(candidate, checks), faults);
            }
        }

        return best;
    }

    private static double FaultsOf(IEnumerable<Check> checks) => checks.Where(c => c.Fails).Sum(c => c.Kind switch
    {
        CheckKind.Safety => 100.0,
        CheckKind.Function => 10,
        CheckKind.Making => 10,
        _ => 0,
    });
}
