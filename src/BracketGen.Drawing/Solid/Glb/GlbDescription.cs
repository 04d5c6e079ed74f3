using System.Text.Json;

namespace BracketGen.Drawing.Solid.Glb;

/// <summary>The JSON part of a glTF file that holds one mesh: what the numbers in its binary part are.</summary>
/// <remarks>The binary part holds all positions, then all normals, then the triangles' numbers.</remarks>
internal static class GlbDescription
{
    private const int Float = 5126, UnsignedInt = 5125, ArrayBuffer = 34962, ElementArrayBuffer = 34963;

    /// <summary>The JSON, as UTF-8.</summary>
    public static byte[] Write(GlbPoints points, SolidInfo info)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            Asset(json, info);
            json.WriteNumber("scene", 0);
            One(json, "scenes", () => Numbers(json, "nodes", 0));
            One(json, "nodes", () =>
            {
                json.WriteString("name", info.PartNumber);
                json.WriteNumber("mesh", 0);
            });
            One(json, "meshes", () => One(json, "primitives", () =>
            {
                json.WriteStartObject("attributes");
                json.WriteNumber("POSITION", 0);
                json.WriteNumber("NORMAL", 1);
                json.WriteEndObject();
                json.WriteNumber("indices", 2);
                json.WriteNumber("material", 0);
            }));
            One(json, "materials", () => Material(json, info));
            Accessors(json, points);
            int pointBytes = 12 * points.Positions.Count, indexBytes = 4 * points.Indices.Count;
            json.WriteStartArray("bufferViews");
            View(json, 0, pointBytes, ArrayBuffer);
            View(json, pointBytes, pointBytes, ArrayBuffer);
            View(json, 2 * pointBytes, indexBytes, ElementArrayBuffer);
            json.WriteEndArray();
            One(json, "buffers", () => json.WriteNumber("byteLength", 2 * pointBytes + indexBytes));
            json.WriteEndObject();
        }

        return stream.ToArray();
    }

    private static void Asset(Utf8JsonWriter json, SolidInfo info)
    {
        json.WriteStartObject("asset");
        json.WriteString("version", "2.0");
        json.WriteString("generator", "BracketGen");
        json.WriteStartObject("extras");
        json.WriteString("partNumber", info.PartNumber);
        json.WriteString("revision", info.Revision);
        json.WriteString("title", info.Title);
        json.WriteString("sheet", info.Sheet);
        json.WriteStartArray("warnings");
        foreach (var warning in info.Warnings)
        {
            json.WriteStringValue(warning);
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    // Matt: a viewer that has no surroundings to mirror shows true metal black.
    private static void Material(Utf8JsonWriter json, SolidInfo info)
    {
        var (red, green, blue) = info.Colour.Linear;
        json.WriteString("name", info.Sheet);
        json.WriteStartObject("pbrMetallicRoughness");
        json.WriteStartArray("baseColorFactor");
        foreach (var share in (double[])[red, green, blue, 1])
        {
            json.WriteNumberValue(Math.Round(share, 4));
        }

        json.WriteEndArray();
        json.WriteNumber("metallicFactor", 0);
        json.WriteNumber("roughnessFactor", 0.6);
        json.WriteEndObject();
    }

    private static void Accessors(Utf8JsonWriter json, GlbPoints points)
    {
        var positions = points.Positions;
        json.WriteStartArray("accessors");
        Accessor(json, 0, Float, positions.Count, "VEC3", () =>
        {
            Numbers(json, "min", positions.Min(p => p.X), positions.Min(p => p.Y), positions.Min(p => p.Z));
            Numbers(json, "max", positions.Max(p => p.X), positions.Max(p => p.Y), positions.Max(p => p.Z));
        });
        Accessor(json, 1, Float, positions.Count, "VEC3", () => { });
        Accessor(json, 2, UnsignedInt, points.Indices.Count, "SCALAR", () => { });
        json.WriteEndArray();
    }

    private static void Accessor(Utf8JsonWriter json, int view, int kind, int count, string type, Action limits)
    {
        json.WriteStartObject();
        json.WriteNumber("bufferView", view);
        json.WriteNumber("componentType", kind);
        json.WriteNumber("count", count);
        json.WriteString("type", type);
        limits();
        json.WriteEndObject();
    }

    private static void View(Utf8JsonWriter json, int offset, int length, int target)
    {
        json.WriteStartObject();
        json.WriteNumber("buffer", 0);
        json.WriteNumber("byteOffset", offset);
        json.WriteNumber("byteLength", length);
        json.WriteNumber("target", target);
        json.WriteEndObject();
    }

    /// <summary>An array of one object, which is what most of glTF is here.</summary>
    private static void One(Utf8JsonWriter json, string name, Action content)
    {
        json.WriteStartArray(name);
        json.WriteStartObject();
        content();
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void Numbers(Utf8JsonWriter json, string name, params ReadOnlySpan<float> values)
    {
        json.WriteStartArray(name);
        foreach (var value in values)
        {
            json.WriteNumberValue(value);
        }

        json.WriteEndArray();
    }
}
