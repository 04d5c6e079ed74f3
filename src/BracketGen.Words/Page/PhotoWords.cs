namespace BracketGen.Words.Page;

/// <summary>Measuring in a photograph.</summary>
internal static class PhotoWords
{
    public static Dictionary<string, string> All { get; } = new()
    {
        ["begin"] = "From a photograph",
        ["heading"] = "Measure in a photograph",
        ["explain"] = "Print the target, lay it on the mount face, photograph both along the throttle shaft, then click what the list asks for. The photograph stays in this browser: only the places of your clicks go to the program.",
        ["target"] = "Target to print (PDF)",
        ["pick"] = "Photograph",
        ["notAPicture"] = "This file is no picture that the browser can show. Take a JPEG or PNG.",
        ["canvas"] = "Photograph of the throttle body",
        ["help"] = "Click to mark, drag to move, wheel or two fingers to zoom. Keys: arrows move the cross, with Shift by one pixel; Enter marks; Backspace takes the last click back; + and - zoom.",
        ["nearer"] = "Nearer",
        ["farther"] = "Farther",
        ["whole"] = "Whole photograph",
        ["takeBack"] = "Take back the last click",
        ["clear"] = "Clear these clicks",
        ["things"] = "What to click next",
        ["mark"] = "Mark {number}",
        ["hole"] = "Hole {number} of the mount",
        ["count"] = "{thing}: {count} clicked",
        ["lengths"] = "Lengths",
        ["heightsFrom"] = "Heights are over the face that the target lies on.",
        ["mayBeEmpty"] = "leave open if you photographed from beside the shaft",
        ["plusMinus"] = "{label}, plus or minus",
        ["needs"] = "Still to do: {what}.",
        ["needsPhoto"] = "pick a photograph",
        ["needsMarks"] = "click four or more marks",
        ["needsShaft"] = "click the end of the shaft",
        ["needsShaftHeight"] = "measure the height of the shaft's end",
        ["needsGrooveHeight"] = "measure the height of the groove's middle",
        ["needsRimHeight"] = "measure the height of the quadrant's front",
        ["needsHoleHeight"] = "measure the height of what marks the holes (0 on the face)",
        ["comma"] = "Do you mean {number}? Write it with a point.",
        ["found"] = "Found; tick what to write",
        ["nothing"] = "Click the rim, the pocket or the holes as well.",
        ["was"] = "now {value}",
        ["write"] = "Write into the profile",
        ["written"] = "{count} readings written into the profile.",
        ["leave"] = "Back to the numbers",
    };

    /// <summary>What is clicked once, by its name in the message.</summary>
    public static Dictionary<string, string> Parts { get; } = new()
    {
        ["shaft"] = "End of the throttle shaft",
        ["edge"] = "Rim of the quadrant's front",
        ["pocket"] = "End fitting in its pocket",
    };

    /// <summary>What is given beside the clicks, by its name in the message.</summary>
    public static Dictionary<string, string> Given { get; } = new()
    {
        ["bar"] = "Bar of the target, as printed",
        ["distance"] = "Lens to the middle of the target",
        ["shaftHeight"] = "Height of the shaft's end",
        ["rimHeight"] = "Height of the quadrant's front",
        ["grooveHeight"] = "Height of the groove's middle",
        ["holeHeight"] = "Height of what marks the holes",
        ["toWire"] = "From the rim in to the middle of the wire",
        ["shaftRim"] = "I click round the shaft's end, not its middle",
        ["holeRims"] = "I click round each hole, not its middle",
        ["cam"] = "The groove has another shape than a circle about the shaft: click 8 or more places along the rim",
    };
}
