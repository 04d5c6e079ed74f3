using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Mechanism.Forces;
using BracketGen.Mechanism.Throttles;
using BracketGen.Units;
using BracketGen.Words.Results;

namespace BracketGen.Words.Report;

/// <summary>The numbers of the whole mechanism.</summary>
public static class MechanismFacts
{
    /// <summary>Said if the wire passes the shaft.</summary>
    public const string NoForces = "The wire passes the throttle shaft within the sweep: there no tension can open the valve, and forces have no meaning. Move the stop first.";

    /// <summary>What the proof load counts.</summary>
    public static string ProofLoadRemark(MechanismReport mechanism) => mechanism.BracketIsKnown
        ? "tension at the stop, the outer at its stiff end: the proof load of the bracket"
        : "tension at a rigid stop, the outer at its stiff end; make counts the bracket's give and tolerances too";

    /// <summary>The facts.</summary>
    public static IEnumerable<Fact> Of(Solution solution, MechanismReport mechanism)
    {
        var units = solution.Job.Units;
        string Length(double value) => units.Write(Quantity.Length, value);
        string Part(double value) => units.Write(Quantity.Fraction, value);
        string Degrees(double radians) => units.Write(Quantity.Angle, radians);
        if (mechanism.Loaded is { } loaded)
        {
            yield return new("Lost motion, wide open", Length(loaded.LostAtWideOpen), "stretch of the wire, compression of the outer, give of the stop");
            yield return new("Over-travel under load", Length(loaded.OverTravel), "lost motion taken off");
            yield return new("Pedal stamped on", units.Write(Quantity.Force, mechanism.ProofLoad.Tension), StrengthText.ProofLoadRemark(mechanism));
        }

        yield return new(
            "Total bend of the outer", Degrees(mechanism.Friction.TotalBend.Radians),
            $"{OuterText.BendsFrom(solution.Job.Vehicle.Cable, mechanism)}; friction multiplies the tension by {mechanism.Friction.Ratio.ToString("0.00", CultureInfo.InvariantCulture)}");
        if (mechanism.Outer is { } outer)
        {
            yield return new("Outer to the bulkhead", OuterText.Length(outer, units), OuterText.Lie(outer, units));
        }

        yield return new(MovementText.Left, Length(mechanism.Movement.Left), MovementText.Remark(mechanism.Movement, units));
        if (!mechanism.Returns.IsEmpty)
        {
            var least = ReturnMargin.Least(mechanism.Returns);
            yield return new("Return margin", Part(least.Fraction), $"minimum, at {Degrees(least.Opening.Radians)}; weakest springs, most friction and drag");
        }

        if (!mechanism.ReturnsOneFailed.IsEmpty)
        {
            yield return new("With one spring broken", Part(ReturnMargin.Least(mechanism.ReturnsOneFailed).Fraction), "the strongest; the others must still close the valve");
        }

        if (mechanism.Return is { } study)
        {
            yield return new("Closing drag of the cable", units.Write(Quantity.Force, solution.Job.Vehicle.Cable.ClosingDrag.Value), DragText.Counted(solution.Job));
            yield return new(DragText.Acceptance, DragText.Greatest(study, units), DragText.Rule(study, units));
            yield return new("Closing time", double.IsFinite(study.ClosingTime) ? units.Write(Quantity.Time, study.ClosingTime) : "never", "from wide open, foot off; calculated, not timed");
        }

        if (mechanism.Sensor is { } sensor)
        {
            yield return Sensor(solution, sensor, units);
        }
    }

    private static Fact Sensor(Solution solution, PositionSensor sensor, UnitSystem units)
    {
        string Volts(double value) => units.Write(Quantity.Voltage, value);
        var setting = new SensorSetting(sensor, solution.Job.Vehicle.Controller);
        return new(
            "Sensor", $"{Volts(sensor.ClosedVolts)} to {Volts(sensor.OpenVolts)}",
            $"on the closed stop, cable off, {SensorText.Target(setting)}: {SensorText.Turn(setting, units)}");
    }
}
