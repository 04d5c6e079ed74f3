using BracketGen.Line.Solving;
using BracketGen.Storage;

namespace BracketGen.Cli.Line;

/// <summary>Where the files of a line are.</summary>
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

    /// <summary>The variants' folders.</summary>
    /// <param name="held">Lock of the line's folder.</param>
    public CombinationFolder Combinations(FolderLock held) => new(Path.Combine(Folder, CombinationsFolder), held);

    /// <summary>Name of the folder of the variants' folders within the line's.</summary>
    public const string CombinationsFolder = "combinations";

    /// <summary>Name of the stock sheets' folder within the line's.</summary>
    public const string SheetsFolder = "sheets";

    /// <summary>The stock sheets' folder.</summary>
    public string Sheets => Path.Combine(Folder, SheetsFolder);
}
