using BracketGen.Geometry;
using BracketGen.Mechanism.Throttles;

namespace BracketGen.Design.Inputs;

/// <summary>What the position sensor is set to on the vehicle, and whether its slot lets it get there.</summary>
/// <param name="Sensor">The sensor as it was read.</param>
/// <param name="Controller">What reads it.</param>
public sealed record SensorSetting(PositionSensor Sensor, Controller Controller)
{
    /// <summary>Whether the reading falls as the valve opens.</summary>
    public bool IsFalling => Sensor.VoltsPerAngle < 0;

    /// <summary>
    /// Reading to set with the valve on its closed stop (V): the controller's zero; where it learns its zero 0.5 V, or for a falling sensor
    /// what it reads already.
    /// </summary>
    public double Target => Controller.ZeroVolts ?? (IsFalling ? Sensor.ClosedVolts : PositionSensor.ClosedTarget);

    /// <summary>How far the reading may be off the target (V); null for a falling sensor whose zero is learned.</summary>
    public double? Window => Controller.ZeroVolts is not null ? Math.Abs(Sensor.VoltsPerAngle) * PositionSensor.MaxDeadBand.Radians
        : IsFalling ? null
        : PositionSensor.ClosedWindow;

    /// <summary>Whether a known slot lets it turn to the target; true where the slot is not known.</summary>
    public bool IsReachable => Sensor.Slot is not { } slot || Sensor.TurnTo(Target).Magnitude.Radians <= slot.Radians * (1 + Tolerance.LimitSlack);

    /// <summary>How far to turn it in the sense of opening, back if negative; as far as a known slot allows.</summary>
    public Angle Turn
    {
        get
        {
            var wanted = Sensor.TurnTo(Target);
            return Sensor.Slot is { } slot ? new(Math.Clamp(wanted.Radians, -slot.Radians, slot.Radians)) : wanted;
        }
    }

    /// <summary>The sensor turned by <see cref="Turn"/>.</summary>
    public PositionSensor Set => Sensor.Turned(Turn);
}
