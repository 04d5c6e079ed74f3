namespace BracketGen.Storage;

/// <summary>Lets one run at a time write into a folder: the files of two runs must not be mixed.</summary>
/// <remarks>
/// The lock is an open, empty file in the folder that nobody else can open meanwhile. The system releases it when the process ends,
/// however it ends. The file itself stays. If it were deleted, a run could hold a file that is already gone while another holds a new one
/// with the same name, and both would write.
/// </remarks>
public sealed class FolderLock : IDisposable
{
    /// <summary>Name of the file that is left in a folder; hidden where a leading dot hides.</summary>
    public const string FileName = ".bracketgen.lock";

    // A set of files is written in far less than a second; a folder that is locked for longer is in use for something else.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20), Pause = TimeSpan.FromMilliseconds(20);

    private readonly FileStream _file;

    private FolderLock(string folder, FileStream file) => (Folder, _file) = (folder, file);

    /// <summary>Full path of the locked folder.</summary>
    public string Folder { get; }

    /// <summary>Locks a folder and makes it if need be; null if another run holds it.</summary>
    /// <exception cref="IOException">The folder cannot be made or written.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder cannot be made or written for want of rights.</exception>
    public static FolderLock? TryTake(string folder)
    {
        var full = Directory.CreateDirectory(folder).FullName;
        try
        {
            // Read access is enough to lock, and the file may belong to another user.
            return new(full, new(Path.Combine(full, FileName), FileMode.OpenOrCreate, FileAccess.Read, FileShare.None, bufferSize: 0));
        }
        catch (IOException problem) when (IsHeld(problem))
        {
            return null;
        }
    }

    /// <summary>Locks a folder, makes it if need be, and waits while another run holds it.</summary>
    /// <exception cref="IOException">The folder cannot be made or written, or another run held it for 20 seconds.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder cannot be made or written for want of rights.</exception>
    public static FolderLock Take(string folder)
    {
        for (var waited = TimeSpan.Zero; ; waited += Pause)
        {
            if (TryTake(folder) is { } taken)
            {
                return taken;
            }

            if (waited >= Patience)
            {
                throw new IOException($"another run is writing to {folder}; wait for it to end and try again");
            }

            Thread.Sleep(Pause);
        }
    }

    /// <summary>Whether a folder is the locked one or lies below it.</summary>
    /// <param name="folder">Path of a folder, there or not.</param>
    public bool Covers(string folder)
    {
        var path = Path.GetRelativePath(Folder, Path.GetFullPath(folder));
        return !Path.IsPathRooted(path) && path != ".." && !path.StartsWith(".." + Path.DirectorySeparatorChar, StringComparison.Ordinal);
    }

    /// <summary>Lets the next run in.</summary>
    public void Dispose() => _file.Dispose();

    // EWOULDBLOCK of Linux and of macOS, ERROR_SHARING_VIOLATION of Windows.
    private static bool IsHeld(IOException problem) => problem.HResult is 11 or 35 or unchecked((int)0x80070020);
}
