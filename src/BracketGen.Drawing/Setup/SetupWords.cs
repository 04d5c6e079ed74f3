using System.Globalization;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Drawing.Setup;

/// <summary>Numbers on the set-up sheet, in the job's unit.</summary>
internal sealed class SetupWords(UnitSystem units)
{
    // NIST SP 811, appendix B.8: 1 lbf = 4.448 221 615 260 5 N, 1 in = 25.4 mm, 1 ksi = 1000 lbf/in².
    private const double PoundForce = 4.448_221_615_260_5, Inch = 25.4;

    private bool IsInch => units == UnitSystem.Inch;

    /// <summary>A length (mm).</summary>
    public string Length(double value) => CheckText.Number(Quantity.Length, value, units).Replace(' ', '\u00A0');

    /// <summary>A size as it is ordered (mm): no more decimals than it has.</summary>
    public string Size(double value) => ValueFormat.Of(units).WithUnit(value).Replace(' ', '\u00A0');

    /// <summary>A range of lengths (mm): the unit once.</summary>
    public string Range(double from, double to)
    {
        var first = Length(from);
        return $"{first[..first.IndexOf('\u00A0', StringComparison.Ordinal)]} to {Length(to)}";
    }

    /// <summary>A voltage (V).</summary>
    public static string Volts(double value) => CheckText.Number(Quantity.Voltage, value, UnitSystem.Metric);

    /// <summary>An angle.</summary>
    public static string Degrees(Angle angle) => CheckText.Number(Quantity.Angle, angle.Radians, UnitSystem.Metric);

    /// <summary>A force (N), in thousands.</summary>
    public string Load(double value) => IsInch ? Number(value / PoundForce, "0", "lbf") : Number(value / 1000, "0.0", "kN");

    /// <summary>A torque (N·mm).</summary>
    public string Torque(double value) => IsInch ? Number(value / PoundForce / Inch, "0", "lbf in") : Number(value / 1000, "0.0", "N m");

    /// <summary>A stress (MPa).</summary>
    public string Stress(double value) => IsInch ? Number(value / PoundForce * Inch * Inch / 1000, "0", "ksi") : Number(value, "0", "MPa");

    // A number and its unit stay on one line.
    private static string Number(double value, string format, string unit) =>
        $"{value.ToString(format, CultureInfo.InvariantCulture)}\u00A0{unit.Replace(' ', '\u00A0')}";
}
