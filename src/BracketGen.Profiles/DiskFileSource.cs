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
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read);
            if (stream.CanSeek && stream.Length > max)
            {
                return FileReading.Without(FileState.TooLong);
            }

            // A pipe or device tells no length: read one byte more than allowed and see.
            var bytes = new byte[(stream.CanSeek ? (int)stream.Length : max) + 1];
            var count = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return count > max ? FileReading.Without(FileState.TooLong) : FileReading.Of(bytes.AsMemory(0, count));
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
}
