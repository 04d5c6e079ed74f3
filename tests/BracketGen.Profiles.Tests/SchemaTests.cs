using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Shops;
using BracketGen.Words.Report;
using Json.Schema;
using Tomlyn;
using Tomlyn.Model;

namespace BracketGen.Profiles.Tests;

/// <summary>The schemas judged by an independent validator (JsonSchema.Net) on files turned to JSON by the TOML library itself.</summary>
public class SchemaTests
{
    private static readonly Dictionary<string, JsonSchema> Schemas = ByKind(ProfileSchema.All);
    private static readonly Dictionary<string, JsonSchema> InFull = ByKind(ProfileSchema.InFull);

    private static Dictionary<string, JsonSchema> ByKind(IEnumerable<(string File, string Text)> schemas) =>
        schemas.ToDictionary(s => s.File.Replace(".schema.json", "", StringComparison.Ordinal), s => JsonSchema.FromText(s.Text));

    public static TheoryData<string> Files => [.. Examples.Texts.Keys];

    // Written anew by: BRACKETGEN_SCHEMAS=<folder> dotnet test tests/BracketGen.Profiles.Tests --filter SchemaTests
    [Fact]
    public void TheShippedSchemasAreThoseOfTheReader()
    {
        if (Environment.GetEnvironmentVariable("BRACKETGEN_SCHEMAS") is { Length: > 0 } folder)
        {
            foreach (var (file, text) in ProfileSchema.All)
            {
                File.WriteAllText(Path.Combine(folder, file), text);
            }

            return;
        }

        foreach (var (file, text) in ProfileSchema.All)
        {
            Assert.Equal(text, Examples.Schema(file));
        }
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void EveryExampleIsValid(string file)
    {
        Assert.True(IsValid(file, Json(Examples.Texts[file])));
        Assert.True(IsValid(InFull, file, Json(Examples.Texts[file])));
        var schema = Examples.Texts[file].Split('\n')[0]["#:schema ".Length..];
        Assert.Equal($"../schemas/{Kind(file)}.schema.json", schema);
    }

    // Their words are held against other files or other entries, which a schema cannot see.
    private static readonly string[] Names = ["throttle_body", "vehicle", "shop", "designation", "material", "file", "cable", "groove", "flat_pattern", "bend_layer", "cut_layers", "bundle"];

    // Whatever key is taken out, renamed or given a value of another kind, schema and reader agree on whether it is a mistake.
    [Theory]
    [MemberData(nameof(Files))]
    public void SchemaAndReaderAgreeOnEveryKey(string file)
    {
        var lines = Examples.Texts[file].Split('\n');
        var judged = 0;
        for (var i = 0; i < lines.Length; i++)
        {
            if (lines[i].Split('#')[0].Split('=') is not [{ Length: > 0 } key, ..] || !lines[i].Contains('=') || lines[i].StartsWith('#'))
            {
                continue;
            }

            foreach (var changed in new[] { "", key + "= true", key.Trim() + "_x = 1\n" + lines[i], key + "= []", key + "= \"?\"", key + "= -1e9" })
            {
                // Without its spacer a hole that lies lower is off the face, and without its layer a bend has no line, which a schema cannot see either.
                if ((changed == key + "= \"?\"" && (Names.Contains(key.Trim()) || IsBundleName(lines, i))) || (changed.Length == 0 && key.Trim() is "spacer" or "bend_layer"))
                {
                    continue;
                }

                var text = string.Join('\n', lines.Select((l, n) => n == i ? changed : l));
                Assert.True(IsValid(file, Json(text)) == IsRead(file, text), $"{file}:{i + 1}: {changed}");
                judged++;
            }
        }

        Assert.True(judged > 30);
    }

    // Parts name their bundle, which a schema cannot see either.
    private static bool IsBundleName(string[] lines, int line) => line > 0 && lines[line - 1] == "[[bundles]]";

    [Fact]
    public void EveryKeyIsInTheManual()
    {
        var manual = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "docs", "profiles.md"));
        var keys = ProfileSchema.All.SelectMany(s => Keys(JsonNode.Parse(s.Text)!)).Distinct().ToArray();
        Assert.True(keys.Length > 80);
        Assert.All(keys, k => Assert.Matches($"`[^`]*\\b{k}\\b[^`]*`", manual));
    }

    // Limits are written beside the reference to a shared definition: each is held against values that only it refuses.
    [Theory]
    [InlineData(Samples.Body, "pitch_radius = { value = 31.5, plus_minus = 0.2 }", "pitch_radius = { value = 201, plus_minus = 0.2 }")]
    [InlineData(Samples.Body, "pitch_radius = { value = 31.5, plus_minus = 0.2 }", "pitch_radius = { value = 31.5, plus_minus = 20.5 }")]
    [InlineData(Samples.Body, "pitch_radius = { value = 31.5, plus_minus = 0.2 }", "pitch_radius = 4.9")]
    [InlineData(Samples.Body, "at = [-50, 12, -12]", "at = [-50, 1001, -12]")]
    [InlineData(Samples.Body, "at = [-50, 12, -12]", "at = [-50, \"12 N\", -12]")]
    [InlineData(Samples.Body, "normal = [0, 0, 1]", "normal = [0, 0, 1001]")]
    [InlineData(Samples.Shop, "k = 0.42", "k = 0.52")]
    public void LimitsBesideASharedDefinitionHold(string file, string old, string changed)
    {
        Assert.Equal(2, Samples.Texts[file].Split(old).Length);
        var text = Samples.Texts[file].Replace(old, changed);
        Assert.False(IsValid(file, Json(text)));
        Assert.False(IsValid(InFull, file, Json(text)));
        Assert.False(IsRead(file, text));
    }

    [Fact]
    public void EverySharedDefinitionIsUsedAndUnitsAreSpelledNowhereElse()
    {
        foreach (var (file, text) in ProfileSchema.All)
        {
            var body = JsonNode.Parse(text)!.AsObject();
            body.Remove("$defs");
            Assert.True(!body.ToJsonString().Contains("[ \\\\t]", StringComparison.Ordinal), file);
            Assert.All(Definitions(text), d => Assert.Contains($"\"#/$defs/{d}\"", text));
            Assert.All(Regex.Matches(text, "#/[$]defs/([a-z_]+)").Select(m => m.Groups[1].Value), d => Assert.Contains(d, Definitions(text)));
        }
    }

    private static IReadOnlyCollection<string> Definitions(string text) => [.. JsonNode.Parse(text)!["$defs"]?.AsObject().Select(d => d.Key) ?? []];

    // No key is called least or most, and no old name is in use again.
    [Fact]
    public void KeysSayMinAndMax()
    {
        var keys = ProfileSchema.All.SelectMany(s => Keys(JsonNode.Parse(s.Text)!)).Distinct().ToArray();
        Assert.DoesNotContain(keys, k => k.Split('_').Any(w => w is "least" or "most"));
        Assert.All(RenamedKeys.All, r => Assert.True(keys.Contains(r.Now) && !keys.Contains(r.Old), r.Now));
        Assert.Equal(RenamedKeys.All.Length, RenamedKeys.All.Select(r => r.Now).Distinct().Count());
    }

    private static IEnumerable<string> Keys(JsonNode node) => node switch
    {
        JsonObject o => (o["properties"] is JsonObject p ? p.Select(k => k.Key) : []).Concat(o.SelectMany(c => c.Value is null ? [] : Keys(c.Value))),
        JsonArray a => a.SelectMany(c => Keys(c!)),
        _ => [],
    };

    // Values with their units: what the reader takes, the schema takes, and the other way round.
    [Theory]
    [InlineData("\"58 mm\"", true)]
    [InlineData("\"5.8cm\"", true)]
    [InlineData("\"2 1/4 in\"", true)]
    [InlineData("\"2.25 in\"", true)]
    [InlineData("\"0.058 m\"", true)]
    [InlineData("\" 58 mm \"", true)]
    [InlineData("\"58\"", false)]
    [InlineData("\"58 lbf\"", false)]
    [InlineData("\"58,5 mm\"", false)]
    [InlineData("\"mm\"", false)]
    [InlineData("58.5", true)]
    [InlineData("580", false)]
    [InlineData("5.8", false)]
    public void SchemaAndReaderAgreeOnQuantities(string written, bool isGood)
    {
        var text = Samples.Texts[Samples.Body].Replace("bore = 58", "bore = " + written);
        Assert.Equal(isGood, IsValid(Samples.Body, Json(text)));
        Assert.Equal(isGood, IsValid(InFull, Samples.Body, Json(text)));
        Assert.Equal(isGood, IsRead(Samples.Body, text));
    }

    [Theory]
    [InlineData("\"6 lbf in\"", true)]
    [InlineData("\"6 lbf·in\"", true)]
    [InlineData("\"6 lbf-in\"", true)]
    [InlineData("\"0.5 N m\"", true)]
    [InlineData("\"0.5 Nm\"", true)]
    [InlineData("\"500 N mm\"", true)]
    [InlineData("\"0.5 ft lbf\"", true)]
    [InlineData("\"5 N\"", false)]
    [InlineData("\"5 mm\"", false)]
    [InlineData("{ value = \"6 lbf in\", plus_minus = \"1 lbf in\" }", true)]
    [InlineData("{ value = \"6 lbf in\" }", false)]
    [InlineData("{ value = \"6 lbf in\", plus_minus = \"1 lbf in\", unit = \"lbf in\" }", false)]
    public void SchemaAndReaderAgreeOnTorques(string written, bool isGood)
    {
        var text = Samples.Texts[Samples.Body].Replace("torque_closed = { value = 0.55, plus_minus = 0.05 }", "torque_closed = " + written);
        Assert.Equal(isGood, IsValid(Samples.Body, Json(text)));
        Assert.Equal(isGood, IsValid(InFull, Samples.Body, Json(text)));
        Assert.Equal(isGood, IsRead(Samples.Body, text));
    }

    private static string Kind(string file) => file.Split('/')[0] switch
    {
        "throttle-bodies" => "throttle-body",
        "vehicles" => "vehicle",
        "shops" => "shop",
        "families" => "family",
        "brackets" => "bracket",
        "parts" => "parts",
        "orders" => "order",
        _ => "job",
    };

    private static bool IsValid(string file, JsonNode json) => IsValid(Schemas, file, json);

    private static bool IsValid(Dictionary<string, JsonSchema> schemas, string file, JsonNode json) =>
        schemas[Kind(file)].Evaluate(JsonSerializer.SerializeToElement(json)).IsValid;

    private static bool IsRead(string file, string text)
    {
        var files = Examples.Files.With(file, text);
        return Kind(file) switch
        {
            "throttle-body" => ProfileReader.ReadThrottleBody(file, files).IsRead,
            "vehicle" => ProfileReader.ReadVehicle(file, files).IsRead,
            "shop" => ProfileReader.ReadShop(file, files).IsRead,
            "bracket" => ProfileReader.ReadBracket(file, files).IsRead,
            "parts" => ProfileReader.ReadParts(file, files).IsRead,
            "order" => ProfileReader.ReadOrder(file, files).IsRead,
            "family" => FamilyReader.Read(file, files).IsRead,
            _ => ProfileReader.ReadJob(file, files).IsRead,
        };
    }

    private static JsonNode Json(string toml) => Convert(TomlSerializer.Deserialize<TomlTable>(toml)!);

    private static JsonNode Convert(object value) => value switch
    {
        TomlTable table => new JsonObject(table.Select(p => KeyValuePair.Create(p.Key, (JsonNode?)Convert(p.Value)))),
        TomlTableArray tables => new JsonArray([.. tables.Select(Convert)]),
        TomlArray array => new JsonArray([.. array.Select(i => Convert(i!))]),
        TomlDateTime date => JsonValue.Create(date.DateTime.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
        string text => JsonValue.Create(text),
        bool flag => JsonValue.Create(flag),
        long integer => JsonValue.Create(integer),
        double number => JsonValue.Create(number),
        _ => throw new InvalidOperationException(value.GetType().Name),
    };
}
