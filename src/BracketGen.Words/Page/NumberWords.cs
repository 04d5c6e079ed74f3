namespace BracketGen.Words.Page;

/// <summary>The numbers of the open job: a tab a profile, as fields or as text.</summary>
internal static class NumberWords
{
    /// <summary>The profiles.</summary>
    public static Dictionary<string, string> Profiles { get; } = new()
    {
        ["body"] = "Throttle body",
        ["vehicle"] = "Vehicle",
        ["shop"] = "Shop",
        ["job"] = "Job",
    };

    /// <summary>Round the fields.</summary>
    public static Dictionary<string, string> All { get; } = new()
    {
        ["panes"] = "What to show",
        ["heading"] = "Numbers",
        ["bracket"] = "Bracket",
        ["answers"] = "Answers",
        ["tabs"] = "Profiles",
        ["which"] = "Profile",
        ["file"] = "File",
        ["asText"] = "As text",
        ["textOf"] = "Text of {path}",
        ["missing"] = "{path}: no such file in the folder. Pick another profile above, or put the file back and open the job again.",
        ["example"] = "{name}, example",
        ["notSaved"] = "{name} (not saved)",
        ["keyAllowed"] = "{field}: Allowed: {allowed}. {advice}",
    };

    /// <summary>In the fields.</summary>
    public static Dictionary<string, string> Fields { get; } = new()
    {
        ["plusMinus"] = "{label}, plus or minus",
        ["axis"] = "{label}, {axis}",
        ["item"] = "{label} {number}",
        ["remove"] = "Remove",
        ["removeOne"] = "Remove: {label}",
        ["add"] = "Add to {label}",
        ["notGiven"] = "not given",
        ["choose"] = "choose",
        ["optional"] = "You may leave it out.",
        ["default"] = "If left out: {value}.",
        ["none"] = "none",
        ["allowed"] = "Allowed: {allowed}. {advice}",
        ["comma"] = "Is \"{typed}\" a decimal comma? Nothing is written yet.",
        ["meant"] = "Write {number}",
        ["whole"] = "Give {axes}. Nothing is written yet.",
    };
}
