using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace BracketGen.Profiles.Toml;

/// <summary>Values as TOML writes them.</summary>
internal static partial class TomlLiteral
{
    /// <summary>Whether <paramref name="name"/> may stand as a key without quotes.</summary>
    public static bool IsName(string name) => NameForm().IsMatch(name);

    /// <summary>The value in TOML; null where TOML, or a profile, has no way to say it.</summary>
    public static string? Of(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.String => Text(value) is { } text ? Quoted(text) : null,
        JsonValueKind.Number => Number(value),
        JsonValueKind.Array => List(value),
        JsonValueKind.Object => Table(value),
        _ => null,
    };

    private static string? Text(JsonElement value)
    {
        try
        {
            return value.GetString();
        }
        catch (InvalidOperationException)
        {
            return null; // Half of a pair of units, escaped: JSON can say it, UTF-8 cannot.
        }
    }

    /// <summary>Text in quotes on one line.</summary>
    public static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var c in text)
        {
            quoted.Append(c switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                '\n' => "\\n",
                '\r' => "\\r",
                '\t' => "\\t",
                _ when char.IsControl(c) || char.IsSurrogate(c) && !IsPaired(text) => string.Create(CultureInfo.InvariantCulture, $"\\u{(char.IsSurrogate(c) ? 0xFFFD : c):X4}"),
                _ => c.ToString(),
            });
        }

        return quoted.Append('"').ToString();
    }

    // Half a pair cannot be written in UTF-8.
    private static bool IsPaired(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                i++;
            }
            else if (char.IsSurrogate(text[i]))
            {
                return false;
            }
        }

        return true;
    }

    // As it was written where both formats write it so: 31.50 stays 31.50.
    private static string? Number(JsonElement value)
    {
        if (!value.TryGetDouble(out var number) || !double.IsFinite(number))
        {
            return null;
        }

        var raw = value.GetRawText();
        return raw.Any(c => c is '.' or 'e' or 'E') || raw.Length < 16 ? raw : number.ToString("R", CultureInfo.InvariantCulture);
    }

    private static string? List(JsonElement value)
    {
        var items = value.EnumerateArray().Select(Of).ToList();
        return items.Contains(null) ? null : $"[{string.Join(", ", items)}]";
    }

    private static string? Table(JsonElement value)
    {
        var pairs = value.EnumerateObject().Select(p => (Name: NameOf(p), Text: Of(p.Value))).ToList();
        return pairs.Any(p => p.Text is null || !IsName(p.Name)) || pairs.DistinctBy(p => p.Name).Count() < pairs.Count
            ? null
            : pairs.Count == 0 ? "{}" : $"{{ {string.Join(", ", pairs.Select(p => $"{p.Name} = {p.Text}"))} }}";
    }

    private static string NameOf(JsonProperty property)
    {
        try
        {
            return property.Name;
        }
        catch (InvalidOperationException)
        {
            return ""; // As above; no name is refused.
        }
    }

    [GeneratedRegex("^[A-Za-z0-9_-]+$", RegexOptions.CultureInvariant)]
    private static partial Regex NameForm();
}
