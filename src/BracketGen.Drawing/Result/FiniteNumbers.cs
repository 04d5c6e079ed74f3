using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;

namespace BracketGen.Drawing.Result;

/// <summary>Writes finite numbers as they are, and a mark for whatever JSON has no word for; the marks become null, with their paths in a list.</summary>
/// <remarks>A last guard: where a number may be missing its property is nullable. A result with a hole is worth more than an exception.</remarks>
internal sealed class FiniteNumbers : JsonConverter<double>
{
    // No text of ours holds a control character.
    private const string Mark = "\u0001";

    private const string Written = "\"\\u0001\"";

    /// <inheritdoc/>
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options)
    {
        if (double.IsFinite(value))
        {
            writer.WriteNumberValue(value);
        }
        else
        {
            writer.WriteStringValue(Mark);
        }
    }

    /// <summary>Paths of the marks in a text, for example "mechanism.return.minPart" or "checks[3].value"; empty if there is none.</summary>
    public static IReadOnlyList<string> PathsOfMarks(string json) =>
        json.Contains(Written, StringComparison.Ordinal) ? [.. Paths(JsonNode.Parse(json))] : [];

    /// <summary>The text with null for every mark.</summary>
    public static string WithoutMarks(string json) => json.Replace(Written, "null", StringComparison.Ordinal);

    private static IEnumerable<string> Paths(JsonNode? node) => node switch
    {
        JsonObject table => table.SelectMany(p => Paths(p.Value)),
        JsonArray list => list.SelectMany(Paths),
        JsonValue value when value.TryGetValue<string>(out var text) && text == Mark => [value.GetPath()["$.".Length..]],
        _ => [],
    };
}
