using System.Globalization;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Line.Combinations;

namespace BracketGen.Line.Parts;

/// <summary>The fingerprint of a part.</summary>
/// <remarks>Lengths in mm from the blank's lower left corner, to a tenth of a micrometre: finer than any shop can make.</remarks>
public static class PartFingerprint
{
    /// <summary>The same for the same part; another for whatever a shop could make differently.</summary>
    public static string Of(Bracket bracket)
    {
        var from = bracket.Flat.Blank.Outline.Bounds.Min;
        return InputHash.OfTexts(
        [
            bracket.Stock.Material.Designation,
            Exact(bracket.Stock.Thickness),
            bracket.SeatOnTop ? "seat on top" : "seat below",
            .. bracket.Flat.Blank.Outline.Segments.Select(s => s is ArcSegment arc
                ? $"arc {Exact(arc.Start - from)} {Exact(arc.End - from)} {Exact(arc.Radius)} {Exact(arc.Sweep.Radians)}"
                : $"line {Exact(s.Start - from)} {Exact(s.End - from)}"),
            .. bracket.Flat.Bends.Select(b => $"bend {Exact(b.Start.Vector - from)} {Exact(b.End.Vector - from)} {Exact(b.Turn.Radians)} {Exact(b.InsideRadius)} {Exact(b.Allowance)}"),
            .. bracket.Holes.Select(h => $"{h.Purpose} {h.Thread?.Name} {Exact(h.Centre.Vector - from)} {Exact(h.Diameter)} {h.IsSlot}{(h.Outline is null ? "" : $" {string.Join(' ', h.Cut().Segments.Select(s => Exact(s.Start - from)))}")}"),
        ]);
    }

    private static string Exact(Vector2 p) => $"{Exact(p.X)} {Exact(p.Y)}";

    private static string Exact(double value) => Zero(value, 4).ToString("0.0000", CultureInfo.InvariantCulture);

    // No minus before a zero.
    private static double Zero(double value, int digits) => Math.Round(value, digits) + 0.0;
}
