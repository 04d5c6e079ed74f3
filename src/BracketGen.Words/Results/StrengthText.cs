using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Geometry;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Words.Results;

/// <summary>A bracket's strength in words; drawing and report say the same.</summary>
public static class StrengthText
{
    /// <summary>Heading of the notes.</summary>
    public const string Heading = "Strength";

    /// <summary>Said if nothing was calculated.</summary>
    public const string NotCalculated = "Strength was NOT calculated: whether the bracket bends, shakes or cracks is not known.";

    /// <summary>Heading of the stress picture.</summary>
    public const string StressHeading = "Stress, pedal stamped on";

    /// <summary>Title of the scale of the vibration.</summary>
    public const string OfMaximum = "of maximum";

    /// <summary>Title of the table of loads.</summary>
    public const string LoadsTitle = "Loads at the stop";

    /// <summary>Heads of the columns of <see cref="Loads"/>.</summary>
    public static IReadOnlyList<string> LoadHeads { get; } = ["Load", "Tension", "Give", "Stress", "At (flat)"];

    /// <summary>Heading of the picture of the first vibration.</summary>
    public static string VibrationHeading(StrengthReport report) => $"First vibration, {UnitSystem.Metric.Write(Quantity.Frequency, report.Frequencies[0])}";

    /// <summary>The loads at the stop with what they do; places are counted from the flat pattern's lower left corner.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Loads(Solution solution, StrengthReport report)
    {
        var units = solution.Job.Units;
        var corner = solution.Bracket!.Flat.Blank.Outline.Bounds.Min;
        IReadOnlyList<string> Row(string name, LoadCase load) =>
        [
            name, units.Write(Quantity.Force, load.Tension), units.WriteFine(Quantity.Length, load.Give), WithError(report, units.Write(Quantity.Stress, load.LargestStress)),
            $"{units.Number(Quantity.Length, load.At.X - corner.X)}; {units.Write(Quantity.Length, load.At.Y - corner.Y)}",
        ];

        return [Row("Maximum of an opening", report.Opening), Row("Pedal stamped on", report.Stamped)];
    }

    // Rounded up to a tenth of a per cent: an error is not made smaller than it is.
    private static string WithError(StrengthReport report, string stress) =>
        report.MeshError is { } error ? $"{stress} ±{Phrases.Plain(Math.Ceiling(1000 * error) / 10)} %" : stress;

    /// <summary>A check as a note.</summary>
    public static string Note(Check check, UnitSystem units) =>
        $"{check.Title()}: {CheckText.Value(check, units)}, {CheckText.Limit(check, units)}{(check.Passes ? "." : $" - {Mark(check)}.")}";

    /// <summary>What stands behind a check that does not pass: advice does not fail, and what nobody knows did not fail either.</summary>
    public static string Mark(Check check) => check.State == CheckState.NotKnown ? "NOT KNOWN" : check.Kind == CheckKind.Advice ? "advice" : "FAILED";

    /// <summary>What hangs on the stop, part by part.</summary>
    public static string Hanging(EndBody end, UnitSystem units) =>
        $"On the stop hang {string.Join(", ", end.Parts.Select(p => $"{PartName(p.Id)} {units.Write(Quantity.Mass, p.Mass)}"))}: {units.Write(Quantity.Mass, end.Mass)}, "
        + $"centre of gravity {units.Write(Quantity.Length, end.Centre)} from the middle of the sheet towards the outer.";

    /// <summary>With which stiffness of the outer the proof load was found.</summary>
    public static string OuterCounted(StrengthReport report, UnitSystem units) => report.OuterStiffness.Evidence == Evidence.Assumed
        ? $"The outer's axial stiffness was not measured and counts as {units.WriteCoarse(Quantity.Force, report.OuterStiffness.Max)}, the stiffest usual, for the proof load."
        : $"The outer's axial stiffness counts as {units.WriteCoarse(Quantity.Force, report.OuterStiffness.Max)}, its stiff end, for the proof load.";

    /// <summary>What the outer's stiffness decides.</summary>
    public static string OuterLimit(StrengthReport report, UnitSystem units) => report.OuterStiffnessAtLimit switch
    {
        double.PositiveInfinity => "However stiff the outer is, the bracket does not yield.",
        0 => "However soft the outer is, the factor against yield is too small.",
        var limit => $"At {units.WriteCoarse(Quantity.Force, limit)} the factor against yield is just what it must be.",
    };

    /// <summary>What the proof load counts.</summary>
    public static string ProofLoadRemark(MechanismReport mechanism) => mechanism.BracketIsKnown
        ? "tension at the stop, the outer at its stiff end: the proof load of the bracket"
        : "tension at a rigid stop, the outer at its stiff end; make counts the bracket's give and tolerances too";

    /// <summary>A part of what hangs on the stop.</summary>
    public static string PartName(EndPartId part) => part switch
    {
        EndPartId.QuadrantNut => "nut towards the quadrant",
        EndPartId.Screw => "adjuster screw",
        EndPartId.OuterNut => "nut towards the outer",
        EndPartId.Head => "adjuster head",
        EndPartId.Nose => "nose",
        EndPartId.Neck => "neck",
        EndPartId.Collar => "collar",
        EndPartId.Body => "body of the end",
        EndPartId.Clip => "clip",
        _ => "outer",
    };

    /// <summary>Natural frequencies and the engine, what limits the proof load, and what the calculation is worth.</summary>
    public static IReadOnlyList<string> Notes(StrengthReport report, UnitSystem units) =>
    [
        $"Natural frequencies {string.Join(", ", report.Frequencies.Select(f => units.Number(Quantity.Frequency, f)))} {units.Symbol(Quantity.Frequency)}, with what hangs on the stop"
            + (report.FiringFrequency is { } firing ? $"; the engine fires at up to {units.Write(Quantity.Frequency, firing)}." : "; the speed of the engine is not given."),
        Hanging(report.End, units),
        $"{OuterCounted(report, units)} {OuterLimit(report, units)}",
        report.LimitingFootForce is { } foot
            ? $"Pedal stamped on: a foot force of {units.Write(Quantity.Force, foot)} at the pad."
            : "Pedal stamped on: the floor stops the pedal; pull beyond wide open stretches wire, outer and bracket.",
        Life(report, units),
        .. report.Ring is { } ring ? new[] { RingStrengthText.Of(ring, units) } : [],
        .. Screws(report, units),
        $"Shell elements on {report.Flat.Nodes.Length.ToString(CultureInfo.InvariantCulture)} nodes, washers held rigidly; von Mises stress, the larger of both sides{(report.MeshError is null ? "" : "; ± is what the mesh may still miss")}. Movement of the vibration not to scale.",
        "This is a calculation for choosing, not a test: it leaves out welds, cracks, edges rougher than usual and a mount that gives.",
    ];

    /// <summary>How long the bracket must last, and the place that decides it.</summary>
    private static string Life(StrengthReport report, UnitSystem units)
    {
        var life = report.Life;
        var heat = report.Metal.Temperature is { } hot ? $"at {Phrases.Plain(hot)} °C" : "cold: its temperature is not given";
        var place = life.IsAtEdge ? $"at the cut edge, {Phrases.Plain(report.Metal.EdgeFactor)} of the sheet's" : "inside the sheet";
        var level = life.Constant > 0 ? $"; the bosses, drawn level by the screws, add {units.Write(Quantity.Stress, life.Constant)} that stays" : "";
        return $"Life: {Phrases.Count((int)Math.Round(life.Cycles))} openings, {heat}. Where it would crack first it withstands an alternating stress of {units.Write(Quantity.Stress, life.Permitted)} ({place}); "
            + $"an opening makes {units.Write(Quantity.Stress, life.Openings)}{level}.";
    }

    /// <summary>What the screws hold with and what they must hold.</summary>
    private static IEnumerable<string> Screws(StrengthReport report, UnitSystem units)
    {
        foreach (var group in report.Joints.GroupBy(j => j.Joint))
        {
            var (joint, screw) = (group.Key, group.Key.Screw);
            yield return $"Screws {Phrases.List([.. group.Select(j => j.Hole)])}: {ScrewText.Size(screw)}, {screw.Class.Name}, {units.WriteCoarse(Quantity.Torque, screw.Torque)}. With every spread they clamp with "
                + $"{units.WriteCoarse(Quantity.Force, joint.MinClamp)} at least and strain themselves with {units.WriteCoarse(Quantity.Force, joint.MaxPreload)} at most. Pedal stamped on: "
                + string.Join("; ", group.Select(j => $"{j.Hole} holds {units.Write(Quantity.Force, Math.Max(0, j.Stamped.Pull))} off the boss, {units.Write(Quantity.Force, j.Stamped.Across)} along it and {units.Write(Quantity.Torque, j.Stamped.Tilt)} of tilt")) + ".";
        }
    }
}
