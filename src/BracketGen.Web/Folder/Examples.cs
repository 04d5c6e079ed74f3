using System.Text;
using BracketGen.Profiles.Editing;

namespace BracketGen.Web.Folder;

/// <summary>The examples that come with the program.</summary>
internal static class Examples
{
    private const string Prefix = "examples/";

    private static readonly Lazy<Dictionary<string, string>> All = new(() => typeof(Examples).Assembly.GetManifestResourceNames()
        .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal))
        .ToDictionary(n => n[Prefix.Length..], Text));

    public static string? Read(string path) => All.Value.GetValueOrDefault(path);

    public static IReadOnlyList<ShelfEntry> List() =>
    [
        .. All.Value.Where(e => WorkFolder.IsAllowed(e.Key)).OrderBy(e => e.Key, StringComparer.Ordinal)
            .Select(e => ProfileValues.Summary(e.Value) is var (kind, name) ? new ShelfEntry(e.Key, kind, name) : null).OfType<ShelfEntry>(),
    ];

    /// <summary>Paths of the drawings that come with the brackets.</summary>
    public static IReadOnlyList<string> Drawings() => [.. All.Value.Keys.Where(WorkFolder.IsDrawing).Order(StringComparer.Ordinal)];

    private static string Text(string name)
    {
        using var stream = typeof(Examples).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream, WorkFolder.IsDrawing(name) ? Encoding.Latin1 : Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
