using System.Globalization;
using BracketGen.Design.Checks;
using BracketGen.Geometry;
using BracketGen.Units;

namespace BracketGen.Words.Checks;

/// <summary>The numbers of a check as people read them, in the job's unit.</summary>
public static class CheckText
{
    // NIST SP 811, appendix B.8: 1 lbf = 0.453 592 37 kg x 9.806 65 m/s².
    private const double PoundForce = 0.45359237 * 9.80665;

    /// <summary>A check's value, limit or margin with its unit.</summary>
    /// <param name="unit">What the number is.</param>
    /// <param name="value">The number in the internal unit.</param>
    /// <param name="units">Unit of length.</param>
    public static string Number(Quantity unit, double value, UnitSystem units)
    {
        if (!double.IsFinite(value))
        {
            return double.IsNaN(value) ? "not known" : value > 0 ? "without end" : "none";
        }

        var text = unit switch
        {
            Quantity.Length when units == UnitSystem.Inch => (value / 25.4).ToString("0.000", CultureInfo.InvariantCulture) + " in",
            Quantity.Length => value.ToString("0.0#", CultureInfo.InvariantCulture) + " mm",
            Quantity.Angle => new Angle(value).Degrees.ToString("0.0", CultureInfo.InvariantCulture) + "°",
            // A probability near one must not be rounded to a certainty.
            Quantity.Fraction when value is > 0.985 and < 1 => (Math.Floor(10_000 * value) / 100).ToString("0.0#", CultureInfo.InvariantCulture) + " %",
            Quantity.Fraction => (100 * value).ToString("0", CultureInfo.InvariantCulture) + " %",
            Quantity.Force when units == UnitSystem.Inch => (value / PoundForce).ToString("0.0", CultureInfo.InvariantCulture) + " lbf",
            Quantity.Force => value.ToString("0.0", CultureInfo.InvariantCulture) + " N",
            Quantity.Voltage => value.ToString("0.00", CultureInfo.InvariantCulture) + " V",
            Quantity.Frequency => value.ToString("0", CultureInfo.InvariantCulture) + " Hz",
            _ => value.ToString("0.##", CultureInfo.InvariantCulture),
        };
        return text.StartsWith("-0", StringComparison.Ordinal) && text.All(c => c is '-' or '0' or '.' or ' ' or 'm' or 'i' or 'n' or '°' or '%' or 'N' or 'V' or 'l' or 'b' or 'f' or 'H' or 'z')
            ? text[1..]
            : text;
    }

    /// <summary>A check's value.</summary>
    public static string Value(Check check, UnitSystem units) => Number(check.Unit, check.Value, units);

    /// <summary>A check's limit: «at least 3.0 mm».</summary>
    public static string Limit(Check check, UnitSystem units) =>
        (check.Bound == Bound.AtLeast ? "at least " : "at most ") + Number(check.Unit, check.Limit, units);

    /// <summary>A check's margin.</summary>
    public static string Margin(Check check, UnitSystem units) => Number(check.Unit, check.Margin, units);

    /// <summary>What a check's kind means, in one word or two.</summary>
    public static string Kind(CheckKind kind) => kind switch
    {
        CheckKind.Safety => "safety",
        CheckKind.Function => "function",
        CheckKind.Making => "making",
        _ => "advice",
    };
}
