using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Throttles;

namespace BracketGen.Mechanism.Fitted;

/// <summary>What the readings taken after fitting mean.</summary>
/// <remarks>
/// Setting the sensor shifts its reading, so everything is held against the reading on the closed stop that was taken after it was set;
/// without that one, closing is not known. Order: does it close, is the free play right, does the pedal go down, does it open, what does the sensor read. Taking up slack by x
/// gives the pedal x more pull at the valve, so the adjuster can correct a missing opening only with free play that is not needed.
/// </remarks>
public static class FittedVerdict
{
    /// <summary>The findings, most severe first, otherwise in the order a person would check.</summary>
    /// <param name="readings">What was read.</param>
    /// <param name="expected">What it is compared with.</param>
    public static ImmutableArray<Finding> Of(FittedReadings readings, FittedExpectation expected) =>
        [.. new[]
        {
            Closing(readings, expected), Stop(readings, expected), Slack(readings, expected), Floor(readings, expected), Opening(readings, expected),
            Zero(readings, expected), Step(readings, expected),
        }
            .OfType<Finding>().OrderByDescending(f => f.Weight)];

    /// <summary>Maximum opening at which a controller's display steps from 0 to 1 %: 1 % of the rotation, for a display that cuts off, and the dead band.</summary>
    /// <param name="rotation">Rotation between the stops.</param>
    public static Angle MaxStep(Angle rotation) => new(0.01 * rotation.Radians + PositionSensor.MaxDeadBand.Radians);

    private static PositionSensor? AsSet(FittedReadings readings, FittedExpectation expected) =>
        readings.StopVolts is { } stop ? expected.Sensor?.ReadAtStop(stop) : null;

    private static Finding Closing(FittedReadings readings, FittedExpectation expected)
    {
        var sensor = AsSet(readings, expected);
        return sensor is not null && readings.ClosedVolts is { } volts ? ByVolts(volts, sensor, expected)
            : readings is { StopPercent: { } stop, ClosedPercent: { } closed } ? ByPercent(closed, stop, readings.StepOpening, expected)
            : new ClosingNotKnown(
                sensor is not null || readings.StopPercent is not null ? ClosingUnknown.NoClosedReading
                : expected.Sensor is null && readings.ClosedPercent is null ? ClosingUnknown.NoSensor
                : ClosingUnknown.NoStopReading);
    }

    // What shows the same as on the stop can hide as much of an opening as the display does not resolve.
    private static Finding ByPercent(double closed, double stop, Angle? step, FittedExpectation expected)
    {
        var rotation = expected.Travel.Travel.Rotation;
        if (closed > stop)
        {
            var open = new Angle((closed - stop) / 100 * rotation.Radians);
            return new HeldOpenByPercent(closed, stop, open) { AdjusterShift = -(PullOf(expected, open) + Wanted(expected)) };
        }

        return closed < stop ? new BelowStopPercent(closed, stop)
            : stop > 0 || step is { } seen && seen.Radians <= MaxStep(rotation).Radians ? new ValveClosesByPercent(closed)
            : new ClosingNotKnown(ClosingUnknown.NoStepReading);
    }

    private static Finding ByVolts(double volts, PositionSensor sensor, FittedExpectation expected)
    {
        var off = sensor.Opening(volts);
        var resolution = Math.Abs(expected.VoltsResolution / sensor.VoltsPerAngle);
        return off.Radians > resolution ? new HeldOpen(volts, sensor.ClosedVolts, off) { AdjusterShift = -(PullOf(expected, off) + Wanted(expected)) }
            : off.Radians < -resolution ? new BelowClosedStop(volts, sensor.ClosedVolts)
            : new ValveCloses(volts);
    }

    // A valve that hangs open with the cable off, or a stop that has moved, shows as a sensor turned farther than it can be.
    private static Finding? Stop(FittedReadings readings, FittedExpectation expected)
    {
        if (readings.StopVolts is not { } stop || expected.Sensor is not { Slot: { } slot } sensor)
        {
            return null;
        }

        var turn = sensor.TurnTo(stop);
        return turn.Magnitude.Radians > slot.Radians + Math.Abs(expected.VoltsResolution / sensor.VoltsPerAngle)
            ? new StopBeyondSlot(stop, sensor.ClosedVolts, turn.Magnitude, slot)
            : null;
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
        if (readings.FlooredVolts is not { } volts || expected.Sensor is null)
        {
            return null;
        }

        if (AsSet(readings, expected) is not { } sensor)
        {
            return new OpeningNotKnown(volts);
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
        if (readings.StopVolts is not { } volts || expected.Sensor is not { } sensor)
        {
            return null;
        }

        if (expected.ControllerZero is { } zero)
        {
            var resolution = Math.Abs(expected.VoltsResolution / sensor.VoltsPerAngle);
            var behind = new Angle((zero - volts) / sensor.VoltsPerAngle);
            return behind.Radians > resolution ? new DeadBandAtClosed(behind, zero)
                : behind.Radians < -resolution ? new ClosedSeenAsOpen(behind.Magnitude, zero)
                : new ControllerFollows(volts, IsLearned: false);
        }

        var off = Math.Abs(volts - PositionSensor.ClosedTarget);
        return sensor.VoltsPerAngle > 0 && off > PositionSensor.ClosedWindow * (1 + Tolerance.LimitSlack)
            ? new ClosedReadingOff(volts, PositionSensor.ClosedTarget, PositionSensor.ClosedWindow)
            : new ControllerFollows(volts, IsLearned: true);
    }

    private static Finding? Step(FittedReadings readings, FittedExpectation expected)
    {
        var limit = MaxStep(expected.Travel.Travel.Rotation);
        return readings.StopPercent is { } percent && percent > 0 ? new PercentOnStop(percent)
            : readings.StepOpening is not { } opening ? null
            : opening.Radians > limit.Radians ? new StepLate(opening, limit)
            : new StepPrompt(opening);
    }

    // A job may have been changed since: advice never leads to less free play than the valve needs to close.
    private static double Wanted(FittedExpectation expected) => Math.Max(expected.Travel.Travel.FreePlay, expected.MinFreePlay);

    /// <summary>Wire at the quadrant (mm) between the closed stop and an opening.</summary>
    private static double PullOf(FittedExpectation expected, Angle opening) =>
        expected.Travel.Travel.Closed.Length - expected.Travel.Wire(opening).Length;
}
