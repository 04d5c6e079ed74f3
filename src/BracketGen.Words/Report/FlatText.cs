using BracketGen.Design.Part;
using BracketGen.Units;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Words.Report;

/// <summary>The flat pattern in the report.</summary>
public static class FlatText
{
    /// <summary>Below the table of bends.</summary>
    public const string BendNote = "Up is towards the viewer. Bend a test strip first.";

    /// <summary>Caption of the table of bends.</summary>
    public static string BendsCaption(UnitSystem units) => $"{PartTableText.BendsTitle}, in {TitleBlockText.Lengths(units)}";

    /// <summary>Caption of the table of holes.</summary>
    public static string HolesCaption(UnitSystem units) => $"{PartTableText.HolesTitle}, in {TitleBlockText.Lengths(units)}";

    /// <summary>How many bends there are.</summary>
    public static string Bends(Bracket bracket) => bracket.Flat.Bends.Length switch { 0 => "flat plate, no bend", 1 => "one bend", var n => $"{n} bends" };

    /// <summary>What the picture shows, for people who cannot see it.</summary>
    public static string Spoken(Bracket bracket) => $"Flat pattern with {bracket.Holes.Length} holes, {Bends(bracket)}; the tables below give their places.";

    /// <summary>A bend line's name, direction and angle.</summary>
    public static string BendName(string name, bool isUp, string angle) => $"bend {name} {(isUp ? "up" : "down")} {angle}";

    /// <summary>Caption of the picture.</summary>
    public static string Caption(Bracket bracket, UnitSystem units)
    {
        var bounds = bracket.Flat.Blank.Outline.Bounds;
        return $"{Phrases.Capital(DrawingText.SeenFrom)}; {units.Write(Quantity.Length, bounds.Width)} x {units.Write(Quantity.Length, bounds.Height)}. Make the part from the drawing and the cut file, not from this picture.";
    }

    /// <summary>The main numbers.</summary>
    public static IEnumerable<Fact> Facts(Bracket bracket, UnitSystem units) =>
    [
        new("Material", DrawingText.Sheet(bracket, units)),
        new("Finish", DrawingText.Finish(bracket.Stock.Material.Finish, units)),
        new("Mass", units.Write(Quantity.Mass, bracket.Mass), "bare"),
        new("Cut length", units.Write(Quantity.Length, bracket.Flat.Blank.CutLength), "outline and holes"),
        new("Seat", bracket.SeatOnTop ? "the side seen" : "the far side", "in the flat pattern"),
    ];
}
