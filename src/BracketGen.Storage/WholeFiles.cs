namespace BracketGen.Storage;

/// <summary>Writes files whole or not at all, and a set of files all or none.</summary>
/// <remarks>
/// Every file is first written beside its place under a name of its own; only when the whole set is on the disk are the files renamed, each
/// in one step. If one cannot be renamed, all are put back as they were. A run that is killed between two renames leaves each file whole,
/// of the run before or of its own. What a killed run left beside them is removed by the next.
/// </remarks>
public static class WholeFiles
{
    /// <summary>Writes one file. It needs no lock: one rename mixes nothing.</summary>
    /// <param name="path">Path of the file; its folder is made if need be.</param>
    /// <param name="bytes">The bytes.</param>
    /// <exception cref="IOException">The file cannot be written; what was there is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">The file cannot be written for want of rights; what was there is as it was.</exception>
    public static void WriteOne(string path, byte[] bytes)
    {
        var full = Path.GetFullPath(path);
        WriteSet(Path.GetDirectoryName(full)!, [(Path.GetFileName(full), bytes)], [], throughToDisk: true);
    }

    /// <summary>Writes a set of files into a folder that is locked meanwhile, and removes outdated ones.</summary>
    /// <param name="folder">The folder; made if need be.</param>
    /// <param name="files">Path from the folder and bytes of every file, in the order in which they are put in place.</param>
    /// <param name="outdated">Paths of files to remove before the new ones are put in place; those that are not there are passed over.</param>
    /// <exception cref="IOException">A file cannot be written; all that was there is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">A file cannot be written for want of rights; all that was there is as it was.</exception>
    public static void Write(string folder, IReadOnlyList<(string Name, byte[] Bytes)> files, IReadOnlyList<string> outdated)
    {
        using var held = FolderLock.Take(folder);
        Write(held, folder, files, outdated);
    }

    /// <summary>Writes a set of files into a folder that the caller has locked, by itself or with one above it, and removes outdated ones.</summary>
    /// <param name="held">The lock.</param>
    /// <param name="folder">The folder; made if need be.</param>
    /// <param name="files">Path from the folder and bytes of every file, in the order in which they are put in place.</param>
    /// <param name="outdated">Paths of files to remove before the new ones are put in place; those that are not there are passed over. A file of the set
    /// may be among them: it is removed first and put back in its turn, so that whoever finds it also finds every file listed before it.</param>
    /// <param name="throughToDisk">Whether to wait until the disk has the bytes; false for what can be made again and is checked before it is used.</param>
    /// <exception cref="ArgumentException">The lock is that of another folder.</exception>
    /// <exception cref="IOException">A file cannot be written; all that was there is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">A file cannot be written for want of rights; all that was there is as it was.</exception>
    public static void Write(
        FolderLock held, string folder, IReadOnlyList<(string Name, byte[] Bytes)> files, IReadOnlyList<string> outdated, bool throughToDisk = true)
    {
        if (!held.Covers(folder))
        {
            throw new ArgumentException($"The lock is that of {held.Folder}, not of {folder}.", nameof(held));
        }

        foreach (var name in files.Select(f => f.Name).Concat(outdated))
        {
            Target.In(folder, name).SweepUp();
        }

        WriteSet(folder, files, outdated, throughToDisk);
    }

    private static void WriteSet(string folder, IReadOnlyList<(string Name, byte[] Bytes)> files, IReadOnlyList<string> outdated, bool throughToDisk)
    {
        var remove = outdated.Select(name => Target.In(folder, name)).ToList();
        var write = files.Select(file => Target.In(folder, file.Name)).ToList();
        List<Target> all = [.. remove, .. write];
        try
        {
            foreach (var (target, (_, bytes)) in write.Zip(files))
            {
                target.WritePart(bytes, throughToDisk);
            }

            all.ForEach(target => target.KeepOld());
            Replace(remove, write);
        }
        finally
        {
            all.ForEach(target => target.TidyUp());
        }
    }

    private static void Replace(List<Target> remove, List<Target> write)
    {
        try
        {
            // The outdated go first: if the machine stops here, no old cut file lies beside a new drawing.
            remove.ForEach(target => target.Remove());
            write.ForEach(target => target.Place());
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // Another program may hold one of the files: new and old must not be mixed.
            foreach (var target in remove.Concat(write).Distinct())
            {
                target.PutBack();
            }

            throw;
        }
    }
}
