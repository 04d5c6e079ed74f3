using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Profiles.Forms;
using BracketGen.Profiles.Toml;

namespace BracketGen.Profiles.Family;

/// <summary>Turns a file's tree into its facts.</summary>
internal static class FactReader
{
    /// <summary>All facts of <paramref name="table"/>, sorted by the first names of their keys, so that a new name changes no order.</summary>
    public static ImmutableArray<Fact> Of(TomlTable table)
    {
        var facts = new List<Fact>();
        Gather(table, "", facts);
        return [.. facts.OrderBy(f => RenamedKeys.FirstPath(f.Key), StringComparer.Ordinal)];
    }

    private static void Gather(TomlValue value, string key, List<Fact> into)
    {
        switch (value)
        {
            case TomlTable table:
                foreach (var entry in table.Entries)
                {
                    Gather(entry.Value, key.Length == 0 ? entry.Name : $"{key}.{entry.Name}", into);
                }

                break;
            case TomlList list:
                // An empty list says something too: none.
                if (list.Items.Count == 0)
                {
                    into.Add(new(key, "none"));
                }

                for (var i = 0; i < list.Items.Count; i++)
                {
                    Gather(list.Items[i], string.Create(CultureInfo.InvariantCulture, $"{key}[{i + 1}]"), into);
                }

                break;
            case TomlText text:
                into.Add(new(key, text.Text));
                break;
            case TomlNumber number:
                into.Add(new(key, number.Number.ToString("R", CultureInfo.InvariantCulture)));
                break;
            case TomlDate date:
                into.Add(new(key, date.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)));
                break;
            default:
                into.Add(new(key, value.Written.ToString()));
                break;
        }
    }
}
