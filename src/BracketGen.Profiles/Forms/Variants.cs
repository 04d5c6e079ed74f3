using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using BracketGen.Design.Search;
using BracketGen.Profiles.Toml;

namespace BracketGen.Profiles.Forms;

/// <summary>A table whose first key says which of several kinds it is.</summary>
/// <param name="what">What the table is, with article.</param>
/// <param name="tag">Name of the key that says it.</param>
/// <param name="help">Help for that key.</param>
/// <param name="kinds">Word and section of each kind.</param>
internal sealed class Variants<T>(string what, string tag, string help, params (string Word, Section<T> Section)[] kinds) : Form<T>, ISectionLike
{
    private readonly WordForm<Section<T>> _words = new(kinds);

    public override string Allowed => $"{what}: a table with {tag} = {_words.Allowed}";

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out T result)
    {
        result = default;
        if (value is not TomlTable table)
        {
            reading.Report(value, key, Allowed, key.Contains('[') ? "Write a table in braces: { … }." : $"Write a table under a header [{key}].");
            return false;
        }

        var full = Section.Join(key, tag);
        if (table.Find(tag) is not { } entry)
        {
            reading.ReportMissing(table.Place, full, _words.Allowed, $"Add the line {tag} = … : {help}");
            return false;
        }

        return _words.TryRead(entry.Value, full, reading, out var section) && section.TryRead(table, key, reading, tag, out result);
    }

    public override JsonObject Schema() => new()
    {
        ["type"] = "object",
        ["oneOf"] = new JsonArray([.. kinds.Select(k => k.Section.Schema((tag, k.Word, help)))]),
    };
}
