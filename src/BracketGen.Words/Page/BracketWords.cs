namespace BracketGen.Words.Page;

/// <summary>The page's check of a bracket that is there already.</summary>
public static class BracketWords
{
    /// <summary>What stands beside the verdict where a bracket does not go on.</summary>
    public const string DoesNotGo = "It does not go on this throttle body as it is. The verdict below says why, and what corrects it.";

    /// <summary>Said where a report is wanted of a bracket that does not go on.</summary>
    public const string NoReport = "There is no report: the bracket does not go on this throttle body, so nothing of it was calculated.";

    /// <summary>Round the lists, the form and the answer.</summary>
    internal static Dictionary<string, string> All { get; } = new()
    {
        ["entry"] = "Check a bracket",
        ["heading"] = "Check a bracket you have",
        ["explain"] = "A bought bracket, one from the shelf, or one of ours: the whole job is solved with it, and the answer says what would correct it. Nothing is written until you save.",
        ["new"] = "A bracket that is not in the list",
        ["name"] = "Its name",
        ["shape"] = "You have",
        ["formed"] = "the bracket: measure it",
        ["drawn"] = "its flat pattern as a drawing (DXF)",
        ["begin"] = "Enter it",
        ["needName"] = "Give the bracket a name with letters or digits.",
        ["folder"] = "Brackets in the folder {folder}",
        ["none"] = "No brackets yet.",
        ["examples"] = "Example brackets",
        ["tick"] = "Compare {name}",
        ["compareHeading"] = "Compare brackets",
        ["compareExplain"] = "Tick brackets above. Each is solved whole, one after another.",
        ["withOurs"] = "with the bracket that the program designs for this job",
        ["compare"] = "Compare",
        ["comparing"] = "Calculating {number} of {count}…",
        ["compared"] = "{count} compared.",
        ["nothingTicked"] = "Tick a bracket first.",
        ["caption"] = "Brackets on this job",
        ["notRead"] = "not read: {problem}",
        ["back"] = "Back to the job",
        ["checking"] = "Bracket you have: {name}",
        ["others"] = "Other brackets",
        ["leave"] = "The job's own bracket",
        ["whole"] = "Check it whole",
        ["wholeWhy"] = "Not calculated yet: strength, what the ± may turn, and what corrects the bracket.",
        ["calculating"] = "Calculating. What corrects it is tried whole, which can take half a minute.",
        ["report"] = "Report",
        ["making"] = "Making the report…",
        ["made"] = "The report is downloaded.",
        ["notInPlace"] = "The bracket does not go on, so it is not shown in its place. The tab with the flat pattern shows it.",
        ["notSolved"] = "Not calculated: the bracket does not go on.",
        ["tab"] = "Bracket",
        ["upload"] = "Another drawing: choose it, or drop it here",
        ["noDrawing"] = "choose a drawing",
        ["notDrawing"] = "{name} is not a DXF file of at most 1 MiB.",
        ["missingDrawing"] = "{path}: not in the folder",
        ["file"] = "#:schema ../schemas/bracket.schema.json\nprofile = \"bracket\"\nname = {name}\n",
    };

    /// <summary>What the fields of a bracket are called: by their keys; with [] the items of a list.</summary>
    internal static Dictionary<string, string> Labels { get; } = new()
    {
        ["name"] = "Name",
        ["source"] = "Where it is from",
        ["price"] = "Price",
        ["material"] = "Sheet",
        ["thickness"] = "Thickness",
        ["outline"] = "Corners of the mount flange",
        ["outline[]"] = "Corner {number}",
        ["outline_plus_minus"] = "± of the corners",
        ["holes"] = "Bolt holes",
        ["holes[]"] = "Bolt hole H{number}",
        ["holes.at"] = "Middle",
        ["holes.plus_minus"] = "± of the middle",
        ["holes.diameter"] = "Diameter",
        ["bends"] = "Bends",
        ["bends[]"] = "Bend {number}",
        ["bends.from"] = "Starts from flange",
        ["bends.line"] = "Ends of the bend",
        ["bends.line[]"] = "End {number}",
        ["bends.line_plus_minus"] = "± of the ends",
        ["bends.included_angle"] = "Included angle",
        ["bends.goes"] = "Goes",
        ["bends.inside_radius"] = "Inside radius",
        ["bends.relief"] = "Width of the relief cuts",
        ["bends.outline"] = "Corners of the new flange",
        ["bends.outline[]"] = "Corner {number}",
        ["bends.outline_plus_minus"] = "± of the corners",
        ["bends.allowance"] = "Bend allowance",
        ["bends.deduction"] = "Bend deduction",
        ["bends.k_factor"] = "K factor",
        ["stop"] = "Stop",
        ["stop.on"] = "Middle in the drawing",
        ["stop.at"] = "Middle as measured",
        ["stop.plus_minus"] = "± of the middle",
        ["stop.diameter"] = "Diameter of the hole",
        ["stop.flats"] = "Across its flats",
        ["stop.slot_width"] = "Width of the slot",
        ["stop.slot_towards"] = "Way out of the slot",
        ["stop.side"] = "Side of a square hole",
        ["stop.corner_radius"] = "Radius of its corners",
        ["stop.along"] = "Along a side or the flats",
        ["stop.direction"] = "Direction of the seat",
        ["stop.direction_plus_minus"] = "± of the direction",
        ["stop.flange"] = "In flange",
        ["flat_pattern"] = "Drawing",
        ["flat_pattern_unit"] = "Unit of the drawing",
        ["bend_layer"] = "Layer of the bend lines",
        ["cut_layers"] = "Layers that are cut",
    };
}
