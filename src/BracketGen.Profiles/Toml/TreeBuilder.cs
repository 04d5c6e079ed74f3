using BracketGen.Profiles.Errors;
using Tomlyn.Syntax;

namespace BracketGen.Profiles.Toml;

/// <summary>Gathers the headers, dotted keys and values of a parsed document into one tree; reports keys given twice.</summary>
internal sealed class TreeBuilder(string path, string text, Reading reading)
{
    public TomlTable Build(DocumentSyntax document)
    {
        var root = new TomlTable(new(path, 1, 1), new(text, 0, 0)) { HasHeader = true };
        AddAll(root, "", document.KeyValues);
        foreach (var header in document.Tables)
        {
            if (header.Name is { } name && Open(root, Parts(name), header is TableArraySyntax, header) is { } table)
            {
                AddAll(table, string.Join('.', Parts(name).Select(p => p.Name)) + ".", header.Items);
            }
        }

        return root;
    }

    private readonly record struct Part(string Name, Place Place);

    private void AddAll(TomlTable table, string prefix, SyntaxList<KeyValueSyntax> pairs)
    {
        foreach (var pair in pairs)
        {
            Add(table, prefix, pair);
        }
    }

    private void Add(TomlTable table, string prefix, KeyValueSyntax pair)
    {
        if (pair.Key is null || pair.Value is null)
        {
            return;
        }

        var parts = Parts(pair.Key);
        foreach (var part in parts[..^1])
        {
            prefix += part.Name + ".";
            switch (table.Find(part.Name))
            {
                case null:
                    var made = new TomlTable(part.Place, WrittenAs(pair.Key));
                    table.Add(new(part.Name, part.Place, made));
                    table = made;
                    break;
                case { Value: TomlTable { IsInline: false } next }:
                    table = next;
                    break;
                case { } taken:
                    ReportTwice(part, prefix[..^1], taken);
                    return;
            }
        }

        var last = parts[^1];
        if (table.Find(last.Name) is { } first)
        {
            ReportTwice(last, prefix + last.Name, first);
            return;
        }

        table.Add(new(last.Name, last.Place, Value(pair.Value, prefix + last.Name)));
    }

    // The table a header names. Whatever the header repeats wrongly is reported, and its keys go to a table of their own.
    private TomlTable? Open(TomlTable table, Part[] parts, bool isRepeated, TableSyntaxBase header)
    {
        var prefix = "";
        for (var i = 0; i < parts.Length - 1; i++)
        {
            var part = parts[i];
            prefix += part.Name + ".";
            switch (table.Find(part.Name)?.Value)
            {
                case null:
                    var made = new TomlTable(part.Place, WrittenAs(header.Name!));
                    table.Add(new(part.Name, part.Place, made));
                    table = made;
                    break;
                case TomlTable { IsInline: false } next:
                    table = next;
                    break;
                case TomlList { IsOpen: true } list:
                    table = (TomlTable)list.Items[^1];
                    break;
                default:
                    ReportTwice(part, prefix[..^1], table.Find(part.Name)!);
                    return null;
            }
        }

        var last = parts[^1];
        var found = table.Find(last.Name);
        var own = new TomlTable(last.Place, WrittenAs(header.Name!)) { HasHeader = true };
        switch (found?.Value)
        {
            case null when isRepeated:
                table.Add(new(last.Name, last.Place, new TomlList([own], IsOpen: true, last.Place, WrittenAs(header.Name!))));
                return own;
            case null:
                table.Add(new(last.Name, last.Place, own));
                return own;
            case TomlList { IsOpen: true } list when isRepeated:
                list.Items.Add(own);
                return own;
            case TomlTable { HasHeader: false, IsInline: false } next when !isRepeated:
                next.HasHeader = true;
                return next;
            case TomlList { IsOpen: true }:
                reading.Report(last.Place, prefix + last.Name, $"[{prefix}{last.Name}]", new HeaderOfOneBracket(found.Place.Line));
                return null;
            default:
                ReportTwice(last, prefix + last.Name, found!);
                return null;
        }
    }

    private void ReportTwice(Part part, string key, TomlEntry first) => reading.Report(part.Place, key, key, new KeyTwice(first.Place.Line));

    private TomlValue Value(ValueSyntax value, string key)
    {
        var place = PlaceOf(value);
        var written = WrittenAs(value);
        switch (value)
        {
            case StringValueSyntax s:
                return new TomlText(s.Value ?? "", place, written);
            case IntegerValueSyntax i:
                return new TomlNumber(i.Value, place, written);
            case FloatValueSyntax f:
                return new TomlNumber(f.Value, place, written);
            case DateTimeValueSyntax { Kind: SyntaxKind.LocalDate } d:
                return new TomlDate(DateOnly.FromDateTime(d.Value.DateTime.DateTime), place, written);
            case ArraySyntax array:
                var items = new List<TomlValue>();
                foreach (var item in array.Items)
                {
                    if (item.Value is not null)
                    {
                        items.Add(Value(item.Value, $"{key}[{items.Count + 1}]"));
                    }
                }

                return new TomlList(items, IsOpen: false, place, written);
            case InlineTableSyntax inline:
                var table = new TomlTable(place, written) { IsInline = true, HasHeader = true };
                foreach (var item in inline.Items)
                {
                    if (item.KeyValue is not null)
                    {
                        Add(table, key + ".", item.KeyValue);
                    }
                }

                return table;
            default:
                return new TomlOther(value is BooleanValueSyntax ? "true or false" : "a time", place, written);
        }
    }

    private Part[] Parts(KeySyntax key)
    {
        var parts = new List<Part> { PartOf(key.Key) };
        foreach (var dotted in key.DotKeys)
        {
            parts.Add(PartOf(dotted.Key));
        }

        return [.. parts];
    }

    private Part PartOf(BareKeyOrStringValueSyntax? key) => key switch
    {
        BareKeySyntax bare => new(bare.Key?.Text ?? "", PlaceOf(bare)),
        StringValueSyntax quoted => new(quoted.Value ?? "", PlaceOf(quoted)),
        _ => new("", new(path, 1, 1)),
    };

    private Place PlaceOf(SyntaxNodeBase node) => new(path, node.Span.Start.Line + 1, node.Span.Start.Column + 1);

    private Excerpt WrittenAs(SyntaxNodeBase node) => new(text, node.Span.Start.Offset, node.Span.End.Offset + 1);
}
