using System.Globalization;
using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Mechanism;

namespace BracketGen.Drawing.Setup;

/// <summary>What is to be set on the vehicle: value, and how it is measured.</summary>
internal sealed class SetupSettings(Solution solution, SetupWords words)
{
    private Job Job => solution.Job;

    private PedalLever Lever => Job.Vehicle.Pedal.Lever;

    private OuterEnd End => Job.Vehicle.Cable.OuterEnd;

    private PositionSensor? Sensor => solution.Mechanism?.Sensor;

    /// <summary>The table, no wider than a width (mm).</summary>
    public SheetBlock Table(double width)
    {
        List<IReadOnlyList<string>> rows = [.. Rows().Select(r => (IReadOnlyList<string>)[r.What, r.Value, r.How])];
        const double what = 34, value = 40, padding = 2 * 0.7 * TextHeight.Small;
        var how = width - what - value - 3 * padding;
        rows = [.. rows.Select(r => (IReadOnlyList<string>)[Wrapped(r[0], what), Wrapped(r[1], value), Wrapped(r[2], how)])];
        return SheetTable.Draw("", ["What", "Value", "How"], rows, maximumWidth: how);
    }

    /// <summary>Reading of the sensor once it is set, valve closed (V).</summary>
    public double? ClosedVolts => Sensor is null ? null : Job.Vehicle.Controller.ZeroVolts ?? PositionSensor.ClosedTarget;

    /// <summary>Reading of the sensor once it is set, pedal on the floor (V).</summary>
    public double? FlooredVolts => Sensor is { } sensor ? ClosedVolts + sensor.VoltsPerAngle * solution.Travel.Reached.Radians : null;

    /// <summary>«2.0 mm (1.5 to 2.5 mm)».</summary>
    public string FreePlay => WithRange(f => f);

    private static string Wrapped(string text, double width) => string.Join('\n', TextFlow.Wrap(text, width, TextHeight.Small));

    private IEnumerable<(string What, string Value, string How)> Rows()
    {
        if (End.AdjusterRange > 0)
        {
            var shift = solution.Placement?.AdjusterShift ?? 0;
            yield return (
                "Adjuster, to begin with",
                Math.Abs(shift) < 0.05 ? "mid range" : $"{words.Length(Math.Abs(shift))} from mid range, {(shift > 0 ? "taking up slack" : "giving slack")}",
                $"{words.Length(End.AdjusterRange / 2)} each way from mid range" + (End is ThreadedAdjuster a ? $"; a turn of the nuts is {words.Size(a.Pitch)}." : "."));
        }

        yield return (
            "Free play, pedal released",
            $"{FreePlay}, never under {words.Length(Job.Preferences.MinFreePlay)}",
            $"Press the pad by hand until the valve just begins to move: the pad has gone {WithRange(Lever.PadAt)}."
                + (End is ThreadedAdjuster ? "" : " Or pull the outer off its seat until the wire is taut: the gap is the free play."));
        yield return Floor();
        if (Sensor is { } sensor && ClosedVolts is { } closed)
        {
            var learned = Job.Vehicle.Controller.ZeroVolts is null;
            var turn = sensor.TurnTo(closed);
            yield return (
                "Sensor, pedal released",
                SetupWords.Volts(closed) + (learned ? $"; from {SetupWords.Volts(PositionSensor.LeastWhereLearned)} the controller learns its zero" : ", the controller's zero"),
                $"Voltmeter at the signal wire, ignition on, engine off. Measured with the cable off: {SetupWords.Volts(sensor.ClosedVolts)}"
                    + (Math.Abs(turn.Degrees) < 0.05 ? "." : $"; turn the sensor {SetupWords.Degrees(turn.Magnitude)} {(turn.Radians > 0 ? "in the sense of opening" : "back")}."));
            yield return ("Sensor, pedal on the floor", SetupWords.Volts(FlooredVolts!.Value), "The same, someone's foot on the pedal, carpet and mat in place.");
        }
    }

    private (string What, string Value, string How) Floor()
    {
        var travel = solution.Travel;
        if (!travel.ReachesWideOpen)
        {
            return ("Pedal on the floor", $"valve at {SetupWords.Degrees(travel.Reached)} of {SetupWords.Degrees(travel.Rotation)}", "The pedal does not open the valve fully: see the checks not passed.");
        }

        var left = solution.Mechanism?.Loaded?.OverTravel ?? travel.OverTravel;
        return travel.OverTravel > Job.Preferences.MaxOverTravel
            ? ("Pedal stop", $"at {words.Length(Lever.FullStroke * travel.PedalAtWideOpen)} of pad travel", "The pedal goes further than the valve: without a stop the foot strains the valve's own stop and the wire.")
            : ("Pedal on the floor", $"valve on its wide-open stop, {words.Length(Math.Max(0, left))} of pull left over", "Worked by foot, carpet and mat in place. The wire is taut and no more.");
    }

    private string WithRange(Func<double, double> of)
    {
        var wanted = Job.Preferences.FreePlay;
        var half = wanted.PlusMinus;
        var least = Math.Max(Job.Preferences.MinFreePlay, wanted.Value - half);
        return half > 0
            ? $"{words.Length(of(wanted.Value))} ({words.Range(of(least), of(wanted.Value + half))})"
            : words.Length(of(wanted.Value));
    }
}
