using System.Text.Json.Nodes;
using BracketGen.Profiles;
using BracketGen.Profiles.Forms;

namespace BracketGen.Fuzz.Tests;

/// <summary>The least and the greatest number that the schemas allow for a key: hostile values that the reader must let through.</summary>
public static class Limits
{
    private static readonly ILookup<string, (double Least, double Most)> All = ProfileSchema.All
        .SelectMany(s => In(JsonNode.Parse(s.Text)!, ""))
        .ToLookup(p => p.Key, p => (p.Least, p.Most));

    /// <summary>Every range of a key of that name.</summary>
    public static IReadOnlyList<(double Least, double Most)> Of(string key) => [.. All[key]];

    private static IEnumerable<(string Key, double Least, double Most)> In(JsonNode? node, string key)
    {
        if (node is JsonArray array)
        {
            return array.SelectMany(n => In(n, key));
        }

        if (node is not JsonObject all)
        {
            return [];
        }

        var own = all["minimum"] is JsonValue least && all["maximum"] is JsonValue most ? [(key, (double)least, (double)most)] : Array.Empty<(string, double, double)>();
        return own.Concat(all.SelectMany(p => In(p.Value, p.Key is "anyOf" or "oneOf" or "items" or "properties" or "allOf" or "then" or "prefixItems" ? key : p.Key)));
    }
}
