namespace BracketGen.Line.Files;

/// <summary>Files that are there whole or not at all.</summary>
public static class WholeFile
{
    /// <summary>Writes <paramref name="bytes"/> beside <paramref name="path"/> and then moves them there in one step.</summary>
    /// <exception cref="IOException">It cannot be written; what was there is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">Likewise, for want of rights.</exception>
    /// <param name="path">Where to.</param>
    /// <param name="bytes">What.</param>
    /// <param name="throughToDisk">Whether to wait until the disk has it: for what cannot be made again.</param>
    public static void Write(string path, ReadOnlySpan<byte> bytes, bool throughToDisk = false)
    {
        var part = path + ".part";
        try
        {
            using (var stream = new FileStream(part, FileMode.Create, FileAccess.Write, FileShare.None, bufferSize: 0))
            {
                stream.Write(bytes);
                if (throughToDisk)
                {
                    stream.Flush(flushToDisk: true);
                }
            }

            File.Move(part, path, overwrite: true);
        }
        catch
        {
            File.Delete(part);
            throw;
        }
    }
}
