using System.Globalization;
using System.Text.RegularExpressions;

namespace BracketGen.Units;

/// <summary>A number with a unit as people write it: "31.5 mm", "1.125 in", "1 1/8 in", "12 lbf".</summary>
public static partial class QuantityText
{
    /// <summary>Decimal number or common fraction; also the first half of the pattern in the schemas.</summary>
    public const string NumberPattern = "[+-]?([0-9]+[ -])?[0-9]+/[0-9]+|[+-]?([0-9]+([.][0-9]*)?|[.][0-9]+)([eE][+-]?[0-9]+)?";

    /// <summary>Splits text into number and unit word; null where it does not begin with a number. The word may be empty.</summary>
    public static (double Number, string Unit)? Split(string text)
    {
        var match = Form().Match(text);
        return match.Success ? (Number(match.Groups["number"].ValueSpan), match.Groups["unit"].Value) : null;
    }

    private static double Number(ReadOnlySpan<char> text)
    {
        var slash = text.IndexOf('/');
        if (slash < 0)
        {
            return Plain(text);
        }

        var isNegative = text[0] == '-';
        var unsigned = text[0] is '-' or '+' ? text[1..] : text;
        slash = unsigned.IndexOf('/');
        var gap = unsigned.IndexOfAny(' ', '-');
        var whole = gap < 0 ? 0 : Plain(unsigned[..gap]);
        var value = whole + Plain(unsigned[(gap + 1)..slash]) / Plain(unsigned[(slash + 1)..]);
        return isNegative ? -value : value;
    }

    private static double Plain(ReadOnlySpan<char> text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    [GeneratedRegex("^[ \t]*(?<number>" + NumberPattern + ")[ \t]*(?<unit>[^0-9., \t].*?)?[ \t]*$", RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}
