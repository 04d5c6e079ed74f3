using System.Globalization;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Report.Pictures;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Solid;
using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Drawing.Report;

/// <summary>What every section of a report is written from.</summary>
internal sealed class ReportScene(Solution solution, IReadOnlyList<string> allowed)
{
    /// <summary>Facets within this (mm) of round surfaces: a screen shows no finer.</summary>
    private const double Chord = 0.08;

    private readonly Lazy<FoldedMesh?> _mesh = new(() => solution.Bracket is { } b ? FoldedMesh.Of(b.Folded, Chord) : null);
    private readonly Lazy<SweepMotion> _motion = new(() => new(solution));

    public Solution Solution => solution;

    public Job Job => solution.Job;

    /// <summary>Failed safety checks that were allowed by name.</summary>
    public IReadOnlyList<string> Allowed => allowed;

    public UnitSystem Units => Job.Units;

    /// <summary>How the drawing writes values without their unit.</summary>
    public ValueFormat Value => ValueFormat.Of(Units);

    /// <summary>The folded bracket, throttle frame as measured; null where there is none.</summary>
    public FoldedMesh? Mesh => _mesh.Value;

    /// <summary>Quadrant and wire from the released pedal to the floor.</summary>
    public SweepMotion Motion => _motion.Value;

    public string Length(double value) => CheckText.Number(Quantity.Length, value, Units);

    public string Force(double value) => CheckText.Number(Quantity.Force, value, Units);

    public string Part(double value) => CheckText.Number(Quantity.Fraction, value, Units);

    public string Volts(double value) => CheckText.Number(Quantity.Voltage, value, Units);

    public string Angle(Geometry.Angle angle) => CheckText.Number(Quantity.Angle, angle.Radians, Units);

    public string Torque(double value) => TorqueQuantity.Text(value);

    public string Mass(double mass) => Units.Write(Quantity.Mass, mass);

    public AxisUnit LengthQuantity => Units == UnitSystem.Inch ? new("in", 1 / 25.4, "0.000") : new("mm", 1, "0.0#");

    // NIST SP 811, appendix B.8: 1 lbf = 0.453 592 37 kg x 9.806 65 m/s².
    public AxisUnit ForceQuantity => Units == UnitSystem.Inch ? new("lbf", 1 / PoundForce, "0.0#") : new("N", 1, "0.0");

    public AxisUnit TorqueQuantity => Units == UnitSystem.Inch ? new("lbf in", 1 / (25.4 * PoundForce), "0.00") : new("N mm", 1, "0");

    private const double PoundForce = 0.45359237 * 9.80665;

    /// <summary>A plain number to some decimals at most.</summary>
    public static string Number(double value, string format = "0.##") => value.ToString(format, CultureInfo.InvariantCulture);
}

/// <summary>How a kind of quantity is shown: unit, factor from the internal unit, number format.</summary>
internal sealed record AxisUnit(string Unit, double Factor, string Format)
{
    public static readonly AxisUnit Degrees = new("°", 180 / Math.PI, "0.0");

    public static readonly AxisUnit Percent = new("%", 100, "0");

    public static readonly AxisUnit Volts = new("V", 1, "0.00");

    /// <summary>With the unit: «12.5 mm», «90.0°».</summary>
    public string Text(double value) => Bare(value) + (Unit == "°" ? "" : " ") + Unit;

    /// <summary>Without the unit.</summary>
    public string Bare(double value)
    {
        if (!double.IsFinite(value))
        {
            return "-";
        }

        var text = (value * Factor).ToString(Format, CultureInfo.InvariantCulture);
        return text.StartsWith('-') && text.All(c => c is '-' or '0' or '.') ? text[1..] : text;
    }
}
