using System.Collections.Immutable;
using System.Text.Json.Nodes;
using BracketGen.Profiles.Editing;
using BracketGen.Profiles.Paths;

namespace BracketGen.Web.Folder;

/// <summary>The lists of parts that a job names, with the brackets on them and their drawings.</summary>
public static class PartsFiles
{
    /// <summary>Maximum number of files.</summary>
    public const int MaxFiles = 64;

    /// <summary>Those that are there, by path.</summary>
    /// <param name="job">Path of the job's file.</param>
    /// <param name="text">The job's text.</param>
    /// <param name="read">Reads a text by its path; null if there is none.</param>
    public static ImmutableSortedDictionary<string, string> Of(string job, string text, Func<string, string?> read)
    {
        var files = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        string? Take(string path)
        {
            if (!files.ContainsKey(path) && files.Count < MaxFiles && IsAllowed(path) && read(path) is { } content)
            {
                files[path] = content;
            }

            return files.GetValueOrDefault(path);
        }

        foreach (var list in Named(job, Items((ProfileValues.Of(text)["kit"] as JsonObject)?["parts"])))
        {
            if (Take(list) is not { } parts)
            {
                continue;
            }

            foreach (var bracket in Named(list, Items(ProfileValues.Of(parts)["parts"]).OfType<JsonObject>().Select(p => p["file"])))
            {
                foreach (var drawing in Take(bracket) is { } its ? WorkFolder.Named(bracket, "bracket", its) : [])
                {
                    Take(drawing);
                }
            }
        }

        return files.ToImmutable();
    }

    /// <summary>Whether these may be such files: not too many, none too long, no path that is not allowed.</summary>
    /// <param name="files">Texts by path.</param>
    public static bool AreAllowed(IReadOnlyDictionary<string, string> files) =>
        files.Count <= MaxFiles && files.All(f => IsAllowed(f.Key) && f.Value?.Length <= WorkFolder.MostBytes);

    private static bool IsAllowed(string path) => WorkFolder.IsAllowed(path) || WorkFolder.IsDrawing(path);

    private static IEnumerable<JsonNode?> Items(JsonNode? list) => list as JsonArray ?? Enumerable.Empty<JsonNode?>();

    private static IEnumerable<string> Named(string from, IEnumerable<JsonNode?> names) => names
        .Select(n => n is JsonValue value && value.TryGetValue<string>(out var name) && name.Length > 0 ? ProfilePath.Beside(from, name) : null).OfType<string>();
}
