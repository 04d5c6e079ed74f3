using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Checks;

/// <summary>A bracket on slotted mount holes, at the ends of them: whoever fits it may set it there, and where the joint slips it goes there.</summary>
/// <remarks>
/// At every end the whole job is solved anew, strength included, with the adjuster set for the free play there. Of every check the worst of all positions counts, so that the verdict holds in the middle and at
/// every end.
/// </remarks>
public static class SlotChecks
{
    /// <summary>How far a stop may be off where there is no adjuster to make up for it (mm; common practice, no source).</summary>
    public const double WithoutAdjuster = 0.1;

    /// <summary>The checks at every end, null for one that no wire reaches; empty where the bracket cannot be shifted.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="bracket">The bracket in place, in the middle of its slots.</param>
    /// <param name="detail">How finely it is meshed; null where strength is not looked at.</param>
    /// <param name="rule">How the first natural frequency is judged.</param>
    public static ImmutableArray<ImmutableArray<Check>?> AtEnds(Job job, Bracket bracket, StrengthDetail? detail, FrequencyRule rule = FrequencyRule.Separation) =>
        SlotPositions.Ends(bracket) is { IsEmpty: false } ends
            ? [.. ends.Select(end => At(job, end, detail, rule) is { } checks ? checks.Add(Slid(job, bracket, ends)) : (ImmutableArray<Check>?)null)]
            : [];

    /// <summary>Free play that is left where the bracket slides along its slots, set with the minimum free play where the wire is slackest, to where it is tautest.</summary>
    /// <remarks>Below zero the wire holds the valve open there: clamping that fails must not do that.</remarks>
    private static Check Slid(Job job, Bracket bracket, ImmutableArray<Bracket> ends)
    {
        double[] shifts = [.. ends.Prepend(bracket).Select(b => SeatedStop.Of(job, b)?.AdjusterShift ?? double.NaN)];
        return new(CheckId.SlotFreePlay, job.Preferences.FreePlay.Min - (shifts.Max() - shifts.Min()), 0);
    }

    /// <summary>The first check that a bracket fails at an end of its slots of what needs neither strength nor the whole mechanism; null where none does. Quick.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="bracket">The bracket in place, in the middle of its slots.</param>
    /// <param name="isGoodEnough">Whether a check does not rule it out.</param>
    internal static Check? Obstacle(Job job, Bracket bracket, Func<Check, bool> isGoodEnough)
    {
        var ends = SlotPositions.Ends(bracket);
        if (!ends.IsEmpty && Slid(job, bracket, ends) is var slid && !isGoodEnough(slid))
        {
            return slid with { IsAtSlotEnd = true };
        }

        foreach (var end in ends)
        {
            if ((Stand(job, end) is not var (placement, travel) ? Unreached : InPlace(job, end, placement, travel).FirstOrDefault(c => !isGoodEnough(c))) is { } failed)
            {
                return failed with { IsAtSlotEnd = true };
            }
        }

        return null;
    }

    /// <summary>Checks made in the middle of the slots, each at its worst position.</summary>
    /// <param name="middle">The checks in the middle.</param>
    /// <param name="ends">What <see cref="AtEnds"/> gave.</param>
    public static ImmutableArray<Check> Worst(IEnumerable<Check> middle, ImmutableArray<ImmutableArray<Check>?> ends)
    {
        if (ends.IsDefaultOrEmpty)
        {
            return [.. middle];
        }

        Check[] inMiddle = [.. middle];
        List<Check> worst = [.. inMiddle];
        foreach (var check in ends.SelectMany(e => e ?? [Unreached]).Select(c => c with { IsAtSlotEnd = true }))
        {
            var at = worst.FindIndex(w => w.Code == check.Code && w.Duty == check.Duty);
            if (at < 0)
            {
                // What is asked at the ends alone is met in the middle by design.
                worst.Add(check with { PassesInMiddleOfSlots = !check.Passes });
            }
            else if (IsWorse(check, worst[at]))
            {
                worst[at] = check with { PassesInMiddleOfSlots = !check.Passes && (at >= inMiddle.Length || inMiddle[at].Passes) };
            }
        }

        // Where the wire reaches every end, that is said too.
        return ends.All(e => e is not null) ? [.. worst, new(CheckId.SlotEnds, 1, 1)] : [.. worst];
    }

    private static Check Unreached => new(CheckId.SlotEnds, 0, 1);

    private static bool IsWorse(Check one, Check other) => Rank(one) != Rank(other) ? Rank(one) < Rank(other)
        : double.IsNaN(other.Value) ? false : double.IsNaN(one.Value) || one.Margin < other.Margin - Geometry.Tolerance.LimitSlack;

    private static int Rank(Check check) => check.State switch { CheckState.Fails => 0, CheckState.NotKnown => 1, _ => 2 };

    private static (StopPlacement Placement, Travel Travel)? Stand(Job job, Bracket end) => SeatedStop.Of(job, end) is { } placement
        && Travel.TrySolve(job.Body.Quadrant, placement.Seat.XY, placement.FreePlay, job.Vehicle.Pedal.AvailablePull.Value) is { } travel ? (placement, travel) : null;

    private static ImmutableArray<Check>? At(Job job, Bracket end, StrengthDetail? detail, FrequencyRule rule)
    {
        if (Stand(job, end) is not var (placement, travel))
        {
            return null;
        }

        var strength = StrengthStudy.OfSome(job, travel, placement, end, detail, rule);
        return
        [
            .. InPlace(job, end, placement, travel),
            .. MechanismReport.Of(job, travel, placement, end, MechanismReport.UsualSamples, strength?.GivePerTension).Checks,
            .. strength?.Checks ?? [],
        ];
    }

    private static IEnumerable<Check> InPlace(Job job, Bracket end, StopPlacement placement, Travel travel)
    {
        var cable = job.Vehicle.Cable;
        IEnumerable<Check> own =
        [
            .. TravelChecks.Of(job, travel),
            .. MechanismChecks.OfPlacement(job, travel, placement),
            .. TravelChecks.OfStop(job.Vehicle, job.Preferences, travel, placement, end.Seat),
            new(CheckId.StopSquare, SeatedStop.Askew(placement, travel), cable.WanderLimit.Radians),
        ];
        if (cable.OuterEnd.AdjusterRange == 0)
        {
            own = own.Append(new(CheckId.StopPlace, Math.Abs(placement.AdjusterShift), WithoutAdjuster));
        }

        return own.Concat(BracketChecks.InSpace(end, job, placement, travel));
    }
}
