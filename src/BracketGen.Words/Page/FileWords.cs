namespace BracketGen.Words.Page;

/// <summary>The files of the open job.</summary>
internal static class FileWords
{
    /// <summary>What each file is for.</summary>
    public static Dictionary<string, string> Files { get; } = new()
    {
        ["flat-pattern.dxf"] = "Cut file: flat pattern for laser or plasma",
        ["drawing.pdf"] = "Drawing for the shop, with the 1:1 template",
        ["setup-sheet.pdf"] = "Set-up sheet for fitting and adjusting",
        ["inspection-sheet.pdf"] = "Inspection sheet: every dimension with a blank for what was measured",
        ["solid.step"] = "Exact solid for CAD",
        ["solid.glb"] = "Model to view",
        ["solid.stl"] = "Model to print for a trial fit; never use the print as a bracket",
        ["report.html"] = "Report: every check, the sweep, charts",
        ["result.json"] = "All results, for other programs",
        ["adapter-ring.dxf"] = "Cut file of the adapter ring",
        ["flat-pattern-kerf.dxf"] = "Beam path, for machines without kerf compensation",
    };

    /// <summary>Round the list.</summary>
    public static Dictionary<string, string> All { get; } = new()
    {
        ["same"] = "These are the files that the command \"make\" writes, with strength. The first one takes a second or two.",
        ["machine"] = "Cut file for",
        ["r2000"] = "current machines (DXF 2000)",
        ["r12"] = "old machines (DXF R12)",
        ["text"] = "Text below the part in the cut file: how many to cut",
        ["noText"] = "no text",
        ["badQuantity"] = "How many to cut is a whole number from 1 to 999999; leave it empty for no text.",
        ["step"] = "STEP file for",
        ["ap214"] = "any program (AP214)",
        ["ap242"] = "newer programs (AP242)",
        ["paper"] = "Drawing sheet",
        ["asJob"] = "as the job says",
        ["a3"] = "A3",
        ["a4"] = "A4",
        ["b"] = "B, 17 x 11 in",
        ["a"] = "A, 8.5 x 11 in",
        ["download"] = "Download",
        ["downloadOne"] = "Download {name}",
        ["allFiles"] = "All files in one (zip)",
        ["making"] = "Making {name}…",
        ["done"] = "{name} is downloaded ({time} s).",
        ["shareSave"] = "Share, at the top, packs the four profiles into one file, which the page and the command line read. Save writes them to the folder.",
        ["safetyFailed"] = "A safety check fails.",
        ["safetiesFailed"] = "{count} safety checks fail.",
        ["withheld"] = "The cut file and the STEP file are withheld. Correct the numbers. To get the files all the same, accept each failed check by name; you answer for it, and the drawing shows it in large type.",
        ["accept"] = "{title} ({id}): I accept it and answer for it",
    };
}
