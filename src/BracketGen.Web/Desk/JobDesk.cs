using System.Collections.Immutable;
using System.Text.Json;
using BracketGen.Design.Inputs;
using BracketGen.Design.Kit;
using BracketGen.Design.Part;
using BracketGen.Profiles;
using BracketGen.Profiles.Editing;
using BracketGen.SheetMetal.Shops;
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
        WorkFolder.IsAllowed(job) && files.Count is > 0 and <= MaxFiles && files.All(f => (WorkFolder.IsAllowed(f.Key) || WorkFolder.IsDrawing(f.Key)) && f.Value?.Length <= WorkFolder.MostBytes)
            ? new(job, files.ToImmutableSortedDictionary(StringComparer.Ordinal))
            : null;

    /// <summary>Whether two desks have the same job with the same texts.</summary>
    public static bool IsSame(JobDesk one, JobDesk other) => one.Job == other.Job && one.Files.SequenceEqual(other.Files);

    /// <summary>The job, or every error in its files: those that the command line reports.</summary>
    public ProfileResult<Job> Read() => ProfileReader.ReadJob(Job, Source);

    /// <summary>A bracket that is there already, or every error in its file and its drawing.</summary>
    /// <param name="bracket">Path of its file, among those of the desk.</param>
    /// <param name="shop">The job's shop, whose materials it may name; null where the job cannot be read.</param>
    public ProfileResult<MeasuredBracket> ReadBracket(string bracket, Shop? shop) => ProfileReader.ReadBracket(bracket, Source, shop);

    /// <summary>The job with the lists of parts that it names, or every error in their files.</summary>
    public ProfileResult<KitJob> ReadKit() => ProfileReader.ReadKit(Job, Source);

    private MemoryFileSource Source => Files.Aggregate(MemoryFileSource.Empty, (all, file) => all.With(file.Key, WorkFolder.BytesOf(file.Key, file.Value)));

    /// <summary>The desk with one value changed; null if it cannot be.</summary>
    /// <param name="file">Path of the file.</param>
    /// <param name="key">Key as errors name it.</param>
    /// <param name="value">The value; null removes the key.</param>
    public JobDesk? With(string file, string key, JsonElement? value) =>
        WorkFolder.IsAllowed(file) && Files.TryGetValue(file, out var text) && ProfileEditor.Apply(text, key, value) is { } edited && edited.Length <= WorkFolder.MostBytes
            ? this with { Files = Files.SetItem(file, edited) }
            : null;

    /// <summary>The desk of a job in a folder, with those files it names that are there; null if there is no such job.</summary>
    /// <param name="job">Path of the job's file.</param>
    /// <param name="read">Reads a text by its path; null if there is none.</param>
    public static JobDesk? Open(string job, Func<string, string?> read)
    {
        if (!WorkFolder.IsAllowed(job) || read(job) is not { } text)
        {
            return null;
        }

        return new(job, WithNamed(job, "job", text, read));
    }

    /// <summary>The desk of an example that comes with the program.</summary>
    /// <param name="job">Path of the example's job.</param>
    /// <exception cref="ArgumentException">There is no such example.</exception>
    public static JobDesk OfExample(string job) => Open(job, Examples.Read) ?? throw new ArgumentException("No such example.", nameof(job));

    /// <summary>A bracket's file with the drawing it names, where that is there; null if there is no such bracket.</summary>
    /// <param name="bracket">Path of its file.</param>
    /// <param name="read">Reads a text by its path; null if there is none.</param>
    public static ImmutableSortedDictionary<string, string>? FilesOf(string bracket, Func<string, string?> read) =>
        WorkFolder.IsAllowed(bracket) && read(bracket) is { } text ? WithNamed(bracket, "bracket", text, read) : null;

    private static ImmutableSortedDictionary<string, string> WithNamed(string path, string kind, string text, Func<string, string?> read)
    {
        var files = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        files[path] = text;
        foreach (var named in WorkFolder.Named(path, kind, text))
        {
            if (read(named) is { } content && (WorkFolder.IsAllowed(named) || WorkFolder.IsDrawing(named)))
            {
                files[named] = content;
            }
        }

        return files.ToImmutable();
    }
}
