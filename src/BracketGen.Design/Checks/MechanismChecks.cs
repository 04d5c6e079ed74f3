using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Forces;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Throttles;

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

    /// <summary>How far the valve may open before a controller with a fixed zero sees it (common practice, no source).</summary>
    public static readonly Angle MostDeadBand = Angle.FromDegrees(0.5);

    /// <summary>What depends on the stop's place alone: the side load on the outer's end, and whether the outer gets to the bulkhead.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    /// <param name="travel">The travel.</param>
    /// <param name="placement">Where the stop is.</param>
    public static IEnumerable<Check> OfPlacement(Job job, Travel travel, StopPlacement placement)
    {
        var cable = job.Vehicle.Cable;
        yield return SideLoad(cable, travel);
        if (job.Bulkhead is null)
        {
            yield break;
        }

        var way = OuterWay.Tightest(job, placement);
        yield return new(CheckId.OuterRoute, way is null ? 0 : 1, 1);
        if (way is not null && cable.OuterLength is { } length)
        {
            yield return new(CheckId.OuterLength, length, way.Length);
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
        if (report.Outer?.Route is { } route)
        {
            yield return new(CheckId.OuterBendRadius, route.Radius, cable.MinBendRadius);
        }

        yield return new(CheckId.WideOpenLoaded, report.Loaded?.OverTravel ?? double.NaN, job.Preferences.MinOverTravel);
        foreach (var check in Forces(report, job.Body.Springs, job.Vehicle.IsHeavy).Concat(Probabilities(report)))
        {
            yield return check;
        }

        if (report.Sensor is { } sensor)
        {
            foreach (var check in OfSensor(sensor, job.Vehicle.Controller))
            {
                yield return check;
            }
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
        yield return new(CheckId.FootForce, report.FootForces.IsEmpty ? double.NaN : report.FootForces.Max(f => f.Pressing), MostFootForce);
        if (report.Progression is { } progression)
        {
            yield return new(CheckId.Suddenness, progression.Suddenness, Progression.Sudden);
        }
    }

    private static IEnumerable<Check> Probabilities(MechanismReport report)
    {
        var sure = report.Uncertainty;
        yield return new(CheckId.ProbabilityCloses, sure is null ? double.NaN : report.Closes.Value, LeastClosing) { Subject = report.MeasureAgain };
        yield return new(CheckId.ProbabilityWideOpen, sure?.ReachesWideOpen.Value ?? double.NaN, LeastWorking) { Subject = report.MeasureAgain };
        if (report.AdjusterRange > 0)
        {
            yield return new(CheckId.ProbabilityAdjuster, sure?.WithinAdjuster.Value ?? double.NaN, LeastWorking) { Subject = report.MeasureAgain };
        }
    }

    private static IEnumerable<Check> OfSensor(PositionSensor sensor, Controller controller)
    {
        if (controller.ZeroVolts is { } zero)
        {
            yield return new(CheckId.DeadBand, sensor.DeadBand(zero).Radians, MostDeadBand.Radians);
        }
        else if (sensor.VoltsPerAngle > 0)
        {
            yield return new(CheckId.SensorClosed, sensor.ClosedVolts, PositionSensor.LeastWhereLearned);
        }

        yield return new(CheckId.SensorLow, Math.Min(sensor.ClosedVolts, sensor.OpenVolts), controller.MinVolts);
        yield return new(CheckId.SensorHigh, Math.Max(sensor.ClosedVolts, sensor.OpenVolts), controller.MaxVolts);
    }
}
