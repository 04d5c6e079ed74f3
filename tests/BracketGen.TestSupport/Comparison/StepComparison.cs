using System.Globalization;
using System.Text.RegularExpressions;

namespace BracketGen.TestSupport.Comparison;

/// <summary>Compares the data of two STEP files: every number, enumeration and reference. Texts and the header are not compared.</summary>
/// <remarks>
/// Instances are matched by their entity and their order among those of the same entity, and so are references: an instance of
/// another entity put between moves nothing.
/// </remarks>
public static partial class StepComparison
{
    private sealed record Instance(string Entity, int Order, string Parameters)
    {
        public string Title => string.Create(CultureInfo.InvariantCulture, $"{Entity} {Order}");
    }

    /// <summary>Compares the texts of two STEP files.</summary>
    /// <param name="file">Name of the file, for the findings.</param>
    /// <param name="before">What the release before wrote.</param>
    /// <param name="after">What the release after wrote.</param>
    /// <param name="into">Where the findings go.</param>
    public static void Of(string file, string before, string after, Findings into)
    {
        var (old, fresh) = (Instances(before), Instances(after));
        var (ours, theirs) = (old.Values.ToLookup(i => i.Entity), fresh.Values.ToLookup(i => i.Entity));
        foreach (var entity in ours.Select(g => g.Key).Union(theirs.Select(g => g.Key)))
        {
            if (ours[entity].Count() != theirs[entity].Count())
            {
                into.Differ(file, entity, entity, $"{ours[entity].Count()} of them", $"{theirs[entity].Count()} of them");
                continue;
            }

            foreach (var (one, other) in ours[entity].Zip(theirs[entity]))
            {
                Compare(file, one, Tokens(one, old), Tokens(other, fresh), into);
            }
        }
    }

    private static void Compare(string file, Instance instance, string[] before, string[] after, Findings into)
    {
        if (before.Length != after.Length)
        {
            into.Differ(file, instance.Title, instance.Entity, $"{before.Length} parameters", $"{after.Length} parameters");
            return;
        }

        foreach (var (place, (one, other)) in before.Zip(after).Index())
        {
            var where = string.Create(CultureInfo.InvariantCulture, $"{instance.Title}, parameter {place + 1}");
            if (Number(one) is { } a && Number(other) is { } b)
            {
                into.Number(file, where, instance.Entity, a, b);
            }
            else if (one != other)
            {
                into.Differ(file, where, instance.Entity, one, other);
            }
        }
    }

    private static Dictionary<string, Instance> Instances(string text)
    {
        var counts = new Dictionary<string, int>();
        var instances = new Dictionary<string, Instance>();
        foreach (var match in Statement().Matches(text).Cast<Match>())
        {
            // An instance of several entities at once has no single name: all of them together are its name.
            var parameters = match.Groups["parameters"].Value;
            var entity = match.Groups["entity"].Length > 0
                ? match.Groups["entity"].Value
                : string.Join('+', Name().Matches(Text().Replace(parameters, "")).Select(m => m.Value));
            counts[entity] = counts.GetValueOrDefault(entity) + 1;
            instances.Add(match.Groups["number"].Value, new(entity, counts[entity], parameters));
        }

        return instances;
    }

    private static string[] Tokens(Instance instance, Dictionary<string, Instance> all) =>
    [
        .. Token().Matches(instance.Parameters).Select(m => m.Value switch
        {
            ['\'', ..] => "text",
            ['#', .. var number] => $"the {(all.TryGetValue(number, out var target) ? target.Title : "missing instance")}",
            var other => other,
        }),
    ];

    private static double? Number(string token) =>
        double.TryParse(token, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : null;

    [GeneratedRegex(@"^#(?<number>[0-9]+)\s*=\s*(?<entity>[A-Z0-9_]*)\s*(?<parameters>\((?:'(?:[^']|'')*'|[^';])*\))\s*;", RegexOptions.CultureInvariant | RegexOptions.Multiline)]
    private static partial Regex Statement();

    [GeneratedRegex(@"'(?:[^']|'')*'|#[0-9]+|[+-]?[0-9]+(?:\.[0-9]*)?(?:E[+-]?[0-9]+)?|\.[A-Z0-9_]+\.|[A-Z][A-Z0-9_]*|[$*()]", RegexOptions.CultureInvariant)]
    private static partial Regex Token();

    [GeneratedRegex(@"'(?:[^']|'')*'|\.[A-Z0-9_]+\.", RegexOptions.CultureInvariant)]
    private static partial Regex Text();

    [GeneratedRegex(@"[A-Z][A-Z0-9_]*", RegexOptions.CultureInvariant)]
    private static partial Regex Name();
}
