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
    /// <summary>
    /// Solves <paramref name="job"/>: the bracket that was chosen for it, or the cheapest that passes every check; where none passes, the one nearest to it.
    /// </summary>
    /// <param name="job">The job.</param>
    /// <param name="effort">How far the search goes; null for all brackets worth offering, without their strength, which is then not known.</param>
    /// <param name="choice">Number of the offer to take, 1 for the best; the last one where there are not so many. Counts only where the job has none chosen.</param>
    public static Solution Solve(Job job, SearchEffort? effort = null, int choice = 1) =>
        AsMeasured(job, SolveTurned(job.OpeningCounterClockwise(), effort ?? SearchEffort.WithoutStrength with { WithOthers = true }, choice));

    /// <summary>A solution of <paramref name="job"/> opening counter-clockwise, in the frame as measured.</summary>
    internal static Solution AsMeasured(Job job, Solution turned) => job.Body.Turned(turned) with { Job = job };

    /// <summary>The same as <see cref="Solve"/> for a job that opens counter-clockwise.</summary>
    internal static Solution SolveTurned(Job job, SearchEffort effort, int choice = 1)
    {
        var outcome = BracketSearch.Of(job, effort);
        ImmutableArray<Finding> found = outcome.Best is { } best ? [best, .. outcome.Others] : [];
        if (job.Chosen is { } chosen && ChosenSearch.Again(job, chosen) is { } again)
        {
            // As it was chosen, whatever it comes to today; if it is among the offers, the very same.
            var at = found.ToList().FindIndex(f => ChosenSearch.IsSame(job, f.Candidate, again));
            var finding = at >= 0 ? found[at] : new CandidateJudge(job, effort.Strength, rule: outcome.FrequencyRule).InFull(again);
            return Answer(job, finding, outcome, found) with { Choice = at + 1, ChosenIs = finding.IsGoodEnough ? ChosenState.Passes : ChosenState.Fails };
        }

        var number = Math.Clamp(choice, 1, Math.Max(1, found.Length));
        return Answer(job, found.IsEmpty ? outcome.Nearest : found[number - 1], outcome, found) with
        {
            Choice = number,
            ChosenIs = job.Chosen is null ? ChosenState.None : ChosenState.CannotBeMade,
        };
    }

    private static Solution Answer(Job job, Finding? taken, SearchOutcome outcome, ImmutableArray<Finding> found) => Answer(job, taken) with
    {
        Search = outcome,
        Offers = [.. found.Select(f => f.Offer!)],
        Choices = [.. found.Select(f => ChosenSearch.Of(job, f.Candidate))],
        Reasons = found.IsEmpty ? null : Ranking.Reasons(outcome),
    };

    /// <summary>The solution of a job that opens counter-clockwise with what was found of one bracket; offers and reasons are left open.</summary>
    internal static Solution Answer(Job job, Finding? taken)
    {
        var travel = taken?.Candidate.Travel ?? NominalTravel(job);
        var checks = taken?.Offer!.Checks ?? [.. BodyChecks.Of(job.Body), .. TravelChecks.Of(job, travel), CandidateSearch.NoShape(job), .. CandidateSearch.NoSecondFlange(job) is { } missing ? (Check[])[missing] : []];
        var mechanism = taken?.Mechanism ?? MechanismReport.Of(job, travel, null, null);
        return new()
        {
            Job = job,
            Mechanism = mechanism,
            Strength = taken?.Strength,
            Travel = travel,
            Quadrant = QuadrantPicture.Of(job.Body.Quadrant, job.Vehicle.Cable.Fitting, travel),
            Placement = taken?.Candidate.Placement,
            Bracket = taken?.Candidate.Bracket,
            Taken = taken is null ? null : ChosenSearch.Of(job, taken.Candidate),
            Checks = SlotChecks.Worst(
                [.. checks, .. mechanism.Checks, .. taken?.Strength?.Checks ?? (taken is null ? [] : StrengthChecks.NotCalculated(job, taken.Candidate.Bracket))],
                taken?.AtEnds ?? []),
        };
    }

    /// <summary>The travel verdict alone: what the pedal does, with the stop where the cable would want it, bracket or not.</summary>
    public static (Travel Travel, ImmutableArray<Check> Checks) CheckTravel(Job job)
    {
        var (travel, checks) = CheckTravelTurned(job.OpeningCounterClockwise());
        return (job.Body.Turned(travel), checks);
    }

    /// <summary>The same as <see cref="CheckTravel"/> for a job that opens counter-clockwise.</summary>
    internal static (Travel Travel, ImmutableArray<Check> Checks) CheckTravelTurned(Job job)
    {
        var travel = NominalTravel(job);
        return (travel, [.. TravelChecks.Of(job, travel)]);
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
}
