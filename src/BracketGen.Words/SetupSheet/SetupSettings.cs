using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Pedals;
using BracketGen.Words.Results;

namespace BracketGen.Words.SetupSheet;

/// <summary>What is to be set on the vehicle: value, and how it is measured.</summary>
/// <param name="solution">A solution.</param>
public sealed class SetupSettings(Solution solution)
{
    private readonly SetupUnits _units = new(solution.Job.Units);

    private Job Job => solution.Job;

    private PedalLever Lever => Job.Vehicle.Pedal.Lever;

    private OuterEnd End => Job.Vehicle.Cable.OuterEnd;

    private SensorSetting? Setting => solution.Mechanism?.Sensor is { } sensor ? new(sensor, Job.Vehicle.Controller) : null;

    /// <summary>Heads of <see cref="Rows"/>.</summary>
    public static IReadOnlyList<string> Heads { get; } = ["What", "Value", "How"];

    /// <summary>Reading of the sensor once it is set, valve closed (V); null without a sensor.</summary>
    public double? ClosedVolts => Setting?.Set.ClosedVolts;

    /// <summary>Reading of the sensor once it is set, pedal on the floor (V); null without a sensor.</summary>
    public double? FlooredVolts => Setting?.Set.Volts(solution.Travel.Reached);

    /// <summary>"2.0 mm (1.5 to 2.5 mm)".</summary>
    public string FreePlay => WithRange(f => f);

    /// <summary>What, value and how.</summary>
    public IEnumerable<(string What, string Value, string How)> Rows()
    {
        if (solution.Mechanism?.Return is { } study)
        {
            yield return (DragText.Acceptance, DragText.Greatest(study, Job.Units), $"{DragText.HowToMeasure} {DragText.Rule(study, Job.Units)}");
        }

        if (End.AdjusterRange > 0)
        {
            var shift = solution.Placement?.AdjusterShift ?? 0;
            yield return (
                "Adjuster, to begin with",
                Math.Abs(shift) < 0.05 ? "mid range" : $"{_units.Length(Math.Abs(shift))} from mid range, {(shift > 0 ? "taking up slack" : "giving slack")}",
                $"{_units.Length(End.AdjusterRange / 2)} each way from mid range" + (End is ThreadedAdjuster a ? $"; one turn of the nuts is {_units.Size(a.Pitch)}." : "."));
        }

        yield return (
            "Free play, pedal released",
            $"{FreePlay}, minimum {_units.Length(Job.Preferences.MinFreePlay)}",
            $"Press the pad by hand until the valve just begins to move: the pad has moved {WithRange(Lever.PadAt)}."
                + (End is ThreadedAdjuster ? "" : " Or pull the outer off its seat until the wire is taut: the gap is the free play."));
        yield return Floor();
        if (Setting is { } setting)
        {
            yield return (
                "Sensor, cable off, valve on its closed stop",
                Phrases.Tied(SensorText.Value(setting)),
                $"Voltmeter at the signal wire, ignition on, engine off. Measured before: {_units.Volts(setting.Sensor.ClosedVolts)}; {SensorText.Turn(setting, Job.Units)}. "
                    + "Tighten it, let the valve snap shut and write down the reading: every later one is held against it."
                    + (Job.Vehicle.Controller.ZeroVolts is null ? " The controller learns its zero." : " It is the zero of the controller. If the controller shows percent: 0 % here, and 1 % as soon as the valve moves."));
            yield return ("Sensor, pedal released", "as with the cable off, 0.02 V more or less", "If it reads more open than that, the cable holds the valve open: give free play.");
            yield return ("Sensor, pedal on the floor", _units.Volts(FlooredVolts!.Value), "The same, pedal worked by foot, carpet and mat in place.");
        }
    }

    private (string What, string Value, string How) Floor()
    {
        var travel = solution.Travel;
        if (!travel.ReachesWideOpen)
        {
            return (
                "Pedal on the floor", $"valve at {_units.Degrees(travel.Reached)} of {_units.Degrees(travel.Rotation)}",
                "The pedal does not open the valve fully: see the failed checks.");
        }

        var left = solution.Mechanism?.Loaded?.OverTravel ?? travel.OverTravel;
        return travel.OverTravel > Job.Preferences.MaxOverTravel
            ? ("Pedal stop", $"at {_units.Length(Lever.FullStroke * travel.PedalAtWideOpen)} of pad travel", "The pedal goes further than the valve: without a stop under the pedal the foot strains the wide-open stop and the wire.")
            : ("Pedal on the floor", $"valve on its wide-open stop, over-travel {_units.Length(Math.Max(0, left))}", "Pedal worked by foot, carpet and mat in place. The wire is taut and no more.");
    }

    private string WithRange(Func<double, double> of)
    {
        var wanted = Job.Preferences.FreePlay;
        var half = wanted.PlusMinus;
        var minimum = Math.Max(Job.Preferences.MinFreePlay, wanted.Value - half);
        return half > 0
            ? $"{_units.Length(of(wanted.Value))} ({_units.Range(of(minimum), of(wanted.Value + half))})"
            : _units.Length(of(wanted.Value));
    }
}
