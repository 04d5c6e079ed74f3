using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace BracketGen.Profiles.Forms;

/// <summary>JSON as people read it: what fits on a line stands on one.</summary>
internal static class SchemaText
{
    private const int Width = 150, Step = 2;

    /// <summary>The text, its lines ended by line feeds.</summary>
    public static string Of(JsonObject schema)
    {
        var text = new StringBuilder();
        Write(schema, 0, 0, text);
        return text.Append('\n').ToString();
    }

    private static void Write(JsonNode node, int indent, int before, StringBuilder text)
    {
        var flat = Flat(node);
        if (indent + before + flat.Length <= Width && indent > 0 || node is JsonValue)
        {
            text.Append(flat);
            return;
        }

        var isObject = node is JsonObject;
        var inner = indent + Step;
        var separator = "\n";
        text.Append(isObject ? '{' : '[');
        foreach (var (name, child) in Children(node))
        {
            text.Append(separator).Append(' ', inner).Append(name);
            Write(child, inner, name.Length, text);
            separator = ",\n";
        }

        text.Append('\n').Append(' ', indent).Append(isObject ? '}' : ']');
    }

    private static string Flat(JsonNode node)
    {
        if (node is JsonValue)
        {
            return Leaf(node);
        }

        var isObject = node is JsonObject;
        var children = string.Join(", ", Children(node).Select(c => c.Name + Flat(c.Node)));
        return children.Length == 0 ? (isObject ? "{}" : "[]") : isObject ? $"{{ {children} }}" : $"[{children}]";
    }

    private static IEnumerable<(string Name, JsonNode Node)> Children(JsonNode node) => node is JsonObject map
        ? map.Select(p => (Leaf(JsonValue.Create(p.Key)) + ": ", p.Value!))
        : node.AsArray().Select(i => ("", i!));

    private static string Leaf(JsonNode node)
    {
        using var stream = new MemoryStream();
        // Degree signs and dots between units stay readable; the file is never put into a web page.
        using (var writer = new Utf8JsonWriter(stream, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            node.WriteTo(writer);
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }
}
