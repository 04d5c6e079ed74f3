using System.Text.Json.Nodes;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Toml;
using BracketGen.Units;

namespace BracketGen.Profiles.Forms;

/// <summary>A key of a section: name, form, whether it must be there, and help for the editor.</summary>
/// <remarks>The help stays here and not in BracketGen.Words: it is part of the published schema, and reads with the key's limits beside it.</remarks>
internal abstract class Key(string name, string help, bool isRequired)
{
    public string Name => name;

    public string Help => help;

    public bool IsRequired => isRequired;

    public abstract AllowedValue Allowed { get; }

    public abstract bool IsTable { get; }

    /// <summary>Reads the value and keeps it; false where it was wrong.</summary>
    public abstract bool Read(TomlValue value, string key, Reading reading, SectionValues into);

    public abstract JsonObject Schema(SharedSchemas shared);

    /// <summary>Unit of a bare number at this key, or at a key inside its tables.</summary>
    public abstract Unit? UnitAt(ReadOnlySpan<string> path);
}

/// <summary>A key whose value is read as <typeparamref name="T"/>.</summary>
internal sealed class Key<T>(string name, Form<T> form, string help, bool isRequired = true) : Key(name, help, isRequired)
{
    private bool _hasDefault;

    /// <summary>What an absent key means; only for keys that may be absent.</summary>
    public T Default { get; private init; } = default!;

    /// <summary>A key that may be absent and then means <paramref name="value"/>.</summary>
    public static Key<T> WithDefault(string name, Form<T> form, string help, T value) =>
        new(name, form, help, isRequired: false) { Default = value, _hasDefault = true };

    public override AllowedValue Allowed => form.Allowed;

    public override bool IsTable => form is ISectionLike;

    public override bool Read(TomlValue value, string key, Reading reading, SectionValues into)
    {
        if (!form.TryRead(value, key, reading, out var result))
        {
            return false;
        }

        into.Keep(this, result);
        return true;
    }

    public override Unit? UnitAt(ReadOnlySpan<string> path) => form.UnitAt(path);

    public override JsonObject Schema(SharedSchemas shared)
    {
        var schema = form.Schema(shared);
        schema["description"] = Help;
        if (_hasDefault && form.Written(Default) is { } written)
        {
            schema["default"] = written;
        }

        return schema;
    }
}

/// <summary>Marks forms that are written as a table.</summary>
internal interface ISectionLike;
