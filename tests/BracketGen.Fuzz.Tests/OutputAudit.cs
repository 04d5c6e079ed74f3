using System.Buffers.Binary;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using BracketGen.Line.Lists;

namespace BracketGen.Fuzz.Tests;

/// <summary>Whether an output is whole and free of numbers that are none.</summary>
public static partial class OutputAudit
{
    /// <summary>Looks into a file by its name's ending.</summary>
    /// <exception cref="InvalidDataException">It is not whole, or holds a NaN or an infinity.</exception>
    public static void Of(string name, byte[] bytes)
    {
        switch (Path.GetExtension(name))
        {
            case ".dxf":
                Dxf(name, Encoding.UTF8.GetString(bytes));
                break;
            case ".step":
                Text(name, Encoding.UTF8.GetString(bytes), "END-ISO-10303-21;\n");
                break;
            case ".json":
                Text(name, Encoding.UTF8.GetString(bytes), "}\n");
                Json(name, bytes);
                break;
            case ".html":
                Text(name, Encoding.UTF8.GetString(bytes), "</html>\n");
                break;
            case ".pdf":
                Pdf(name, bytes);
                break;
            case ".stl":
                Stl(name, bytes);
                break;
            case ".glb":
                Glb(name, bytes);
                break;
            case ".xlsx":
                Workbook(name, bytes);
                break;
            default:
                Text(name, Encoding.UTF8.GetString(bytes), "");
                break;
        }
    }

    /// <summary>Looks into a text.</summary>
    /// <exception cref="InvalidDataException">It does not end as it must, or holds a NaN or an infinity.</exception>
    public static void Text(string name, string text, string end)
    {
        Require(text.EndsWith(end, StringComparison.Ordinal), name, "it does not end as it must");
        var strange = NoNumber().Match(text);
        if (strange.Success)
        {
            var from = Math.Max(0, strange.Index - 60);
            throw new InvalidDataException($"{name}: {strange.Value} in '{text[from..Math.Min(text.Length, strange.Index + 40)]}'");
        }
    }

    private static void Dxf(string name, string text)
    {
        Text(name, text, "\nEOF\n");
        var lines = text.Split('\n');
        for (var i = 0; i + 1 < lines.Length - 1; i += 2)
        {
            Require(int.TryParse(lines[i], NumberStyles.AllowLeadingWhite, CultureInfo.InvariantCulture, out var code), name, $"line {i + 1} is no group code");
            if (code is (>= 10 and < 60) or (>= 140 and < 148))
            {
                Require(
                    double.TryParse(lines[i + 1], NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && Math.Abs(value) < 1e9, name,
                    $"line {i + 2}: {lines[i + 1]} is no coordinate");
            }
        }
    }

    private static void Json(string name, byte[] bytes)
    {
        using var document = JsonDocument.Parse(bytes);
        Walk(document.RootElement);

        void Walk(JsonElement element)
        {
            switch (element.ValueKind)
            {
                case JsonValueKind.Object:
                    foreach (var property in element.EnumerateObject())
                    {
                        Walk(property.Value);
                    }

                    break;
                case JsonValueKind.Array:
                    foreach (var item in element.EnumerateArray())
                    {
                        Walk(item);
                    }

                    break;
                case JsonValueKind.Number:
                    Require(double.IsFinite(element.GetDouble()), name, $"{element} is no number");
                    break;
            }
        }
    }

    private static void Stl(string name, byte[] bytes)
    {
        var count = BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(80));
        Require(bytes.Length == 84 + (50 * count), name, "its length is not that of its triangles");
        for (var i = 0; i < count; i++)
        {
            Floats(name, bytes.AsSpan((int)(84 + (50 * i)), 48));
        }
    }

    private static void Glb(string name, byte[] bytes)
    {
        Require(BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(8)) == bytes.Length, name, "its length is not what its head says");
        var json = (int)BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(12));
        using var document = JsonDocument.Parse(bytes.AsMemory(20, json));
        var data = bytes.AsMemory(28 + json);
        var views = document.RootElement.GetProperty("bufferViews");
        foreach (var accessor in document.RootElement.GetProperty("accessors").EnumerateArray().Where(a => a.GetProperty("componentType").GetInt32() == 5126))
        {
            var view = views[accessor.GetProperty("bufferView").GetInt32()];
            var from = view.TryGetProperty("byteOffset", out var offset) ? offset.GetInt32() : 0;
            Floats(name, data.Span.Slice(from, view.GetProperty("byteLength").GetInt32()));
        }
    }

    private static void Floats(string name, ReadOnlySpan<byte> bytes)
    {
        for (var i = 0; i + 4 <= bytes.Length; i += 4)
        {
            Require(float.IsFinite(BinaryPrimitives.ReadSingleLittleEndian(bytes[i..])), name, "a coordinate is no number");
        }
    }

    private static void Pdf(string name, byte[] bytes)
    {
        var text = Encoding.Latin1.GetString(bytes);
        Require(text.StartsWith("%PDF-", StringComparison.Ordinal) && text.TrimEnd().EndsWith("%%EOF", StringComparison.Ordinal), name, "it is not whole");
        foreach (Match stream in PdfStream().Matches(text))
        {
            var content = bytes.AsMemory(stream.Groups["content"].Index, stream.Groups["content"].Length).ToArray();
            if (stream.Value.Contains("/FlateDecode", StringComparison.Ordinal))
            {
                using var inflated = new ZLibStream(new MemoryStream(content), CompressionMode.Decompress);
                using var all = new MemoryStream();
                inflated.CopyTo(all);
                content = all.ToArray();
            }

            // Fonts are streams too: only what is text all through draws.
            if (content.All(b => b is >= 32 and < 127 or 9 or 10 or 13))
            {
                Text(name, Encoding.Latin1.GetString(content), "");
            }
        }
    }

    private static void Workbook(string name, byte[] bytes)
    {
        using var archive = new ZipArchive(new MemoryStream(bytes));
        foreach (var entry in archive.Entries)
        {
            using var reader = new StreamReader(entry.Open());
            Text($"{name}/{entry.FullName}", reader.ReadToEnd(), "");
        }
    }

    private static void Require(bool holds, string name, string what)
    {
        if (!holds)
        {
            throw new InvalidDataException($"{name}: {what}.");
        }
    }

    [GeneratedRegex(@"\bNaN\b|Infinity|∞", RegexOptions.CultureInvariant)]
    private static partial Regex NoNumber();

    [GeneratedRegex(@"obj\s*<<(?<head>(?:(?!endobj).){0,600}?)>>\s*stream\r?\n(?<content>.*?)\r?\nendstream", RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex PdfStream();
}
