using System.Text.RegularExpressions;
using BracketGen.Profiles;
using BracketGen.Profiles.Interview;

namespace BracketGen.Cli.Interview;

/// <summary>Looks for profiles near a job: in its folder, in the folders beside it, and in those below it.</summary>
internal static partial class ProfilesNear
{
    // A home folder may hold thousands; nobody chooses from a longer list.
    private const int MaxFiles = 300, MaxShown = 60;

    /// <summary>Vehicles, throttle bodies and shops, each in alphabetical order of their paths.</summary>
    /// <param name="job">The job's file; its folder need not be there yet.</param>
    public static FoundProfiles Of(FileInfo job)
    {
        var folder = job.Directory!;
        DirectoryInfo?[] folders = [folder, folder.Parent, .. Below(folder), .. Below(folder.Parent)];
        var files = folders.OfType<DirectoryInfo>().DistinctBy(d => d.FullName).SelectMany(FilesIn).Take(MaxFiles)
            .Select(f => (Kind: KindOf(f), Path: Path.GetRelativePath(folder.FullName, f.FullName).Replace(Path.DirectorySeparatorChar, '/'))).OrderBy(f => f.Path, StringComparer.Ordinal).ToArray();
        return new(
            [.. files.Where(f => f.Kind == ProfileKind.Vehicle.Word).Select(f => f.Path).Take(MaxShown)],
            [.. files.Where(f => f.Kind == ProfileKind.ThrottleBody.Word).Select(f => f.Path).Take(MaxShown)],
            [.. files.Where(f => f.Kind == ProfileKind.Shop.Word).Select(f => f.Path).Take(MaxShown)]);
    }

    private static IEnumerable<DirectoryInfo> Below(DirectoryInfo? folder) =>
        folder is { Exists: true } ? folder.EnumerateDirectories("*", Careful).Take(MaxFiles).OrderBy(d => d.Name, StringComparer.Ordinal) : [];

    private static IEnumerable<FileInfo> FilesIn(DirectoryInfo folder) =>
        folder.Exists ? folder.EnumerateFiles("*.toml", Careful).Take(MaxFiles).OrderBy(f => f.Name, StringComparer.Ordinal) : [];

    private static EnumerationOptions Careful => new() { IgnoreInaccessible = true, MatchCasing = MatchCasing.CaseInsensitive };

    private static string? KindOf(FileInfo file)
    {
        var reading = new DiskFileSource().Read(file.FullName, 1_000_000);
        return reading.State == FileState.Read && Line().Match(System.Text.Encoding.UTF8.GetString(reading.Bytes.Span)) is { Success: true } match ? match.Groups[1].Value : null;
    }

    [GeneratedRegex("^[ \\t]*profile[ \\t]*=[ \\t]*[\"']([a-z ]+)[\"']", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Line();
}
