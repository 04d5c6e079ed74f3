using System.Text.Json.Nodes;

namespace BracketGen.Profiles.Forms;

/// <summary>What the schema says of keys that go together.</summary>
internal interface ISchemaRule
{
    /// <summary>The rule as JSON Schema says it.</summary>
    JsonObject Schema();
}

/// <summary>Keys that may be left out only with some words of a key: the program knows the rest.</summary>
/// <param name="Tag">The key.</param>
/// <param name="Words">The words.</param>
/// <param name="Needs">Keys that must be there with any other word.</param>
internal sealed record KnownWords(Key Tag, string[] Words, Key[] Needs) : ISchemaRule
{
    /// <inheritdoc/>
    public JsonObject Schema() => new()
    {
        ["if"] = new JsonObject
        {
            ["properties"] = new JsonObject { [Tag.Name] = new JsonObject { ["enum"] = new JsonArray([.. Words.Select(w => (JsonNode)w)]) } },
            ["required"] = new JsonArray((JsonNode)Tag.Name),
        },
        ["then"] = true,
        ["else"] = new JsonObject { ["required"] = new JsonArray([.. Needs.Select(k => (JsonNode)k.Name)]) },
    };
}

/// <summary>The keys that go with one word of a key that says the kind.</summary>
/// <param name="Tag">The key that says the kind.</param>
/// <param name="Word">The word.</param>
/// <param name="Needs">Keys that must be there with it.</param>
/// <param name="Only">Keys that may be there with no other word.</param>
/// <param name="Not">Keys that may not be there with it.</param>
internal sealed record KindKeys(Key Tag, string Word, Key[] Needs, Key[] Only, Key[] Not) : ISchemaRule
{
    /// <inheritdoc/>
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

/// <summary>Two keys of which neither may be there without the other.</summary>
/// <param name="One">The one.</param>
/// <param name="Other">The other.</param>
internal sealed record Together(Key One, Key Other) : ISchemaRule
{
    /// <inheritdoc/>
    public JsonObject Schema() => new()
    {
        ["dependentRequired"] = new JsonObject { [One.Name] = new JsonArray((JsonNode)Other.Name), [Other.Name] = new JsonArray((JsonNode)One.Name) },
    };
}
