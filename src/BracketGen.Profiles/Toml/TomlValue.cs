using BracketGen.Profiles.Errors;

namespace BracketGen.Profiles.Toml;

/// <summary>A value in a TOML file, with its place and the text it was written as.</summary>
internal abstract record TomlValue(Place Place, Excerpt Written)
{
    /// <summary>Reports a problem with this value.</summary>
    public void Report(string key, Reading reading, ProfileProblem problem) => reading.Report(Place, key, Written.ToString(), problem);
}

/// <summary>A stretch of a file's text, cut out only when a message needs it.</summary>
internal readonly record struct Excerpt(string Source, int Start, int End)
{
    private const int Max = 60;

    /// <summary>The text on one line, shortened.</summary>
    public override string ToString()
    {
        var start = Math.Clamp(Start, 0, Source.Length);
        var end = Math.Clamp(End, start, Source.Length);
        var cut = Source[start..Math.Min(end, start + 4 * Max)];
        var line = string.Join(' ', cut.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return line.Length > Max ? line[..Max] + "…" : end - start > 4 * Max ? line + "…" : line;
    }
}

/// <summary>Text in quotes.</summary>
internal sealed record TomlText(string Text, Place Place, Excerpt Written) : TomlValue(Place, Written);

/// <summary>An integer or a float; may be infinite or not a number.</summary>
internal sealed record TomlNumber(double Number, Place Place, Excerpt Written) : TomlValue(Place, Written);

/// <summary>A date without time.</summary>
internal sealed record TomlDate(DateOnly Date, Place Place, Excerpt Written) : TomlValue(Place, Written);

/// <summary>A boolean, a time of day, a moment: nothing that any profile asks for.</summary>
internal sealed record TomlOther(string What, Place Place, Excerpt Written) : TomlValue(Place, Written);

/// <summary>A list: an array, or the tables under a repeated double-bracket header.</summary>
internal sealed record TomlList(List<TomlValue> Items, bool IsOpen, Place Place, Excerpt Written) : TomlValue(Place, Written);

/// <summary>A table, its entries in the order of the file.</summary>
internal sealed record TomlTable(Place Place, Excerpt Written) : TomlValue(Place, Written)
{
    private readonly Dictionary<string, TomlEntry> _byName = [];

    public List<TomlEntry> Entries { get; } = [];

    /// <summary>Whether a header of its own has already named it.</summary>
    public bool HasHeader { get; set; }

    /// <summary>Whether it stands in braces and so takes no more keys.</summary>
    public bool IsInline { get; init; }

    public TomlEntry? Find(string name) => _byName.GetValueOrDefault(name);

    public void Add(TomlEntry entry)
    {
        Entries.Add(entry);
        _byName.Add(entry.Name, entry);
    }
}

/// <summary>A key with its value.</summary>
internal sealed record TomlEntry(string Name, Place Place, TomlValue Value);
