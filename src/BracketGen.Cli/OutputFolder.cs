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
        var waiting = new List<(string From, string To)>();
        try
        {
            foreach (var (name, bytes) in files)
            {
                // The process number keeps two runs in one folder apart.
                var temporary = Path.Combine(folder, $".{name}.{Environment.ProcessId}.part");
                waiting.Add((temporary, Path.Combine(folder, name)));
                using var stream = new FileStream(temporary, FileMode.Create, FileAccess.Write);
                stream.Write(bytes);
                stream.Flush(flushToDisk: true);
            }

            foreach (var name in outdated)
            {
                File.Delete(Path.Combine(folder, name));
            }

            foreach (var (from, to) in waiting)
            {
                File.Move(from, to, overwrite: true);
            }
        }
        finally
        {
            foreach (var (from, _) in waiting)
            {
                File.Delete(from);
            }
        }
    }
}
