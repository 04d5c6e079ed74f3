namespace BracketGen.Words.Page;

/// <summary>The two pictures and what they show.</summary>
internal static class PictureWords
{
    public static Dictionary<string, string> All { get; } = new()
    {
        ["solid"] = "Bracket in place",
        ["canvas"] = "The formed bracket on its mount face, with quadrant, wire and outer",
        ["help"] = "Drag to turn it, with two fingers on a touch screen, or use the arrow keys; plus and minus zoom.",
        ["views"] = "View",
        ["corner"] = "Corner",
        ["front"] = "Along the shaft",
        ["above"] = "From above",
        ["right"] = "From the right",
        ["behind"] = "From behind",
        ["nearer"] = "Nearer",
        ["farther"] = "Farther",
        ["sheet"] = "Sheet",
        ["bare"] = "plain",
        ["stress"] = "stress, pedal stamped on",
        ["vibration"] = "first vibration",
        ["parts"] = "Also show",
        ["moving"] = "quadrant, wire and outer",
        ["mount"] = "bosses and bolts",
        ["casting"] = "casting and valve",
        ["keepOuts"] = "keep-outs",
        ["none"] = "There is no bracket to show. The verdict below gives the cause.",
        ["sweep"] = "Sweep",
    };
}
