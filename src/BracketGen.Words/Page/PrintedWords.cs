namespace BracketGen.Words.Page;

/// <summary>The printed summary.</summary>
internal static class PrintedWords
{
    public static Dictionary<string, string> All { get; } = new()
    {
        ["job"] = "{path}. A summary: the report says it all.",
        ["quick"] = "Strength is not calculated.",
        ["partial"] = "Still calculating: print again when the page is done.",
    };
}
