using BracketGen.Line.Solving;
using BracketGen.Storage;

namespace BracketGen.Line.Running;

/// <summary>Where the files of a line are.</summary>
/// <param name="Folder">The line's own folder.</param>
/// <param name="Register">The register.</param>
public sealed record LinePlace(string Folder, string Register)
{
    /// <summary>Below <paramref name="into"/>, in a folder named after the family's file.</summary>
    /// <param name="family">Path of the family's file.</param>
    /// <param name="into">The folder that it is made in.</param>
    /// <param name="register">Path of the register; null for the one in the line's folder.</param>
    public static LinePlace Of(string family, string into, string? register)
    {
        var folder = Path.Combine(into, Path.GetFileNameWithoutExtension(family));
        return new(folder, register ?? Path.Combine(folder, "register.jsonl"));
    }

    /// <summary>The folder of the variants' folders.</summary>
    public string Variants => Path.Combine(Folder, CombinationsFolder);

    /// <summary>The variants' folders.</summary>
    /// <param name="held">Lock of the line's folder.</param>
    public CombinationFolder Combinations(FolderLock held) => new(Variants, held);

    /// <summary>Name of the folder of the variants' folders within the line's.</summary>
    public const string CombinationsFolder = LinePart.CombinationsFolder;

    /// <summary>Name of the stock sheets' folder within the line's.</summary>
    public const string SheetsFolder = "sheets";

    /// <summary>The stock sheets' folder.</summary>
    public string Sheets => Path.Combine(Folder, SheetsFolder);
}
