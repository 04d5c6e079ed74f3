using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Drawing.Text;

/// <summary>The numbers of a bracket's strength; drawing and report say the same.</summary>
internal static class StrengthText
{
    /// <summary>1 ksi in MPa (NIST SP 811, appendix B.8).</summary>
    private const double Ksi = 6.894757;

    /// <summary>Unit of stress that goes with a unit of length.</summary>
    public static string StressUnit(UnitSystem units) => units == UnitSystem.Inch ? "ksi" : "MPa";

    /// <summary>A stress (MPa) in that unit.</summary>
    public static double InUnit(double stress, UnitSystem units) => units == UnitSystem.Inch ? stress / Ksi : stress;

    /// <summary>A stress (MPa) without its unit.</summary>
    public static string Stress(double stress, UnitSystem units) =>
        InUnit(stress, units).ToString(units == UnitSystem.Inch ? "0.0" : "0", CultureInfo.InvariantCulture);

    /// <summary>Heads of the columns of <see cref="Loads"/>.</summary>
    public static IReadOnlyList<string> LoadHeads(UnitSystem units) => ["Load", "Tension", "Give", $"Stress, {StressUnit(units)}", "At (flat)"];

    /// <summary>The loads at the stop with what they do; places are counted from the flat pattern's lower left corner.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Loads(Solution solution, StrengthReport report, ValueFormat value)
    {
        var units = solution.Job.Units;
        var corner = solution.Bracket!.Flat.Blank.Outline.Bounds.Min;
        IReadOnlyList<string> Row(string name, LoadCase load) =>
        [
            name, CheckText.Number(Quantity.Force, load.Tension, units), value.Length(load.Give), Stress(load.LargestStress, units),
            $"{value.Length(load.At.X - corner.X)}; {value.Length(load.At.Y - corner.Y)}",
        ];
        return [Row("Largest of an opening", report.Opening), Row("Pedal stamped on", report.Stamped)];
    }

    /// <summary>Natural frequencies and the engine, what limits the proof load, and what the calculation is worth.</summary>
    public static IReadOnlyList<string> Notes(StrengthReport report, UnitSystem units) =>
    [
        $"Natural frequencies {string.Join(", ", report.Frequencies.Select(Frequency))} Hz, the outer's end hanging on the stop"
            + (report.FiringFrequency is { } f ? $"; the engine fires at up to {Frequency(f)} Hz." : "; the engine's speed is not told."),
        report.LimitingFootForce is { } foot
            ? $"Stamped on: a foot of {CheckText.Number(Quantity.Force, foot, units)} on the pad."
            : "Stamped on: the floor stops the pedal; what it pulls beyond wide open stretches wire, outer and bracket.",
        $"Shell elements on {report.Flat.Nodes.Length.ToString(CultureInfo.InvariantCulture)} nodes, washers held rigidly; von Mises stress, the larger of both sides. Movement of the vibration not to scale.",
        "A calculation for choosing, not a test: welds, cracks, rough edges and a mount that gives are not in it.",
    ];

    /// <summary>A frequency (Hz) without its unit.</summary>
    public static string Frequency(double value) => value.ToString("0", CultureInfo.InvariantCulture);
}
