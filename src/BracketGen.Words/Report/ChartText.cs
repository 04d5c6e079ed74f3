using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Motion;
using BracketGen.Words.Results;

namespace BracketGen.Words.Report;

/// <summary>Title and remark of a chart.</summary>
public sealed record ChartWords(string Title, string Remark);

/// <summary>The charts in the report.</summary>
public static class ChartText
{
    /// <summary>Opening of the valve, as an axis.</summary>
    public const string Opening = "opening of the valve";

    /// <summary>Pedal as an axis.</summary>
    public const string Pedal = "pedal travel";

    /// <summary>Pad as an axis.</summary>
    public const string Pad = "pad travel";

    /// <summary>Pull as an axis.</summary>
    public const string WirePull = "wire pull";

    /// <summary>Moment arm.</summary>
    public const string MomentArm = "moment arm";

    /// <summary>Tension as an axis.</summary>
    public const string Tension = "tension";

    /// <summary>Foot force as an axis.</summary>
    public const string FootForce = "foot force";

    /// <summary>A part of a whole as an axis.</summary>
    public const string Part = "part of the full range";

    /// <summary>Sensor voltage.</summary>
    public const string Sensor = "sensor";

    /// <summary>Torque as an axis.</summary>
    public const string Torque = "torque";

    /// <summary>Pull by geometry.</summary>
    public const string ByGeometry = "by geometry";

    /// <summary>Pull under load.</summary>
    public const string WithLostMotion = "with lost motion";

    /// <summary>Level of the pull chart.</summary>
    public const string AvailablePull = "available pull";

    /// <summary>Tension at the quadrant.</summary>
    public const string AtQuadrant = "at the quadrant";

    /// <summary>Tension at the pedal while opening.</summary>
    public const string AtPedalOpening = "at the pedal, opening";

    /// <summary>Tension at the pedal while closing.</summary>
    public const string AtPedalClosing = "at the pedal, closing";

    /// <summary>Foot force going down.</summary>
    public const string GoingDown = "pedal going down";

    /// <summary>Foot force coming up.</summary>
    public const string ComingUp = "pedal coming up";

    /// <summary>Flow area.</summary>
    public const string FlowArea = "flow area";

    /// <summary>Level of the sensor chart.</summary>
    public const string ControllerMinimum = "minimum the controller accepts";

    /// <summary>Level of the sensor chart.</summary>
    public const string ControllerMaximum = "maximum the controller accepts";

    /// <summary>Torque of all springs.</summary>
    public const string Springs = "springs, as weak as they may be";

    /// <summary>Torque with one spring broken.</summary>
    public const string OneBroken = "the same, one spring broken";

    /// <summary>Torque that is taken.</summary>
    public const string Taken = "taken by friction and pedal";

    /// <summary>Speed of the engine as an axis.</summary>
    public const string EngineSpeed = "engine speed";

    /// <summary>Frequency as an axis.</summary>
    public const string Frequency = "frequency";

    /// <summary>An order of the engine.</summary>
    public static string Order(double order) => $"order {Phrases.Plain(order)}";

    /// <summary>A natural vibration of the bracket.</summary>
    public static string Vibration(int number) => $"vibration {number}";

    /// <summary>Orders of the engine.</summary>
    public static ChartWords OrdersChart(Engine engine) => new(
        "Orders of the engine over its speed", $"From idle ({ShakingText.Idle(engine)}) to maximum speed. Where an order crosses a level, the engine shakes the bracket at a natural frequency: the hardest in order {Phrases.Plain(engine.Orders[1])}, in which it fires.");

    /// <summary>Wire pull.</summary>
    public static ChartWords PullChart { get; } = new(
        "Wire pull over opening", "The curve begins with the free play. Where it stays under the level, the pedal opens the valve that far.");

    /// <summary>Moment arm.</summary>
    public static ChartWords ArmChart { get; } = new(
        "Moment arm over opening", "Distance from the shaft's axis to the line of the wire: the tension acts on the valve through it.");

    /// <summary>Tension.</summary>
    public static ChartWords TensionChart { get; } = new(
        "Wire tension over opening", "At the pedal, friction in the outer adds to the tension while the valve opens, and takes from it while it closes.");

    /// <summary>Foot force.</summary>
    public static ChartWords FootChart { get; } = new(
        "Foot force over pedal travel", "From the first move of the valve to wide open: friction makes the force larger going down than coming up.");

    /// <summary>Sensor.</summary>
    public static ChartWords VoltsChart { get; } = new("Sensor over pedal travel", "As measured, with the sensor where it sits now.");

    /// <summary>Return.</summary>
    public static ChartWords ReturnChart { get; } = new("Closing torque over opening", "The difference between the curves closes the valve.");

    /// <summary>Progression.</summary>
    public static ChartWords ProgressionChart(Progression progression) => new(
        "Progression: pedal to valve to flow",
        FormattableString.Invariant($"Off-idle gain: the first tenth of the pedal after the valve moves gives {progression.Suddenness:0.00} times its even share of the flow area. Above {Progression.Sudden:0} the engine is hard to drive slowly."));

    /// <summary>Opens the table of values.</summary>
    public static string Values(string title) => $"Values: {title.ToLowerInvariant()}";

    /// <summary>Name of the table of values.</summary>
    public static string TableName(string title) => $"Values of the chart: {title}";

    /// <summary>A chart for people who cannot see it.</summary>
    public static string Spoken(string title, IEnumerable<string> series, string over, string from, string to) =>
        $"{title}: {string.Join("; ", series)}; over {over} from {from} to {to}. The table below has the values.";

    /// <summary>One curve of it.</summary>
    public static string SpokenSeries(string name, string first, string last, string minimum, string maximum) =>
        $"{name} from {first} to {last}, minimum {minimum}, maximum {maximum}";

    /// <summary>A curve of which nothing is known.</summary>
    public static string SpokenUnknown(string name) => $"{name} not known";
}
