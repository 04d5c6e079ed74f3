using System.Text.RegularExpressions;
using BracketGen.Geometry;
using BracketGen.Units;

namespace BracketGen.Drawing.Sheet;

/// <summary>How a drawing writes its values: unit, decimals, zeros, tolerances.</summary>
/// <remarks>
/// Millimetres: no trailing zeros, a leading zero (ISO 129-1; decimal point instead of ISO's comma, as most workshops' machines show
/// it). Inches: a fixed number of decimals, no leading zero (ASME Y14.5-2018, 4.3.2).
/// </remarks>
/// <param name="Units">Unit of lengths.</param>
/// <param name="Decimals">Decimals of a length: at most in millimetres, exactly in inches.</param>
/// <param name="AngleDecimals">Decimals of an angle in degrees, at most.</param>
/// <param name="LeadingZero">Whether inches below one have a zero before the point, as everywhere but on drawings.</param>
public sealed partial record ValueFormat(UnitSystem Units, int Decimals, int AngleDecimals = 1, bool LeadingZero = false)
{
    /// <summary>Millimetres to two decimals.</summary>
    public static readonly ValueFormat Millimetre = new(UnitSystem.Metric, 2);

    /// <summary>Inches to three decimals.</summary>
    public static readonly ValueFormat Inch = new(UnitSystem.Inch, 3);

    /// <summary>A drawing's format in a unit.</summary>
    public static ValueFormat Of(UnitSystem units) => units == UnitSystem.Inch ? Inch : Millimetre;

    /// <summary>The format of tables outside of drawings.</summary>
    public static ValueFormat Tabled(UnitSystem units) => Of(units) with { LeadingZero = true };

    /// <summary>Name of the unit of lengths: "mm" or "in".</summary>
    public string UnitName => Units.Symbol(Quantity.Length);

    /// <summary>Running text in the drawing's style: inches, pounds and stresses below one lose the zero before the point.</summary>
    public string Styled(string text) => Units == UnitSystem.Inch && !LeadingZero ? LeadingZeros().Replace(text, "") : text;

    /// <summary>A length (mm), with its tolerance where it has one: "40 ±0.2", "40 +0.1/-0.2".</summary>
    public string Length(double length, LengthTolerance? tolerance = null) => Write(length, Unsigned, tolerance, "");

    /// <summary>A width that a tolerance may not exceed (mm), rounded down: to 0.05 mm, below 0.2 mm to 0.01 mm, to a thousandth of an inch.</summary>
    public string RoundedDown(double length)
    {
        const double slack = 1e-9;
        var step = Units == UnitSystem.Inch ? UnitTable.InchLength.Factor / 1000 : length < 0.2 ? 0.01 : 0.05;
        return Length(step * Math.Floor(length / step + slack));
    }

    /// <summary>A diameter (mm): "Ø6.6".</summary>
    public string Diameter(double diameter, LengthTolerance? tolerance = null) => "Ø" + Length(diameter, tolerance);

    /// <summary>A radius (mm): "R3".</summary>
    public string Radius(double radius, LengthTolerance? tolerance = null) => "R" + Length(radius, tolerance);

    /// <summary>A thickness (mm): "t3", ISO 129-1.</summary>
    public string Thickness(double thickness) => "t" + Length(thickness);

    /// <summary>An angle in degrees: "37.5°", "90° ±1°".</summary>
    public string Degrees(Angle angle, LengthTolerance? tolerance = null) => Write(angle.Radians, InDegrees, tolerance, "°");

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
        var text = UnitSystems.Fixed(Units.In(Quantity.Length, length), Decimals);
        return Units != UnitSystem.Inch ? Trimmed(text) : LeadingZero ? text : WithoutZero(text);
    }

    private static string WithoutZero(string number) => number.StartsWith("0.", StringComparison.Ordinal) ? number[1..]
        : number.StartsWith("-0.", StringComparison.Ordinal) ? "-" + number[2..]
        : number;

    private string InDegrees(double radians) => Trimmed(UnitSystems.Fixed(Units.In(Quantity.Angle, radians), AngleDecimals));

    private static string Trimmed(string number) => number.Contains('.') ? number.TrimEnd('0').TrimEnd('.') : number;

    // Also the first of two lengths that share their unit: "0.250 to 0.500 in", "0.250; 0.500 in".
    [GeneratedRegex(@"(?<![\d.])0(?=\.\d+(?:(?: to |; |, | x )\d*\.\d+)*[ \u00A0](?:in|lb|lbf|ksi|psi)\b)")]
    private static partial Regex LeadingZeros();
}
