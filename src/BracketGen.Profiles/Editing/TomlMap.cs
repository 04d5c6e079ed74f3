using System.Globalization;
using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace BracketGen.Profiles.Editing;

/// <summary>Where in a text each value and each header's keys stand, by the names that errors use: "mount.holes[2].at[1]".</summary>
/// <remarks>Offsets are UTF-16 units from the start of the text, ends exclusive.</remarks>
internal sealed class TomlMap
{
    private readonly Dictionary<string, Spot> _values = [];
    private readonly List<Block> _blocks = [];
    private readonly Dictionary<string, int> _counts = [];
    private readonly string _text;

    private TomlMap(string text) => _text = text;

    /// <summary>A value in the text.</summary>
    /// <param name="Start">Start of the value.</param>
    /// <param name="End">End of the value.</param>
    /// <param name="Value">The value.</param>
    /// <param name="PairStart">Start of the key it stands behind; of the value itself within a list.</param>
    /// <param name="IsInline">Whether it stands in braces or brackets and so shares its line.</param>
    public sealed record Spot(int Start, int End, ValueSyntax Value, int PairStart, bool IsInline);

    /// <summary>A header with its keys; the root has none.</summary>
    /// <param name="Path">What its keys belong to.</param>
    /// <param name="Start">Start of the header's line.</param>
    /// <param name="End">End of the line of its last key, or of the header where it has none: here a further key goes.</param>
    public sealed record Block(string Path, int Start, int End);

    /// <summary>The headers in the order of the text, the root first.</summary>
    public IReadOnlyList<Block> Blocks => _blocks;

    /// <summary>Reads <paramref name="text"/>; null where it is not TOML throughout.</summary>
    public static TomlMap? Read(string text)
    {
        try
        {
            var document = SyntaxParser.Parse(text, "", validate: true);
            if (document.HasErrors)
            {
                return null;
            }

            var map = new TomlMap(text);
            map.Add(document);
            return map;
        }
        catch (TomlException)
        {
            return null;
        }
    }

    /// <summary>The value of that name; null where there is none.</summary>
    public Spot? Find(string path) => _values.GetValueOrDefault(path);

    /// <summary>How many items a list has; 0 where there is none.</summary>
    public int CountOf(string list) =>
        _counts.TryGetValue(list, out var count) ? count : Find(list)?.Value is ArraySyntax array ? array.Items.ChildrenCount : 0;

    /// <summary>Whether the list is written as repeated headers.</summary>
    public bool IsRepeated(string list) => _counts.ContainsKey(list);

    /// <summary>The names of all values.</summary>
    public IEnumerable<string> Paths => _values.Keys;

    /// <summary>Offset behind the line's end that follows <paramref name="offset"/>.</summary>
    public int LineEnd(int offset)
    {
        var end = _text.IndexOf('\n', Math.Min(offset, _text.Length));
        return end < 0 ? _text.Length : end + 1;
    }

    /// <summary>Offset of the start of the line that holds <paramref name="offset"/>.</summary>
    public int LineStart(int offset) => offset == 0 ? 0 : _text.LastIndexOf('\n', offset - 1) + 1;

    private void Add(DocumentSyntax document)
    {
        _blocks.Add(new("", 0, AddAll("", document.KeyValues, 0)));
        foreach (var header in document.Tables)
        {
            var path = Open([.. Names(header.Name!)], header is TableArraySyntax);
            var start = LineStart(header.Name!.Span.Start.Offset);
            _blocks.Add(new(path, start, AddAll(path, header.Items, LineEnd(header.Name!.Span.End.Offset))));
        }
    }

    private int AddAll(string path, SyntaxList<KeyValueSyntax> pairs, int end)
    {
        foreach (var pair in pairs)
        {
            Add(path, pair, isInline: false);
            end = LineEnd(pair.Value!.Span.End.Offset);
        }

        return end;
    }

    private string Open(string[] names, bool isRepeated)
    {
        var path = "";
        for (var i = 0; i < names.Length; i++)
        {
            path = Join(path, names[i]);
            if (isRepeated && i == names.Length - 1)
            {
                _counts[path] = _counts.GetValueOrDefault(path) + 1;
            }

            if (_counts.TryGetValue(path, out var count))
            {
                path = Item(path, count);
            }
        }

        return path;
    }

    private void Add(string path, KeyValueSyntax pair, bool isInline)
    {
        foreach (var name in Names(pair.Key!))
        {
            path = Join(path, name);
        }

        Add(path, pair.Value!, pair.Key!.Span.Start.Offset, isInline);
    }

    private void Add(string path, ValueSyntax value, int pairStart, bool isInline)
    {
        _values[path] = new(value.Span.Start.Offset, value.Span.End.Offset + 1, value, pairStart, isInline);
        switch (value)
        {
            case ArraySyntax array:
                var number = 0;
                foreach (var item in array.Items)
                {
                    number++;
                    Add(Item(path, number), item.Value!, item.Value!.Span.Start.Offset, isInline: true);
                }

                break;
            case InlineTableSyntax table:
                foreach (var item in table.Items)
                {
                    Add(path, item.KeyValue!, isInline: true);
                }

                break;
            default:
                break;
        }
    }

    private static IEnumerable<string> Names(KeySyntax key)
    {
        yield return Name(key.Key);
        foreach (var dotted in key.DotKeys)
        {
            yield return Name(dotted.Key);
        }
    }

    private static string Name(BareKeyOrStringValueSyntax? key) => key switch
    {
        BareKeySyntax bare => bare.Key?.Text ?? "",
        StringValueSyntax quoted => quoted.Value ?? "",
        _ => "",
    };

    public static string Join(string path, string name) => path.Length == 0 ? name : $"{path}.{name}";

    public static string Item(string list, int number) => string.Create(CultureInfo.InvariantCulture, $"{list}[{number}]");
}
