using BracketGen.Design.Search;
using BracketGen.Profiles.Toml;

namespace BracketGen.Cli;

/// <summary>Writes the files of one job: each whole or not at all, and none before all of them are made.</summary>
internal static class OutputFolder
{
    /// <summary>
    /// Writes <paramref name="files"/> (name and bytes) into <paramref name="folder"/>, made if need be; removes those of
    /// <paramref name="outdated"/> that are there, so that no file of an earlier run is taken for one of this run.
    /// </summary>
    /// <exception cref="IOException">The folder or a file cannot be written; files that were there are as they were.</exception>
    /// <exception cref="UnauthorizedAccessException">Likewise, for want of rights.</exception>
    public static void Write(string folder, IReadOnlyList<(string Name, byte[] Bytes)> files, IReadOnlyList<string> outdated)
    {
        Directory.CreateDirectory(folder);
        using var turn = FolderTurn.Take(folder);
        var remove = outdated.Select(name => Target.In(folder, name)).ToList();
        var write = files.Select(file => Target.In(folder, file.Name)).ToList();
        List<Target> all = [.. remove, .. write];
        try
        {
            all.ForEach(target => SweepUp(folder, Path.GetFileName(target.Place)));
            foreach (var (target, (_, bytes)) in write.Zip(files))
            {
                WriteThrough(target.Part, bytes);
            }

            all.ForEach(KeepOld);
            Replace(remove, write);
        }
        finally
        {
            foreach (var target in all)
            {
                File.Delete(target.Part);
                File.Delete(target.Old);
            }
        }
    }

    // What a run left that was killed while it wrote; whoever has the turn is the only one at work here.
    private static void SweepUp(string folder, string name)
    {
        var own = $".{Environment.ProcessId}.";
        foreach (var left in Directory.GetFiles(folder, $".{name}.*").Where(f => Path.GetExtension(f) is ".part" or ".old" && !f.Contains(own, StringComparison.Ordinal)))
        {
            File.Delete(left);
        }
    }

    private static void WriteThrough(string path, byte[] bytes)
    {
        using var stream = new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None, bufferSize: 0);
        stream.Write(bytes);
        stream.Flush(flushToDisk: true);
    }

    private static void KeepOld(Target target)
    {
        if (Directory.Exists(target.Place))
        {
            throw new IOException($"{target.Place} is a folder; move it away.");
        }

        if (File.Exists(target.Place))
        {
            File.Copy(target.Place, target.Old, overwrite: true);
        }
    }

    private static void Replace(List<Target> remove, List<Target> write)
    {
        try
        {
            // The outdated go first: should the machine stop here, no old cut file lies beside a new drawing.
            remove.ForEach(target => File.Delete(target.Place));
            write.ForEach(target => File.Move(target.Part, target.Place, overwrite: true));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // Another program may hold one of the files: new and old must not be mixed.
            foreach (var target in remove.Concat(write).Distinct())
            {
                PutBack(target);
            }

            throw;
        }
    }

    private static void PutBack(Target target)
    {
        if (File.Exists(target.Old))
        {
            File.Move(target.Old, target.Place, overwrite: true);
        }
        else if (!File.Exists(target.Part))
        {
            File.Delete(target.Place);
        }
    }

    /// <summary>Where a file goes, where it waits until all are made, and where the one before it is kept meanwhile.</summary>
    private readonly record struct Target(string Place, string Part, string Old)
    {
        // The process number keeps two runs in one folder apart.
        public static Target In(string folder, string name) => new(
            Path.Combine(folder, name),
            Path.Combine(folder, $".{name}.{Environment.ProcessId}.part"),
            Path.Combine(folder, $".{name}.{Environment.ProcessId}.old"));
    }
}
