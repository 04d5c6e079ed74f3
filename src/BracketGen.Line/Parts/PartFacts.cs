using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Design.Part;
using BracketGen.Drawing.Measuring;
using BracketGen.Drawing.Report.Html;
using BracketGen.Geometry;
using BracketGen.Line.Combinations;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Line.Parts;

/// <summary>What a part is, in a few lines that people read, and as a fingerprint.</summary>
/// <remarks>Lengths in mm from the blank's lower left corner, to a tenth of a micrometre: less than any shop can tell apart.</remarks>
public static class PartFacts
{
    /// <summary>The lines, by label.</summary>
    public static ImmutableArray<Fact> Of(Bracket bracket)
    {
        var bounds = bracket.Flat.Blank.Outline.Bounds;
        var facts = ImmutableArray.CreateBuilder<Fact>();
        facts.Add(new("sheet", Text($"{bracket.Stock.Material.Designation}, {bracket.Stock.Thickness:0.###} mm")));
        facts.Add(new("blank", Text($"{bounds.Width:0.00} x {bounds.Height:0.00} mm")));
        foreach (var (bend, index) in bracket.Flat.Bends.Select((b, i) => (b, i + 1)))
        {
            var (start, end) = bend.CentreLine;
            facts.Add(new(
                Text($"bend {index}"),
                Text($"{bend.Turn.Magnitude.Degrees:0.00}° {(bend.IsUp ? "up" : "down")}, inside radius {bend.InsideRadius:0.##} mm, {At(start - bounds.Min)} to {At(end - bounds.Min)}")));
        }

        foreach (var hole in bracket.Holes)
        {
            facts.Add(new(
                hole.Purpose == HolePurpose.Bolt ? $"hole {hole.Name}" : "stop",
                Text($"{(hole.IsSlot ? "slot" : "hole")} {hole.Diameter:0.00} mm at {At(hole.Centre - bounds.Min)}")));
        }

        return facts.ToImmutable();
    }

    /// <summary>The same for the same part: whatever of it a shop could make otherwise.</summary>
    public static string Fingerprint(Bracket bracket)
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
            .. bracket.Flat.Bends.Select(b => $"bend {Exact(b.Start - from)} {Exact(b.End - from)} {Exact(b.Turn.Radians)} {Exact(b.InsideRadius)} {Exact(b.Allowance)}"),
            .. bracket.Holes.Select(h => $"{h.Purpose} {h.Thread?.Name} {Exact(h.Centre - from)} {Exact(h.Diameter)} {h.IsSlot}"),
        ]);
    }

    private static string At(Vector2 p) => Text($"({Zero(p.X, 2):0.00}, {Zero(p.Y, 2):0.00})");

    private static string Exact(Vector2 p) => $"{Exact(p.X)} {Exact(p.Y)}";

    private static string Exact(double value) => Zero(value, 4).ToString("0.0000", CultureInfo.InvariantCulture);

    // No minus before a zero.
    private static double Zero(double value, int digits) => Math.Round(value, digits) + 0.0;

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
