using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Forces;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Pedals;
using BracketGen.Mechanism.Throttles;

namespace BracketGen.Design.Checks;

/// <summary>Works out what every single failure does to the return.</summary>
/// <param name="job">The job.</param>
/// <param name="springs">Its springs, as weak as their ± allow.</param>
/// <param name="usual">Everything as measured.</param>
/// <param name="worst">All that is assumed at its worst.</param>
/// <param name="times">Closing times.</param>
internal sealed class FailureTable(
    Job job, ReturnSprings springs,
    FailureTable.Case usual, FailureTable.Case worst, ReturnStudy.Times times)
{
    /// <summary>What hinders the return, the travel and the margins under it.</summary>
    public sealed record Case(ReturnStudy.Hindrance By, LoadedTravel Travel, ImmutableArray<ReturnMargin> Margins, bool IsWorst);

    public IEnumerable<SingleFailure> Rows()
    {
        // Nothing pulls at the quadrant any more, or the wire has become slack: springs against the shaft alone.
        SingleFailure WireGone(FailureId id) => Row(id, FailureRule.SingleSeverance, c => [.. c.Margins.Select(m => m with { Needed = c.By.ShaftDrag })], hasPedal: false);
        yield return WireGone(FailureId.WireAtQuadrant);

        // The wire is drawn back through the outer without the pedal.
        yield return Row(
            FailureId.WireAtPedal, FailureRule.SingleSeverance,
            c => [.. c.Margins.Select(m => m with { Needed = m.Arm * c.By.Friction.ClosingDrag + c.By.ShaftDrag })], hasPedal: false);
        yield return WireGone(FailureId.FittingOutOfPocket);
        yield return WireGone(FailureId.OuterOffStop);
        yield return WireGone(FailureId.OuterEndLoose);
        foreach (var row in Springs())
        {
            yield return row;
        }

        yield return PedalSpring();
        yield return new(FailureId.BracketBolt, FailureRule.SingleSeverance, FailureAnswer.NotLookedAt);
        yield return new(FailureId.StrandInOuter, FailureRule.Ours, FailureAnswer.NotLookedAt);
        yield return Row(
            FailureId.OuterSoftened, FailureRule.Ours,
            c => [.. c.Margins.Select(m => m with { Needed = m.Needed + (ReturnStudy.SoftenedDrag - 1) * m.Arm * c.By.Friction.ClosingDrag })], hasPedal: true);
    }

    private IEnumerable<SingleFailure> Springs()
    {
        if (springs.Each.Length > 1)
        {
            for (var i = 0; i < springs.Each.Length; i++)
            {
                var left = springs.Without(i);
                yield return Row(FailureId.ReturnSpring, FailureRule.EnergySource, c => ReturnStudy.With(c.Margins, left), hasPedal: true) with { Number = i + 1 };
            }

            yield break;
        }

        var (equal, unequal) = (springs.OneFailed(), springs.OneFailed(ReturnSprings.StrongestAtWorst));
        yield return Row(FailureId.ReturnSpring, FailureRule.EnergySource, c => ReturnStudy.With(c.Margins, c.IsWorst ? unequal : equal), hasPedal: true);
    }

    // A pedal whose spring is gone pulls with its own weight, which nobody measured.
    private SingleFailure PedalSpring() => job.Vehicle.Pedal.PadLoad.Value >= 0
        ? new(FailureId.PedalSpring, FailureRule.Ours, FailureAnswer.NotFitted)
        : Row(
            FailureId.PedalSpring, FailureRule.Ours,
            c => ReturnMargin.Over(c.Travel, springs, c.By.Pedal with { PadLoad = Pedal.PadLoadAtWorst }, c.By.ShaftDrag), hasPedal: true);

    private SingleFailure Row(
        FailureId id, FailureRule rule, Func<Case, ImmutableArray<ReturnMargin>> after, bool hasPedal)
    {
        var margins = after(usual);
        var (left, atWorst) = (margins.Min(m => m.Left), after(worst).Min(m => m.Left));
        var time = hasPedal ? times.WithPedal(margins) : times.WithoutPedal(margins);
        return new(id, rule, left <= 0 ? FailureAnswer.Hangs : atWorst <= 0 ? FailureAnswer.NotKnown : FailureAnswer.Closes)
        {
            TorqueLeft = left,
            ClosingTime = double.IsFinite(time) ? time : null,
        };
    }
}
