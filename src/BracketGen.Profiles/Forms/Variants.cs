using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Toml;
using BracketGen.Units;

namespace BracketGen.Profiles.Forms;

/// <summary>A table whose first key says which of several kinds it is.</summary>
/// <param name="tag">Name of the key that says it.</param>
/// <param name="help">Help for that key.</param>
/// <param name="kinds">Word and section of each kind.</param>
internal sealed class Variants<T>(string tag, string help, params (string Word, Section<T> Section)[] kinds) : Form<T>, ISectionLike
{
    private readonly WordForm<Section<T>> _words = new(kinds);

    public override AllowedValue Allowed => new AllowedKinds(tag, _words.Choice.Words);

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out T result)
    {
        result = default;
        if (value is not TomlTable table)
        {
            Report(value, key, reading, ValueMistake.NotATable);
            return false;
        }

        var full = Section.Join(key, tag);
        if (table.Find(tag) is not { } entry)
        {
            reading.ReportMissing(table.Place, full, new KeyMissing(tag, _words.Allowed, help, IsHeader: false));
            return false;
        }

        return _words.TryRead(entry.Value, full, reading, out var section) && section.TryRead(table, key, reading, tag, out result);
    }

    public override Unit? UnitAt(ReadOnlySpan<string> path)
    {
        // A key that several kinds have measures the same in each.
        foreach (var (_, section) in kinds)
        {
            if (section.UnitAt(path) is { } unit)
            {
                return unit;
            }
        }

        return null;
    }

    public override JsonObject Schema(SharedSchemas shared) => new()
    {
        ["type"] = "object",
        ["oneOf"] = new JsonArray([.. kinds.Select(k => k.Section.Schema((tag, k.Word, help), shared))]),
    };
}
