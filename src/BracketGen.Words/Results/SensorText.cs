using BracketGen.Design.Inputs;
using BracketGen.Units;

namespace BracketGen.Words.Results;

/// <summary>How the position sensor is set, in words.</summary>
public static class SensorText
{
    /// <summary>"set it to 0.50 V (0.45 to 0.55 V)": reading on the closed stop, cable off.</summary>
    public static string Target(SensorSetting setting) => setting switch
    {
        { Window: null } => $"leave it at {Volts(setting.Target)}: the controller learns its zero",
        { Controller.ZeroVolts: not null } => $"set it to {Value(setting)}, the zero of the controller",
        _ => $"set it to {Value(setting)}; the controller learns its zero",
    };

    /// <summary>"0.50 V (0.45 to 0.55 V)".</summary>
    public static string Value(SensorSetting setting) => setting.Window is { } window
        ? $"{Volts(setting.Target)} ({UnitSystem.Metric.WriteRange(Quantity.Voltage, setting.Target - window, setting.Target + window)})"
        : Volts(setting.Target);

    /// <summary>"turn it 0.4° in the direction of opening": how to get there.</summary>
    public static string Turn(SensorSetting setting, UnitSystem units)
    {
        var turn = setting.Turn;
        var sense = turn.Radians > 0 ? "in the direction of opening" : "back";
        string Written(Geometry.Angle angle) => units.Write(Quantity.Angle, angle.Magnitude.Radians);
        var wanted = setting.Sensor.TurnTo(setting.Target);
        return !setting.IsReachable && setting.Sensor.Slot is { } slot
            ? slot.Radians == 0 ? "it cannot be turned" : $"its slot lets it turn {Written(slot)}, it would need {Written(wanted)}"
            : turn.Magnitude.Degrees < 0.05 ? "it need not be turned"
            : $"turn it {Written(turn)} {sense}" + (setting.Sensor.Slot is null ? "; how far its slot lets it turn was not measured" : "");
    }

    private static string Volts(double value) => UnitSystem.Metric.Write(Quantity.Voltage, value);
}
