namespace BracketGen.Words.Line;

/// <summary>The sentences about a register that is lost, and made again.</summary>
public static class RegisterWords
{
    /// <summary>The register is missing, and there are products.</summary>
    public static string Lost(string register, string folder) =>
        $"the register {register} is missing, and {folder} holds products of the line: new numbers could repeat old ones. Nothing was calculated. "
        + "Restore the register from a backup. If there is none, run the command once with --rebuild-register: it makes the register again from the copy and the products in that folder.";

    /// <summary>There is nothing to rebuild it from.</summary>
    public static string NothingToRebuild(string folder) => $"there is nothing to rebuild the register from: {folder} does not exist.";

    /// <summary>The register is there.</summary>
    public static string NotLost(string register) => $"the register {register} is there. It was left as it is.";

    /// <summary>The register was made again.</summary>
    /// <param name="register">Path of the register.</param>
    /// <param name="fromCopy">Revisions from its copy.</param>
    /// <param name="fromProducts">Revisions from products alone.</param>
    public static string Rebuilt(string register, int fromCopy, int fromProducts) =>
        $"wrote {register}: {Counted.Of(fromCopy, "revision")} from the copy, {Counted.Of(fromProducts, "revision")} from the products. Compare it with your sales and your stock before you go on.";

    /// <summary>A part to draw anew that nobody knows.</summary>
    public static string NotRedrawn(string partNumber) => $"--redraw names {partNumber}, and the register has no such number.";
}
