using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Tomlyn;
using Tomlyn.Model;

namespace BracketGen.TestSupport.Comparison;

/// <summary>What may differ between the outputs of two releases: renamed keys, moved paths, texts and exit codes that changed.</summary>
/// <remarks>Read from <c>tests/BracketGen.Bench/Same/changes.toml</c>, which says what each table holds.</remarks>
public sealed partial class Changes
{
    /// <summary>Stands in the table of moved paths for a path that the release after no longer writes.</summary>
    public const string Gone = "gone";

    private readonly ImmutableDictionary<string, string> _paths, _lists;
    private readonly ImmutableDictionary<string, ImmutableDictionary<string, ImmutableArray<string>>> _values;
    private readonly ImmutableDictionary<string, ImmutableArray<string>> _exitCodes;
    private readonly ImmutableDictionary<string, double> _tolerances;
    private readonly ImmutableHashSet<string> _texts;

    private Changes(TomlTable root)
    {
        Keys = Texts(root, "keys");
        _paths = Texts(root, "result");
        _lists = Texts(root, "lists");
        _values = Table(root, "values").ToImmutableDictionary(p => p.Key, p => Lists((TomlTable)p.Value));
        _exitCodes = Lists(Table(root, "exit_codes"));
        _tolerances = Table(root, "tolerances").ToImmutableDictionary(p => p.Key, p => Convert.ToDouble(p.Value, CultureInfo.InvariantCulture));
        _texts = Table(root, "texts").TryGetValue("compared", out var compared) ? [.. ((TomlArray)compared!).Cast<string>()] : [];
    }

    // What the release after writes, compared with itself: its own paths, and nothing moved or worded anew.
    private Changes(Changes changes)
    {
        Keys = _paths = ImmutableDictionary<string, string>.Empty;
        _values = ImmutableDictionary<string, ImmutableDictionary<string, ImmutableArray<string>>>.Empty;
        _exitCodes = ImmutableDictionary<string, ImmutableArray<string>>.Empty;
        _lists = changes._lists.Keys.Select(changes.Moved).OfType<string>()
            .Select(l => (List: l, Name: changes.NewNameIn(l))).Where(l => l.Name is not null).ToImmutableDictionary(l => l.List, l => l.Name!);
        _tolerances = changes._tolerances.Select(t => (Path: changes.Moved(t.Key), t.Value)).Where(t => t.Path is not null).ToImmutableDictionary(t => t.Path!, t => t.Value);
        _texts = [.. changes._texts.Select(changes.Moved).OfType<string>()];
    }

    /// <summary>Keys of the profiles that have a new name: old to new.</summary>
    public ImmutableDictionary<string, string> Keys { get; }

    /// <summary>Reads a table of changes.</summary>
    /// <exception cref="TomlException">The text is not TOML.</exception>
    public static Changes Parse(string toml) => new(TomlSerializer.Deserialize<TomlTable>(toml)!);

    /// <summary>The same lists, texts and tolerances for two outputs of the release after: nothing may differ.</summary>
    public Changes WithinRelease() => new(this);

    /// <summary>A path with every element of a list written as [].</summary>
    public static string PatternOf(string path) => Element().Replace(path, "[]");

    /// <summary>Where the release after writes what the release before wrote at <paramref name="path"/>; null where it is gone.</summary>
    public string? Moved(string path)
    {
        if (Longest(_paths, PatternOf(path)) is not { } old)
        {
            return path;
        }

        if (_paths[old] == Gone)
        {
            return null;
        }

        var elements = Element().Matches(path);
        var inOld = Element().Count(old);
        var rest = Rest(path, old, elements, inOld);
        var next = 0;
        return Element().Replace(_paths[old], _ => next < inOld ? elements[next++].Value : "[]") + rest;
    }

    /// <summary>The key that names the elements of a list of the release before; null where their place does.</summary>
    public string? NameIn(string listPattern) => _lists.GetValueOrDefault(listPattern);

    /// <summary>The same for a list as the release after writes it.</summary>
    public string? NewNameIn(string listPattern) => _lists
        .Where(l => Moved(l.Key) == listPattern)
        .Select(l => Moved($"{l.Key}[].{l.Value}")?.Split('.')[^1])
        .FirstOrDefault();

    /// <summary>Whether the text at a path is compared.</summary>
    public bool IsCompared(string pattern) => _texts.Contains(pattern);

    /// <summary>The texts allowed after for <paramref name="text"/> before.</summary>
    public ImmutableArray<string> Allowed(string pattern, string text) =>
        _values.TryGetValue(pattern, out var values) && values.TryGetValue(text, out var allowed) ? allowed : [text];

    /// <summary>Whether an exit code may follow another.</summary>
    public bool AllowsExit(int before, int after) =>
        before == after || (_exitCodes.TryGetValue(before.ToString(CultureInfo.InvariantCulture), out var allowed) && allowed.Contains(after.ToString(CultureInfo.InvariantCulture)));

    /// <summary>How far apart the numbers at a path may be, relative to the larger.</summary>
    public double Relative(string pattern) => Longest(_tolerances, pattern) is { } path ? _tolerances[path] : Findings.Relative;

    private static string? Longest<T>(ImmutableDictionary<string, T> table, string pattern) => table.Keys
        .Where(k => pattern == k || (pattern.StartsWith(k, StringComparison.Ordinal) && pattern[k.Length] is '.' or '['))
        .MaxBy(k => k.Length);

    // What follows the moved part, with its own elements as they stand.
    private static string Rest(string path, string old, MatchCollection elements, int inOld)
    {
        var shorter = elements.Take(inOld).Sum(e => e.Length - "[]".Length);
        return path[(old.Length + shorter)..];
    }

    private static TomlTable Table(TomlTable root, string name) => root.TryGetValue(name, out var table) ? (TomlTable)table! : [];

    private static ImmutableDictionary<string, string> Texts(TomlTable root, string name) => Table(root, name).ToImmutableDictionary(p => p.Key, p => (string)p.Value);

    private static ImmutableDictionary<string, ImmutableArray<string>> Lists(TomlTable table) => table.ToImmutableDictionary(
        p => p.Key,
        ImmutableArray<string> (p) => [.. (p.Value as TomlArray ?? [p.Value]).Select(v => Convert.ToString(v, CultureInfo.InvariantCulture)!)]);

    [GeneratedRegex(@"\[[^\]]*\]", RegexOptions.CultureInvariant)]
    private static partial Regex Element();
}
