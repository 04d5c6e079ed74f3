using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Geometry;

namespace BracketGen.Mechanism;

/// <summary>Severity of a finding.</summary>
public enum FindingWeight
{
    /// <summary>As it should be.</summary>
    Good,

    /// <summary>Should be set better.</summary>
    Mend,

    /// <summary>The vehicle must not be started until it is put right.</summary>
    Safety,
}

/// <summary>One thing that the readings say.</summary>
/// <param name="Id">Its name, for machines.</param>
/// <param name="Weight">Its severity.</param>
/// <param name="Text">What it means and what to do, for people.</param>
/// <param name="AdjusterShift">
/// How far to move the adjuster (mm of wire), positive if it takes up slack; null if the adjuster cannot correct it.
/// </param>
public sealed record Finding(string Id, FindingWeight Weight, string Text, double? AdjusterShift = null);

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
        if (off.Radians > resolution)
        {
            var held = PullOf(expected, off);
            var shift = -(held + Wanted(expected));
            return new(
                "closes", FindingWeight.Safety,
                Text($"The valve does not close: the sensor reads {volts:0.00} V instead of {sensor.ClosedVolts:0.00} V, {off.Degrees:0.0}° open. Take the wire off the quadrant and read again. Does it close now, the cable is too tight: {Turns(shift, expected)}. Does it not, something holds the valve or its stop has moved."),
                shift);
        }

        return off.Radians < -resolution
            ? new(
                "closes", FindingWeight.Mend,
                Text($"With the pedal released the sensor reads {volts:0.00} V, less open than at the closed stop ({sensor.ClosedVolts:0.00} V): the sensor has turned, or the first reading was not taken at the stop. Read both stops again."))
            : new("closes", FindingWeight.Good, Text($"The valve closes: {volts:0.00} V, as at its stop."));
    }

    private static Finding? Slack(FittedReadings readings, FittedExpectation expected)
    {
        if (readings.FreePlay is not { } slack)
        {
            return null;
        }

        var wanted = Wanted(expected);
        var shift = slack - wanted;
        if (slack < expected.MinFreePlay)
        {
            return new(
                "free-play", FindingWeight.Safety,
                Text($"Too little free play: {slack:0.0} mm, at least {expected.MinFreePlay:0.0} mm is needed. When the engine moves or warms up the cable can hold the valve open. {Capital(Turns(shift, expected))}."),
                shift);
        }

        return Math.Abs(shift) > 0.5 * wanted
            ? new(
                "free-play", FindingWeight.Mend,
                Text($"Free play is {slack:0.0} mm, {wanted:0.0} mm was wanted: {(shift > 0 ? "the first part of the pedal's travel does nothing" : "there is little in hand")}. {Capital(Turns(shift, expected))}."),
                shift)
            : new("free-play", FindingWeight.Good, Text($"Free play is {slack:0.0} mm, right."));
    }

    private static Finding? Floor(FittedReadings readings, FittedExpectation expected)
    {
        if (readings.PadTravel is not { } travel)
        {
            return null;
        }

        var missing = expected.Pedal.FullStroke - travel;
        return missing > expected.PadResolution
            ? new(
                "pad-travel", FindingWeight.Mend,
                Text($"The pedal travels {travel:0} mm, {expected.Pedal.FullStroke:0} mm was measured before: carpet or a pedal stop takes {missing:0} mm, {expected.Pedal.Lever.FullPull - expected.Pedal.Lever.PullAt(travel):0.0} mm of pull."))
            : missing < -expected.PadResolution
                ? new(
                    "pad-travel", FindingWeight.Mend,
                    Text($"The pedal travels {travel:0} mm, only {expected.Pedal.FullStroke:0} mm was measured before: it may strain the valve's stop. Measure again, and set the pedal stop."))
                : new("pad-travel", FindingWeight.Good, Text($"The pedal travels {travel:0} mm, as measured."));
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
            return new("wide-open", FindingWeight.Good, Text($"The valve opens fully: {volts:0.00} V on the floor."));
        }

        var pull = PullOf(expected, expected.Travel.Travel.Rotation) - PullOf(expected, reached);
        var text = Text($"With the pedal on the floor the valve is {100 * sensor.Fraction(volts):0} % open ({reached.Degrees:0.0}° of {sensor.Rotation.Degrees:0.0}°): {pull:0.0} mm of pull is missing.");
        var inHand = (readings.FreePlay ?? Wanted(expected)) - expected.MinFreePlay;
        return inHand >= pull
            ? new("wide-open", FindingWeight.Mend, Text($"{text} The free play has that much in hand: {Turns(pull, expected)}."), pull)
            : new(
                "wide-open", FindingWeight.Mend,
                Text($"{text} The adjuster cannot give it: free play has only {Math.Max(0, inHand):0.0} mm in hand before it falls below {expected.MinFreePlay:0.0} mm. A smaller quadrant, more pedal travel or a longer cable arm at the pedal is needed."));
    }

    private static Finding? Zero(FittedReadings readings, FittedExpectation expected)
    {
        if (readings.ClosedVolts is not { } volts || expected.Sensor is not { } sensor)
        {
            return null;
        }

        if (sensor.Opening(volts).Radians > Math.Abs(expected.VoltsResolution / sensor.VoltsPerAngle))
        {
            return null; // Not the reading of a closed valve: it must close first.
        }

        if (expected.ControllerZero is { } zero)
        {
            var behind = new Angle((zero - volts) / sensor.VoltsPerAngle);
            if (behind.Radians > Math.Abs(expected.VoltsResolution / sensor.VoltsPerAngle))
            {
                return new(
                    "dead-band", FindingWeight.Mend,
                    Text($"Dead band: the controller sees nothing until the valve is {behind.Degrees:0.0}° open, where the reading passes {zero:0.00} V. Turn the sensor by {behind.Degrees:0.0}° in the sense of opening, until it reads {zero:0.00} V closed."));
            }

            return behind.Radians < -Math.Abs(expected.VoltsResolution / sensor.VoltsPerAngle)
                ? new(
                    "dead-band", FindingWeight.Mend,
                    Text($"The controller takes the closed valve for {-behind.Degrees:0.0}° open and may not idle: turn the sensor back until it reads {zero:0.00} V closed."))
                : new("dead-band", FindingWeight.Good, Text($"The controller sees the valve as soon as it moves ({volts:0.00} V closed)."));
        }

        return sensor.VoltsPerAngle > 0 && volts < PositionSensor.LeastWhereLearned
            ? new(
                "dead-band", FindingWeight.Mend,
                Text($"{volts:0.00} V closed is below {PositionSensor.LeastWhereLearned:0.00} V: the controller may take it for a broken wire. Set the sensor to about {PositionSensor.ClosedTarget:0.00} V."))
            : new("dead-band", FindingWeight.Good, Text($"{volts:0.00} V closed: the controller learns it as its zero."));
    }

    // A job may have been changed since: advice never leads to less free play than the valve needs to close.
    private static double Wanted(FittedExpectation expected) => Math.Max(expected.Travel.Travel.FreePlay, expected.MinFreePlay);

    /// <summary>Wire at the quadrant (mm) between the closed stop and an opening.</summary>
    private static double PullOf(FittedExpectation expected, Angle opening) =>
        expected.Travel.Travel.Closed.Length - expected.Travel.Wire(opening).Length;

    private static string Turns(double shift, FittedExpectation expected)
    {
        var way = shift > 0
            ? "away from the quadrant, taking up slack"
            : "towards the quadrant, giving slack";
        return expected.Pitch is { } pitch
            ? Text($"move the outer's end {Math.Abs(shift):0.0} mm {way}: {Math.Abs(shift) / pitch:0.0} turns of the adjuster's nuts ({pitch:0.##} mm a turn)")
            : Text($"move the outer's end {Math.Abs(shift):0.0} mm {way}");
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
