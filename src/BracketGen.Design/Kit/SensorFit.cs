using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Throttles;
using static System.FormattableString;

namespace BracketGen.Design.Kit;

/// <summary>Whether a position sensor fits the throttle body and the controller.</summary>
public static class SensorFit
{
    /// <summary>Most play of the shaft's end in the sensor (mm; common practice, no source): more is a dead band.</summary>
    public const double MostDrivePlay = 0.3;

    /// <summary>The findings.</summary>
    /// <param name="part">The sensor.</param>
    /// <param name="body">The throttle body.</param>
    /// <param name="controller">What reads it.</param>
    public static ImmutableArray<FitFinding> Of(SensorMeasures part, ThrottleBody body, Controller controller)
    {
        var mount = body.Openings.Sensor;
        var (holes, turn) = Holes(part, mount?.Screws);
        var drive = Drive(part.Drive, mount?.Drive);

        // Sizes of two shapes say nothing of each other.
        return [drive, .. drive.State == FitState.DoesNotFit ? [] : new[] { Play(part, mount) }, holes, .. Electric(part, body.Quadrant.Rotation, controller, turn)];
    }

    /// <summary>The findings on the sensor that is on the throttle body.</summary>
    public static ImmutableArray<FitFinding> OnBody(PositionSensor sensor, Controller controller) => [new(FitAspect.OnBody, FitState.Fits), Checks(sensor, controller)];

    private static FitFinding Drive(DriveShape? part, DriveShape? body) => part is not { } its || body is not { } the
        ? FitFinding.NotMeasured(FitAspect.DriveShape, part is null, body is null)
        : new(FitAspect.DriveShape, its == the ? FitState.Fits : FitState.DoesNotFit) { Compared = (its.ToString(), the.ToString()) };

    private static FitFinding Play(SensorMeasures part, SensorMount? mount)
    {
        if (part.Size is not { } its || mount?.Size is not { } the)
        {
            return FitFinding.NotMeasured(FitAspect.DrivePlay, part.Size is null, mount?.Size is null);
        }

        // Into a slot of the shaft a tongue of the sensor goes; otherwise the shaft goes into the sensor.
        var (outer, inner) = mount.Drive == DriveShape.Slot ? (the, its) : (its, the);
        return FitFinding.Within(FitAspect.DrivePlay, (outer.Min - inner.Max, outer.Value - inner.Value, outer.Max - inner.Min), 0, MostDrivePlay);
    }

    private static (FitFinding Finding, Angle? Turn) Holes(SensorMeasures part, ScrewPattern? screws)
    {
        if (part.Slots is not { } slots || screws?.Thread is not { } thread)
        {
            return (FitFinding.NotMeasured(FitAspect.SensorHoles, part.Slots is null, screws?.Thread is null), null);
        }

        var off = PatternJudge.Off(part.PlusMinus, screws.PlusMinus);
        SlotTurn? With(double more) => SlotTurn.Of([.. slots.Select(s => s.Slot)], screws.Holes, [.. slots.Select(s => PatternJudge.PlayOf(s.Width, thread) + more)]);
        if (With(0) is not { } nominal)
        {
            return (new(FitAspect.SensorHoles, FitState.DoesNotFit) { Compared = (Invariant($"{slots.Length}"), Invariant($"{screws.Holes.Length}")) }, null);
        }

        var (sure, maybe) = (With(-off)!, With(off)!);
        var state = sure.Fits ? FitState.Fits : maybe.Fits ? FitState.NotKnown : FitState.DoesNotFit;
        return (new(FitAspect.SensorHoles, state) { Value = Math.Max(0, nominal.Over), Turn = sure.Fits ? sure.Half : null }, sure.Fits ? sure.Half : null);
    }

    private static IEnumerable<FitFinding> Electric(SensorMeasures part, MeasuredAngle rotation, Controller controller, Angle? turn)
    {
        if (part.Volts is var (closed, open))
        {
            yield return Checks(new(closed, open, rotation.Value) { Slot = turn, MinVolts = part.Range.Min, MaxVolts = part.Range.Max }, controller);
            yield break;
        }

        // What its maker says can rule it out; that it can be set, only readings on this throttle body show.
        if (part.VoltsPerAngle is { } slope)
        {
            var start = controller.ZeroVolts ?? PositionSensor.ClosedTarget;
            double At(double angle) => start + slope * angle;
            double max = Math.Min(part.Range.Max, controller.MaxVolts), min = Math.Max(part.Range.Min, controller.MinVolts);
            var nominal = At(rotation.Value.Radians);
            if (slope > 0 && At((rotation.Value - rotation.PlusMinus).Radians) > max)
            {
                yield return new(FitAspect.SensorSpan, FitState.DoesNotFit) { Value = nominal, Min = min, Max = max };
                yield break;
            }
        }

        yield return FitFinding.NotMeasured(FitAspect.SensorReading, part: true, body: false);
    }

    private static FitFinding Checks(PositionSensor sensor, Controller controller)
    {
        Check[] checks = [.. MechanismChecks.OfSensor(new(sensor, controller))];
        ImmutableArray<string> Names(CheckState state) => [.. checks.Where(c => c.State == state).Select(c => c.Code)];
        return Names(CheckState.Fails) is { Length: > 0 } failed ? new(FitAspect.SensorChecks, FitState.DoesNotFit) { Codes = failed }
            : Names(CheckState.NotKnown) is { Length: > 0 } open ? new(FitAspect.SensorChecks, FitState.NotKnown) { Codes = open, Missing = MissingOn.Part }
            : new(FitAspect.SensorChecks, FitState.Fits);
    }
}
