using BracketGen.Design.Part;
using BracketGen.Mechanism.Cables;
using BracketGen.SheetMetal.Bending;

namespace BracketGen.Words.ShopDrawing;

/// <summary>The words in the tables of holes and bends; drawing and report print the same.</summary>
public static class PartTableText
{
    /// <summary>Title of the hole table on the drawing.</summary>
    public const string HolesTitle = "Holes, from the lower left corner";

    /// <summary>Title of the bend table on the drawing.</summary>
    public const string BendsTitle = "Bends";

    /// <summary>What a table says where there is nothing.</summary>
    public const string Nothing = "-";

    /// <summary>Heads of the hole table.</summary>
    public static IReadOnlyList<string> HoleHeads { get; } = ["Hole", "x", "y", "Opening", "Outline about it", "For"];

    /// <summary>Heads of the bend table; <paramref name="oblique"/> adds the ends of bend lines that are askew.</summary>
    public static IReadOnlyList<string> BendHeads(bool oblique) =>
        ["Bend", "Direction", "Bend angle", "Inside", "Allowance", .. oblique ? (string[])["Line from", "to"] : [], "Die V", "Rule"];

    /// <summary>Up or down.</summary>
    public static string Direction(Bend bend) => bend.IsUp ? "up" : "down";

    /// <summary>A slot open at the edge.</summary>
    /// <param name="width">Its width as text.</param>
    /// <param name="towards">The direction of its open side as text.</param>
    public static string Slot(string width, string towards) => $"slot {width} wide, open towards {towards}";

    /// <summary>What a hole is for.</summary>
    public static string Purpose(BracketHole hole, OuterEnd end) => hole.Purpose == HolePurpose.Bolt
        ? $"bolt {hole.Thread!.Name}"
        : end switch
        {
            ThreadedAdjuster a => $"outer, adjuster {Thread(a)}",
            SlottedClip => "outer, clip",
            _ => "outer, ferrule",
        };

    /// <summary>The adjuster's thread: "M8 x 1".</summary>
    public static string Thread(ThreadedAdjuster adjuster) => $"M{Phrases.Plain(adjuster.Thread)} x {Phrases.Plain(adjuster.Pitch)}";
}
