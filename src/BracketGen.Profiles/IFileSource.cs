namespace BracketGen.Profiles;

/// <summary>Where profile files come from: a disk, or memory for tests and for a page without a disk.</summary>
public interface IFileSource
{
    /// <summary>Reads the file at <paramref name="path"/>, unless it is longer than <paramref name="max"/> bytes.</summary>
    /// <remarks>Does not throw for a file that is missing, too long or closed to the reader: the answer says so.</remarks>
    /// <param name="path">Path with forward slashes, as <see cref="Paths.ProfilePath"/> makes it.</param>
    /// <param name="max">Maximum length accepted (bytes).</param>
    FileReading Read(string path, int max);
}

/// <summary>How the reading of a file ended.</summary>
public enum FileState
{
    /// <summary>The bytes are there.</summary>
    Read,

    /// <summary>There is no such file.</summary>
    Missing,

    /// <summary>The file is longer than was asked for.</summary>
    TooLong,

    /// <summary>The file is there but may not or cannot be read.</summary>
    Closed,

    /// <summary>It is a pipe or a device, which may have no end.</summary>
    NoFile,
}

/// <summary>A file's bytes, or why there are none.</summary>
/// <remarks>Immutable as long as the bytes are left alone, thread-safe.</remarks>
/// <param name="State">How the reading ended.</param>
/// <param name="Bytes">The bytes; empty unless the file was read.</param>
public readonly record struct FileReading(FileState State, ReadOnlyMemory<byte> Bytes)
{
    /// <summary>A file that was read.</summary>
    public static FileReading Of(ReadOnlyMemory<byte> bytes) => new(FileState.Read, bytes);

    /// <summary>A file that was not read.</summary>
    public static FileReading Without(FileState why) => new(why, default);
}
