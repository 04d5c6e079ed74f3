namespace BracketGen.Words.Page;

/// <summary>The page's screen of a product line; what a run says is in <see cref="Line"/>.</summary>
public static class LinePageWords
{
    /// <summary>A variant that no run has made yet.</summary>
    public const string NotMade = "not made yet";

    /// <summary>A variant whose files are of other inputs than those of now.</summary>
    public const string Outdated = "changed since it was made";

    /// <summary>A variant that is not sold.</summary>
    public const string NotSold = "not sold";

    /// <summary>A variant with a profile that cannot be read.</summary>
    public const string NotRead = "not read";

    /// <summary>The line's folder cannot be used.</summary>
    /// <param name="path">Path from the page's folder.</param>
    public static string BadPlace(string path) => $"{path} leads out of the page's folder. Move it away.";

    /// <summary>Another line is being made.</summary>
    public const string OtherRun = "The page is making another line. Wait for it to end, or stop it.";

    /// <summary>The line has no such variant.</summary>
    public const string NoVariant = "The line has no such variant, or one of its profiles cannot be read.";

    /// <summary>What can be wished of a run.</summary>
    internal static Dictionary<string, string> Wishes { get; } = new()
    {
        ["strength"] = "with strength (slower; without it nothing is proven)",
        ["own"] = "a part of its own for every variant",
        ["drawings"] = "a drawing of every variant",
        ["anew"] = "make unchanged variants again",
    };

    /// <summary>Round the matrix.</summary>
    internal static Dictionary<string, string> All { get; } = new()
    {
        ["none"] = "The folder has no family file. docs/product-line.md says what one holds.",
        ["families"] = "Product lines",
        ["mistakes"] = "There is a mistake in the files:",
        ["caption"] = "Variants of {name}",
        ["vehicle"] = "vehicle",
        ["open"] = "{title}: {word}. Open as a job",
        ["places"] = "Files: {place}, where the command writes them when it is run in this folder.",
        ["run"] = "Make the line",
        ["stop"] = "Stop",
        ["stopping"] = "Stopping. What is begun is finished.",
        ["running"] = "Running.",
        ["progress"] = "Progress",
        ["ended"] = "The run has ended.",
        ["said"] = "What the run says",
        ["why"] = "Without a bracket, or not sold",
    };
}
