using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Toml;
using BracketGen.Units;

namespace BracketGen.Profiles.Forms;

/// <summary>
/// What a value may look like: it reads the value and writes the schema from one declaration, so that the two cannot differ.
/// </summary>
internal abstract class Form<T>
{
    /// <summary>What may stand here.</summary>
    public abstract AllowedValue Allowed { get; }

    /// <summary>Reads a value, or reports every mistake in it and answers false.</summary>
    public abstract bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out T result);

    /// <summary>JSON Schema of the value; what is shared goes to <paramref name="shared"/>.</summary>
    public abstract JsonObject Schema(SharedSchemas shared);

    /// <summary>A value as it would be written in a file without a unit; null where the schema need not show it.</summary>
    public virtual JsonNode? Written(T value) => null;

    /// <summary>Unit of a bare number at a key inside, named table by table; null where no number stands there.</summary>
    /// <param name="path">Names of the tables and of the key; empty for the value itself.</param>
    public virtual Unit? UnitAt(ReadOnlySpan<string> path) => null;

    /// <summary>Reports that the value is not of this form.</summary>
    protected void Report(TomlValue value, string key, Reading reading, ValueMistake mistake) => value.Report(key, reading, new ValueWrong(mistake, Allowed));
}
