namespace BracketGen.Cli;

/// <summary>Lets one run at a time write into a folder: the files of two must not be mixed.</summary>
internal static class FolderTurn
{
    private const string Name = ".writing";

    // Writing takes far less than a second; who waits longer waits for something that will not end by itself.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(20), Pause = TimeSpan.FromMilliseconds(20);

    private static int _turns;

    /// <summary>Waits for the turn. The system takes it back when the process ends, however it ends.</summary>
    /// <exception cref="IOException">Another run has it too long, or the folder cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">Likewise, for want of rights.</exception>
    public static IDisposable Take(string folder)
    {
        var path = Path.Combine(folder, Name);
        for (var waited = TimeSpan.Zero; ; waited += Pause)
        {
            if (TryTake(path, last: waited >= Longest) is { } turn)
            {
                return turn;
            }

            Thread.Sleep(Pause);
        }
    }

    private static Turn? TryTake(string path, bool last)
    {
        try
        {
            var file = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1);

            // The one before may have removed the file between our opening and our holding it, and a third may have made it anew: a length that is
            // ours alone tells whether what we hold is what stands there. A hold of a removed file is worth nothing.
            file.SetLength(16L * Environment.ProcessId + (Interlocked.Increment(ref _turns) & 15));
            var there = new FileInfo(path);
            if (there.Exists && there.Length == file.Length)
            {
                return new(file, path);
            }

            file.Dispose();
            return null;
        }
        catch (IOException problem) when (IsHeld(problem) || File.Exists(path))
        {
            return last ? throw new IOException("another run is writing there; try again when it has ended") : null;
        }
    }

    // EWOULDBLOCK of Linux and of macOS, ERROR_SHARING_VIOLATION of Windows: the file may be gone again by the time one looks.
    private static bool IsHeld(IOException problem) => problem.HResult is 11 or 35 or unchecked((int)0x80070020);

    // Only who holds the file that stands there removes it, and before letting go of it.
    private sealed class Turn(FileStream file, string path) : IDisposable
    {
        public void Dispose()
        {
            try
            {
                File.Delete(path);
            }
            catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
            {
                // Left behind, it is taken by the next.
            }

            file.Dispose();
        }
    }
}
