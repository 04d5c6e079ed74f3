using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Toml;

namespace BracketGen.Profiles.Forms;

/// <summary>A table that is kept as it is written, to be read later with another put under it; its schema is known already.</summary>
internal sealed class WrittenSection(ISectionSchema form) : Form<TomlTable?>, ISectionLike
{
    public override AllowedValue Allowed => form.Allowed;

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out TomlTable? result)
    {
        result = value as TomlTable;
        if (result is null)
        {
            Report(value, key, reading, ValueMistake.NotATable);
        }

        return result is not null;
    }

    public override JsonObject Schema(SharedSchemas shared) => form.Schema(shared);
}

/// <summary>What a table may hold, without what it becomes.</summary>
internal interface ISectionSchema
{
    /// <summary>What is allowed.</summary>
    AllowedValue Allowed { get; }

    /// <summary>JSON Schema of the table.</summary>
    JsonObject Schema(SharedSchemas shared);
}
