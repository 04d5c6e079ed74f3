using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.SheetMetal;

namespace BracketGen.Design;

/// <summary>From a job to a verified bracket.</summary>
public static class Designer
{
    /// <summary>Solves <paramref name="job"/>: the best bracket that passes every check, or the one that fails least.</summary>
    public static Solution Solve(Job job)
    {
        var body = job.Body.OpeningCounterClockwise();
        var mirrored = job.Body.Opens == OpeningSense.Clockwise;
        var candidates = CandidateSearch.All(job, body);
        var best = Pick(job, body, candidates);
        var travel = best?.Candidate.Travel ?? NominalTravel(job, body);
        var checks = best?.Checks ?? [.. TravelChecks.Of(body, job.Vehicle, job.Preferences, travel), CandidateSearch.NoShape(job, body)];
        var mechanism = MechanismReport.Of(job, travel, best?.Candidate.Placement, best?.Candidate.Bracket);
        return new()
        {
            Job = job,
            Mechanism = mechanism,
            Travel = travel,
            Placement = mirrored ? best?.Candidate.Placement.Mirrored() : best?.Candidate.Placement,
            Bracket = mirrored ? best?.Candidate.Bracket.Mirrored() : best?.Candidate.Bracket,
            Checks = [.. checks, .. mechanism.Checks],
            Remedy = TravelRemedy.For(travel, job.Preferences.OverTravelReserve),
            CandidateCount = candidates.Count,
        };
    }

    /// <summary>The travel verdict alone: what the pedal does, with the stop where the cable would want it, bracket or not.</summary>
    public static (Travel Travel, ImmutableArray<Check> Checks, TravelRemedy? Remedy) CheckTravel(Job job)
    {
        var body = job.Body.OpeningCounterClockwise();
        var travel = NominalTravel(job, body);
        return (travel, [.. TravelChecks.Of(body, job.Vehicle, job.Preferences, travel)],
            TravelRemedy.For(travel, job.Preferences.OverTravelReserve));
    }

    private static Travel NominalTravel(Job job, ThrottleBody body)
    {
        var quadrant = body.Quadrant;
        var angles = LeavingAngles.Of(quadrant, body.Mount.Plane.Normal, job.Preferences.LeastWrap, Angle.FromDegrees(5));
        var middle = angles[angles.Count / 2];
        var placement = StopPlacement.At(
            quadrant, job.Vehicle.Cable.FreeInnerLength.Value, job.Preferences.FreePlay.Value, middle);

        // A cable too short to reach has no stop; the travel itself does not depend on the straight part, so any will do.
        var seat = placement?.Seat.XY ?? quadrant.Groove.PointWithNormal(middle) + quadrant.OuterRadius * Vector2.FromPolar(1, middle).Left;
        return Travel.Solve(quadrant, seat, job.Preferences.FreePlay.Value, job.Vehicle.Pedal.AvailablePull.Value);
    }

    private static (Candidate Candidate, ImmutableArray<Check> Checks)? Pick(
        Job job, ThrottleBody body, IReadOnlyList<Candidate> candidates)
    {
        (Candidate Candidate, ImmutableArray<Check> Checks)? best = null;
        var leastFaults = double.PositiveInfinity;
        foreach (var candidate in candidates)
        {
            var quickFaults = FaultsOf(candidate.QuickChecks);
            if (quickFaults >= leastFaults)
            {
                continue; // The checks in space can only add to the faults.
            }

            ImmutableArray<Check> checks =
            [
                .. candidate.QuickChecks,
                .. BracketChecks.InSpace(candidate.Bracket, body, job.Vehicle.Cable, job.Preferences),
            ];
            var faults = FaultsOf(checks);
            if (faults < leastFaults)
            {
                (best, leastFaults) = ((candidate, checks), faults);
                if (faults == 0)
                {
                    break;
                }
            }
        }

        return best;
    }

    private static double FaultsOf(IEnumerable<Check> checks) => checks.Where(c => !c.Passes).Sum(c => c.Kind switch
    {
        CheckKind.Safety => 100.0,
        CheckKind.Function => 10,
        CheckKind.Making => 10,
        _ => 0,
    });
}
