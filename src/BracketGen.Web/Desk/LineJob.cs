using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using BracketGen.Line.Combinations;
using BracketGen.Profiles.Editing;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Paths;
using BracketGen.Units;

namespace BracketGen.Web.Desk;

/// <summary>A variant of a product line as a job of its own, solved as the line solves it.</summary>
public static class LineJob
{
    /// <summary>The job with its profiles; null where it cannot be put together.</summary>
    /// <param name="path">Path of the family's file.</param>
    /// <param name="text">Its text.</param>
    /// <param name="family">The family.</param>
    /// <param name="combination">The variant.</param>
    /// <param name="number">Its part number; empty where it has none yet.</param>
    /// <param name="revision">Its revision; empty where it has none yet.</param>
    /// <param name="read">Reads a text by its path; null if there is none.</param>
    public static JobDesk? Of(string path, string text, LoadedFamily family, Combination combination, string number, string revision, Func<string, string?> read)
    {
        var job = $"jobs/{Path.GetFileNameWithoutExtension(path)}-{combination.Key.ToLowerInvariant()}.toml";
        (string Key, string Path)[] named =
        [
            ("throttle_body", ProfilePath.Beside(path, combination.Body.File)), ("vehicle", ProfilePath.Beside(path, combination.Vehicle.File)), ("shop", ProfilePath.Beside(path, family.Family.ShopFile)),
        ];
        string? written = Begin(named, family, combination, number, revision);
        var values = ProfileValues.Of(text);
        var own = values["options"] is JsonArray options
            ? options.OfType<JsonObject>().FirstOrDefault(o => (o["code"] as JsonValue)?.ToString() == combination.Option.Option.Code)?["preferences"] as JsonObject : null;
        foreach (var (key, value) in Preferences(values["preferences"] as JsonObject, own, combination.Material.Designations).Concat(Under("life", values["life"] as JsonObject)).Concat(Under("document", Kept(values["document"] as JsonObject))))
        {
            written = written is null ? null : ProfileEditor.Apply(written, key, Json(value));
        }

        var files = named.Select(n => (n.Path, Text: read(n.Path))).DistinctBy(n => n.Path).ToDictionary(n => n.Path, n => n.Text);
        return written is null || files.Values.Any(t => t is null) ? null : JobDesk.Of(job, files.Append(new(job, written)).ToDictionary(f => f.Key, f => f.Value!));
    }

    private static string Begin((string Key, string Path)[] named, LoadedFamily family, Combination combination, string number, string revision)
    {
        var document = CombinationJob.Of(family, combination, number, revision).Document;
        string[] lines =
        [
            "#:schema ../schemas/job.schema.json", "profile = \"job\"", "", .. named.Select(n => $"{n.Key} = {Quoted("../" + n.Path)}"), $"units = \"{(family.Family.Units == UnitSystem.Inch ? "in" : "mm")}\"", "",
            "[preferences]", "", "[life]", "", "[document]",
            .. number.Length > 0 ? [$"part_number = {Quoted(number)}"] : Array.Empty<string>(),
            .. revision.Length > 0 ? [$"revision = {Quoted(revision)}"] : Array.Empty<string>(),
            $"title = {Quoted(document.Title)}",
            .. document.Date is { } date ? [string.Create(CultureInfo.InvariantCulture, $"date = {date:yyyy-MM-dd}")] : Array.Empty<string>(),
            "",
        ];
        return string.Join('\n', lines);
    }

    // The option's over the line's own; the material that was chosen over both.
    private static IEnumerable<(string Key, JsonNode Value)> Preferences(JsonObject? common, JsonObject? own, ImmutableArray<string> materials)
    {
        var chosen = new JsonArray();
        foreach (var designation in materials)
        {
            chosen.Add((JsonNode)designation);
        }

        return Under("preferences", common).Where(p => own?.ContainsKey(p.Key["preferences.".Length..]) != true).Concat(Under("preferences", own))
            .Where(p => materials.IsEmpty || p.Key != "preferences.materials")
            .Concat(materials.IsEmpty ? [] : [("preferences.materials", (JsonNode)chosen)]);
    }

    private static IEnumerable<(string Key, JsonNode Value)> Under(string table, JsonObject? values) =>
        values?.Where(v => v.Value is not null).Select(v => ($"{table}.{v.Key}", v.Value!)) ?? [];

    // Title and date are written already.
    private static JsonObject? Kept(JsonObject? document) =>
        document is null ? null : new(document.Where(d => d.Key is not ("title" or "date")).Select(d => KeyValuePair.Create(d.Key, d.Value?.DeepClone())));

    private static JsonElement Json(JsonNode value)
    {
        using var document = JsonDocument.Parse(value.ToJsonString());
        return document.RootElement.Clone();
    }

    private static string Quoted(string text) => $"\"{JsonEncodedText.Encode(text, System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping)}\"";
}
