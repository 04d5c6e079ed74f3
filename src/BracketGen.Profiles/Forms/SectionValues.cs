using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Toml;

namespace BracketGen.Profiles.Forms;

/// <summary>The values of one section while it is being read.</summary>
internal sealed class SectionValues(TomlTable table, string path, Reading reading)
{
    private readonly Dictionary<Key, object?> _values = [];

    /// <summary>Whether a check has failed.</summary>
    public bool HasFailed { get; private set; }

    public void Keep<T>(Key<T> key, T value) => _values[key] = value;

    /// <summary>Whether the key was given and read well.</summary>
    public bool Has(Key key) => _values.ContainsKey(key);

    /// <summary>The value given, or the key's default.</summary>
    public T Get<T>(Key<T> key) => _values.TryGetValue(key, out var value) ? (T)value! : key.Default;

    /// <summary>The value given, or <paramref name="otherwise"/>.</summary>
    public T Get<T>(Key<T> key, T otherwise) => _values.TryGetValue(key, out var value) ? (T)value! : otherwise;

    /// <summary>The value given, or null.</summary>
    public T? OrNull<T>(Key<T> key)
        where T : struct => _values.TryGetValue(key, out var value) ? (T)value! : null;

    /// <summary>What stands in the file for a key; null where it is absent.</summary>
    public TomlValue? Written(Key key) => table.Find(key.Name)?.Value;

    /// <summary>Reports that a value does not go with the others, and fails the section.</summary>
    public void Report(Key key, ProfileProblem problem) => ReportAt(Written(key) ?? table, key.Name, problem);

    /// <summary>The same for an item of a list, counted from 0.</summary>
    public void ReportItem(Key key, int item, string inItem, ProfileProblem problem)
    {
        var list = (TomlList)Written(key)!;
        var found = list.Items[item];
        var value = inItem.Length > 0 && found is TomlTable entry ? entry.Find(inItem)?.Value ?? found : found;
        ReportAt(value, $"{key.Name}[{item + 1}]{(inItem.Length > 0 ? "." : "")}{inItem}", problem);
    }

    /// <summary>The same for an item of a list in a table of the section.</summary>
    public void ReportIn(Key key, string list, int item, string inItem, ProfileProblem problem)
    {
        var found = ((TomlList)((TomlTable)Written(key)!).Find(list)!.Value).Items[item];
        ReportAt(found is TomlTable entry ? entry.Find(inItem)?.Value ?? found : found, $"{key.Name}.{list}[{item + 1}].{inItem}", problem);
    }

    private void ReportAt(TomlValue value, string key, ProfileProblem problem)
    {
        HasFailed = true;
        value.Report(Section.Join(path, key), reading, problem);
    }
}

/// <summary>A condition between keys, looked at when all of them were read well or left to their defaults.</summary>
internal sealed record Condition(Key[] Needs, Action<SectionValues> Look);
