using System.Globalization;
using System.Text.Json;

namespace BracketGen.TestSupport.Comparison;

/// <summary>Compares two result files: every number, true and false, and the texts that the table of changes lists.</summary>
public static class ResultComparison
{
    private const string File = "result.json", Absent = "absent";

    /// <summary>Compares the texts of two result files.</summary>
    /// <exception cref="JsonException">One of them is not JSON.</exception>
    public static void Of(string before, string after, Changes changes, Findings into)
    {
        using var old = JsonDocument.Parse(before);
        using var fresh = JsonDocument.Parse(after);
        var left = Leaves(fresh.RootElement, changes.NewNameIn, (_, name) => name);
        var moved = new HashSet<string>();
        foreach (var (path, value) in Leaves(old.RootElement, changes.NameIn, NewName))
        {
            var pattern = Changes.PatternOf(path);
            if (changes.Moved(path) is not { } to)
            {
                into.Leave(pattern);
                continue;
            }

            moved.Add(Changes.PatternOf(to));
            if (left.Remove(to, out var counterpart))
            {
                Compare(path, pattern, value, counterpart, changes, into);
            }
            else
            {
                Missing(path, to, pattern, value, left, changes, into);
            }
        }

        foreach (var (path, value) in left.Where(l => IsHard(l.Value)))
        {
            var pattern = Changes.PatternOf(path);
            if (moved.Contains(pattern))
            {
                into.Differ(File, path, pattern, Absent, value.GetRawText());
            }
            else
            {
                into.Add(pattern);
            }
        }

        string NewName(string list, string name) => changes.Allowed($"{list}[].{changes.NameIn(list)}", name)[0];
    }

    private static void Compare(string path, string pattern, JsonElement before, JsonElement after, Changes changes, Findings into)
    {
        if (before.ValueKind == JsonValueKind.Number && after.ValueKind == JsonValueKind.Number)
        {
            into.Number(File, path, pattern, before.GetDouble(), after.GetDouble(), changes.Relative(pattern));
            return;
        }

        var isText = before.ValueKind == JsonValueKind.String && after.ValueKind == JsonValueKind.String;
        if ((!isText || changes.IsCompared(pattern)) && !changes.Allowed(pattern, Text(before)).Contains(Text(after)))
        {
            into.Differ(File, path, pattern, before.GetRawText(), after.GetRawText());
        }
    }

    private static void Missing(
        string path, string to, string pattern, JsonElement before, Dictionary<string, JsonElement> left, Changes changes, Findings into)
    {
        if (before.ValueKind == JsonValueKind.Null)
        {
            // Nothing, written as null or left out; but not where something stands now.
            if (left.Any(l => l.Value.ValueKind != JsonValueKind.Null && l.Key.StartsWith(to, StringComparison.Ordinal) && l.Key[to.Length] is '.' or '['))
            {
                into.Differ(File, path, pattern, "null", "values under it");
            }
        }
        else if (IsHard(before) || changes.IsCompared(pattern))
        {
            into.Differ(File, path, pattern, before.GetRawText(), Absent);
        }
    }

    private static string Text(JsonElement value) => value.ValueKind == JsonValueKind.String ? value.GetString()! : value.GetRawText();

    private static bool IsHard(JsonElement value) => value.ValueKind is JsonValueKind.Number or JsonValueKind.True or JsonValueKind.False;

    // Every value that holds no other, by its path; elements of a list by their name in it, or by their place.
    private static Dictionary<string, JsonElement> Leaves(JsonElement root, Func<string, string?> keyOf, Func<string, string, string> nameOf)
    {
        var leaves = new Dictionary<string, JsonElement>();
        Walk(root, "");
        return leaves;

        void Walk(JsonElement element, string path)
        {
            switch (element.ValueKind)
            {
                case JsonValueKind.Object:
                    foreach (var property in element.EnumerateObject())
                    {
                        Walk(property.Value, path.Length == 0 ? property.Name : $"{path}.{property.Name}");
                    }

                    break;
                case JsonValueKind.Array:
                    var pattern = Changes.PatternOf(path);
                    foreach (var (item, name) in element.EnumerateArray().Zip(Names(element, keyOf(pattern), n => nameOf(pattern, n))))
                    {
                        Walk(item, $"{path}[{name}]");
                    }

                    break;
                default:
                    leaves[path] = element;
                    break;
            }
        }
    }

    private static IEnumerable<string> Names(JsonElement list, string? key, Func<string, string> nameOf)
    {
        var seen = new Dictionary<string, int>();
        foreach (var (place, item) in list.EnumerateArray().Index())
        {
            if (key is null || item.ValueKind != JsonValueKind.Object || !item.TryGetProperty(key, out var name))
            {
                yield return place.ToString(CultureInfo.InvariantCulture);
                continue;
            }

            var text = nameOf(name.ToString());
            var count = seen[text] = seen.GetValueOrDefault(text) + 1;
            yield return count == 1 ? text : string.Create(CultureInfo.InvariantCulture, $"{text}#{count}");
        }
    }
}
