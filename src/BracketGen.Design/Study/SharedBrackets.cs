using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Study;

/// <summary>Brackets for a job besides its best, that may serve other jobs too.</summary>
/// <remarks>They pass the quick checks of the job they are made from; whether they pass all on any job is for <see cref="GivenBracket"/> to say.</remarks>
public static class SharedBrackets
{
    // So many by cost are judged for the next best, whether they pass or not.
    private const int MostLookedAt = 60;

    /// <summary>A bracket's shape made again with its seat moved along the wire: what it would be if the cable were so much longer. Null where it cannot be made.</summary>
    /// <param name="job">The job that it was made for.</param>
    /// <param name="bracket">The bracket, throttle frame as measured.</param>
    /// <param name="longer">How far the seat moves away from the throttle shaft along the wire (mm).</param>
    public static Bracket? Moved(Job job, Bracket bracket, double longer)
    {
        var turned = job.OpeningCounterClockwise();
        var placed = job.Body.Turned(bracket);
        if (SeatedStop.Of(turned, placed) is not { } placement
            || Travel.TrySolve(turned.Body.Quadrant, placement.Seat.XY, placement.FreePlay, turned.Vehicle.Pedal.AvailablePull.Value) is not { } travel)
        {
            return null;
        }

        var chosen = ChosenSearch.Of(turned, new(placement, travel, placed, 0, 0, () => []));
        return ChosenSearch.Again(Longer(turned, longer), chosen) is { } again && CandidateSearch.Promising(again) ? job.Body.Turned(again.Bracket) : null;
    }

    /// <summary>The cheapest brackets that pass all but strength, which is not looked at; throttle frame as measured.</summary>
    /// <param name="job">The job.</param>
    /// <param name="longer">How much longer its cable is taken to be (mm).</param>
    /// <param name="bends">The most bends.</param>
    /// <param name="most">How many at the most.</param>
    public static ImmutableArray<Bracket> Cheapest(Job job, double longer, int bends, int most)
    {
        var turned = Longer(job.OpeningCounterClockwise(), longer);
        var judge = new CandidateJudge(turned, null);
        return
        [
            .. new CandidatePool(turned).ByCost((0, bends)).Take(MostLookedAt).Select(judge.Judge).Where(f => f.Passes).Take(most)
                .Select(f => job.Body.Turned(f.Candidate.Bracket)),
        ];
    }

    private static Job Longer(Job job, double longer)
    {
        var cable = job.Vehicle.Cable;
        return job with { Vehicle = job.Vehicle with { Cable = cable with { FreeInnerLength = cable.FreeInnerLength with { Value = cable.FreeInnerLength.Value + longer } } } };
    }
}
