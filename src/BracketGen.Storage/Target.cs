namespace BracketGen.Storage;

/// <summary>Where a file goes, where it waits until the whole set is written, and where the file before it is kept meanwhile.</summary>
/// <param name="Path">Full path of the file.</param>
/// <param name="Part">Full path of the file while it waits.</param>
/// <param name="Old">Full path of the copy of the file before.</param>
internal readonly record struct Target(string Path, string Part, string Old)
{
    private const string PartEnding = ".part", OldEnding = ".old";

    /// <summary>That of a file below a folder.</summary>
    public static Target In(string folder, string name)
    {
        var path = System.IO.Path.GetFullPath(System.IO.Path.Combine(folder, name));
        string Beside(string ending) => System.IO.Path.Combine(System.IO.Path.GetDirectoryName(path)!, $"{Lead(path)}{Environment.ProcessId}{ending}");

        // The process number keeps two runs that write the same file without a lock apart.
        return new(path, Beside(PartEnding), Beside(OldEnding));
    }

    /// <summary>Removes what a killed run left; only for a run that has locked the folder.</summary>
    public void SweepUp()
    {
        var folder = System.IO.Path.GetDirectoryName(Path)!;
        if (!Directory.Exists(folder))
        {
            return;
        }

        var own = $".{Environment.ProcessId}.";
        foreach (var left in Directory.GetFiles(folder, Lead(Path) + "*"))
        {
            if (System.IO.Path.GetExtension(left) is PartEnding or OldEnding && !left.Contains(own, StringComparison.Ordinal))
            {
                File.Delete(left);
            }
        }
    }

    public void WritePart(byte[] bytes, bool throughToDisk)
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(Part)!);
        using var stream = new FileStream(Part, FileMode.Create, FileAccess.Write, FileShare.None, bufferSize: 0);
        stream.Write(bytes);
        if (throughToDisk)
        {
            stream.Flush(flushToDisk: true);
        }
    }

    public void KeepOld()
    {
        if (Directory.Exists(Path))
        {
            throw new IOException($"{Path} is a folder; move it away.");
        }

        if (File.Exists(Path))
        {
            File.Copy(Path, Old, overwrite: true);
        }
    }

    // Where there is no folder, there is no file in it to remove either.
    public void Remove()
    {
        if (File.Exists(Path))
        {
            File.Delete(Path);
        }
    }

    public void Place() => File.Move(Part, Path, overwrite: true);

    public void PutBack()
    {
        if (File.Exists(Old))
        {
            File.Move(Old, Path, overwrite: true);
        }
        else if (!File.Exists(Part) && File.Exists(Path))
        {
            File.Delete(Path);
        }
    }

    public void TidyUp()
    {
        foreach (var left in new[] { Part, Old })
        {
            if (File.Exists(left))
            {
                File.Delete(left);
            }
        }
    }

    private static string Lead(string path) => $".{System.IO.Path.GetFileName(path)}.";
}
