using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Drawing.Report.Charts;
using BracketGen.Drawing.Report.Html;
using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.Units;
using BracketGen.Words.Results;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>What the whole mechanism does over the sweep: its numbers, then the charts.</summary>
internal static class ChartsSection
{
    public static void Write(HtmlWriter html, ReportScene scene)
    {
        if (scene.Solution.Mechanism is { } mechanism)
        {
            if (mechanism.Loaded is null)
            {
                html.Line("p", "The wire passes the throttle shaft within the sweep: there no tension can open the valve, and forces have no meaning. Move the stop first.");
            }

            HtmlTable.Facts(html, Facts(scene, mechanism));
        }

        using var charts = html.Open("div", ("class", "charts"));
        foreach (var chart in JobCharts.Of(scene))
        {
            ChartFigure.Write(html, chart);
        }
    }

    private static IEnumerable<Fact> Facts(ReportScene scene, MechanismReport mechanism)
    {
        if (mechanism.Loaded is { } loaded)
        {
            yield return new("Lost motion, wide open", scene.Length(loaded.LostAtWideOpen), "wire stretch, outer and bracket giving way");
            yield return new("Pull left at the floor", scene.Length(loaded.OverTravel), "with it taken off");
            if (double.IsFinite(loaded.TensionOnFloor) && loaded.OverTravel > 0)
            {
                yield return new("Tension on the floor", scene.Force(loaded.TensionOnFloor), "with the pedal stamped on, if nothing stops it before");
            }
        }

        yield return new(
            "Bends of the outer", scene.Angle(mechanism.Friction.TotalBend),
            $"{(mechanism.Outer?.Route is null ? "by the profile" : "on its way to the bulkhead")}; the wire's tension grows {mechanism.Friction.Ratio.ToString("0.00", CultureInfo.InvariantCulture)} times");
        if (mechanism.Outer is { } outer)
        {
            yield return outer.Route is { } route
                ? new("Outer to the bulkhead", scene.Length(route.Length), $"with bends of {scene.Length(route.Radius)}"
                    + (double.IsFinite(outer.Spare) ? $"; {scene.Length(outer.Spare)} of outer is left over" : ""))
                : new("Outer to the bulkhead", "none", OuterText.Problem(outer.Problem, scene.Units) ?? "");
        }

        if (!mechanism.Returns.IsEmpty)
        {
            var least = ReturnMargin.Least(mechanism.Returns);
            yield return new("Springs left to close", scene.Part(least.Fraction), $"least at {scene.Angle(least.Opening)}; weakest springs, most friction");
        }

        if (!mechanism.ReturnsOneFailed.IsEmpty)
        {
            yield return new("With one spring broken", scene.Part(ReturnMargin.Least(mechanism.ReturnsOneFailed).Fraction), "it must still close the valve");
        }

        if (mechanism.Sensor is { } sensor)
        {
            yield return SensorFact(scene, sensor);
        }
    }

    private static Fact SensorFact(ReportScene scene, PositionSensor sensor)
    {
        var zero = scene.Job.Vehicle.Controller.ZeroVolts;
        var target = zero ?? PositionSensor.ClosedTarget;
        var turn = sensor.TurnTo(target);
        return new(
            "Sensor", $"{scene.Volts(sensor.ClosedVolts)} to {scene.Volts(sensor.OpenVolts)}",
            $"set it to {scene.Volts(target)} closed{(zero is null ? $" ({scene.Volts(PositionSensor.LeastWhereLearned)} will do, the controller learns its zero)" : ", the controller's zero")}: "
            + $"turn it {scene.Angle(turn.Magnitude)} {(turn.Radians >= 0 ? "in the sense of opening" : "back")}");
    }
}
