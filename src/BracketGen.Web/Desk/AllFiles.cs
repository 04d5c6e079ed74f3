using System.IO.Compression;
using BracketGen.Drawing;

namespace BracketGen.Web.Desk;

/// <summary>Every file of a job in one: a zip. Files that are withheld are not in it.</summary>
public static class AllFiles
{
    /// <summary>The name by which it is asked for.</summary>
    public const string Name = "all.zip";

    // The earliest day that a zip can say: the same files give the same bytes.
    private static readonly DateTimeOffset Day = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The bytes, the same for the same files.</summary>
    /// <param name="files">The files of the job.</param>
    public static byte[] Of(JobFiles files)
    {
        using var output = new MemoryStream();
        using (var zip = new ZipArchive(output, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, bytes) in files.Written)
            {
                var entry = zip.CreateEntry(name, CompressionLevel.Optimal);
                entry.LastWriteTime = Day;
                using var content = entry.Open();
                content.Write(bytes);
            }
        }

        return output.ToArray();
    }
}
