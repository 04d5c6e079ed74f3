using System.Text.Json;
using System.Text.RegularExpressions;
using BracketGen.Profiles.Toml;
using Tomlyn.Syntax;

namespace BracketGen.Profiles.Editing;

/// <summary>Changes single values in a profile's text; comments, order and spacing of all the rest stay as they are.</summary>
public static partial class ProfileEditor
{
    private const string Next = "[+]";

    /// <summary>The text with one value set, added or taken away; null where that cannot be done, because the text is not TOML or there is no such place.</summary>
    /// <param name="text">The profile.</param>
    /// <param name="key">Key with the tables it stands in, as errors name it: "mount.holes[2].thread"; "mount.holes[+]" is one item more.</param>
    /// <param name="value">The new value; null or JSON's null takes the key or the item away.</param>
    public static string? Apply(string text, string key, JsonElement? value)
    {
        if (key.Length > 200 || !KeyForm().IsMatch(key) || TomlMap.Read(text) is not { } map)
        {
            return null;
        }

        // A table under headers of its own is taken out before it is written anew on one line.
        if (value is { ValueKind: JsonValueKind.Object } && map.Find(key) is null && !key.EndsWith(']') && Remove(text, map, key) is { } without)
        {
            text = without;
            if (TomlMap.Read(text) is not { } left)
            {
                return null;
            }

            map = left;
        }

        var literal = value is { ValueKind: not JsonValueKind.Null } given ? TomlLiteral.Of(given) : null;
        var isGiven = value is { ValueKind: not JsonValueKind.Null };
        var edited = isGiven && literal is null ? null
            : !isGiven ? Remove(text, map, key)
            : key.EndsWith(Next, StringComparison.Ordinal) ? Add(text, map, key[..^Next.Length], value!.Value, literal!)
            : map.Find(key) is { } spot ? Replace(text, spot, literal!)
            : Insert(text, map, key, literal!);
        return edited is not null && TomlMap.Read(edited) is not null ? edited : null;
    }

    private static string Replace(string text, TomlMap.Spot spot, string literal)
    {
        // A day that stood without quotes goes on without them.
        if (spot.Value is DateTimeValueSyntax && DayInQuotes().IsMatch(literal))
        {
            literal = literal[1..^1];
        }

        return text[..spot.Start] + literal + text[spot.End..];
    }

    private static string? Insert(string text, TomlMap map, string key, string literal)
    {
        var (parent, name) = Split(key);
        if (name.EndsWith(']'))
        {
            return null;
        }

        if (map.Find(parent)?.Value is { } owner)
        {
            return owner is InlineTableSyntax table ? IntoBraces(text, map.Find(parent)!, table.Items.ChildrenCount, $"{name} = {literal}") : null;
        }

        if (map.Blocks.FirstOrDefault(b => b.Path == parent) is { } block)
        {
            return IntoBlock(text, block.End, $"{name} = {literal}");
        }

        // "quadrant.rotation = 84" under the root: the next key is written as its neighbours are.
        if (map.Paths.FirstOrDefault(p => p.StartsWith(parent + ".", StringComparison.Ordinal) && !map.Find(p)!.IsInline) is { } neighbour
            && map.Blocks.LastOrDefault(b => b.Start <= map.Find(neighbour)!.PairStart) is { } home && !map.Blocks.Any(b => b.Path.StartsWith(parent + ".", StringComparison.Ordinal)))
        {
            return IntoBlock(text, home.End, $"{(home.Path.Length == 0 ? key : key[(home.Path.Length + 1)..])} = {literal}");
        }

        return parent.Contains('[') ? null : AtEnd(text, $"[{parent}]\n{name} = {literal}\n");
    }

    private static string? Add(string text, TomlMap map, string list, JsonElement value, string literal)
    {
        if (map.Find(list) is { Value: ArraySyntax array } spot)
        {
            return IntoBrackets(text, spot, array, literal);
        }

        if (value.ValueKind != JsonValueKind.Object)
        {
            return map.IsRepeated(list) || map.Find(list) is not null ? null : Insert(text, map, list, $"[{literal}]");
        }

        var lines = $"[[{list}]]\n" + string.Concat(value.EnumerateObject().Select(p => $"{p.Name} = {TomlLiteral.Of(p.Value)}\n"));
        if (!map.IsRepeated(list))
        {
            return list.Contains('[') || map.Find(list) is not null ? null : AtEnd(text, lines);
        }

        // Behind the last item, with whatever headers stand under it.
        var end = map.Blocks.Last(b => b.Path.StartsWith(list + "[", StringComparison.Ordinal)).End;
        return text[..end] + (end > 0 && text[end - 1] != '\n' ? "\n" : "") + "\n" + lines + text[end..];
    }

    private static string? Remove(string text, TomlMap map, string key)
    {
        if (map.Find(key) is { } spot)
        {
            return spot.IsInline ? OutOfList(text, spot) : text[..map.LineStart(spot.PairStart)] + text[map.LineEnd(spot.End)..];
        }

        var blocks = map.Blocks.Where(b => b.Path == key || b.Path.StartsWith(key + ".", StringComparison.Ordinal) || b.Path.StartsWith(key + "[", StringComparison.Ordinal)).ToList();
        if (key.Length == 0 || blocks.Count == 0)
        {
            return null;
        }

        foreach (var block in blocks.OrderByDescending(b => b.Start))
        {
            // The empty line that parted it from the next goes too.
            var end = block.End;
            if (end < text.Length && text[end] is '\n' or '\r')
            {
                end = map.LineEnd(end);
            }

            text = text[..block.Start] + text[end..];
        }

        return text;
    }

    private static string OutOfList(string text, TomlMap.Spot spot)
    {
        var (start, end) = (spot.PairStart, spot.End);
        var next = SkipSpace(text, end);
        if (text[next] == ',')
        {
            end = SkipSpace(text, next + 1);
        }
        else
        {
            // The last one: the comma before it has nothing to part any more.
            var before = start;
            while (before > 0 && char.IsWhiteSpace(text[before - 1]))
            {
                before--;
            }

            start = before > 0 && text[before - 1] == ',' ? before - 1 : start;
        }

        return text[..start] + text[end..];
    }

    private static int SkipSpace(string text, int at)
    {
        while (at < text.Length - 1 && char.IsWhiteSpace(text[at]))
        {
            at++;
        }

        return at;
    }

    private static string IntoBlock(string text, int end, string line) =>
        text[..end] + (end > 0 && text[end - 1] != '\n' ? "\n" : "") + line + "\n" + text[end..];

    private static string AtEnd(string text, string lines) => text + (text.Length > 0 && text[^1] != '\n' ? "\n" : "") + "\n" + lines;

    private static string IntoBraces(string text, TomlMap.Spot spot, int count, string pair) => count == 0
        ? $"{text[..spot.Start]}{{ {pair} }}{text[spot.End..]}"
        : $"{text[..(spot.End - 1)].TrimEnd()}, {pair} }}{text[spot.End..]}";

    private static string IntoBrackets(string text, TomlMap.Spot spot, ArraySyntax array, string literal)
    {
        if (array.Items.ChildrenCount == 0)
        {
            return $"{text[..spot.Start]}[{literal}]{text[spot.End..]}";
        }

        // Right behind the last item, so that comments and line ends before the bracket stay where they are.
        var last = array.Items.Last()!.Value!.Span.End.Offset + 1;
        return $"{text[..last]}, {literal}{text[last..]}";
    }

    private static (string Parent, string Name) Split(string key)
    {
        var dot = key.LastIndexOf('.');
        return dot < 0 ? ("", key) : (key[..dot], key[(dot + 1)..]);
    }

    [GeneratedRegex(@"^[A-Za-z0-9_-]+(\[[1-9][0-9]{0,3}\])*(\.[A-Za-z0-9_-]+(\[[1-9][0-9]{0,3}\])*)*(\[\+\])?$", RegexOptions.CultureInvariant)]
    private static partial Regex KeyForm();

    [GeneratedRegex("^\"[0-9]{4}-[0-9]{2}-[0-9]{2}\"$", RegexOptions.CultureInvariant)]
    private static partial Regex DayInQuotes();
}
