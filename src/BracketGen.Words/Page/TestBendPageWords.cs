using BracketGen.Units;

namespace BracketGen.Words.Page;

/// <summary>The page's form for test bends; what they come to is in <see cref="Terminal.TestBendAnswer"/>.</summary>
public static class TestBendPageWords
{
    /// <summary>A die as it is picked.</summary>
    /// <param name="opening">Opening (mm).</param>
    public static string Die(double opening) => $"die, opening {UnitSystem.Metric.Write(Quantity.Length, opening)}";

    /// <summary>A strip in what is said of it.</summary>
    /// <param name="number">Its number, from 1.</param>
    public static string Strip(int number) => $"Strip {number}";

    /// <summary>Sheet or tool is none that the shop has.</summary>
    public const string NotThere = "The shop's file has changed: pick sheet and tool again.";

    /// <summary>What a strip was read as: by the place in the command's option.</summary>
    internal static Dictionary<string, string> Values { get; } = new()
    {
        ["length"] = "Length before bending",
        ["leg"] = "One leg",
        ["other"] = "The other leg",
        ["angle"] = "Bend angle",
        ["radius"] = "Inside radius",
        ["thickness"] = "Thickness, if it was measured",
    };

    /// <summary>The unit that stands beside each.</summary>
    internal static Dictionary<string, string> UnitOf { get; } = new()
    {
        ["length"] = "mm",
        ["leg"] = "mm",
        ["other"] = "mm",
        ["angle"] = "deg",
        ["radius"] = "mm",
        ["thickness"] = "mm",
    };

    /// <summary>Round the form.</summary>
    internal static Dictionary<string, string> All { get; } = new()
    {
        ["explain"] = "Bend two or three strips of about 100 mm by about 90° and measure them: both legs on the outside, to where the two outsides would meet. What comes out is K for this sheet on this tool.",
        ["sheet"] = "Sheet",
        ["tool"] = "Bent on",
        ["strip"] = "Strip {number}",
        ["another"] = "Another strip",
        ["work"] = "Work out K",
        ["working"] = "Calculating…",
        ["needStrip"] = "Fill in at least one strip.",
        ["caption"] = "Strips",
        ["write"] = "Put k = {k} into {file}",
        ["wrote"] = "k = {k} is in {file} now. Save keeps it, Undo takes it back.",
        ["notWritten"] = "k could not be put into {file}.",
        ["mistakes"] = "There is a mistake in the shop's file:",
        ["noShop"] = "The job names no shop that is there.",
    };
}
