using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Mechanism.Forces;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Pedals;
using BracketGen.Mechanism.Throttles;
using BracketGen.Mechanism.Uncertainty;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Cli.Terminal;

/// <summary>The whole mechanism: progression and foot force over the pedal, lost motion, return, outer, sensor, and how sure it is.</summary>
internal static class MechanismTable
{
    private const int Rows = 10;

    public static void Print(TextWriter output, Job job, MechanismReport report)
    {
        string Length(double value) => CheckText.Number(Quantity.Length, value, job.Units);
        string Force(double value) => CheckText.Number(Quantity.Force, value, job.Units);
        if (report.Loaded is { } loaded && report.Progression is { } progression)
        {
            output.WriteLine();
            output.WriteLine("  Over the pedal, from released to the floor (lost motion and friction counted in):");
            output.WriteLine();
            TextTable.Print(output, [Header(report), .. Enumerable.Range(0, Rows + 1).Select(i => Row(job, report, loaded, progression, (double)i / Rows))]);
            output.WriteLine();
            TextTable.Print(output,
            [
                ["off idle", progression.Suddenness.ToString("0.00", CultureInfo.InvariantCulture), "flow area gained by the first tenth of the pedal, over a tenth: 1 is even, above 2 sudden"],
                ["lost motion, wide open", Length(loaded.LostAtWideOpen), "wire stretch, outer and bracket giving way"],
                ["pull left at the floor", Length(loaded.OverTravel), "with it taken off"],
                .. FloorRow(job, loaded),
                ["bends of the outer", Degrees(report.Friction.TotalBend.Degrees), $"{(report.Outer?.Route is null ? "by the profile" : "on its way to the bulkhead")}; the wire's tension grows {report.Friction.Ratio.ToString("0.00", CultureInfo.InvariantCulture)} times"],
                .. OuterRows(job, report),
                .. ReturnRows(report),
            ]);
        }

        Sensor(output, report, job.Vehicle.Controller);
        Uncertainty(output, job, report);

        string[][] FloorRow(Job job, LoadedTravel loaded) => double.IsFinite(loaded.TensionOnFloor) && loaded.OverTravel > 0
            ? [["tension on the floor", Force(loaded.TensionOnFloor), "with the pedal stamped on, if nothing stops it before"]]
            : [];
    }

    private static string[] Header(MechanismReport report) =>
        ["pedal", "valve", "flow area", "foot down", "foot up", .. report.Sensor is null ? Array.Empty<string>() : ["sensor"]];

    private static string[] Row(Job job, MechanismReport report, LoadedTravel loaded, Progression progression, double pedal)
    {
        var point = progression.Points[(int)Math.Round(pedal * (progression.Points.Length - 1))];
        var lever = job.Vehicle.Pedal.Lever;
        var opening = point.Valve * loaded.Travel.Rotation;
        var tension = loaded.TensionAt(opening);
        var gain = lever.PullPerTravel(lever.PadAt(loaded.PullAt(opening)));
        var load = job.Vehicle.Pedal.PadLoad.Value;
        var moves = point.Valve > 0;
        string Force(double value) => moves ? CheckText.Number(Quantity.Force, value, job.Units) : "";
        return
        [
            Percent(point.Pedal), Percent(point.Valve), Percent(point.Area),
            Force(loaded.Friction.Opening(tension) * gain - load), Force(loaded.Friction.Closing(tension) * gain - load),
            .. report.Sensor is { } sensor ? new[] { CheckText.Number(Quantity.Voltage, sensor.Volts(opening), job.Units) } : [],
        ];
    }

    private static IEnumerable<string[]> OuterRows(Job job, MechanismReport report)
    {
        if (report.Outer is not { } outer)
        {
            yield break;
        }

        string Length(double value) => CheckText.Number(Quantity.Length, value, job.Units);
        if (outer.Route is { } route)
        {
            yield return ["outer to the bulkhead", Length(route.Length), $"with bends of {Length(route.Radius)}"
                + (double.IsNaN(outer.Spare) ? "" : $"; {Length(outer.Spare)} of outer is left over")];
        }
        else
        {
            yield return ["outer to the bulkhead", "none", outer.Problem ?? ""];
        }
    }

    private static IEnumerable<string[]> ReturnRows(MechanismReport report)
    {
        var least = ReturnMargin.Least(report.Returns);
        yield return ["springs left to close", Percent(least.Fraction), $"least at {Degrees(least.Opening.Degrees)}; weakest springs, most friction"];
        if (!report.ReturnsOneFailed.IsEmpty)
        {
            yield return ["with one spring broken", Percent(ReturnMargin.Least(report.ReturnsOneFailed).Fraction), "it must still close the valve"];
        }
    }

    private static void Sensor(TextWriter output, MechanismReport report, Controller controller)
    {
        if (report.Sensor is not { } sensor)
        {
            return;
        }

        string Volts(double value) => CheckText.Number(Quantity.Voltage, value, UnitSystem.Metric);
        var target = controller.ZeroVolts ?? PositionSensor.ClosedTarget;
        var turn = sensor.TurnTo(target).Degrees;
        output.WriteLine();
        output.WriteLine($"  Sensor: {Volts(sensor.ClosedVolts)} closed to {Volts(sensor.OpenVolts)} wide open. Set it to {Volts(target)} closed"
            + (controller.ZeroVolts is null ? $" ({Volts(PositionSensor.LeastWhereLearned)} will do, the controller learns its zero)" : ", the controller's zero")
            + $": turn it {Degrees(Math.Abs(turn))} {(turn >= 0 ? "in the sense of opening" : "back")}.");
    }

    private static void Uncertainty(TextWriter output, Job job, MechanismReport report)
    {
        if (report.Uncertainty is not { } sure)
        {
            return;
        }

        string Length(double value) => CheckText.Number(Quantity.Length, value, job.Units);
        output.WriteLine();
        output.WriteLine($"  How sure, over every ± ({sure.Run.Count.ToString("#,0", CultureInfo.InvariantCulture)} samples, worst cases in brackets):");
        output.WriteLine();
        string Range(OutputSpread s) => $"{Length(s.Quantile(0.01))} to {Length(s.Quantile(0.99))} ({Length(s.Least)} to {Length(s.Most)})";
        TextTable.Print(output,
        [
            ["can be made to close", Probability(report.Closes.Value), ""],
            ["opens fully", Probability(sure.ReachesWideOpen.Value), $"over-travel {Range(sure.OverTravel)}"],
            .. report.AdjusterRange > 0
                ? new[]
                {
                    new[] { "adjuster suffices", Probability(sure.WithinAdjuster.Value), $"off mid range {Range(sure.AdjusterNeed)}" },
                    ["adjuster needed", Length(sure.AdjusterRangeFor(MechanismChecks.LeastWorking)), $"in 99 of 100; {Length(sure.AdjusterRangeFor(1))} at worst; there is {Length(report.AdjusterRange)}"],
                }
                : [],
        ]);
        var ranking = sure.Ranking;
        if (ranking.Contributions.IsEmpty)
        {
            return;
        }

        output.WriteLine();
        output.WriteLine($"  Measure these again first, for «{ranking.Requirement}», the nearest to failing:");
        output.WriteLine();
        TextTable.Print(output, [.. ranking.Contributions.Where(c => c.Share >= 0.005).Take(6).Select((c, i) => new[]
        {
            $"{i + 1}.", c.Name, Percent(c.Share) + " of the spread", c.MeasuredAgain ? "" : "a tolerance: only finer work helps",
        })]);
    }

    private static string Percent(double part) => CheckText.Number(Quantity.Fraction, part, UnitSystem.Metric);

    private static string Probability(double value) => CheckText.Number(Quantity.Fraction, value, UnitSystem.Metric);

    private static string Degrees(double value) => value.ToString("0.0", CultureInfo.InvariantCulture) + "°";
}
