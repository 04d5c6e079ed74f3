using BracketGen.Profiles;
using BracketGen.Profiles.Editing;
using BracketGen.Web.Folder;
using BracketGen.Words.Page;
using BracketGen.Words.Profiles;

namespace BracketGen.Web.Desk;

/// <summary>Files that a person picked or dropped on the page: a packed job, or a job with some of the files it names.</summary>
internal static class HandedFiles
{
    private const string Folder = "jobs/";

    /// <summary>The desk of the job among them, or why there is none.</summary>
    /// <remarks>
    /// What the job names is taken from the files handed over, by file name, and otherwise from the folder. What is in neither is missing, and the
    /// desk says so. The job stands in the folder of jobs, under a name that no other job there has.
    /// </remarks>
    /// <param name="files">Texts by file name.</param>
    /// <param name="read">Reads a text of the folder by its path; null if there is none.</param>
    public static (JobDesk? Desk, string Problem) Of(IReadOnlyDictionary<string, string> files, Func<string, string?> read)
    {
        var kinds = files.ToDictionary(f => f.Key, f => ProfileValues.Summary(f.Value)?.Kind ?? "", StringComparer.Ordinal);
        var jobs = kinds.Where(k => k.Value is "job" or "packed job").Select(k => k.Key).Order(StringComparer.Ordinal).ToArray();
        if (jobs is not [var name])
        {
            return (null, jobs.Length > 1 ? ServerWords.SeveralJobs(jobs) : WhyNone(files, kinds));
        }

        return kinds[name] == "packed job" ? Unpacked(name, files[name]) : Opened(name, files, read);
    }

    private static string WhyNone(IReadOnlyDictionary<string, string> files, Dictionary<string, string> kinds) => files.Count == 1 && kinds.Single() is var (name, kind)
        ? kind.Length > 0 ? ServerWords.NoJobBut(name, kind) : ProfileValues.Fault(name, files[name]) is { } fault ? ProfileErrorText.Format(fault) : ServerWords.NoJobIn(name)
        : ServerWords.NoJobAmong;

    private static (JobDesk? Desk, string Problem) Unpacked(string name, string text)
    {
        var packed = PackedJob.Read(name, MemoryFileSource.Empty.With(name, text));
        return !packed.IsRead ? (null, string.Join('\n', packed.Errors.Select(ProfileErrorText.Format)))
            : JobDesk.Of(packed.Value.Job, packed.Value.Files.ToDictionary(f => f.Path, f => f.Text)) is { } desk ? (desk, "") : (null, ServerWords.BadPackedJob);
    }

    private static (JobDesk? Desk, string Problem) Opened(string name, IReadOnlyDictionary<string, string> files, Func<string, string?> read)
    {
        var text = files[name];
        var path = Free(Folder + name, text, read);
        return WorkFolder.IsAllowed(path) && JobDesk.Open(path, other => other == path ? text : files.TryGetValue(other[(other.LastIndexOf('/') + 1)..], out var handed) ? handed : read(other)) is { } desk
            ? (desk, "") : (null, ServerWords.NoJobIn(name));
    }

    // The same job under its own name; another under the next that is free.
    private static string Free(string path, string text, Func<string, string?> read)
    {
        var stem = path.EndsWith(".toml", StringComparison.Ordinal) ? path[..^".toml".Length] : path;
        for (var number = 1; ; number++)
        {
            var wanted = number == 1 ? path : FormattableString.Invariant($"{stem}-{number}.toml");
            if (!WorkFolder.IsAllowed(wanted) || read(wanted) is not { } there || there == text)
            {
                return wanted;
            }
        }
    }
}
