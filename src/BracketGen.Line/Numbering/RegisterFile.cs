using BracketGen.Profiles;
using BracketGen.Storage;
using BracketGen.Words.Line;

namespace BracketGen.Line.Numbering;

/// <summary>The register on the disk.</summary>
public static class RegisterFile
{
    /// <summary>The register at <paramref name="path"/>, an empty one if there is no file, or what is wrong with it.</summary>
    /// <param name="path">The file.</param>
    /// <param name="family">Name of the family, for an empty one.</param>
    public static (Register? Register, RegisterDamage? Damage) Read(string path, string family)
    {
        try
        {
            // A pipe may never end; what cannot be read says why when it is opened.
            var read = new DiskFileSource().Read(path, int.MaxValue - 1);
            return read.State switch
            {
                FileState.Missing => (Register.Empty(family), null),
                FileState.NoFile => (null, new RegisterDamage.NotText()),
                FileState.Read => Register.Parse(read.Bytes.Span),
                _ => Register.Parse(File.ReadAllBytes(path)),
            };
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return (null, new RegisterDamage.Unread(problem.Message));
        }
    }

    /// <summary>Writes <paramref name="now"/> over <paramref name="before"/>, unless the file is no longer what it was when it was read.</summary>
    /// <returns>False if the file changed meanwhile: then nothing is written.</returns>
    /// <exception cref="IOException">It cannot be written; what was there is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">Likewise, for want of rights.</exception>
    /// <param name="held">Lock of the line's folder. A register elsewhere may belong to several lines: its own folder is locked too.</param>
    /// <param name="path">The file.</param>
    /// <param name="before">The register as it was read.</param>
    /// <param name="now">The register with the new lines.</param>
    public static bool Write(FolderLock held, string path, Register before, Register now)
    {
        var (old, added) = (before.Bytes, now.Bytes);
        if (!added.AsSpan().StartsWith(old))
        {
            throw new InvalidOperationException("A register only grows.");
        }

        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        using var other = held.Covers(folder) ? null : FolderLock.Take(folder);
        var there = File.Exists(path) ? File.ReadAllBytes(path) : null;
        if (there is not null && !there.AsSpan().SequenceEqual(old))
        {
            return false;
        }

        if (there is null || added.Length > old.Length)
        {
            WholeFiles.WriteOne(path, added);
        }

        return true;
    }
}
