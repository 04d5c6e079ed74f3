using BracketGen.Line.Files;
using BracketGen.Line.Numbering;

namespace BracketGen.Cli.Line;

/// <summary>Where a line's files lie.</summary>
/// <param name="Folder">The line's own folder.</param>
/// <param name="Register">The register.</param>
internal sealed record LinePlace(string Folder, string Register)
{
    /// <summary>Below <paramref name="into"/>, in a folder named after the family's file.</summary>
    public static LinePlace Of(FileInfo family, DirectoryInfo into, FileInfo? register)
    {
        var folder = Path.Combine(into.ToString(), Path.GetFileNameWithoutExtension(family.Name));
        return new(folder, register?.ToString() ?? Path.Combine(folder, "register.jsonl"));
    }

    /// <summary>The combinations' folders.</summary>
    public CombinationFolder Combinations => new(Path.Combine(Folder, "combinations"));

    /// <summary>The sheets' folder.</summary>
    public string Sheets => Path.Combine(Folder, "sheets");

    /// <summary>Keeps another run out of the folder; null where one is in it.</summary>
    /// <exception cref="IOException">The folder cannot be made.</exception>
    /// <exception cref="UnauthorizedAccessException">Likewise, for want of rights.</exception>
    public FileStream? Lock()
    {
        Directory.CreateDirectory(Folder);
        try
        {
            return new(Path.Combine(Folder, ".busy"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
        }
        catch (IOException)
        {
            return null;
        }
    }
}
