namespace BracketGen.Words.Page;

/// <summary>What the page has beside numbers and bracket: the screen that leads there.</summary>
internal static class MoreWords
{
    public static Dictionary<string, string> All { get; } = new()
    {
        ["entry"] = "More",
        ["heading"] = "More",
        ["back"] = "Back to the job",
        ["others"] = "Back to the list",
        ["noJob"] = "Open a job first.",
        ["kit"] = "Kit",
        ["kitDoes"] = "Which of the parts at hand make a bare throttle body complete, and the cheapest set.",
        ["fitted"] = "Readings after fitting",
        ["fittedDoes"] = "What the readings on the fitted bracket mean, and how to turn the adjuster.",
        ["testBend"] = "Test bends",
        ["testBendDoes"] = "K from strips that the shop bent and measured, put into its file.",
        ["line"] = "Product line",
        ["lineDoes"] = "Every vehicle on every throttle body of a family: what is made, run it, open one.",
    };
}
