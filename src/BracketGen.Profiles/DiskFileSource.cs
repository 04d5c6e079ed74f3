namespace BracketGen.Profiles;

/// <summary>Files on disk, relative to the current directory unless the path is absolute.</summary>
/// <remarks>Thread-safe.</remarks>
public sealed class DiskFileSource : IFileSource
{
    /// <inheritdoc/>
    public FileReading Read(string path, int max)
    {
        try
        {
            // Opening first and measuring the open file leaves no moment in which another file could take its place.
            if (Open(path) is not { } opened)
            {
                return FileReading.Without(FileState.NoFile);
            }

            using var stream = opened;
            if (!stream.CanSeek)
            {
                return FileReading.Without(FileState.NoFile);
            }

            if (stream.Length > max)
            {
                return FileReading.Without(FileState.TooLong);
            }

            var bytes = new byte[(int)stream.Length + 1];
            var count = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            // Without a length there is nothing to read, but from a device.
            return stream.Length == 0 && count > 0 ? FileReading.Without(FileState.NoFile)
                : count > max ? FileReading.Without(FileState.TooLong) : FileReading.Of(bytes.AsMemory(0, count));
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return FileReading.Without(FileState.Missing);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return FileReading.Without(FileState.Closed);
        }
    }

    // A pipe opens only when somebody writes into it, which may be never. It has no length, like an empty file, which opens at once.
    private static FileStream? Open(string path) =>
        new FileInfo(path) is { Exists: true, Length: 0 } && !OpensSoon(path) ? null : new(path, FileMode.Open, FileAccess.Read, FileShare.Read);

    private static bool OpensSoon(string path)
    {
        var opening = Task.Run(() => new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read).Dispose());
        try
        {
            return opening.Wait(Patience);
        }
        catch (AggregateException)
        {
            return true; // The caller's own opening says why it cannot be read.
        }
    }

    // How long an empty file may take to open on a busy machine (ms).
    private const int Patience = 2000;
}
