using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using BracketGen.Design.Search;
using BracketGen.Profiles.Toml;

namespace BracketGen.Profiles.Forms;

/// <summary>What all sections share.</summary>
internal static class Section
{
    /// <summary>A key with the tables it stands in.</summary>
    public static string Join(string path, string key) => path.Length == 0 ? key : path + "." + key;
}

/// <summary>A table with known keys, read into one record. Whatever is not declared is an error.</summary>
/// <param name="what">What the table is, with article: «a cable».</param>
/// <param name="keys">Every key it may hold.</param>
/// <param name="build">Makes the record once all keys are read and all checks hold.</param>
/// <param name="checks">Conditions between keys.</param>
/// <param name="oneOf">Keys of which exactly one must be there: two ways to say the same thing.</param>
internal sealed class Section<T>(
    string what, Key[] keys, Func<SectionValues, T> build, Condition[]? checks = null, Key[]? oneOf = null) : Form<T>, ISectionLike, ISectionSchema
{
    public override string Allowed => $"{what}: a table with the keys {string.Join(", ", keys.Select(k => k.Name))}";

    public override bool TryRead(TomlValue value, string key, Reading reading, [MaybeNullWhen(false)] out T result) =>
        TryRead(value, key, reading, besides: null, out result);

    /// <summary>Reads the table; the key <paramref name="besides"/> was already read by whoever chose this section.</summary>
    public bool TryRead(TomlValue value, string path, Reading reading, string? besides, [MaybeNullWhen(false)] out T result)
    {
        result = default;
        if (value is not TomlTable table)
        {
            reading.Report(value, path, Allowed, path.Contains('[') ? "Write a table in braces: { … }." : $"Write a table under a header [{path}].");
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

    public override JsonObject Schema() => Schema(null);

    /// <summary>The schema, with a first key whose one value is fixed.</summary>
    public JsonObject Schema((string Name, string Word, string Help)? first)
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
            properties[key.Name] = key.Schema();
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

        if (oneOf is not null)
        {
            schema["oneOf"] = new JsonArray([.. oneOf.Select(k => new JsonObject { ["required"] = new JsonArray((JsonNode)k.Name) })]);
        }

        return schema;
    }

    private static bool ReportAlternatives(TomlTable table, string path, Reading reading, Key[] oneOf, HashSet<Key> wrong)
    {
        var given = oneOf.Where(k => table.Find(k.Name) is not null).ToArray();
        var names = string.Join(" or ", oneOf.Select(k => k.Name));
        if (given.Length == 0)
        {
            // A key that was mistyped was reported already.
            if (!oneOf.Any(wrong.Contains))
            {
                reading.ReportMissing(table.Place, Join(path, oneOf[0].Name), names, $"Add one of the two: {names}.");
            }

            return false;
        }

        foreach (var more in given.Skip(1))
        {
            reading.Report(table.Find(more.Name)!.Place, Join(path, more.Name), $"{given[0].Name} and {more.Name}", $"{names}, not both", $"Leave out {given[0].Name} or {more.Name}: they say the same thing.");
        }

        return given.Length == 1;
    }

    private static string Join(string path, string key) => Section.Join(path, key);

    // A mistyped key is one mistake: the key that was meant is not reported as missing as well.
    private bool ReportUnknown(TomlTable table, string path, Reading reading, string? besides, HashSet<Key> wrong)
    {
        var isWhole = true;
        foreach (var entry in table.Entries.Where(e => e.Name != besides && keys.All(k => k.Name != e.Name)))
        {
            isWhole = false;
            if (keys.FirstOrDefault(k => k.Name == RenamedKeys.NowOf(entry.Name)) is { } renamed)
            {
                wrong.Add(renamed);
                reading.Report(
                    entry.Place,
                    Section.Join(path, entry.Name),
                    $"the key {entry.Name}",
                    renamed.Name,
                    table.Find(renamed.Name) is null
                        ? $"{entry.Name} is now {renamed.Name}: write the new name; the value stays as it is."
                        : $"{entry.Name} is now {renamed.Name}, which is given too: delete one of the two.");
                continue;
            }

            var absent = keys.Where(k => table.Find(k.Name) is null && !wrong.Contains(k)).ToArray();
            var near = Nearest.To(entry.Name, absent.Select(k => k.Name));
            if (near is not null)
            {
                wrong.Add(keys.First(k => k.Name == near));
            }

            reading.Report(
                entry.Place,
                Section.Join(path, entry.Name),
                $"the key {entry.Name}",
                string.Join(", ", keys.Select(k => k.Name)),
                near is not null ? $"Did you mean {near}?" : "No such key is known here: take it out, or see whether it belongs under another header.");
        }

        return isWhole;
    }

    private static void ReportMissing(TomlTable table, string path, Reading reading, Key key)
    {
        var full = Section.Join(path, key.Name);
        var advice = key.IsTable && !path.Contains('[') ? $"Add a table under a header [{full}]: {key.Help}" : $"Add the line {key.Name} = … : {key.Help}";
        reading.ReportMissing(table.Place, full, key.Allowed, advice);
    }
}
