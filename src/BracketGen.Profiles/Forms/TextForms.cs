using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Toml;
using BracketGen.Units;

namespace BracketGen.Profiles.Forms;

/// <summary>Free text on one line.</summary>
/// <param name="max">Maximum length (UTF-16 units).</param>
internal sealed class TextForm(int max) : Form<string>
{
    public override AllowedValue Allowed => new AllowedLine(max);

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out string result)
    {
        result = (value as TomlText)?.Text.Trim();
        if (result is null)
        {
            Report(value, key, reading, ValueMistake.NotText);
            return false;
        }

        if (result.Length is 0 || result.Length > max || result.Any(char.IsControl))
        {
            Report(value, key, reading, result.Length == 0 ? ValueMistake.EmptyText : ValueMistake.LongText);
            return false;
        }

        return true;
    }

    public override JsonObject Schema(SharedSchemas shared) => new() { ["type"] = "string", ["minLength"] = 1, ["maxLength"] = max, ["pattern"] = "[^ ]" };
}

/// <summary>One of a few words.</summary>
internal sealed class WordForm<T>(params (string Word, T Value)[] words) : Form<T>
{
    public override AllowedValue Allowed => Choice;

    /// <summary>The words.</summary>
    public AllowedWords Choice => new([.. words.Select(w => w.Word)]);

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
        value.Report(key, reading, new WordUnknown(Choice, text is null ? null : Nearest.To(text, words.Select(w => w.Word))));
        return false;
    }

    public override JsonObject Schema(SharedSchemas shared) => new() { ["enum"] = new JsonArray([.. words.Select(w => JsonValue.Create(w.Word))]) };

    public override JsonNode? Written(T value) =>
        JsonValue.Create(words.First(w => EqualityComparer<T>.Default.Equals(w.Value, value)).Word);
}

/// <summary>A day, written 2026-03-31 with or without quotes.</summary>
internal sealed class DateForm : Form<DateOnly>
{
    public override AllowedValue Allowed => new AllowedPattern(TextPattern.Date);

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
        Report(value, key, reading, ValueMistake.NotThePattern);
        return false;
    }

    public override JsonObject Schema(SharedSchemas shared) => new() { ["type"] = "string", ["pattern"] = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" };
}

/// <summary>A whole number.</summary>
internal sealed class CountForm(int min, int max) : Form<int>
{
    public override AllowedValue Allowed => new AllowedCount(min, max);

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out int result)
    {
        if (value is TomlNumber { Number: var number } && number >= min && number <= max && Math.Floor(number) == number)
        {
            result = (int)number;
            return true;
        }

        result = 0;
        Report(value, key, reading, ValueMistake.NotACount);
        return false;
    }

    public override Unit? UnitAt(ReadOnlySpan<string> path) => path.IsEmpty ? UnitTable.One : null;

    public override JsonObject Schema(SharedSchemas shared) => new() { ["type"] = "integer", ["minimum"] = min, ["maximum"] = max };

    public override JsonNode? Written(int value) => JsonValue.Create(value);
}

/// <summary>A value together with where it stands, for checks that look across files.</summary>
internal sealed record Located<T>(T Value, string Key, TomlValue Written);

/// <summary>Reads as another form does and keeps the place.</summary>
internal sealed class LocatedForm<T>(Form<T> form) : Form<Located<T>>
{
    public override AllowedValue Allowed => form.Allowed;

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out Located<T> result)
    {
        var isRead = form.TryRead(value, key, reading, out var inner);
        result = isRead ? new(inner!, key, value) : null;
        return isRead;
    }

    public override Unit? UnitAt(ReadOnlySpan<string> path) => form.UnitAt(path);

    public override JsonObject Schema(SharedSchemas shared) => form.Schema(shared);
}
