using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.Units;

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

    /// <summary>How far the valve may open before a controller with a fixed zero sees it (common practice, no source).</summary>
    public static readonly Angle MostDeadBand = Angle.FromDegrees(0.5);

    /// <summary>What depends on the stop's place alone: the side load on the outer's end, and whether the outer gets to the bulkhead.</summary>
    /// <param name="job">The job.</param>
    /// <param name="travel">The travel.</param>
    /// <param name="placement">Where the stop is, for the body opening counter-clockwise.</param>
    public static IEnumerable<Check> OfPlacement(Job job, Travel travel, StopPlacement placement)
    {
        var cable = job.Vehicle.Cable;
        yield return SideLoad(cable, travel);
        if (job.Bulkhead is null)
        {
            yield break;
        }

        var way = OuterWay.Tightest(job, AsMeasured(job, placement));
        yield return new(
            "outer-route", "Ways for the outer with its least bend radius", CheckKind.Function, Quantity.Number,
            way is null ? 0 : 1, Bound.AtLeast, 1, Sources.Geometry,
            "The outer must be bent tighter than it stands to get from the stop to the bulkhead: it kinks, and the wire sticks in it. Let it leave in another direction, or move the bulkhead's exit.");
        if (way is not null && cable.OuterLength is { } length)
        {
            yield return new(
                "outer-length", "Outer for the shortest way to the bulkhead", CheckKind.Function, Quantity.Length,
                length, Bound.AtLeast, way.Length, Sources.Profile,
                "The outer is too short to get from the stop to the bulkhead. A longer cable is needed.");
        }
    }

    /// <summary>The check of the wire's change of direction at the outer's end.</summary>
    public static Check SideLoad(Cable cable, Travel travel) => new(
        "outer-side-load", "Change of the wire's direction at the outer's end", CheckKind.Function, Quantity.Angle,
        travel.Wander.Radians, Bound.AtMost, cable.WanderLimit, Sources.Profile,
        "The wire pulls sideways at the outer's end: it wears through the liner and rubs. More free wire between quadrant and stop makes the change smaller.");

    /// <summary>The checks that need the whole report.</summary>
    /// <param name="job">The job.</param>
    /// <param name="report">The report.</param>
    public static IEnumerable<Check> Of(Job job, MechanismReport report)
    {
        var cable = job.Vehicle.Cable;
        if (report.Outer?.Route is { } route)
        {
            yield return new(
                "outer-bend-radius", "Gentlest bend radius of the outer on its way", CheckKind.Function, Quantity.Length,
                route.Radius, Bound.AtLeast, cable.MinBendRadius, Sources.Profile,
                "The outer is bent tighter than it stands.");
        }

        if (report.Loaded is { } loaded)
        {
            yield return new(
                "wide-open-loaded", "Pull left at the floor, lost motion taken off", CheckKind.Function, Quantity.Length,
                loaded.OverTravel, Bound.AtLeast, job.Preferences.MinOverTravel, Sources.Preference,
                "Wire stretch and the give of outer and bracket use up what was left at the floor: the valve does not surely open fully.");
            foreach (var check in Forces(job, report))
            {
                yield return check;
            }
        }

        if (report.Uncertainty is { } sure)
        {
            foreach (var check in Probabilities(report, sure))
            {
                yield return check;
            }
        }

        if (report.Sensor is { } sensor)
        {
            foreach (var check in OfSensor(sensor, job.Vehicle.Controller))
            {
                yield return check;
            }
        }
    }

    private static IEnumerable<Check> Forces(Job job, MechanismReport report)
    {
        yield return new(
            "return-margin", "Part of the springs' torque left to close the valve, least over the sweep", CheckKind.Safety, Quantity.Fraction,
            ReturnMargin.Least(report.Returns).Fraction, Bound.AtLeast, ReturnMargin.SafeFraction, Sources.CommonPractice,
            "Friction in the outer and the pedal's weight eat up the springs: the valve returns slowly or hangs open. Ease the outer's bends, give the pedal a spring of its own, or fit stronger return springs.");
        if (!report.ReturnsOneFailed.IsEmpty)
        {
            yield return new(
                "return-one-failed", "The same with one return spring broken", CheckKind.Safety, Quantity.Fraction,
                ReturnMargin.Least(report.ReturnsOneFailed).Fraction, Bound.AtLeast, 0, Sources.TwoSprings,
                "With one spring broken the other does not close the valve against friction and pedal. Each must do it alone.");
        }

        yield return new(
            "foot-force", "Largest foot force, pedal going down", CheckKind.Advice, Quantity.Force,
            report.FootForces.Max(f => f.Pressing), Bound.AtMost, MostFootForce, Sources.CommonPractice,
            "The pedal is heavy under the foot.");
        if (report.Progression is { } progression)
        {
            yield return new(
                "suddenness", "Flow area gained by the first tenth of the pedal, over its share", CheckKind.Advice, Quantity.Number,
                progression.Suddenness, Bound.AtMost, Progression.Sudden, Sources.CommonPractice,
                "The engine comes off idle suddenly and is hard to drive slowly. A quadrant that starts with a larger radius is gentler.");
        }
    }

    private static IEnumerable<Check> Probabilities(MechanismReport report, TravelUncertainty sure)
    {
        yield return new(
            "probability-closes", "Probability that the valve can be made to close", CheckKind.Safety, Quantity.Fraction,
            report.Closes.Value, Bound.AtLeast, LeastClosing, Sources.Judgement,
            $"As well as things were measured, the wire may be too short to let the valve close. Measure again: {report.MeasureAgain}.");
        yield return new(
            "probability-wide-open", "Probability that the valve opens fully", CheckKind.Function, Quantity.Fraction,
            sure.ReachesWideOpen.Value, Bound.AtLeast, LeastWorking, Sources.Judgement,
            $"As well as things were measured, the valve may not open fully. Measure again: {report.MeasureAgain}.");
        if (report.AdjusterRange > 0)
        {
            yield return new(
                "probability-adjuster", "Probability that the adjuster can set the free play", CheckKind.Function, Quantity.Fraction,
                sure.WithinAdjuster.Value, Bound.AtLeast, LeastWorking, Sources.Judgement,
                $"As well as things were measured, the adjuster may come to its end before the free play is right. Measure again: {report.MeasureAgain}.");
        }
    }

    private static IEnumerable<Check> OfSensor(PositionSensor sensor, Controller controller)
    {
        if (controller.ZeroVolts is { } zero)
        {
            yield return new(
                "dead-band", "Opening before the controller sees the valve move", CheckKind.Function, Quantity.Angle,
                sensor.DeadBand(zero).Radians, Bound.AtMost, MostDeadBand.Radians, Sources.CommonPractice,
                "The engine does not answer the first part of the opening. Turn the sensor until it reads the controller's zero on the closed stop.");
        }
        else if (sensor.VoltsPerAngle > 0)
        {
            yield return new(
                "sensor-closed", "Sensor on the closed stop", CheckKind.Function, Quantity.Voltage,
                sensor.ClosedVolts, Bound.AtLeast, PositionSensor.LeastWhereLearned, Sources.CommonPractice,
                "The controller may take the closed valve for a broken wire. Set the sensor to about 0.5 V.");
        }

        yield return new(
            "sensor-least", "Sensor's smallest reading", CheckKind.Function, Quantity.Voltage,
            Math.Min(sensor.ClosedVolts, sensor.OpenVolts), Bound.AtLeast, controller.MinVolts, Sources.Profile,
            "The controller takes the reading for a broken wire.");
        yield return new(
            "sensor-most", "Sensor's largest reading", CheckKind.Function, Quantity.Voltage,
            Math.Max(sensor.ClosedVolts, sensor.OpenVolts), Bound.AtMost, controller.MaxVolts, Sources.Profile,
            "The controller takes the reading for a short circuit.");
    }

    private static StopPlacement AsMeasured(Job job, StopPlacement placement) =>
        job.Body.Opens == OpeningSense.Clockwise ? placement.Mirrored() : placement;
}
