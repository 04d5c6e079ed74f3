using System.Text.Json.Nodes;

namespace BracketGen.Profiles.Forms;

/// <summary>The keys that go with one word of a key that says the kind.</summary>
/// <param name="Tag">The key that says the kind.</param>
/// <param name="Word">The word.</param>
/// <param name="Needs">Keys that must be there with it.</param>
/// <param name="Only">Keys that may be there with no other word.</param>
/// <param name="Not">Keys that may not be there with it.</param>
internal sealed record KindKeys(Key Tag, string Word, Key[] Needs, Key[] Only, Key[] Not)
{
    /// <summary>The rule as JSON Schema says it.</summary>
    public JsonObject Schema() => new()
    {
        ["if"] = new JsonObject
        {
            ["properties"] = new JsonObject { [Tag.Name] = new JsonObject { ["const"] = Word } },
            ["required"] = new JsonArray((JsonNode)Tag.Name),
        },
        ["then"] = new JsonObject { ["required"] = new JsonArray([.. Needs.Select(k => (JsonNode)k.Name)]), ["properties"] = None(Not) },
        ["else"] = new JsonObject { ["properties"] = None(Only) },
    };

    private static JsonObject None(Key[] keys) => new(keys.Select(k => KeyValuePair.Create(k.Name, (JsonNode?)JsonValue.Create(false))));
}
