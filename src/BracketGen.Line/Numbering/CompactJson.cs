using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace BracketGen.Line.Numbering;

/// <summary>How the files that a line keeps for itself are written as JSON.</summary>
internal static class CompactJson
{
    /// <summary>Compact, nothing that is null, letters as they are; read back, what is not known is refused.</summary>
    /// <param name="converters">For words in the place of numbers.</param>
    public static JsonSerializerOptions Options(params ReadOnlySpan<JsonConverter> converters)
    {
        var options = new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
            UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        };
        foreach (var converter in converters)
        {
            options.Converters.Add(converter);
        }

        return options;
    }
}
