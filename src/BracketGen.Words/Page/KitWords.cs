namespace BracketGen.Words.Page;

/// <summary>The page's screen of the kit; what is said of it is in <see cref="Kit"/>.</summary>
internal static class KitWords
{
    /// <summary>What each file is for.</summary>
    public static Dictionary<string, string> Files { get; } = new()
    {
        ["kit.csv"] = "Every part that was looked at, for other programs",
        ["kit.xlsx"] = "Workbook: the set, every part, what to measure",
        ["kit.pdf"] = "Sheet to take along",
    };

    /// <summary>Round the answer.</summary>
    public static Dictionary<string, string> All { get; } = new()
    {
        ["strength"] = "with the strength of brackets (slower; without it no bracket is proven)",
        ["solve"] = "Look through the parts again",
        ["solving"] = "Calculating. Every set with another cable, spring or bracket is solved whole, which can take half a minute.",
        ["solved"] = "Done.",
        ["mistakes"] = "There is a mistake in the files:",
        ["lists"] = "The lists of parts are named in the tab {job}, under Kit.",
        ["example"] = "Not in the folder yet: {files}. They come with the example.",
        ["saveLists"] = "Save them in the folder",
        ["savedLists"] = "The lists are saved in the folder.",
        ["taken"] = "Another file has one of these names already. Nothing was saved.",
        ["files"] = "Files",
        ["download"] = "Download",
        ["downloadOne"] = "Download {name}",
        ["making"] = "Making {name}…",
        ["made"] = "{name} is downloaded.",
    };
}
