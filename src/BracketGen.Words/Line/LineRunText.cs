namespace BracketGen.Words.Line;

/// <summary>What the line command says while it runs, and why it stops.</summary>
public static class LineRunText
{
    /// <summary>How far the run has come.</summary>
    /// <param name="done">Variants done, unchanged ones included.</param>
    /// <param name="all">All variants.</param>
    /// <param name="unchanged">Kept from an earlier run.</param>
    /// <param name="without">Without a bracket.</param>
    public static string Progress(int done, int all, int unchanged, int without) =>
        $"{Counted.Number(done)} of {Counted.Of(all, "variant")}, {Counted.Number(unchanged)} unchanged, {Counted.Number(without)} without a bracket";

    /// <summary>The run was stopped.</summary>
    public static string Stopped(int done, int all) =>
        $"Stopped: {Counted.Number(done)} of {Counted.Of(all, "variant")} {Counted.Verb(done, "is", "are")} done. Run the same command again to continue.";

    /// <summary>Mistakes in the family's files.</summary>
    public static string Mistakes(int count) => $"{Counted.Of(count, "mistake")} in the files; nothing was calculated.";

    /// <summary>Another run holds the folder.</summary>
    public static string Busy(string folder) => $"another run is at work in {folder}; wait for it to end.";

    /// <summary>The files cannot be written.</summary>
    public static string NotWritten(string folder, string problem) => $"the files could not be written to {folder}: {problem}";

    /// <summary>The register cannot be used.</summary>
    public static string Damaged(string register, RegisterDamage damage) =>
        $"the register {register} is damaged: {damage.Text}. Nothing was calculated. Restore it from a backup, or correct it by hand.";

    /// <summary>The register changed meanwhile.</summary>
    public static string RegisterChanged(string register) =>
        $"the register {register} changed while the line was being made, so nothing was added to it. Run the command again.";

    /// <summary>After the conflicts: where the register is.</summary>
    public static string Conflicts(string register) => $"The register is {register}; it is unchanged, and nothing was calculated.";

    /// <summary>The order file is missing.</summary>
    public static string NoOrder(string file) => $"there is no order {file}, or it cannot be read.";

    /// <summary>A mistake in the order file.</summary>
    public static string InOrder(string file, OrderMistake mistake) => $"{file}: {mistake.Text}";

    /// <summary>A folder of a variant that the line no longer has.</summary>
    public static string Left(string folder) => $"{folder} belongs to no variant of the line any more; it was left as it is.";

    /// <summary>A variant on which the program failed.</summary>
    public static string Unexpected(string problem) => $"The program failed on this variant: {problem}";

    /// <summary>A file was written.</summary>
    public static string Wrote(string path) => $"wrote {path}";

    /// <summary>Some files were written.</summary>
    public static string WroteFiles(int count, string folder) => $"wrote {Counted.Of(count, "file")} to {folder}";

    /// <summary>The cut files of the sheets were written.</summary>
    public static string WroteSheets(int count, string folder) => $"wrote {Counted.Of(count, "cut file")} of stock sheets to {folder}";
}
