using System.Globalization;
using BracketGen.Geometry;
using BracketGen.Units;

namespace BracketGen.Drawing.Sheet;

/// <summary>How a drawing writes its values: unit, decimals, zeros, tolerances.</summary>
/// <remarks>
/// Millimetres: no trailing zeros, a leading zero (ISO 129-1; decimal point instead of ISO's comma, as most workshops' machines show
/// it). Inches: a fixed number of decimals, no leading zero (ASME Y14.5, 4.3.2).
/// </remarks>
/// <param name="Units">Unit of lengths.</param>
/// <param name="Decimals">Decimals of a length: at most in millimetres, exactly in inches.</param>
/// <param name="AngleDecimals">Decimals of an angle in degrees, at most.</param>
public sealed record ValueFormat(UnitSystem Units, int Decimals, int AngleDecimals = 1)
{
    /// <summary>Millimetres to two decimals.</summary>
    public static readonly ValueFormat Millimetre = new(UnitSystem.Metric, 2);

    /// <summary>Inches to three decimals.</summary>
    public static readonly ValueFormat Inch = new(UnitSystem.Inch, 3);

    /// <summary>The usual format of a unit.</summary>
    public static ValueFormat Of(UnitSystem units) => units == UnitSystem.Inch ? Inch : Millimetre;

    /// <summary>Name of the unit of lengths: "mm" or "in".</summary>
    public string UnitName => Units == UnitSystem.Inch ? "in" : "mm";

    /// <summary>A length (mm), with its tolerance where it has one: "40 ±0.2", "40 +0.1/-0.2".</summary>
    public string Length(double length, LengthTolerance? tolerance = null) => Write(length, Unsigned, tolerance, "");

    /// <summary>A diameter (mm): "Ø6.6".</summary>
    public string Diameter(double diameter, LengthTolerance? tolerance = null) => "Ø" + Length(diameter, tolerance);

    /// <summary>A radius (mm): "R3".</summary>
    public string Radius(double radius, LengthTolerance? tolerance = null) => "R" + Length(radius, tolerance);

    /// <summary>A thickness (mm): "t3", ISO 129-1.</summary>
    public string Thickness(double thickness) => "t" + Length(thickness);

    /// <summary>An angle in degrees: "37.5°", "90° ±1°".</summary>
    public string Degrees(Angle angle, LengthTolerance? tolerance = null) => Write(angle.Radians, InDegrees, tolerance, "°");

    /// <summary>A length with its unit, for running text: "40 mm", ".250 in".</summary>
    public string WithUnit(double length) => $"{Length(length)} {UnitName}";

    private static string Write(double value, Func<double, string> number, LengthTolerance? tolerance, string unit)
    {
        var nominal = number(value) + unit;
        if (tolerance is not { } t)
        {
            return nominal;
        }

        return t.Lower == -t.Upper
            ? $"{nominal} ±{number(t.Upper)}{unit}"
            : $"{nominal} {Signed(t.Upper, number)}{unit}/{Signed(t.Lower, number)}{unit}";
    }

    private static string Signed(double value, Func<double, string> number)
    {
        var text = number(value);
        var isZero = text.All(c => c is '0' or '.');
        return isZero || text[0] == '-' ? text : "+" + text;
    }

    private string Unsigned(double length)
    {
        if (Units == UnitSystem.Inch)
        {
            var text = Fixed(length / 25.4, Decimals);
            return text.StartsWith("0.", StringComparison.Ordinal) ? text[1..]
                : text.StartsWith("-0.", StringComparison.Ordinal) ? "-" + text[2..]
                : text;
        }

        return Trimmed(Fixed(length, Decimals));
    }

    private string InDegrees(double radians) => Trimmed(Fixed(radians * 180 / Math.PI, AngleDecimals));

    /// <summary>Half away from zero, on the decimal number a reader would see: 0.125 is 0.13, as on the calculator beside the drawing.</summary>
    private static string Fixed(double value, int decimals)
    {
        // Twelve digits first: 40.2 * 25.4 / 25.4 must not fall on the wrong side of a half for its sixteenth digit.
        var steady = Math.Round((decimal)value, Math.Min(decimals + 8, 20));
        var rounded = Math.Round(steady, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0m : rounded).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    private static string Trimmed(string number) => number.Contains('.') ? number.TrimEnd('0').TrimEnd('.') : number;
}
