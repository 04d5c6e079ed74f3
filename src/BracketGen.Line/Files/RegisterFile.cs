using BracketGen.Line.Numbering;

namespace BracketGen.Line.Files;

/// <summary>The register on the disk.</summary>
public static class RegisterFile
{
    /// <summary>The register at <paramref name="path"/>, an empty one where there is no file, or what is wrong with it in words.</summary>
    /// <param name="path">The file.</param>
    /// <param name="family">Name of the family, for an empty one.</param>
    public static (Register? Register, string? Problem) Read(string path, string family)
    {
        try
        {
            return File.Exists(path) ? Register.Parse(File.ReadAllBytes(path)) : (Register.Empty(family), null);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return (null, problem.Message);
        }
    }

    /// <summary>Writes <paramref name="now"/> over <paramref name="before"/>, unless the file is no longer what it was when it was read.</summary>
    /// <returns>What stands against it, in words; null where it is written.</returns>
    /// <exception cref="IOException">It cannot be written; what was there is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">Likewise, for want of rights.</exception>
    public static string? Write(string path, Register before, Register now)
    {
        var (old, added) = (before.Bytes, now.Bytes);
        if (!added.AsSpan().StartsWith(old))
        {
            throw new InvalidOperationException("A register only grows.");
        }

        var there = File.Exists(path) ? File.ReadAllBytes(path) : null;
        if (there is not null && !there.AsSpan().SequenceEqual(old))
        {
            return "it was changed while the line was being made; nothing of it was touched. Run the command again";
        }

        if (there is not null && added.Length == old.Length)
        {
            return null;
        }

        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
        WholeFile.Write(path, added, throughToDisk: true);
        return null;
    }
}
