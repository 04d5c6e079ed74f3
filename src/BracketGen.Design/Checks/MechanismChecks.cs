using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Forces;
using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Throttles;
using BracketGen.Mechanism.Uncertainty;

namespace BracketGen.Design.Checks;

/// <summary>The checks of the whole mechanism: outer, forces, lost motion, sensor, and how sure all of it is.</summary>
public static class MechanismChecks
{
    /// <summary>Least probability that the valve can be made to close (our judgement, no source): one installation in a thousand may need another cable.</summary>
    public const double LeastClosing = 0.999;

    /// <summary>Least probability of what is a nuisance when it fails (our judgement, no source).</summary>
    public const double LeastWorking = 0.99;

    /// <summary>Foot force above which a pedal tires (N; common practice, no source).</summary>
    public const double MostFootForce = 60;

    /// <summary>Time in which the throttle must be closed after the foot is off (s): 49 CFR 571.124 S5.3, vehicles of 4,536 kg gross mass or less, and heavier ones; 3 s for any in the cold, at -18 °C and below (from memory).</summary>
    public const double MostClosingTime = 1, MostClosingTimeHeavy = 2, MostClosingTimeCold = 3;

    /// <summary>What depends on the stop's place alone: the side load on the outer's end, and whether the outer gets to the bulkhead.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="travel">The travel.</param>
    /// <param name="placement">Where the stop is.</param>
    public static IEnumerable<Check> OfPlacement(Job job, Travel travel, StopPlacement placement)
    {
        var cable = job.Vehicle.Cable;
        yield return SideLoad(cable, travel);
        foreach (var check in ObstacleChecks.OfWire(job, travel, placement))
        {
            yield return check;
        }

        if (job.Bulkhead is null)
        {
            yield break;
        }

        var way = OuterWay.Tightest(job, placement);
        yield return new(CheckId.OuterRoute, way is null ? 0 : 1, 1);
        if (way is not null && cable.OuterLength is { } length)
        {
            yield return new(CheckId.OuterLength, length.Min, way.Length);
        }
    }

    /// <summary>The check of the wire's change of direction at the outer's end.</summary>
    public static Check SideLoad(Cable cable, Travel travel) => new(CheckId.OuterSideLoad, travel.Wander.Radians, cable.WanderLimit.Radians);

    /// <summary>The checks that need the whole report.</summary>
    /// <param name="job">The job.</param>
    /// <param name="report">The report.</param>
    public static IEnumerable<Check> Of(Job job, MechanismReport report)
    {
        var cable = job.Vehicle.Cable;
        yield return new(CheckId.OuterLine, job.Bulkhead is null ? 0 : 1, 1);
        if (report.Outer is { } outer)
        {
            var moved = Math.Min(outer.MinRadius, report.Movement.MinRadius ?? double.PositiveInfinity);
            yield return new(CheckId.OuterBendRadius, report.Movement.Movement.IsAssumed ? outer.MinRadius : moved, cable.MinBendRadius)
            {
                Unfavourable = report.Movement.Movement.IsAssumed ? moved : null,
            };
            yield return new(CheckId.OuterSpare, outer.IsLaid ? outer.SpareBend.Radians : double.NaN, OuterWay.MostSpareBend.Radians);
        }

        foreach (var check in Moved(report))
        {
            yield return check;
        }

        // Without a bracket its give is not known, but a bracket that gives more than wanted is not made.
        yield return new(CheckId.WideOpenLoaded, report.Loaded?.OverTravel ?? double.NaN, job.Preferences.MinOverTravel)
        {
            Unfavourable = report.BracketIsKnown ? null : report.Loaded?.OverTravel - job.Preferences.MaxGive,
            Doubt = Doubt.NoBracket,
        };
        foreach (var check in Forces(report, job.Body.Springs, job.Vehicle.IsHeavy).Concat(Probabilities(job, report)).Concat(OfMount(job.Body.Mount)).Concat(OtherWireChecks.OfForces(job, report)))
        {
            yield return check;
        }

        if (report.Sensor is { } sensor)
        {
            foreach (var check in OfSensor(new(sensor, job.Vehicle.Controller)))
            {
                yield return check;
            }
        }
    }

    // A movement that nobody measured fails nothing by itself: where it would, the value is that at rest, and the check is not known.
    private static IEnumerable<Check> Moved(MechanismReport report)
    {
        var movement = report.Movement;
        yield return new(CheckId.FreePlayMoving, movement.IsAssumed && movement.Left < 0 ? movement.FreePlay : movement.Left, 0)
        {
            Unfavourable = movement.IsAssumed ? movement.LeftAtWorst : null,
        };
        if (movement.Reached is { } reached)
        {
            var rests = movement.Movement.IsAssumed && report.Outer is { Problem: null };
            yield return new(CheckId.OuterReach, rests ? 1 : reached, 1) { Unfavourable = rests ? reached : null };
        }
    }

    private static IEnumerable<Check> Forces(MechanismReport report, ReturnSprings springs, bool isHeavy)
    {
        static double LeastOf(ImmutableArray<ReturnMargin> margins) => margins.IsEmpty ? double.NaN : ReturnMargin.Least(margins).Fraction;
        yield return new(CheckId.ReturnMargin, LeastOf(report.Returns), ReturnMargin.SafeFraction) { Unfavourable = report.Return?.AtWorst?.All };
        if (springs.Count > 1)
        {
            yield return new(CheckId.ReturnOneFailed, LeastOf(report.ReturnsOneFailed), 0) { Unfavourable = report.Return?.AtWorst?.OneFailed };
        }

        yield return new(CheckId.ClosingTime, report.Return?.ClosingTime ?? double.NaN, isHeavy ? MostClosingTimeHeavy : MostClosingTime) { Unfavourable = report.Return?.ClosingTimeAtWorst };
        var (still, moved) = (report.FootForces.IsEmpty ? double.NaN : report.FootForces.Max(f => f.Pressing), report.FootForceMoved ?? double.NaN);
        yield return new(CheckId.FootForce, report.Movement.Movement.IsAssumed ? still : moved, MostFootForce)
        {
            Unfavourable = report.Movement.Movement.IsAssumed ? moved : null,
        };
        if (report.Progression is { } progression)
        {
            yield return new(CheckId.Suddenness, progression.Suddenness, Progression.Sudden);
        }
    }

    /// <summary>
    /// The first check that is not good enough and would not be wherever the stop is; null where another place may do, or nobody can tell. On a round groove without a bulkhead
    /// neither pull nor forces depend on the place; but how sure it is that the wire stays in the groove, that the adjuster has enough range and that the valve
    /// closes depends on leaving angle and adjuster setting.
    /// </summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="checks">The checks of the mechanism at one place, without a bracket.</param>
    /// <param name="isGoodEnough">Whether a check does not rule a place out.</param>
    internal static Check? FailsAtEveryStop(Job job, ImmutableArray<Check> checks, Func<Check, bool> isGoodEnough) =>
        job.Body.Quadrant.Groove is CircularGroove && job.Bulkhead is null
            ? checks.FirstOrDefault(c => !isGoodEnough(c) && IsSameAtEveryStop(job, c, checks))
            : null;

    private static bool IsSameAtEveryStop(Job job, Check check, ImmutableArray<Check> checks) => check.Id switch
    {
        CheckId.FreePlayMoving or CheckId.WideOpenLoaded or CheckId.ReturnMargin or CheckId.ReturnOneFailed
            or CheckId.DeadBand or CheckId.ControllerZero or CheckId.SensorClosed or CheckId.SensorLow or CheckId.SensorHigh => true,

        // With the free play set by the adjuster only the samples whose wire runs off the groove pull otherwise. Where more of them do than may, the place fails for that.
        CheckId.ProbabilityWideOpen => job.Vehicle.Cable.OuterEnd.AdjusterRange > 0
            && check.Value + (1 - checks.First(c => c.Id == CheckId.ProbabilityInGroove).Value) + (1 - LeastClosing) < check.Limit,
        _ => false,
    };

    /// <summary>A requirement of the travel with the check that holds its probability against a limit.</summary>
    internal static (CheckId Id, double Limit) CheckOf(TravelRequirement requirement) => requirement switch
    {
        TravelRequirement.Closes => (CheckId.ProbabilityCloses, LeastClosing),
        TravelRequirement.OpensFully => (CheckId.ProbabilityWideOpen, LeastWorking),
        TravelRequirement.WithinAdjuster => (CheckId.ProbabilityAdjuster, LeastWorking),
        _ => (CheckId.ProbabilityInGroove, LeastClosing),
    };

    private static IEnumerable<Check> Probabilities(Job job, MechanismReport report)
    {
        TravelRequirement[] all = report.AdjusterRange > 0
            ? [TravelRequirement.Closes, TravelRequirement.OpensFully, TravelRequirement.WithinAdjuster, TravelRequirement.InGroove]
            : [TravelRequirement.Closes, TravelRequirement.OpensFully, TravelRequirement.InGroove];
        foreach (var requirement in all)
        {
            var (id, limit) = CheckOf(requirement);
            if (report.Uncertainty is not { } sure)
            {
                yield return new(id, double.NaN, limit);
                continue;
            }

            var found = sure.ProbabilityOf(requirement);
            yield return new(id, found.Value, limit)
            {
                Unfavourable = report.BracketIsKnown ? found.LowerBound : WithoutBracket(job, report, sure, requirement),
                Doubt = report.BracketIsKnown ? Doubt.Sampling : Doubt.NoBracket,
                Measure = found.LowerBound < limit ? report.MeasureFor(requirement, limit) : null,
            };
        }

        if (report is { Uncertainty: { } free, BracketIsKnown: true })
        {
            var wanted = job.Preferences.FreePlay;
            yield return new(CheckId.FreePlayMost, free.MostFreePlay(LeastWorking), Math.Max(MostTimesWanted * wanted.Value, wanted.Max));
        }
    }

    /// <summary>How many times the free play wanted may be left (our judgement, no source): more is slack in which the wire can leave the groove.</summary>
    public const double MostTimesWanted = 2;

    // What the bracket's tolerances do is not known before there is one. On a round groove they do not change the pull, and a bracket
    // that gives more than wanted is not made.
    private static double WithoutBracket(Job job, MechanismReport report, TravelUncertainty sure, TravelRequirement requirement) =>
        requirement == TravelRequirement.OpensFully && report.AdjusterRange > 0 && job.Body.Quadrant.Groove is CircularGroove
            ? sure.ProbabilityOf(requirement, job.Preferences.MaxGive).LowerBound
            : double.NaN;

    // Two holes that are measured with ± may be so far from where they seem that the bolts do not go in.
    private static IEnumerable<Check> OfMount(MountFace mount)
    {
        // Between the faces there is a bend besides: see SecondFaceChecks.
        var holes = mount.OwnHoles;
        if (holes.Length < 2 || holes.All(h => h.PlusMinus.IsExact))
        {
            yield break;
        }

        yield return holes.SelectMany((a, i) => holes.Skip(i + 1).Select(b =>
        {
            var along = (b.At - a.At).Unit;
            return new Check(CheckId.MountHolesFit, a.PlusMinus.Along(along) + b.PlusMinus.Along(along), a.Play + b.Play);
        })).MinBy(c => c.Margin)!;
    }

    /// <summary>The checks of a sensor as it will be set. Where nobody knows how far its slot lets it turn, it may have to stay as it was read.</summary>
    public static IEnumerable<Check> OfSensor(SensorSetting setting)
    {
        var (read, set, controller) = (setting.Sensor, setting.Set, setting.Controller);
        Check Judged(CheckId id, Func<PositionSensor, double> value, double limit) =>
            new(id, value(set), limit) { Unfavourable = read.Slot is null ? value(read) : null };
        if (controller.ZeroVolts is { } zero)
        {
            yield return Judged(CheckId.DeadBand, s => s.DeadBand(zero).Radians, PositionSensor.MaxDeadBand.Radians);
            yield return Judged(CheckId.ControllerZero, s => s.TakenForOpen(zero).Radians, PositionSensor.MaxDeadBand.Radians);
        }
        else if (setting.Window is { } window)
        {
            yield return Judged(CheckId.SensorClosed, s => Math.Abs(s.ClosedVolts - setting.Target), window);
        }

        yield return Judged(CheckId.SensorLow, s => Math.Min(s.ClosedVolts, s.OpenVolts), Math.Max(read.MinVolts, controller.MinVolts));
        yield return Judged(CheckId.SensorHigh, s => Math.Max(s.ClosedVolts, s.OpenVolts), Math.Min(read.MaxVolts, controller.MaxVolts));
    }
}
