using System.Collections.Immutable;
using System.Text.Json;
using BracketGen.Design.Inputs;
using BracketGen.Profiles;
using BracketGen.Profiles.Editing;
using BracketGen.Profiles.Paths;
using BracketGen.Web.Folder;

namespace BracketGen.Web.Desk;

/// <summary>A job as it is open on the page: the texts of its profiles, which may hold errors.</summary>
/// <param name="Job">Path of the job's file.</param>
/// <param name="Files">Texts by path; paths with forward slashes.</param>
public sealed record JobDesk(string Job, ImmutableSortedDictionary<string, string> Files)
{
    /// <summary>Maximum number of files of one job.</summary>
    public const int MaxFiles = PackedJob.MaxFiles;

    /// <summary>The desk of these files; null if they are too many, one is too long, or a path is not allowed.</summary>
    /// <param name="job">Path of the job's file.</param>
    /// <param name="files">Texts by path.</param>
    public static JobDesk? Of(string job, IReadOnlyDictionary<string, string> files) =>
        WorkFolder.IsAllowed(job) && files.Count is > 0 and <= MaxFiles && files.All(f => WorkFolder.IsAllowed(f.Key) && f.Value?.Length <= WorkFolder.MostBytes)
            ? new(job, files.ToImmutableSortedDictionary(StringComparer.Ordinal))
            : null;

    /// <summary>The job, or every error in its files: those that the command line reports.</summary>
    public ProfileResult<Job> Read() =>
        ProfileReader.ReadJob(Job, Files.Aggregate(MemoryFileSource.Empty, (all, file) => all.With(file.Key, file.Value)));

    /// <summary>The desk with one value changed; null if it cannot be.</summary>
    /// <param name="file">Path of the file.</param>
    /// <param name="key">Key as errors name it.</param>
    /// <param name="value">The value; null removes the key.</param>
    public JobDesk? With(string file, string key, JsonElement? value) =>
        Files.TryGetValue(file, out var text) && ProfileEditor.Apply(text, key, value) is { } edited && edited.Length <= WorkFolder.MostBytes
            ? this with { Files = Files.SetItem(file, edited) }
            : null;

    /// <summary>The desk of a job in a folder, with those files it names that are there; null if there is no such job.</summary>
    /// <param name="job">Path of the job's file.</param>
    /// <param name="read">Reads a text by its path; null if there is none.</param>
    public static JobDesk? Open(string job, Func<string, string?> read)
    {
        if (read(job) is not { } text)
        {
            return null;
        }

        var files = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        files[job] = text;
        var values = ProfileValues.Of(text);
        foreach (var key in WorkFolder.NamedByJob)
        {
            if (values[key] is System.Text.Json.Nodes.JsonValue named && named.TryGetValue<string>(out var relative)
                && ProfilePath.Beside(job, relative) is var path && WorkFolder.IsAllowed(path) && read(path) is { } content)
            {
                files[path] = content;
            }
        }

        return new(job, files.ToImmutable());
    }
}
