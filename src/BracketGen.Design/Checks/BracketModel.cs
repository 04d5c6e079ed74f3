using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Standards;
using BracketGen.Strength.Parts;

namespace BracketGen.Design.Checks;

/// <summary>A bracket as the strength calculation sees it.</summary>
public static class BracketModel
{
    /// <summary>The bracket bolted down under its washers, the outer's end on its seat.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="end">What hangs on the stop.</param>
    /// <param name="metal">The metal at the temperature it has; null for that of the sheet, cold.</param>
    /// <param name="under">The adapter ring that it is bolted on; null where it lies on something rigid.</param>
    public static FoldedPart Of(Bracket bracket, EndBody end, StrengthMetal? metal = null, ElasticBase? under = null)
    {
        var (flat, folded, material) = (bracket.Flat, bracket.Folded, bracket.Stock.Material);
        return new()
        {
            Flat = flat.Blank,
            MiddleSurface = p => folded.Fold(p, flat.Thickness / 2),
            Bends = [.. flat.Bends.Select(b => new BendZone(new(b.Start.Vector, b.End.Vector), new((b.Start + b.Allowance * b.Across).Vector, (b.End + b.Allowance * b.Across).Vector)) { InsideRadius = b.InsideRadius, IsInsideTop = b.IsUp })],
            Thickness = flat.Thickness,
            Material = metal?.Sheet ?? new(material.Modulus, material.Poisson, material.Density),
            Washers = [.. bracket.Holes.Where(h => h.Thread is not null).Select(h => new Disc(h.BoltAt.Vector, WasherRadius(h.Thread!)))],
            Seat = new(bracket.Stop.Centre.Vector, bracket.Seat.SeatRadius),
            SeatBody = end.On(bracket.SeatOnTop),
            Base = under,
        };
    }

    private static double WasherRadius(FastenerThread thread) => thread.WasherDiameter / 2;
}
