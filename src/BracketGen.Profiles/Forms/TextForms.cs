using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using BracketGen.Profiles.Toml;
using BracketGen.Units;

namespace BracketGen.Profiles.Forms;

/// <summary>Free text on one line.</summary>
/// <param name="most">Longest text allowed (UTF-16 units).</param>
internal sealed class TextForm(int most) : Form<string>
{
    public override string Allowed => string.Create(CultureInfo.InvariantCulture, $"text in quotes, 1 to {most} characters on one line");

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out string result)
    {
        result = (value as TomlText)?.Text.Trim();
        if (result is null)
        {
            reading.Report(value, key, Allowed, "Put the text in quotes.");
            return false;
        }

        if (result.Length is 0 || result.Length > most || result.Any(char.IsControl))
        {
            reading.Report(value, key, Allowed, result.Length == 0 ? "Write the text between the quotes." : "Shorten the text and leave out line breaks and tabs.");
            return false;
        }

        return true;
    }

    public override JsonObject Schema() => new() { ["type"] = "string", ["minLength"] = 1, ["maxLength"] = most, ["pattern"] = "[^ ]" };
}

/// <summary>One of a few words.</summary>
internal sealed class WordForm<T>(params (string Word, T Value)[] words) : Form<T>
{
    public override string Allowed => string.Join(" or ", words.Select(w => $"\"{w.Word}\""));

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out T result)
    {
        var text = (value as TomlText)?.Text;
        foreach (var (word, meant) in words)
        {
            if (word == text)
            {
                result = meant;
                return true;
            }
        }

        result = default;
        var near = text is null ? null : Nearest.To(text, words.Select(w => w.Word));
        reading.Report(value, key, Allowed, near is null ? "Use one of these, in quotes." : $"Did you mean \"{near}\"?");
        return false;
    }

    public override JsonObject Schema() => new() { ["enum"] = new JsonArray([.. words.Select(w => JsonValue.Create(w.Word))]) };

    public override JsonNode? Written(T value) =>
        JsonValue.Create(words.First(w => EqualityComparer<T>.Default.Equals(w.Value, value)).Word);
}

/// <summary>A day, written 2026-03-31 with or without quotes.</summary>
internal sealed class DateForm : Form<DateOnly>
{
    public override string Allowed => "a date, year-month-day";

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out DateOnly result)
    {
        if (value is TomlDate { Date: var date })
        {
            result = date;
            return true;
        }

        if (value is TomlText { Text: var text } && DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out result))
        {
            return true;
        }

        result = default;
        reading.Report(value, key, Allowed, "Write the date like 2026-03-31.");
        return false;
    }

    public override JsonObject Schema() => new() { ["type"] = "string", ["pattern"] = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" };
}

/// <summary>A whole number.</summary>
internal sealed class CountForm(int least, int most) : Form<int>
{
    public override string Allowed => string.Create(CultureInfo.InvariantCulture, $"a whole number from {least} to {most}");

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out int result)
    {
        if (value is TomlNumber { Number: var number } && number >= least && number <= most && Math.Floor(number) == number)
        {
            result = (int)number;
            return true;
        }

        result = 0;
        reading.Report(value, key, Allowed, "Count again; write the number without quotes.");
        return false;
    }

    public override JsonObject Schema() => new() { ["type"] = "integer", ["minimum"] = least, ["maximum"] = most };

    public override JsonNode? Written(int value) => JsonValue.Create(value);
}

/// <summary>A value together with where it stands, for checks that look across files.</summary>
internal sealed record Located<T>(T Value, string Key, TomlValue Written);

/// <summary>Reads as another form does and keeps the place.</summary>
internal sealed class LocatedForm<T>(Form<T> form) : Form<Located<T>>
{
    public override string Allowed => form.Allowed;

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out Located<T> result)
    {
        var isRead = form.TryRead(value, key, reading, out var inner);
        result = isRead ? new(inner!, key, value) : null;
        return isRead;
    }

    public override JsonObject Schema() => form.Schema();
}
