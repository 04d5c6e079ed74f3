using System.Collections.Immutable;
using System.Text;
using System.Text.Json.Nodes;
using BracketGen.Profiles;
using BracketGen.Profiles.Editing;
using BracketGen.Profiles.Paths;
using BracketGen.Storage;
using BracketGen.Words.Page;
using BracketGen.Words.Profiles;

namespace BracketGen.Web.Folder;

/// <summary>The one folder that the page may read profiles from and write them to.</summary>
/// <remarks>
/// Takes relative paths of profiles (.toml), and of the flat patterns of brackets (.dxf), with forward slashes only; hidden names, <c>..</c> and links
/// are refused, so that no path leads out. Nothing else is read or written.
/// </remarks>
public sealed class WorkFolder
{
    /// <summary>Longest profile (bytes): what the reader accepts.</summary>
    public const int MostBytes = 1 << 20;

    /// <summary>What the name of a file ends in that keeps what was typed and not saved, after the name of its job.</summary>
    public const string DraftEnding = ".unsaved";

    /// <summary>Keys of a job that name other files.</summary>
    internal static readonly ImmutableArray<string> NamedByJob = ["throttle_body", "vehicle", "shop"];

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The folder at <paramref name="path"/>.</summary>
    /// <param name="path">Path of a folder that is there.</param>
    public WorkFolder(string path) => Root = Path.GetFullPath(path);

    /// <summary>Full path of the folder.</summary>
    public string Root { get; }

    /// <summary>Whether <paramref name="path"/> may name a profile in the folder; says nothing of whether it is there.</summary>
    public static bool IsAllowed(string path) => IsPath(path) && path.EndsWith(".toml", StringComparison.Ordinal);

    /// <summary>Whether <paramref name="path"/> may name a drawing of a flat pattern in the folder.</summary>
    public static bool IsDrawing(string path) => IsPath(path) && path.EndsWith(".dxf", StringComparison.OrdinalIgnoreCase);

    /// <summary>The bytes of a text: of a drawing as they were, whatever letters it was written in.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="text">Its text, as <see cref="Read"/> gives it.</param>
    public static byte[] BytesOf(string path, string text) => IsDrawing(path) ? Encoding.Latin1.GetBytes(text) : Encoding.UTF8.GetBytes(text);

    private static bool IsPath(string path) =>
        path.Length is > 5 and <= 300
        && !path.Any(c => char.IsControl(c) || c is '\\' or ':' or '*' or '?' or '"' or '<' or '>' or '|')
        && path.Split('/').All(part => part.Length > 0 && part[0] != '.' && part[^1] is not (' ' or '.'));

    /// <summary>Every profile in the folder and those under it, by path: its kind and name. One that cannot be read has no kind, and says why; TOML of something else is left out.</summary>
    public IReadOnlyList<ShelfEntry> List() => [.. Paths(IsAllowed).Select(EntryOf).OfType<ShelfEntry>()];

    /// <summary>Every drawing in the folder and those under it, by path.</summary>
    public IReadOnlyList<string> Drawings() => Paths(IsDrawing);

    /// <summary>Every job with something that was typed and not saved, by its own path, there or not.</summary>
    public IReadOnlyList<string> Drafts() => [.. Paths(IsDraft).Select(p => p[..^DraftEnding.Length])];

    private static bool IsDraft(string path) => path.EndsWith(DraftEnding, StringComparison.Ordinal) && IsAllowed(path[..^DraftEnding.Length]);

    private List<string> Paths(Func<string, bool> isWanted)
    {
        var options = new EnumerationOptions
        {
            RecurseSubdirectories = true,
            MaxRecursionDepth = 4,
            IgnoreInaccessible = true,
            AttributesToSkip = FileAttributes.Hidden | FileAttributes.System | FileAttributes.ReparsePoint,
        };
        return
        [
            .. Directory.EnumerateFiles(Root, "*", options)
                .Select(file => Path.GetRelativePath(Root, file).Replace(Path.DirectorySeparatorChar, '/'))
                .Where(isWanted)
                .Order(StringComparer.Ordinal),
        ];
    }

    private ShelfEntry? EntryOf(string path)
    {
        if (Read(path) is not { } text)
        {
            return new(path, "", "") { Problem = ServerWords.NotReadable };
        }

        if (ProfileValues.Summary(text) is var (kind, name))
        {
            return new(path, kind, name) { Problem = Missing(path, kind, text) };
        }

        return ProfileValues.Fault(path, text) is { } fault ? new(path, "", "") { Problem = ProfileErrorText.Format(fault) } : null;
    }

    // A job or a bracket that names a file which is not there.
    private string? Missing(string path, string kind, string text) => Named(path, kind, text)
        .Where(place => !((IsAllowed(place) || IsDrawing(place)) && Exists(place)))
        .Select(ServerWords.NamesMissing)
        .FirstOrDefault();

    /// <summary>Paths of the files that a job or a bracket names.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="kind">What its first key says it is.</param>
    /// <param name="text">Its text.</param>
    internal static IEnumerable<string> Named(string path, string kind, string text)
    {
        ImmutableArray<string> keys = kind == "job" ? NamedByJob : kind == "bracket" ? [ProfileReader.FlatPatternKey] : [];
        var values = keys.IsEmpty ? null : ProfileValues.Of(text);
        return keys.Select(key => values?[key] is JsonValue named && named.TryGetValue<string>(out var relative) && relative.Length > 0 ? ProfilePath.Beside(path, relative) : null).OfType<string>();
    }

    /// <summary>The text of a profile or drawing; null where there is none that may be read. Of a drawing each byte is a letter: nobody knows what letters it was written in.</summary>
    /// <param name="path">Path from the folder.</param>
    public string? Read(string path)
    {
        if (!(IsAllowed(path) || IsDrawing(path) || IsDraft(path)) || HasLink(path))
        {
            return null;
        }

        var file = new DiskFileSource().Read(Path.Combine(Root, path), MostBytes);
        try
        {
            return file.State != FileState.Read ? null : IsDrawing(path) ? Encoding.Latin1.GetString(file.Bytes.Span) : Strict.GetString(file.Bytes.Span).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }

    /// <summary>
    /// Writes profiles, each whole or not at all, and none where one of them would overwrite what the page has not seen.
    /// </summary>
    /// <param name="files">What to write.</param>
    /// <param name="replace">Whether to overwrite all the same.</param>
    /// <returns>The paths that hold something else than was thought: nothing was written then; otherwise none.</returns>
    /// <exception cref="IOException">They cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">They may not be written: the folder's rights, or a path that is not allowed.</exception>
    public IReadOnlyList<string> Save(IReadOnlyList<SavedFile> files, bool replace)
    {
        foreach (var file in files)
        {
            if (!(IsAllowed(file.Path) || IsDrawing(file.Path)) || HasLink(file.Path))
            {
                throw new UnauthorizedAccessException(ServerWords.BadPath(file.Path));
            }
        }

        var changed = files.Where(f => Exists(f.Path) && Read(f.Path) is var there && there != f.Was && there != f.Text).Select(f => f.Path).ToList();
        if (changed.Count > 0 && !replace)
        {
            return changed;
        }

        WriteAll(files);
        return [];
    }

    /// <summary>Keeps what was typed and not saved beside the job, or takes it away.</summary>
    /// <param name="job">Path of the job.</param>
    /// <param name="packed">The job with its files in one; null where nothing is to be kept.</param>
    /// <exception cref="IOException">It cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written: the folder's rights, or a path that is not allowed.</exception>
    public void Keep(string job, string? packed)
    {
        var path = job + DraftEnding;
        if (!IsAllowed(job) || HasLink(path))
        {
            throw new UnauthorizedAccessException(ServerWords.BadPath(job));
        }

        if (packed is not null)
        {
            WholeFiles.WriteOne(Path.Combine(Root, path), Encoding.UTF8.GetBytes(packed));
        }
        else if (File.Exists(Path.Combine(Root, path)))
        {
            File.Delete(Path.Combine(Root, path));
        }
    }

    // One profile needs no lock; a lock would leave its file in the user's folder.
    private void WriteAll(IReadOnlyList<SavedFile> files)
    {
        (string Name, byte[] Bytes)[] all = [.. files.Select(f => (f.Path, BytesOf(f.Path, f.Text)))];
        if (all is [var one])
        {
            WholeFiles.WriteOne(Path.Combine(Root, one.Name), one.Bytes);
        }
        else
        {
            WholeFiles.Write(Root, all, []);
        }
    }

    /// <summary>The folder's profiles for a reader that follows the names in them: nothing else is read.</summary>
    public IFileSource Source => new Within(this);

    /// <summary>Whether a place below the folder may be written to: no part of its way is a link.</summary>
    /// <param name="path">Path from the folder.</param>
    public bool IsWithin(string path) => !HasLink(path);

    private sealed class Within(WorkFolder folder) : IFileSource
    {
        public FileReading Read(string path, int max) => IsAllowed(path) && !folder.HasLink(path)
            ? new DiskFileSource().Read(Path.Combine(folder.Root, path), max)
            : FileReading.Without(FileState.Missing);
    }

    private bool Exists(string path) => File.Exists(Path.Combine(Root, path)) || Directory.Exists(Path.Combine(Root, path));

    // A link within the folder may lead out of it.
    private bool HasLink(string path)
    {
        var place = Root;
        foreach (var part in path.Split('/'))
        {
            place = Path.Combine(place, part);
            if (new FileInfo(place).LinkTarget is not null)
            {
                return true;
            }
        }

        return false;
    }
}

/// <summary>A profile that can be picked.</summary>
/// <param name="Path">Path from the folder.</param>
/// <param name="Kind">What its first key says: <c>vehicle</c>; empty where it cannot be read.</param>
/// <param name="Name">Its name, or a job's title.</param>
public sealed record ShelfEntry(string Path, string Kind, string Name)
{
    /// <summary>Why it cannot be read or used; null where nothing stands against it.</summary>
    public string? Problem { get; init; }
}

/// <summary>A profile to write.</summary>
/// <param name="Path">Path from the folder.</param>
/// <param name="Text">What to write.</param>
/// <param name="Was">What is thought to be there; null where nothing is.</param>
public sealed record SavedFile(string Path, string Text, string? Was);
