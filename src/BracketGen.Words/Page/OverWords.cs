namespace BracketGen.Words.Page;

/// <summary>Work in the picture: names, dimensions, moves, sections, and brackets laid over each other.</summary>
internal static class OverWords
{
    public static Dictionary<string, string> All { get; } = new()
    {
        ["ghost"] = "bracket before the last change",
        ["labels"] = "names",
        ["dimensions"] = "dimensions",
        ["dimensionList"] = "Dimension",
        ["noDimension"] = "none",
        ["dimension"] = "Dimension in the picture: {name}",
        ["pickDimension"] = "Pick the dimension {name}, {value}",
        ["moveList"] = "Move",
        ["noThing"] = "nothing",
        ["move"] = "Move {name}: drag it, or use the arrow keys",
        ["moveHow"] = "Drag the round handle, or use the arrow keys; with Shift ten steps. A hole stays on its face, a keep-out moves along the two axes that you see best.",
        ["otherUnit"] = "{name} cannot be moved here: a coordinate is missing, or has another unit than mm or in.",
        ["stopFound"] = "The program finds the place of the stop: it is not moved by hand.",
        ["moved"] = "{name} was moved by hand: nobody measured this place. Measure it before you make the bracket.",
        ["measuredHeading"] = "{name} was measured",
        ["measured"] = "A place that you move is not measured: its ± is taken away, and the program then counts the place as exact. Measure it before you make the bracket.",
        ["moveIt"] = "Take the ± away",
        ["leaveIt"] = "Leave it",
        ["lay"] = "Lay over the picture",
        ["table"] = "The choices against the bracket shown",
        ["same"] = "same",
        ["differs"] = "{value} ({by})",
        ["chosen"] = "{name}, shown",
    };

    public static Dictionary<string, string> Section { get; } = new()
    {
        ["kind"] = "Section",
        ["slider"] = "Move the section",
        ["at"] = "{by} {unit} from its axis or the groove's middle",
        ["about"] = "What lies between you and the plane is left out. Cut faces are not filled: you look into the part, and its inside is dark.",
    };

    public static Dictionary<string, string> Cuts { get; } = new()
    {
        ["none"] = "none",
        ["across"] = "across the throttle shaft",
        ["along"] = "along the throttle shaft, upright",
        ["stop"] = "along the stop's axis",
    };
}
