using System.Globalization;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Toml;
using BracketGen.TestSupport;
using Tomlyn;
using Tomlyn.Model;

namespace BracketGen.Bench.Same;

/// <summary>Profiles as tables: read as shipped, changed, written under the key names a program knows.</summary>
internal static class Toml
{
    /// <summary>A shipped profile under the key names of the release before.</summary>
    /// <param name="newNames">Old key to new.</param>
    /// <param name="parts">Path below <c>profiles</c>.</param>
    public static TomlTable Shipped(IReadOnlyDictionary<string, string> newNames, params string[] parts)
    {
        var table = TomlSerializer.Deserialize<TomlTable>(File.ReadAllText(RepositoryRoot.PathOf(["profiles", .. parts])))!;
        return (TomlTable)Renamed(table, newNames.ToDictionary(n => n.Value, n => n.Key));
    }

    /// <summary>A table as text.</summary>
    public static string Text(TomlTable table, IReadOnlyDictionary<string, string> names) =>
        TomlSerializer.Serialize((TomlTable)Renamed(table, names));

    /// <summary>A table in it.</summary>
    public static TomlTable In(this TomlTable table, string key) => (TomlTable)table[key];

    /// <summary>The tables of a list in it; none where there is no such list.</summary>
    public static List<TomlTable> ListIn(this TomlTable table, string key) => table.TryGetValue(key, out var list) ? [.. ((IEnumerable<object?>)list!).Cast<TomlTable>()] : [];

    /// <summary>Puts a list of tables in, or takes it out where it is empty.</summary>
    public static void SetList(this TomlTable table, string key, IReadOnlyCollection<TomlTable> items)
    {
        if (items.Count == 0)
        {
            table.Remove(key);
            return;
        }

        var list = new TomlTableArray();
        foreach (var item in items)
        {
            list.Add(item);
        }

        table[key] = list;
    }

    /// <summary>A list of values.</summary>
    public static TomlArray Array(params IEnumerable<object> values)
    {
        var array = new TomlArray();
        foreach (var value in values)
        {
            array.Add(value);
        }

        return array;
    }

    /// <summary>A length (mm), angle (degrees) or other number as a shipped profile writes it: bare, in inches, or with how well it was measured.</summary>
    public static double Number(object? value) => value switch
    {
        double number => number,
        long number => number,
        TomlTable measured => Number(measured["value"]),
        string text when text.EndsWith(" lbf in", StringComparison.Ordinal) => Fraction(text[..^7]) * 0.112984829,
        string text when text.EndsWith(" in", StringComparison.Ordinal) => Fraction(text[..^3]) * 25.4,
        _ => throw new NotSupportedException($"{value} is no number that the shipped profiles write."),
    };

    private static double Fraction(string text) => text.Split('/') is [var above, var below] ? Number(above) / Number(below) : Number(text);

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    private static object Renamed(object value, IReadOnlyDictionary<string, string> names)
    {
        switch (value)
        {
            case TomlTable table:
                var renamed = new TomlTable(inline: false);
                foreach (var (key, inner) in table)
                {
                    renamed[names.GetValueOrDefault(key, key)] = Renamed(inner, names);
                }

                return renamed;
            case TomlTableArray tables:
                var list = new TomlTableArray();
                foreach (var inner in tables)
                {
                    list.Add((TomlTable)Renamed(inner, names));
                }

                return list;
            case TomlArray array:
                return Array(array.Select(v => Renamed(v!, names)));
            default:
                return value;
        }
    }
}
