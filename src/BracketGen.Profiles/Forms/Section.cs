using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Toml;
using BracketGen.Units;

namespace BracketGen.Profiles.Forms;

/// <summary>What all sections share.</summary>
internal static class Section
{
    /// <summary>A key with the tables it stands in.</summary>
    public static string Join(string path, string key) => path.Length == 0 ? key : path + "." + key;
}

/// <summary>A table with known keys, read into one record. Whatever is not declared is an error.</summary>
/// <param name="keys">Every key it may hold.</param>
/// <param name="build">Makes the record once all keys are read and all checks hold.</param>
/// <param name="checks">Conditions between keys.</param>
/// <param name="oneOf">Keys of which exactly one must be there: two ways to say the same thing.</param>
/// <param name="anyOf">Keys of which at least one must be there.</param>
/// <param name="kinds">What the schema says of keys that go with one word of a key alone; the checks say it to people.</param>
/// <param name="shareAs">Name of the section among the shared schemas; null where it stands in one place only.</param>
internal sealed class Section<T>(
    Key[] keys, Func<SectionValues, T> build, Condition[]? checks = null, Key[]? oneOf = null, Key[]? anyOf = null, ISchemaRule[]? kinds = null, string? shareAs = null) : Form<T>, ISectionLike, ISectionSchema
{
    public override AllowedValue Allowed => new AllowedTable([.. keys.Select(k => k.Name)]);

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out T result) =>
        TryRead(value, key, reading, besides: null, out result);

    /// <summary>Reads the table; the key <paramref name="besides"/> was already read by whoever chose this section.</summary>
    public bool TryRead(TomlValue value, string path, Reading reading, string? besides, [MaybeNullWhen(false)] out T result)
    {
        result = default;
        if (value is not TomlTable table)
        {
            Report(value, path, reading, ValueMistake.NotATable);
            return false;
        }

        var values = new SectionValues(table, path, reading);
        var wrong = new HashSet<Key>();
        foreach (var key in keys)
        {
            if (table.Find(key.Name) is { } entry && !key.Read(entry.Value, Section.Join(path, key.Name), reading, values))
            {
                wrong.Add(key);
            }
        }

        var isWhole = ReportUnknown(table, path, reading, besides, wrong);
        foreach (var key in keys.Where(k => k.IsRequired && table.Find(k.Name) is null))
        {
            isWhole = false;
            if (wrong.Add(key))
            {
                ReportMissing(table, path, reading, key);
            }
        }

        isWhole &= oneOf is null || ReportAlternatives(table, path, reading, oneOf, wrong);
        isWhole &= anyOf is null || ReportNone(table, path, reading, anyOf, wrong);
        foreach (var check in checks ?? [])
        {
            // Between entries of a file of which a part is lost, nothing can be said.
            if (!check.Needs.Any(wrong.Contains) && !(path.Length == 0 && reading.IsPartial(table.Place.File)))
            {
                check.Look(values);
            }
        }

        if (!isWhole || wrong.Count > 0 || values.HasFailed)
        {
            return false;
        }

        result = build(values);
        return true;
    }

    public override JsonObject Schema(SharedSchemas shared) => shareAs is null ? Schema(null, shared) : shared.Use(shareAs, () => Schema(null, shared));

    public override Unit? UnitAt(ReadOnlySpan<string> path)
    {
        foreach (var key in keys)
        {
            if (!path.IsEmpty && key.Name == path[0])
            {
                return key.UnitAt(path[1..]);
            }
        }

        return null;
    }

    /// <summary>The schema, with a first key whose one value is fixed.</summary>
    public JsonObject Schema((string Name, string Word, string Help)? first, SharedSchemas shared)
    {
        var properties = new JsonObject();
        var required = new JsonArray();
        if (first is var (name, word, help))
        {
            properties[name] = new JsonObject { ["const"] = word, ["description"] = help };
            required.Add((JsonNode)name);
        }

        foreach (var key in keys)
        {
            properties[key.Name] = key.Schema(shared);
            if (key.IsRequired)
            {
                required.Add((JsonNode)key.Name);
            }
        }

        var schema = new JsonObject { ["type"] = "object", ["properties"] = properties, ["additionalProperties"] = false };
        if (required.Count > 0)
        {
            schema["required"] = required;
        }

        if (kinds is not null)
        {
            schema["allOf"] = new JsonArray([.. kinds.Select(k => k.Schema())]);
        }

        AddAlternatives("oneOf", oneOf);
        AddAlternatives("anyOf", anyOf);
        return schema;

        void AddAlternatives(string word, Key[]? among)
        {
            if (among is not null)
            {
                schema[word] = new JsonArray([.. among.Select(k => new JsonObject { ["required"] = new JsonArray((JsonNode)k.Name) })]);
            }
        }
    }

    private static bool ReportAlternatives(TomlTable table, string path, Reading reading, Key[] oneOf, HashSet<Key> wrong)
    {
        var given = oneOf.Where(k => table.Find(k.Name) is not null).ToArray();
        ImmutableArray<string> names = [.. oneOf.Select(k => k.Name)];
        foreach (var more in given.Skip(1))
        {
            reading.Report(table.Find(more.Name)!.Place, Section.Join(path, more.Name), more.Name, new AlternativeTwice(names));
        }

        return given.Length < 2 && ReportNone(table, path, reading, oneOf, wrong);
    }

    private static bool ReportNone(TomlTable table, string path, Reading reading, Key[] among, HashSet<Key> wrong)
    {
        if (among.Any(k => table.Find(k.Name) is not null))
        {
            return true;
        }

        // A key that was mistyped was reported already.
        if (!among.Any(wrong.Contains))
        {
            reading.ReportMissing(table.Place, Section.Join(path, among[0].Name), new AlternativeMissing([.. among.Select(k => k.Name)]));
        }

        return false;
    }

    // A mistyped key is one mistake: the key that was meant is not reported as missing as well.
    private bool ReportUnknown(TomlTable table, string path, Reading reading, string? besides, HashSet<Key> wrong)
    {
        var isWhole = true;
        foreach (var entry in table.Entries.Where(e => e.Name != besides && keys.All(k => k.Name != e.Name)))
        {
            isWhole = false;
            var (meant, problem) = Unknown(table, entry.Name, wrong);
            if (meant is not null)
            {
                wrong.Add(meant);
            }

            reading.Report(entry.Place, Section.Join(path, entry.Name), entry.Name, problem);
        }

        return isWhole;
    }

    private (Key? Meant, ProfileProblem Problem) Unknown(TomlTable table, string name, HashSet<Key> wrong)
    {
        if (keys.FirstOrDefault(k => k.Name == RenamedKeys.NowOf(name)) is { } renamed)
        {
            return (renamed, new KeyRenamed(name, renamed.Name, table.Find(renamed.Name) is not null));
        }

        if (keys.FirstOrDefault(k => k.Name == ReplacedKeys.NowOf(name)) is { } replaced)
        {
            return (replaced, new KeyReplaced(name, replaced.Name));
        }

        // The list itself may be there already: then this cable goes into it too.
        if (OtherCableKeys.AsksForOne(name) && keys.Any(k => k.Name == OtherCableKeys.Key))
        {
            return (null, new KeyOfOtherCable(name, OtherCableKeys.Key));
        }

        var absent = keys.Where(k => table.Find(k.Name) is null && !wrong.Contains(k)).ToArray();
        var near = Nearest.To(name, absent.Select(k => k.Name));
        return (keys.FirstOrDefault(k => k.Name == near), new KeyUnknown(name, [.. keys.Select(k => k.Name)], near));
    }

    private static void ReportMissing(TomlTable table, string path, Reading reading, Key key) => reading.ReportMissing(
        table.Place, Section.Join(path, key.Name), new KeyMissing(key.Name, key.Allowed, key.Help, key.IsTable && !path.Contains('[')));
}
