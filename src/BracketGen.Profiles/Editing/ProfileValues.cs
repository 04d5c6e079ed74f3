using System.Globalization;
using System.Text.Json.Nodes;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Toml;

namespace BracketGen.Profiles.Editing;

/// <summary>What a profile says, as it is written: for forms that show it.</summary>
public static class ProfileValues
{
    private const string InMemory = "profile.toml";

    /// <summary>Every value by its key: texts with their units as written, numbers bare; an empty object where the text is not TOML.</summary>
    public static JsonObject Of(string text) => Tree(text) is { } table ? Table(table) : [];

    /// <summary>What the first key says the profile is of ("throttle body"), and its name; null where it is no profile.</summary>
    public static (string Kind, string Name)? Summary(string text)
    {
        if (Tree(text) is not { } table || table.Find(ProfileReader.ProfileKey)?.Value is not TomlText { Text: var kind } || ProfileKind.All.All(k => k.Word != kind))
        {
            return null;
        }

        var name = table.Find("name")?.Value ?? (table.Find("document")?.Value as TomlTable)?.Find("title")?.Value;
        return (kind, (name as TomlText)?.Text ?? "");
    }

    /// <summary>Why a text cannot be read as a profile: its first mistake of writing; null where it can, whatever its values are.</summary>
    /// <param name="path">Path of the file, for the error.</param>
    /// <param name="text">Its text.</param>
    public static ProfileError? Fault(string path, string text)
    {
        if (Tree(text) is not null)
        {
            return null;
        }

        var reading = new Reading();
        TomlFile.Parse(path, text, reading);
        return reading.Errors.FirstOrDefault();
    }

    private static TomlTable? Tree(string text) =>
        TomlMap.Read(text) is null ? null : TomlFile.Parse(InMemory, text, new());

    private static JsonObject Table(TomlTable table)
    {
        var made = new JsonObject();
        foreach (var entry in table.Entries)
        {
            made[entry.Name] = Node(entry.Value);
        }

        return made;
    }

    private static JsonNode? Node(TomlValue value) => value switch
    {
        TomlText text => JsonValue.Create(text.Text),
        TomlNumber { Number: var number } when double.IsFinite(number) => JsonValue.Create(number),
        TomlDate { Date: var date } => JsonValue.Create(date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
        TomlList list => new JsonArray([.. list.Items.Select(Node)]),
        TomlTable table => Table(table),
        _ => JsonValue.Create(value.Written.ToString()),
    };
}
