using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Words.Results;

namespace BracketGen.Words.SetupSheet;

/// <summary>What is checked with the engine off before the first start.</summary>
/// <param name="solution">A solution with a bracket.</param>
/// <param name="settings">What was set.</param>
public sealed class SetupChecks(Solution solution, SetupSettings settings)
{
    private readonly SetupUnits _units = new(solution.Job.Units);

    /// <summary>How to get the engine hot without the pedal.</summary>
    public const string Hot = "Keep the engine off for every check. Cold: as it stands. Hot: take the wire off the quadrant, warm the engine up at idle, switch it off, put the wire back.";

    /// <summary>Labels of the two boxes of each check.</summary>
    public static IReadOnlyList<string> Boxes { get; } = ["cold", "hot"];

    /// <summary>Blanks for the readings: rows of labels.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Readings { get; } =
        [["Sensor, cable off, V", "pedal released, V", "floor, V"], ["Free play", "pad travel"], ["Checked by", "date"]];

    /// <summary>The checks.</summary>
    public IEnumerable<string> All()
    {
        var travel = solution.Travel;
        yield return $"Pedal released: the valve is on its closed stop{Reads(settings.ClosedVolts)}, and the wire has its free play, {settings.FreePlay}.";
        yield return "Let the pedal slip off the foot from a quarter, a half and three quarters of its travel and from the floor: each time the valve is back on its closed stop at once.";
        yield return solution.Job.Body.Springs.Count switch
        {
            > 2 => "Unhook all return springs but one and do the same, each spring in turn: every spring closes the valve alone.",
            2 => "Do the same with each return spring unhooked in turn: either spring closes the valve alone.",
            _ => "A second return spring is fitted and closes the valve alone with the first one unhooked. The profile of the throttle body gives one spring only: fit another.",
        };
        yield return "Time it: from the floor the valve is closed within one second, two in a vehicle above 4,536 kg, three at -18 °C and below (49 CFR 571.124 S5.3, from memory).";
        yield return travel.ReachesWideOpen
            ? $"Pedal on the floor, worked by foot, carpet and mat in place: the valve is on its wide-open stop{Reads(settings.FlooredVolts)}."
            : $"Pedal on the floor, worked by foot, carpet and mat in place: the valve is at {_units.Degrees(travel.Reached)}{Reads(settings.FlooredVolts)}.";
        yield return "Move slowly from stop to stop, with a light: wire, end fitting and quadrant touch nothing and nothing can catch them; the wire lies in its groove; no strand is broken.";
        yield return "A second person rocks the engine on its mounts both ways, pedal released and pedal on the floor: the valve does not move, the free play stays, the outer does not pull tight. "
            + $"Watch how far the throttle body moves: no more than {MovementText.Of(solution.Job.Movement with { Evidence = Evidence.Given }, solution.Job.Units)} ({(solution.Job.Movement.IsAssumed ? "assumed" : "as given")}).";
        yield return $"With the wire slack, the end fitting stays in its pocket and the outer stays in its {(solution.Bracket!.Stop.IsSlot ? "slot" : "hole")}.";
        if (OtherCableText.Check(solution.Job) is { } others)
        {
            yield return others;
        }

        if (OtherCableText.CheckTogether(solution.Job) is { } together)
        {
            yield return together;
        }

        yield return "The bolts are at their torque and marked with paint; the locknuts are tight.";
        yield return "Covers, hoses and air filter in place, bonnet shut, steering turned from lock to lock: let the pedal slip once more; the valve closes at once.";
    }

    private string Reads(double? volts) => volts is { } v ? $", the sensor reads {_units.Volts(v)}" : "";
}
