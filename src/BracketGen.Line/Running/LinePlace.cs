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
    /// <param name="register">Path of the register; null for the one beside the family's file.</param>
    public static LinePlace Of(string family, string into, string? register)
    {
        var folder = Path.Combine(into, Path.GetFileNameWithoutExtension(family));
        return new(folder, register ?? Path.ChangeExtension(family, RegisterEnding));
    }

    /// <summary>What the register's name has in place of the ending of the family's file.</summary>
    public const string RegisterEnding = ".register.jsonl";

    /// <summary>A copy of the register in the line's folder, for the day on which the register is lost.</summary>
    public string RegisterCopy => Path.Combine(Folder, "register.jsonl");

    /// <summary>Whether the line's folder holds anything that got its number from a register.</summary>
    public bool HasProducts => File.Exists(RegisterCopy)
        || (Directory.Exists(Variants) && Directory.EnumerateDirectories(Variants).Any(d => File.Exists(Path.Combine(d, CombinationSolver.CutFile))));

    /// <summary>Writes the copy where it is another than the register.</summary>
    /// <param name="held">Lock of the line's folder.</param>
    /// <param name="register">The register.</param>
    /// <exception cref="IOException">It cannot be written; what was there is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">Likewise, for want of rights.</exception>
    internal void WriteCopy(FolderLock held, Numbering.Register register)
    {
        var bytes = register.Bytes;
        if (Path.GetFullPath(Register) != Path.GetFullPath(RegisterCopy) && !(File.Exists(RegisterCopy) && File.ReadAllBytes(RegisterCopy).AsSpan().SequenceEqual(bytes)))
        {
            WholeFiles.Write(held, Folder, [(Path.GetFileName(RegisterCopy), bytes)], []);
        }
    }

    /// <summary>The folder of the variants' folders.</summary>
    public string Variants => Path.Combine(Folder, CombinationsFolder);

    /// <summary>The variants' folders.</summary>
    /// <param name="held">Lock of the line's folder.</param>
    public CombinationFolder Combinations(FolderLock held) => new(Variants, held);

    /// <summary>Name of the list of what to recall.</summary>
    public const string RecallFile = "recall.csv";

    /// <summary>Name of the folder of the variants' folders within the line's.</summary>
    public const string CombinationsFolder = LinePart.CombinationsFolder;

    /// <summary>Name of the stock sheets' folder within the line's.</summary>
    public const string SheetsFolder = "sheets";

    /// <summary>The stock sheets' folder.</summary>
    public string Sheets => Path.Combine(Folder, SheetsFolder);
}
