using System.Collections.Immutable;
using System.Text;
using BracketGen.Profiles.Paths;

namespace BracketGen.Profiles;

/// <summary>Files held in memory, by path.</summary>
public sealed class MemoryFileSource : IFileSource
{
    private readonly ImmutableDictionary<string, ReadOnlyMemory<byte>> _files;

    private MemoryFileSource(ImmutableDictionary<string, ReadOnlyMemory<byte>> files) => _files = files;

    /// <summary>No files.</summary>
    public static MemoryFileSource Empty { get; } = new(ImmutableDictionary<string, ReadOnlyMemory<byte>>.Empty);

    /// <summary>The same files and one more, or one in place of another.</summary>
    /// <param name="path">Path with forward slashes.</param>
    /// <param name="bytes">Its content.</param>
    public MemoryFileSource With(string path, ReadOnlyMemory<byte> bytes) => new(_files.SetItem(ProfilePath.Tidy(path), bytes));

    /// <summary>The same files and one more, or one in place of another, from text as UTF-8.</summary>
    public MemoryFileSource With(string path, string text) => With(path, Encoding.UTF8.GetBytes(text));

    /// <inheritdoc/>
    public FileReading Read(string path, int max) =>
        !_files.TryGetValue(ProfilePath.Tidy(path), out var bytes) ? FileReading.Without(FileState.Missing)
        : bytes.Length > max ? FileReading.Without(FileState.TooLong)
        : FileReading.Of(bytes);
}
