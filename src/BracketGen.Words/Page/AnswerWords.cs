namespace BracketGen.Words.Page;

/// <summary>The answers to the numbers.</summary>
internal static class AnswerWords
{
    /// <summary>The tabs.</summary>
    public static Dictionary<string, string> Views { get; } = new()
    {
        ["verdict"] = "Verdict",
        ["checks"] = "Checks",
        ["side-by-side"] = "Choices",
        ["charts"] = "Forces and travel",
        ["sure"] = "How sure",
        ["strength"] = "Strength",
        ["flat"] = "Flat pattern",
        ["files"] = "Files",
    };

    /// <summary>In and round the tabs.</summary>
    public static Dictionary<string, string> All { get; } = new()
    {
        ["tabs"] = "Answers",
        ["edge"] = "Height of the answers. Drag it, or use the arrow keys.",
        ["mistake"] = "1 mistake in the numbers",
        ["mistakes"] = "{count} mistakes in the numbers",
        ["missing"] = "1 value is not given yet",
        ["missings"] = "{count} values are not given yet",
        ["before"] = "What you see below is from before the mistake.",
        ["nothing"] = "Nothing has been calculated yet.",
        ["failed"] = "{count} failed",
        ["cautions"] = "Cautions",
        ["assumed"] = "What is assumed",
        ["notSure"] = "No probabilities: the mechanism could not be calculated.",
        ["noFlat"] = "There is no bracket, so there is no flat pattern.",
        ["choicesOpen"] = "Which brackets pass is not known until strength is calculated.",
        ["best"] = "Take the best again",
        ["noChoice"] = "No bracket passes every check. The verdict gives the causes and the remedies that were found.",
        ["strengthOpen"] = "Strength is not calculated yet. Whether this bracket bends, shakes or cracks is not known. The calculation takes a second or two.",
        ["calculate"] = "Calculate strength",
        ["calculating"] = "Calculating…",
        ["noBracket"] = "There is no bracket.",
    };
}
