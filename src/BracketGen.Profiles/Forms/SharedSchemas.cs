using System.Text.Json.Nodes;

namespace BracketGen.Profiles.Forms;

/// <summary>Schemas that several keys share: written once under <c>$defs</c>, or everywhere in full for a reader that follows no references.</summary>
/// <param name="isInFull">Whether every schema is written in full.</param>
internal sealed class SharedSchemas(bool isInFull)
{
    private readonly SortedDictionary<string, JsonObject> _definitions = new(StringComparer.Ordinal);

    /// <summary>Whether every schema is written in full.</summary>
    public bool IsInFull => isInFull;

    /// <summary>A reference to the schema called <paramref name="name"/>, which is made at its first use; or the schema itself.</summary>
    public JsonObject Use(string name, Func<JsonObject> make)
    {
        if (isInFull)
        {
            return make();
        }

        if (!_definitions.ContainsKey(name))
        {
            _definitions[name] = make();
        }

        return new JsonObject { ["$ref"] = "#/$defs/" + name };
    }

    /// <summary>All that were used, by name; null where there are none.</summary>
    public JsonObject? Definitions => _definitions.Count == 0 ? null : new(_definitions.Select(d => KeyValuePair.Create(d.Key, (JsonNode?)d.Value)));
}
