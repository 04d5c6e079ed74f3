using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Forces;
using BracketGen.Mechanism.Motion;
using BracketGen.Mechanism.Uncertainty;
using BracketGen.Units;
using BracketGen.Words.Checks;
using BracketGen.Words.Results;

namespace BracketGen.Words.Terminal;

/// <summary>The whole mechanism as rows: progression and foot force over the pedal, lost motion, return, outer, sensor, and how sure it is.</summary>
public static class MechanismRows
{
    private const int Rows = 10;

    /// <summary>Pedal, valve, flow area, foot force and sensor over the pedal's stroke, with heads; empty where the travel cannot be solved under load.</summary>
    public static IReadOnlyList<string[]> OverThePedal(Job job, MechanismReport report) => report is { Loaded: { } loaded, Progression: { } progression }
        ? [Header(report), .. Enumerable.Range(0, Rows + 1).Select(i => Row(job, report, loaded, progression, (double)i / Rows))]
        : [];

    /// <summary>Lost motion, outer and return as rows: name, value, remark; empty likewise.</summary>
    public static IReadOnlyList<string[]> Forces(Job job, MechanismReport report)
    {
        if (report is not { Loaded: { } loaded, Progression: { } progression })
        {
            return [];
        }

        string Length(double value) => job.Units.Write(Quantity.Length, value);
        string Force(double value) => job.Units.Write(Quantity.Force, value);
        return
        [
            ["off-idle gain", UnitSystems.Decimals(progression.Suddenness, "0.00"), "flow area gained by the first tenth of the pedal, over a tenth: 1 is even, above 2 sudden"],
            ["lost motion, wide open", Length(loaded.LostAtWideOpen), report.BracketIsKnown ? "wire stretch, give of outer and bracket" : "wire stretch and give of the outer; that of the bracket is not known yet"],
            ["over-travel under load", Length(loaded.OverTravel), "with lost motion taken off"],
            ["pedal stamped on", Force(report.ProofLoad.Tension), StrengthText.ProofLoadRemark(report)],
            ["bends of the outer", Degrees(report.Friction.TotalBend.Degrees), $"{OuterText.BendsFrom(job.Vehicle.Cable, report)}; the wire's tension grows {UnitSystems.Decimals(report.Friction.Ratio, "0.00")} times"],
            .. OuterRows(job, report),
            ["free play left as the engine moves", Length(report.Movement.Left), MovementText.Remark(report.Movement, job.Units)],
            .. ReturnRows(job, report),
        ];
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
        string Force(double value) => moves ? job.Units.Write(Quantity.Force, value) : "";
        return
        [
            Percent(point.Pedal), Percent(point.Valve), Percent(point.Area),
            Force(loaded.Friction.Opening(tension) * gain - load), Force(loaded.Friction.Closing(loaded.ClosingTensionAt(opening)) * gain - load),
            .. report.Sensor is { } sensor ? new[] { job.Units.Write(Quantity.Voltage, sensor.Volts(opening)) } : [],
        ];
    }

    private static IEnumerable<string[]> OuterRows(Job job, MechanismReport report)
    {
        if (report.Outer is { } outer)
        {
            yield return ["outer to the bulkhead", OuterText.Length(outer, job.Units), OuterText.Lie(outer, job.Units)];
        }
    }

    private static IEnumerable<string[]> ReturnRows(Job job, MechanismReport report)
    {
        if (report.Return is not { } study)
        {
            yield break;
        }

        var least = ReturnMargin.Least(report.Returns);
        yield return ["closing drag of the cable", job.Units.Write(Quantity.Force, job.Vehicle.Cable.ClosingDrag.Value), DragText.Counted(job)];
        yield return ["springs left to close", Percent(least.Fraction), $"minimum, at {Degrees(least.Opening.Degrees)}; weakest springs, maximum friction and drag"];
        if (!report.ReturnsOneFailed.IsEmpty)
        {
            yield return ["with one spring broken", Percent(ReturnMargin.Least(report.ReturnsOneFailed).Fraction), "the strongest; the others must still close the valve"];
        }

        yield return [DragText.Acceptance.ToLowerInvariant(), DragText.Greatest(study, job.Units), DragText.Rule(study, job.Units)];
        yield return
        [
            "closed after", double.IsFinite(study.ClosingTime) ? job.Units.Write(Quantity.Time, study.ClosingTime) : "never",
            "from wide open, foot off; calculated, not timed",
        ];
    }

    /// <summary>What the sensor reads and how to set it; null where there is none.</summary>
    public static string? Sensor(MechanismReport report, Controller controller, UnitSystem units)
    {
        if (report.Sensor is not { } sensor)
        {
            return null;
        }

        string Volts(double value) => UnitSystem.Metric.Write(Quantity.Voltage, value);
        var setting = new SensorSetting(sensor, controller);
        return $"Sensor: {Volts(sensor.ClosedVolts)} closed to {Volts(sensor.OpenVolts)} wide open. On the closed stop, cable off, {SensorText.Target(setting)}: {SensorText.Turn(setting, units)}.";
    }

    /// <summary>Heading of <see cref="Probabilities"/>.</summary>
    public static string ProbabilityHeading(TravelUncertainty sure) =>
        $"How sure, over every ± ({sure.Run.Count.ToString("#,0", CultureInfo.InvariantCulture)} samples: what they prove with 95 % confidence; worst cases in brackets):";

    /// <summary>How sure the travel is, as rows: name, probability, remark.</summary>
    public static IReadOnlyList<string[]> Probabilities(Job job, MechanismReport report, TravelUncertainty sure)
    {
        string Range(OutputSpread s) => $"{job.Units.WriteRange(Quantity.Length, s.Quantile(0.01), s.Quantile(0.99))} ({job.Units.WriteRange(Quantity.Length, s.Least, s.Most)})";
        string Length(double value) => job.Units.Write(Quantity.Length, value);
        return
        [
            ["can be made to close", Probability(report.Closes), Bound(report.Closes)],
            ["opens fully", Probability(sure.ReachesWideOpen), $"{Bound(sure.ReachesWideOpen)}; over-travel {Range(sure.OverTravel)}"],
            ["stays in the groove", Probability(sure.ProbabilityOf(TravelRequirement.InGroove)), Bound(sure.ProbabilityOf(TravelRequirement.InGroove))],
            .. report.AdjusterRange > 0
                ? new[]
                {
                    new[] { "adjuster suffices", Probability(sure.WithinAdjuster), $"{Bound(sure.WithinAdjuster)}; off mid range {Range(sure.AdjusterNeed)}" },
                    ["adjuster needed", Length(sure.AdjusterRangeFor(MechanismChecks.LeastWorking)), $"in 99 of 100; {Length(sure.AdjusterRangeFor(1))} at worst; there is {Length(report.AdjusterRange)}"],
                }
                : [],
        ];
    }

    /// <summary>Heading of <see cref="MeasureAgain"/>.</summary>
    public static string MeasureAgainHeading(TravelUncertainty sure) => sure.HoldsAsMeasured(sure.Nearest)
        ? $"Measure these again first, for \"{sure.Ranking.Requirement}\", the nearest to failing:"
        : $"\"{sure.Ranking.Requirement}\" is the nearest to failing. {MeasureText.NoneHelps} What its spread comes from:";

    /// <summary>The measurements whose ± matters most, as rows: number, name, share, remark; empty where none matters.</summary>
    public static IReadOnlyList<string[]> MeasureAgain(TravelUncertainty sure) =>
    [
        .. sure.Ranking.Contributions.Where(c => c.Share >= WorthMeasuring).Take(MaxMeasureAgain).Select((c, i) => new[]
        {
            $"{i + 1}.", c.Name, Percent(c.Share) + " of the spread", c.MeasuredAgain ? "" : "a tolerance: only finer work helps",
        }),
    ];

    private const double WorthMeasuring = 0.005;

    private const int MaxMeasureAgain = 6;

    private static string Percent(double part) => UnitSystem.Metric.Write(Quantity.Fraction, part);

    // What is proven, rounded down: it must not promise more than was found.
    private static string Probability(Probability found) => $"{UnitSystems.Decimals(Math.Floor(10_000 * found.LowerBound) / 100, "0.00")} %";

    private static string Bound(Probability found) =>
        $"{UnitSystem.Metric.Write(Quantity.Fraction, found.Value)} of the samples, standard error {UnitSystems.Decimals(Math.Ceiling(10_000 * found.StandardError) / 100, "0.00")} %";

    private static string Degrees(double value) => UnitSystems.Decimals(value, "0.0") + "°";
}
