using System.Collections.Immutable;
using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;
using BracketGen.SheetMetal.Patterns;
using BracketGen.Units;

namespace BracketGen.Words.Line;

/// <summary>What a part is, in a few lines that the register keeps and people read.</summary>
/// <remarks>
/// Positions from the lower left corner of the blank. Registers of earlier versions hold these lines: another format would make every old
/// part look changed.
/// </remarks>
public static class PartFactsText
{
    private const string Sheet = "sheet";

    /// <summary>The lines, by label.</summary>
    public static ImmutableArray<Fact> Of(Bracket bracket, UnitSystem units)
    {
        var bounds = bracket.Flat.Blank.Outline.Bounds;
        var unit = units.Symbol(Quantity.Length);
        string Fine(double value) => UnitSystems.Decimals(units.In(Quantity.Length, value), units == UnitSystem.Inch ? "0.000" : "0.00");
        string Short(double value) => UnitSystems.Decimals(units.In(Quantity.Length, value), units == UnitSystem.Inch ? "0.####" : "0.###");
        string At(FlatPoint point) => $"({Fine(point.X)}, {Fine(point.Y)})";
        var facts = ImmutableArray.CreateBuilder<Fact>();
        facts.Add(new(Sheet, $"{bracket.Stock.Material.Designation}, {Short(bracket.Stock.Thickness)} {unit}"));
        facts.Add(new("blank", $"{Fine(bounds.Width)} x {Fine(bounds.Height)} {unit}"));
        foreach (var (bend, number) in bracket.Flat.Bends.Select((b, i) => (b, i + 1)))
        {
            var (start, end) = bend.CentreLine;
            facts.Add(new(
                $"bend {Counted.Number(number)}",
                $"{UnitSystems.Decimals(bend.Turn.Magnitude.Degrees, "0.00")}° {(bend.IsUp ? "up" : "down")}, inside radius {Short(Math.Round(bend.InsideRadius, 2))} {unit}, {At(start - bounds.Min)} to {At(end - bounds.Min)}"));
        }

        // Letters, as registers of earlier versions hold them.
        foreach (var (hole, letter) in bracket.Holes.Select((h, i) => (h, (char)('A' + i))))
        {
            facts.Add(new(
                hole.Purpose == HolePurpose.Bolt ? $"hole {letter}" : "stop",
                $"{Kind(hole)} {Fine(hole.Diameter)} {unit}{Slot(hole)} at {At(hole.Centre - bounds.Min)}"));
        }

        return facts.ToImmutable();

        // A slot has no sense: its direction is given to the right, or straight up.
        string Slot(BracketHole hole) => hole.Outline is SlottedHole { Along: var along, Travel: var travel }
            ? $" x {Fine(hole.Diameter + travel)} {unit} along {UnitSystems.Decimals((along.X < -1e-9 || (along.X < 1e-9 && along.Y < 0) ? -along : along).Polar.Degrees, "0.00")}°"
            : "";
    }

    private static string Kind(BracketHole hole) => hole.Outline switch
    {
        SquareHole => "square",
        FlatSidedHole => "hole with flats",
        SlottedHole => "slotted hole",
        _ => hole.IsSlot ? "slot" : "hole",
    };

    /// <summary>The units that lines of a register are in: those of a register from before inch lines had inches are in mm.</summary>
    public static UnitSystem UnitsOf(ImmutableArray<Fact> facts) =>
        facts.Any(f => f.Key == Sheet && f.Value.EndsWith(" in", StringComparison.Ordinal)) ? UnitSystem.Inch : UnitSystem.Metric;
}
