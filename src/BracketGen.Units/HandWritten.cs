using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace BracketGen.Units;

/// <summary>A number as people write it by hand, with more freedom than in a file: <c>2.5"</c>, <c>1 7/64″</c>, <c>1½ inches</c>, <c>31,5</c>.</summary>
/// <param name="Readings">Each number that may be meant, as <see cref="QuantityText"/> reads it; more than one where a comma may part decimals or thousands.</param>
/// <param name="Unit">The unit as files spell it, or as it was written where it is none that is known; empty without one.</param>
/// <param name="IsSure">Whether there is one way to read the number; false wherever it has a comma.</param>
public sealed partial record HandWritten(ImmutableArray<string> Readings, string Unit, bool IsSure)
{
    // A vulgar fraction is one character, which a telephone puts in for the three that were typed.
    private static readonly (char Sign, string Fraction)[] Fractions =
        [('½', "1/2"), ('¼', "1/4"), ('¾', "3/4"), ('⅛', "1/8"), ('⅜', "3/8"), ('⅝', "5/8"), ('⅞', "7/8"), ('⅓', "1/3"), ('⅔', "2/3")];

    private static readonly Dictionary<string, string> Words = new(StringComparer.OrdinalIgnoreCase)
    {
        ["\""] = "in", ["″"] = "in", ["”"] = "in", ["“"] = "in", ["''"] = "in", ["in."] = "in", ["inch"] = "in", ["inches"] = "in",
        ["millimetre"] = "mm", ["millimetres"] = "mm", ["millimeter"] = "mm", ["millimeters"] = "mm",
        ["degree"] = "deg", ["degrees"] = "deg", ["º"] = "deg", ["°"] = "deg",
        ["volt"] = "V", ["volts"] = "V", ["newton"] = "N", ["newtons"] = "N",
    };

    /// <summary>Whether the number is a common fraction, as inches are written and millimetres are not.</summary>
    public bool IsFraction => Readings[0].Contains('/');

    /// <summary>Whether the number is zero, which needs no unit.</summary>
    public bool IsZero => Value(0) == 0;

    /// <summary>A reading as a number.</summary>
    /// <param name="reading">Which of <see cref="Readings"/>.</param>
    public double Value(int reading) => QuantityText.Split(Readings[reading])!.Value.Number;

    /// <summary>Reads a text; null where it is no number with or without a unit.</summary>
    public static HandWritten? Read(string text)
    {
        var plain = Plain(text);
        if (WithComma().Match(plain) is { Success: true } comma)
        {
            return new(ReadingsOf(comma.Groups["number"].Value), UnitOf(comma.Groups["unit"].Value), IsSure: false);
        }

        return QuantityText.Split(plain) is var (_, unit)
            ? new([plain.AsSpan().TrimEnd()[..^unit.Length].Trim().ToString()], UnitOf(unit), IsSure: true)
            : null;
    }

    private static string Plain(string text)
    {
        var plain = text.Replace('\u2212', '-').Replace('\u2013', '-').Replace('\u00A0', ' ').Replace('\u202F', ' ').Trim();
        foreach (var (sign, fraction) in Fractions)
        {
            var at = plain.IndexOf(sign);
            if (at >= 0)
            {
                plain = $"{plain[..at].TrimEnd()}{(at > 0 && char.IsAsciiDigit(plain[..at].TrimEnd()[^1]) ? " " : "")}{fraction}{plain[(at + 1)..]}";
            }
        }

        return plain;
    }

    private static string UnitOf(string word) => Words.GetValueOrDefault(word, word);

    // 31,5 parts decimals; 1,250 parts decimals or thousands; 1,234.5 and 1,234,567 part thousands; 1.234,5 parts decimals.
    private static ImmutableArray<string> ReadingsOf(string number)
    {
        var (last, first) = (number.LastIndexOf(','), number.IndexOf(','));
        var point = number.IndexOf('.');
        if (point >= 0)
        {
            return point < first ? [number.Replace(".", "", StringComparison.Ordinal).Replace(',', '.')] : [number.Replace(",", "", StringComparison.Ordinal)];
        }

        if (last != first)
        {
            return [number.Replace(",", "", StringComparison.Ordinal)];
        }

        var decimals = number.Replace(',', '.');
        return number.Length - last == 4 && Thousands().IsMatch(number) ? [decimals, number.Replace(",", "", StringComparison.Ordinal)] : [decimals];
    }

    [GeneratedRegex("^(?<number>[+-]?([0-9]*,[0-9]+|[0-9]{1,3}([.][0-9]{3})+,[0-9]+|[0-9]{1,3}(,[0-9]{3})+([.][0-9]+)?))[ \t]*(?<unit>[^0-9., \t].*?)?$", RegexOptions.CultureInvariant)]
    private static partial Regex WithComma();

    [GeneratedRegex("^[+-]?[1-9][0-9]{0,2},[0-9]{3}$", RegexOptions.CultureInvariant)]
    private static partial Regex Thousands();
}
