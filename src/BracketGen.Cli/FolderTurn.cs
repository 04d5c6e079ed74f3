namespace BracketGen.Cli;

/// <summary>Lets one run at a time write into a folder: the files of two must not be mixed.</summary>
internal static class FolderTurn
{
    private const string Name = ".writing";

    // Writing takes far less than a second; who waits longer waits for something that will not end by itself.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(20), Pause = TimeSpan.FromMilliseconds(20);

    /// <summary>Waits for the turn. The system takes it back when the process ends, however it ends.</summary>
    /// <exception cref="IOException">Another run has it too long, or the folder cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">Likewise, for want of rights.</exception>
    public static IDisposable Take(string folder)
    {
        var path = Path.Combine(folder, Name);
        for (var waited = TimeSpan.Zero; ; waited += Pause)
        {
            var turn = TryTake(path, last: waited >= Longest);
            if (turn is not null)
            {
                // The one before may have removed the file between our opening and our holding it: then this hold is worth nothing.
                if (File.Exists(path))
                {
                    return turn;
                }

                turn.Dispose();
            }

            Thread.Sleep(Pause);
        }
    }

    private static FileStream? TryTake(string path, bool last)
    {
        try
        {
            return new(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
        }
        catch (IOException) when (File.Exists(path))
        {
            return last ? throw new IOException("another run is writing there; try again when it has ended") : null;
        }
    }
}
