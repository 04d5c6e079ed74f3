using BracketGen.Design.Part;
using BracketGen.Mechanism.Cables;
using BracketGen.SheetMetal.Fasteners;
using BracketGen.SheetMetal.Bending;

namespace BracketGen.Words.ShopDrawing;

/// <summary>The words in the tables of holes, bends and points; drawing and report print the same.</summary>
public static class PartTableText
{
    /// <summary>Title of the hole table on the drawing.</summary>
    public const string HolesTitle = "Holes, from H1";

    /// <summary>Title of the bend table on the drawing.</summary>
    public const string BendsTitle = "Bends, lines from H1";

    /// <summary>Title of the table of the outline's points.</summary>
    public const string PointsTitle = "Outline, from H1, counter-clockwise";

    /// <summary>What a table says where there is nothing.</summary>
    public const string Nothing = "-";

    /// <summary>A straight edge.</summary>
    public const string Line = "line";

    /// <summary>Heads of the hole table.</summary>
    public static IReadOnlyList<string> HoleHeads { get; } = ["Hole", "x", "y", "Opening", "For"];

    /// <summary>Heads of the bend table.</summary>
    /// <param name="onDie">Whether it is bent on a V die; else over a bar or clamp.</param>
    public static IReadOnlyList<string> BendHeads(bool onDie) =>
        ["Bend", "Direction", "Bend angle", "Included angle", "Inside radius", "Allowance", "Line from", "to", onDie ? "Die V" : "Bent over", "Rule"];

    /// <summary>Heads of the table of points.</summary>
    public static IReadOnlyList<string> PointHeads { get; } = ["Point", "x", "y", "Edge to next", "Centre x", "y"];

    /// <summary>Up or down.</summary>
    public static string Direction(Bend bend) => bend.IsUp ? "up" : "down";

    /// <summary>A point of the outline by its index.</summary>
    public static string Point(int index) => "P" + Counted.Number(index + 1);

    /// <summary>An arc that runs clockwise, so that the metal is outside it.</summary>
    /// <param name="radius">Its radius as text.</param>
    public static string Hollow(string radius) => $"{radius} hollow";

    /// <summary>A slot open at the edge.</summary>
    /// <param name="width">Its width as text.</param>
    /// <param name="towards">The direction of its open side as text.</param>
    public static string Slot(string width, string towards) => $"slot {width}, open towards {towards}";

    /// <summary>A slotted hole.</summary>
    /// <param name="width">Its width as text.</param>
    /// <param name="length">Its length over all as text.</param>
    /// <param name="along">Its direction as text.</param>
    public static string Slotted(string width, string length, string along) => $"slotted hole {width} x {length} over all, along {along}";

    /// <summary>A square hole.</summary>
    /// <param name="side">Its side as text.</param>
    /// <param name="corner">Its corner radius as text.</param>
    /// <param name="along">The direction of a side as text.</param>
    public static string Square(string side, string corner, string along) => $"square {side}, corners {corner}, side at {along}";

    /// <summary>A round hole with two flats.</summary>
    /// <param name="diameter">Its diameter as text.</param>
    /// <param name="flats">The width across the flats as text.</param>
    /// <param name="along">The direction of the flats as text.</param>
    public static string FlatSided(string diameter, string flats, string along) => $"{diameter}, {flats} across two flats at {along}";

    /// <summary>What a hole is for.</summary>
    public static string Purpose(BracketHole hole, OuterEnd end) => hole.Purpose == HolePurpose.Bolt
        ? $"{(hole.Fixing is MountStud ? "stud" : "bolt")} {hole.Thread!.Name}"
        : end switch
        {
            ThreadedAdjuster a => $"outer, adjuster {Thread(a)}",
            BulkheadFerrule b => $"outer, ferrule {Thread(b)}",
            PushInEnd { Corner: not null } => "outer, square push-in end",
            PushInEnd => "outer, push-in end",
            SlottedClip => "outer, clip",
            _ => "outer, ferrule",
        };

    /// <summary>A hole that is drilled, not cut.</summary>
    public static string Drilled(string opening) => $"{opening}, drill";

    /// <summary>The outer end's thread: "M8 x 1".</summary>
    public static string Thread(NuttedEnd end) => $"M{Phrases.Plain(end.Thread)} x {Phrases.Plain(end.Pitch)}";
}
