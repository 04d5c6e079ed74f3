using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Forming;
using BracketGen.SheetMetal.Tooling;
using BracketGen.Units;

namespace BracketGen.Words.ShopDrawing;

/// <summary>The steps in which a bracket is bent, as a table with a column for each step; drawing and report print the same.</summary>
public static class BendStepText
{
    /// <summary>Title of the table.</summary>
    public const string Title = "Order of bends";

    /// <summary>Heading of what is to be minded.</summary>
    public const string NotesHeading = "Bending";

    /// <summary>Under the picture of a step before the bend is made.</summary>
    public const string Before = "before";

    /// <summary>Under the picture of a step with the bend made.</summary>
    public const string After = "bent";

    /// <summary>A step and the bend that it makes.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="step">Number of the step, from 0.</param>
    public static string Step(BendPlan plan, int step) => $"Step {Counted.Number(step + 1)}: bend {Counted.Number(plan.Steps[step].Bend + 1)}";

    /// <summary>What a picture of a step shows, for people who cannot see it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="step">Number of the step, from 0.</param>
    public static string Spoken(BendPlan plan, int step) =>
        $"{Step(plan, step)}: sheet {(plan.Steps[step].Clamp is null ? "between punch and die" : "in the clamp")}, seen along the bend, before and after; the table of the order of bends gives the numbers.";

    /// <summary>Heads of the table for some of the steps.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="steps">Which steps, from 0.</param>
    public static IReadOnlyList<string> Heads(BendPlan plan, IEnumerable<int> steps) => ["What", .. steps.Select(s => Step(plan, s))];

    /// <summary>The table: what it is, and what it is in each of some steps.</summary>
    /// <param name="bracket">The bracket, with a plan.</param>
    /// <param name="steps">Which steps, from 0.</param>
    /// <param name="units">Units of the job.</param>
    public static IReadOnlyList<IReadOnlyList<string>> Rows(Bracket bracket, IReadOnlyList<int> steps, UnitSystem units)
    {
        (string Name, Func<BendStep, Bend, string> Of)[] rows =
        [
            ("Side up", (s, _) => s.TopUp ? "the side seen" : "the far side"),
            ("Bend angle, from flat", (_, b) => $"{units.Write(Quantity.Angle, b.Turn.Magnitude.Radians)} {Deviation(units)}"),
            ("Included angle", (_, b) => Included(b, units)),
            ("Springback allowance", (s, _) => units.Write(Quantity.Angle, s.OverBend.Radians)),
            ("Included angle under the tool", (s, b) => units.Write(Quantity.Angle, (Angle.Straight - b.Turn.Magnitude - s.OverBend).Radians)),
            ("Inside radius", (_, b) => units.WriteSize(b.InsideRadius)),
            ("Die", (s, _) => s.Die is { } die ? $"V {Phrases.Tied(units.WriteSize(die.Opening))}, {units.Write(Quantity.Angle, die.Angle.Radians)}" : PartTableText.Nothing),
            ("Punch", (s, _) => s.Punch is { } punch ? punch.Name + (s.PunchReversed ? ", turned round" : "") : PartTableText.Nothing),
            ("Tool length", (s, _) => s.ToolLength is { } length ? units.WriteSize(length) : PartTableText.Nothing),
            ("Bent over", (s, _) => s.Clamp is { } clamp ? Over(clamp) : PartTableText.Nothing),
            ("New flange", (s, _) => s.Clamp is not null ? s.NewFlangeInFront ? "clamped" : "turned up" : s.NewFlangeInFront ? "in front" : "at the back gauge"),
            ("Placed by", (s, b) => PlacedBy(bracket, s, b)),
            ("Gauge distance", (s, _) => s.Gauge.Fingers.IsEmpty ? PartTableText.Nothing
                : string.Join("; ", s.Gauge.Fingers.Select(f => units.Write(Quantity.Length, f.Distance)).Distinct())),
            ("Fingers from the left end", (s, _) => s.Gauge.Fingers.IsEmpty ? PartTableText.Nothing : string.Join("; ", s.Gauge.Fingers.Select(f => units.Write(Quantity.Length, f.Along)))),
            ("Place of the bend line", (s, _) => "±" + units.Write(Quantity.Length, s.Gauge.PlusMinus)),
            ("Force", (s, _) => s.Clamp is null ? units.WriteCoarse(Quantity.Force, s.Force) : PartTableText.Nothing),
            ("Force on a length", (s, _) => s.Clamp is null ? ForceOnLength(s, units) : PartTableText.Nothing),
            ("Sheet in front of the die", (s, _) => s.Clamp is null ? units.Write(Quantity.Length, Math.Max(0, s.HandHold)) : PartTableText.Nothing),
        ];
        var plan = bracket.Plan!;
        return
        [
            .. rows.Select(r => (IReadOnlyList<string>)[r.Name, .. steps.Select(i => r.Of(plan.Steps[i], bracket.Flat.Bends[plan.Steps[i].Bend]))])
                .Where(r => r.Skip(1).Any(c => c != PartTableText.Nothing)),
        ];
    }

    /// <summary>What is to be minded when the bracket is bent.</summary>
    /// <param name="bracket">The bracket, with a plan.</param>
    /// <param name="units">Units of the job.</param>
    public static IReadOnlyList<string> Notes(Bracket bracket, UnitSystem units)
    {
        var plan = bracket.Plan!;
        List<string> notes =
        [
            $"The side seen is the side up in the flat pattern. P1, P2 are points of the drawing's outline table.{(plan.Steps.Any(s => s.Clamp is null) ? " Gauge distance: from the middle of the bend to the finger. Left: as you stand in front." : "")}",
            "Springback allowance: calculated for sheet that does not harden. Bend a test strip, measure the angle, and correct it.",
        ];
        var scribed = Bends(plan, s => s.Gauge.Kind == GaugeKind.ScribedLine);
        if (scribed.Length > 0)
        {
            notes.Add($"{scribed}: bend to the scribed line. Its place is good to ±{Phrases.Tied(units.Write(Quantity.Length, BackGauge.LineError))}, and the probabilities count with that.");
        }

        var clamped = Bends(plan, s => s.Clamp is not null);
        if (clamped.Length > 0)
        {
            notes.Add($"{clamped}: scribe both lines of the bend from the template, on the inside of the bend. Set the line on the clamped side where the radius of the edge or bar begins, its radius behind the front; the other shows where the bend ends.");
        }

        if (plan.TurnsOver > 0)
        {
            notes.Add($"Turn the sheet over {(plan.TurnsOver == 1 ? "once" : Counted.Of(plan.TurnsOver, "time"))}: see \"Side up\".");
        }

        var near = Bends(plan, s => s.Clamp is null && s.HandHold < BendStep.SafeHandHold);
        if (near.Length > 0)
        {
            notes.Add($"HANDS. {near}: the sheet reaches out less than {Phrases.Tied(units.WriteSize(BendStep.SafeHandHold))} in front of the die (common practice, no source). Do not hold it by hand: use a magnet, a support, or a tab that is cut off afterwards. Never reach between the tools.");
        }

        return notes;
    }

    /// <summary>What to measure on the bent part: "included angle 97.3° at bend 1, 90.0° at bend 2; ±1.0°".</summary>
    /// <param name="bracket">A bracket with at least one bend.</param>
    /// <param name="units">Units of the job.</param>
    public static string Measured(Bracket bracket, UnitSystem units) =>
        $"included angle {string.Join(", ", bracket.Flat.Bends.Select((b, i) => $"{Included(b, units)} at bend {Counted.Number(i + 1)}"))}; {Deviation(units)}";

    private static string Included(Bend bend, UnitSystem units) => units.Write(Quantity.Angle, (Angle.Straight - bend.Turn.Magnitude).Radians);

    private static string Deviation(UnitSystem units) => "±" + units.Write(Quantity.Angle, SeatTolerances.BendAngle.Radians);

    /// <summary>What a bend is bent over, where it is not bent on a die.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="bend">Number of the bend, from 0.</param>
    public static string BentOver(Bracket bracket, int bend) =>
        bracket.Plan?.Steps.FirstOrDefault(s => s.Bend == bend)?.Clamp is { } clamp ? Over(clamp) : PartTableText.Nothing;

    /// <summary>A folder, hand brake or vice by its kind and name.</summary>
    public static string Over(BendingClamp clamp) => $"{Kind(clamp.Kind)}, {clamp.Name}";

    /// <summary>What bends over an edge.</summary>
    public static string Kind(ClampKind kind) => kind switch
    {
        ClampKind.Folder => "folder",
        ClampKind.HandBrake => "hand brake",
        _ => "vice",
    };

    private static string Bends(BendPlan plan, Func<BendStep, bool> which)
    {
        string[] numbers = [.. plan.Steps.Where(which).Select(s => s.Bend).Order().Select(b => Counted.Number(b + 1))];
        return numbers.Length == 0 ? "" : $"{(numbers.Length == 1 ? "Bend" : "Bends")} {Phrases.List(numbers)}";
    }

    private static string PlacedBy(Bracket bracket, BendStep step, Bend bend) => step.Gauge.Kind switch
    {
        GaugeKind.Edge => $"edge {EdgesAt(bracket, step, bend)}",
        GaugeKind.TwoPoints => $"two points, on {EdgesAt(bracket, step, bend)}",
        GaugeKind.Flange => "outside of the flange that is up",
        _ => "scribed line",
    };

    // The edges of the outline that the fingers meet, by their points.
    private static string EdgesAt(Bracket bracket, BendStep step, Bend bend)
    {
        Segment[] edges = [.. bracket.Edges()];
        return string.Join(" and ", step.Gauge.Fingers
            .Select(f => step.OnFlat(bend, f).Vector)
            .Select(p => Array.IndexOf(edges, edges.MinBy(e => e.DistanceTo(p))))
            .Distinct().Select(i => $"{PartTableText.Point(i)} to {PartTableText.Point((i + 1) % edges.Length)}"));
    }

    // N/mm is kN/m: what tables of press brakes give.
    private static string ForceOnLength(BendStep step, UnitSystem units) => units == UnitSystem.Metric
        ? $"{units.Number(Quantity.Stiffness, step.ForcePerLength)} of {units.Number(Quantity.Stiffness, step.MaxForcePerLength)} kN/m"
        : $"{units.Number(Quantity.Stiffness, step.ForcePerLength)} of {units.Write(Quantity.Stiffness, step.MaxForcePerLength)}";
}
