using System.Collections.Immutable;
using System.Globalization;

namespace BracketGen.TestSupport.Comparison;

/// <summary>Compares two DXF files: every number, and the names of entities, layers, line types and tables. Other texts and handles are not compared.</summary>
public static class DxfComparison
{
    /// <summary>The table of values that holds layers with a new name.</summary>
    public const string Layers = "dxf.layers";

    private const int Kind = 0, Name = 2, Layer = 8, Variable = 9;

    private sealed record Record(string Title, ImmutableArray<(int Code, string Value)> Groups);

    /// <summary>Compares the texts of two DXF files.</summary>
    /// <param name="file">Name of the file, for the findings.</param>
    /// <param name="before">What the release before wrote.</param>
    /// <param name="after">What the release after wrote.</param>
    /// <param name="changes">Layers that have a new name.</param>
    /// <param name="into">Where the findings go.</param>
    /// <exception cref="FormatException">A group code or a number is none.</exception>
    public static void Of(string file, string before, string after, Changes changes, Findings into)
    {
        var old = Records(before, layer => changes.Allowed(Layers, layer)[0]).ToLookup(r => r.Title);
        var fresh = Records(after, layer => layer).ToLookup(r => r.Title);
        foreach (var title in old.Select(g => g.Key).Union(fresh.Select(g => g.Key)))
        {
            var (ours, theirs) = (old[title].Count(), fresh[title].Count());
            if (ours != theirs)
            {
                into.Differ(file, title, title, $"{ours} of them", $"{theirs} of them");
                continue;
            }

            foreach (var (place, (one, other)) in old[title].Zip(fresh[title]).Index())
            {
                Compare(file, string.Create(CultureInfo.InvariantCulture, $"{title} {place + 1}"), one, other, into);
            }
        }
    }

    private static void Compare(string file, string where, Record before, Record after, Findings into)
    {
        if (!before.Groups.Select(g => g.Code).SequenceEqual(after.Groups.Select(g => g.Code)))
        {
            into.Differ(file, where, before.Title, $"group codes {Codes(before)}", Codes(after));
            return;
        }

        foreach (var (place, (one, other)) in before.Groups.Zip(after.Groups).Index())
        {
            var (code, kind) = (one.Code, string.Create(CultureInfo.InvariantCulture, $"{before.Title}, group {one.Code}"));
            var at = string.Create(CultureInfo.InvariantCulture, $"{where}, group {code} (the {place + 1}. of the entity)");
            if (IsReal(code))
            {
                into.Number(file, at, kind, Number(one.Value), Number(other.Value));
            }
            else if (one.Value != other.Value)
            {
                into.Differ(file, at, kind, one.Value, other.Value);
            }
        }
    }

    // Entities, table entries and objects begin with group 0, variables of the header with group 9.
    private static IEnumerable<Record> Records(string text, Func<string, string> layerOf)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        var section = "";
        List<(int Code, string Value)> groups = [];
        for (var i = 0; i + 1 < lines.Length; i += 2)
        {
            var code = int.Parse(lines[i], NumberStyles.AllowLeadingWhite, CultureInfo.InvariantCulture);
            var value = code == Layer ? layerOf(lines[i + 1]) : lines[i + 1];
            if (code is Kind or Variable && groups.Count > 0)
            {
                section = groups is [(Kind, "SECTION"), (Name, var name), ..] ? name : section;
                yield return Whole(section, groups, layerOf);
                groups = [];
            }

            groups.Add((code, value));
        }

        if (groups.Count > 0)
        {
            yield return Whole(section, groups, layerOf);
        }
    }

    private static Record Whole(string section, List<(int Code, string Value)> groups, Func<string, string> layerOf)
    {
        // The name of a layer's own entry is a layer's name too.
        ImmutableArray<(int Code, string Value)> whole = groups[0].Value == "LAYER" ? [.. groups.Select(g => g.Code == Name ? (Name, layerOf(g.Value)) : g)] : [.. groups];
        var layer = whole.FirstOrDefault(g => g.Code == Layer).Value;
        return new($"{section} {whole[0].Value}{(layer is null ? "" : $" on {layer}")}", [.. whole.Where(g => IsReal(g.Code) || IsWhole(g.Code) || IsName(g.Code))]);
    }

    private static bool IsReal(int code) => code is (>= 10 and < 60) or (>= 110 and < 150) or (>= 210 and < 240) or (>= 460 and < 470) or (>= 1010 and < 1060);

    private static bool IsWhole(int code) =>
        code is (>= 60 and < 100) or (>= 160 and < 180) or (>= 270 and < 300) or (>= 370 and < 390) or (>= 400 and < 410) or (>= 420 and < 430) or (>= 1060 and < 1072);

    private static bool IsName(int code) => code is Kind or Name or 6 or 7 or Layer or Variable or 100;

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    private static string Codes(Record record) => string.Join(' ', record.Groups.Select(g => g.Code));
}
