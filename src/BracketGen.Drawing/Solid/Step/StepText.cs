using System.Globalization;
using System.Text;

namespace BracketGen.Drawing.Solid.Step;

/// <summary>Numbers and strings as ISO 10303-21 writes them; the only place in the STEP writer that does.</summary>
internal static class StepText
{
    /// <summary>A real: always a point, exponent after a capital E (clause 6.3.2).</summary>
    public static string Real(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentException($"A STEP file cannot hold {value}.", nameof(value));
        }

        // Adding zero makes a negative zero positive.
        var shortest = (value + 0.0).ToString("R", CultureInfo.InvariantCulture);
        var exponent = shortest.IndexOf('E');
        if (shortest.Contains('.'))
        {
            return shortest;
        }

        return exponent < 0 ? shortest + "." : shortest.Insert(exponent, ".");
    }

    /// <summary>
    /// A string: quotes and backslashes twice, what is not printable ASCII by its code, of 16 bits within \X2\ … \X0\ and of 32 within
    /// \X4\ … \X0\ (clause 6.3.3).
    /// </summary>
    public static string String(string value)
    {
        var text = new StringBuilder("'");
        var open = 0;
        foreach (var rune in value.EnumerateRunes())
        {
            var width = rune.Value is >= ' ' and <= '~' ? 0 : rune.IsBmp ? 4 : 8;
            if (width != open)
            {
                text.Append(open == 0 ? "" : @"\X0\").Append(width switch { 0 => "", 4 => @"\X2\", _ => @"\X4\" });
                open = width;
            }

            text.Append(width switch
            {
                0 when rune.Value is '\'' or '\\' => new string((char)rune.Value, 2),
                0 => ((char)rune.Value).ToString(),
                _ => rune.Value.ToString(width == 4 ? "X4" : "X8", CultureInfo.InvariantCulture),
            });
        }

        return text.Append(open == 0 ? "'" : @"\X0\'").ToString();
    }

    /// <summary>A list of things that are written already.</summary>
    public static string List(IEnumerable<string> items) => $"({string.Join(',', items)})";
}
