using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text;
using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace BracketGen.Profiles.Forms;

/// <summary>Keys that once had another name.</summary>
/// <remarks>
/// A profile with an old name gets an error that gives the new one. Packed jobs and registers were written by the program itself, so
/// there the old names are read as the new ones. Hashes of what a file says go by the old names: a new name alone changes none.
/// </remarks>
public static class RenamedKeys
{
    private static readonly FrozenDictionary<string, string> ToNow = All.ToFrozenDictionary(r => r.Old, r => r.Now);
    private static readonly FrozenDictionary<string, string> ToOld = All.ToFrozenDictionary(r => r.Now, r => r.Old);

    /// <summary>Old and present name of every key that was renamed; none was renamed twice.</summary>
    public static ImmutableArray<(string Old, string Now)> All =>
    [
        ("least_bend_radius", "min_bend_radius"),
        ("least_volts", "min_volts"),
        ("most_volts", "max_volts"),
        ("least_free_play", "min_free_play"),
        ("over_travel_reserve", "min_over_travel"),
        ("most_over_travel", "max_over_travel"),
        ("least_wrap", "min_wrap"),
        ("least_thickness", "min_thickness"),
        ("most_thickness", "max_thickness"),
        ("least_yield_factor", "min_yield_factor"),
        ("least_endurance_factor", "min_endurance_factor"),
        ("most_give", "max_give"),
        ("least_radius_across_grain", "min_radius_across_grain"),
        ("least_radius_along_grain", "min_radius_along_grain"),
        ("most_speed", "max_speed"),
        ("least", "min"),
        ("most", "max"),
    ];

    /// <summary>The present name of a key that was once called <paramref name="name"/>; null where it never was.</summary>
    public static string? NowOf(string name) => ToNow.GetValueOrDefault(name);

    /// <summary>A key with the tables it stands in, every old name replaced by the present one: keep_out[1].least becomes keep_out[1].min.</summary>
    public static string PathNow(string path) => Replace(path, ToNow);

    /// <summary>The same the other way round: every present name replaced by the one it had first.</summary>
    public static string FirstPath(string path) => Replace(path, ToOld);

    /// <summary>A file's text with present names for old ones; all else stays to the letter. A text that is not TOML comes back as it is.</summary>
    public static string TextNow(string text)
    {
        if (!All.Any(r => text.Contains(r.Old, StringComparison.Ordinal)))
        {
            return text;
        }

        try
        {
            var document = SyntaxParser.Parse(text, "", validate: false);
            var keys = new List<BareKeyOrStringValueSyntax>();
            Gather(document.KeyValues, keys);
            foreach (var table in document.Tables)
            {
                Gather(table.Items, keys);
            }

            return Replace(text, keys);
        }
        catch (Exception problem) when (problem is TomlException or ArgumentException)
        {
            return text; // Whoever reads it reports it.
        }
    }

    private static string Replace(string text, List<BareKeyOrStringValueSyntax> keys)
    {
        var replaced = new StringBuilder();
        var at = 0;
        foreach (var key in keys)
        {
            if (ToNow.TryGetValue(NameOf(key), out var now) && key.Span.Start.Offset >= at && key.Span.End.Offset < text.Length)
            {
                replaced.Append(text, at, key.Span.Start.Offset - at).Append(now);
                at = key.Span.End.Offset + 1;
            }
        }

        return replaced.Append(text, at, text.Length - at).ToString();
    }

    private static void Gather(SyntaxList<KeyValueSyntax> pairs, List<BareKeyOrStringValueSyntax> keys)
    {
        foreach (var pair in pairs)
        {
            Gather(pair, keys);
        }
    }

    private static void Gather(KeyValueSyntax? pair, List<BareKeyOrStringValueSyntax> keys)
    {
        if (pair?.Key?.Key is not { } first)
        {
            return;
        }

        keys.Add(first);
        foreach (var dotted in pair.Key.DotKeys)
        {
            if (dotted.Key is { } next)
            {
                keys.Add(next);
            }
        }

        Gather(pair.Value, keys);
    }

    private static void Gather(ValueSyntax? value, List<BareKeyOrStringValueSyntax> keys)
    {
        switch (value)
        {
            case InlineTableSyntax table:
                foreach (var item in table.Items)
                {
                    Gather(item.KeyValue, keys);
                }

                break;
            case ArraySyntax array:
                foreach (var item in array.Items)
                {
                    Gather(item.Value, keys);
                }

                break;
            default:
                break;
        }
    }

    private static string NameOf(BareKeyOrStringValueSyntax key) => key switch
    {
        BareKeySyntax bare => bare.Key?.Text ?? "",
        StringValueSyntax quoted => quoted.Value ?? "",
        _ => "",
    };

    private static string Replace(string path, FrozenDictionary<string, string> names) => string.Join('.', path.Split('.').Select(part =>
    {
        var name = part.IndexOf('[') is >= 0 and var bracket ? part[..bracket] : part;
        return names.TryGetValue(name, out var other) ? other + part[name.Length..] : part;
    }));
}
