using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Throttles;

namespace BracketGen.Mechanism.Fitted;

/// <summary>What the readings taken after fitting mean.</summary>
/// <remarks>
/// Order: does it close, is the free play right, does the pedal go down, does it open, what does the sensor read. Taking up slack by x
/// gives the pedal x more pull at the valve, so the adjuster can correct a missing opening only with free play that is not needed.
/// </remarks>
public static class FittedVerdict
{
    /// <summary>The findings, most severe first, otherwise in the order a person would check.</summary>
    /// <param name="readings">What was read.</param>
    /// <param name="expected">What it is compared with.</param>
    public static ImmutableArray<Finding> Of(FittedReadings readings, FittedExpectation expected) =>
        [.. new[] { Closing(readings, expected), Slack(readings, expected), Floor(readings, expected), Opening(readings, expected), Zero(readings, expected) }
            .OfType<Finding>().OrderByDescending(f => f.Weight)];

    private static Finding? Closing(FittedReadings readings, FittedExpectation expected)
    {
        if (readings.ClosedVolts is not { } volts || expected.Sensor is not { } sensor)
        {
            return null;
        }

        var off = sensor.Opening(volts);
        var resolution = Math.Abs(expected.VoltsResolution / sensor.VoltsPerAngle);
        return off.Radians > resolution ? new HeldOpen(volts, sensor.ClosedVolts, off) { AdjusterShift = -(PullOf(expected, off) + Wanted(expected)) }
            : off.Radians < -resolution ? new BelowClosedStop(volts, sensor.ClosedVolts)
            : new ValveCloses(volts);
    }

    private static Finding? Slack(FittedReadings readings, FittedExpectation expected)
    {
        if (readings.FreePlay is not { } slack)
        {
            return null;
        }

        var wanted = Wanted(expected);
        var shift = slack - wanted;
        return slack < expected.MinFreePlay ? new TooLittleFreePlay(slack, expected.MinFreePlay) { AdjusterShift = shift }
            : Math.Abs(shift) > 0.5 * wanted ? new FreePlayOff(slack, wanted) { AdjusterShift = shift }
            : new FreePlayRight(slack);
    }

    private static Finding? Floor(FittedReadings readings, FittedExpectation expected)
    {
        if (readings.PadTravel is not { } travel)
        {
            return null;
        }

        var stroke = expected.Pedal.FullStroke;
        return stroke - travel > expected.PadResolution
            ? new PadTravelShort(travel, stroke, expected.Pedal.Lever.FullPull - expected.Pedal.Lever.PullAt(travel))
            : travel - stroke > expected.PadResolution ? new PadTravelLong(travel, stroke)
            : new PadTravelRight(travel);
    }

    private static Finding? Opening(FittedReadings readings, FittedExpectation expected)
    {
        if (readings.FlooredVolts is not { } volts || expected.Sensor is not { } sensor)
        {
            return null;
        }

        var reached = sensor.Opening(volts);
        var missing = sensor.Rotation - reached;
        if (missing.Radians <= Math.Abs(expected.VoltsResolution / sensor.VoltsPerAngle))
        {
            return new ValveOpens(volts);
        }

        var pull = PullOf(expected, expected.Travel.Travel.Rotation) - PullOf(expected, reached);
        var inHand = (readings.FreePlay ?? Wanted(expected)) - expected.MinFreePlay;
        return new ValveStopsShort(sensor.Fraction(volts), reached, sensor.Rotation, pull, Math.Max(0, inHand), expected.MinFreePlay)
        {
            AdjusterShift = inHand >= pull ? pull : null,
        };
    }

    private static Finding? Zero(FittedReadings readings, FittedExpectation expected)
    {
        if (readings.ClosedVolts is not { } volts || expected.Sensor is not { } sensor)
        {
            return null;
        }

        var resolution = Math.Abs(expected.VoltsResolution / sensor.VoltsPerAngle);
        if (sensor.Opening(volts).Radians > resolution)
        {
            return null; // Not the reading of a closed valve: it must close first.
        }

        if (expected.ControllerZero is { } zero)
        {
            var behind = new Angle((zero - volts) / sensor.VoltsPerAngle);
            return behind.Radians > resolution ? new DeadBandAtClosed(behind, zero)
                : behind.Radians < -resolution ? new ClosedSeenAsOpen(behind.Magnitude, zero)
                : new ControllerFollows(volts, IsLearned: false);
        }

        return sensor.VoltsPerAngle > 0 && volts < PositionSensor.LeastWhereLearned
            ? new ClosedReadingLow(volts, PositionSensor.LeastWhereLearned, PositionSensor.ClosedTarget)
            : new ControllerFollows(volts, IsLearned: true);
    }

    // A job may have been changed since: advice never leads to less free play than the valve needs to close.
    private static double Wanted(FittedExpectation expected) => Math.Max(expected.Travel.Travel.FreePlay, expected.MinFreePlay);

    /// <summary>Wire at the quadrant (mm) between the closed stop and an opening.</summary>
    private static double PullOf(FittedExpectation expected, Angle opening) =>
        expected.Travel.Travel.Closed.Length - expected.Travel.Wire(opening).Length;
}
