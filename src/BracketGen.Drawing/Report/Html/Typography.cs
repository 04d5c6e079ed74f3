namespace BracketGen.Drawing.Report.Html;

/// <summary>What a typesetter would correct.</summary>
internal static class Typography
{
    private const char Space = ' ', Unbroken = '\u00a0';

    private static readonly string[] Units = ["mm", "in", "N", "V", "g", "lb", "lbf", "MPa", "ksi", "Hz", "%"];

    /// <summary>The text with an unbroken space between each number and its unit (a space parts them: SI Brochure, 9th edition, 5.4.3).</summary>
    public static string KeepUnits(string text)
    {
        char[]? changed = null;
        for (var i = text.IndexOf(Space); i > 0; i = text.IndexOf(Space, i + 1))
        {
            if (char.IsAsciiDigit(text[i - 1]) && IsUnit(text.AsSpan(i + 1)))
            {
                (changed ??= text.ToCharArray())[i] = Unbroken;
            }
        }

        return changed is null ? text : new(changed);
    }

    private static bool IsUnit(ReadOnlySpan<char> rest)
    {
        foreach (var unit in Units)
        {
            if (rest.StartsWith(unit, StringComparison.Ordinal) && (rest.Length == unit.Length || !char.IsLetterOrDigit(rest[unit.Length])))
            {
                return true;
            }
        }

        return false;
    }
}
