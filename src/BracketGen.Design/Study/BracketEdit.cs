using BracketGen.Design.Part;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Design.Study;

/// <summary>A finished bracket with something done to it.</summary>
internal static class BracketEdit
{
    // Metal that must stay between the stop's old hole and a new one (mm): as much as the outer's end needs is checked besides.
    private const double Between = 1;

    /// <summary>The bracket with holes of other sizes.</summary>
    public static Bracket WithHoles(Bracket bracket, Func<BracketHole, BracketHole> change)
    {
        var holes = bracket.Holes.Select(change).ToArray();
        var (flat, blank) = (bracket.Flat, bracket.Flat.Blank);
        var drilled = blank.Holes.Select(contour =>
        {
            var at = contour.Bounds.Centre;
            return holes.FirstOrDefault(h => !h.IsSlot && h.Centre.Vector.DistanceTo(at) < Tolerance.Joint) is { } hole ? hole.Cut() : contour;
        });
        return bracket with { Holes = [.. holes], Folded = new(flat with { Blank = new(blank.Outline, drilled) }, bracket.Folded.Flanges[0]) };
    }

    /// <summary>The bracket with another stop's opening; null where a slot of that width cannot be cut.</summary>
    public static Bracket? WithStop(Bracket bracket, double size)
    {
        var opened = WithHoles(bracket, h => h.Purpose == HolePurpose.Stop ? h with { Diameter = size, PlusMinus = 0 } : h);

        // The wider slot takes the old one with it: its sides leave the metal beyond it.
        return BracketShape.WithSlot(opened.Flat.Blank.Outline, opened.Stop) is { } outline
            ? opened with { Folded = new(opened.Flat with { Blank = new(outline, opened.Flat.Blank.Holes) }, opened.Folded.Flanges[0]) }
            : null;
    }

    /// <summary>The bracket with a new hole for the stop beside the old one; null where the flange has no metal there.</summary>
    public static Bracket? Redrilled(Bracket bracket, double along, double up, double diameter)
    {
        var (stop, flat) = (bracket.Stop, bracket.Flat);
        var (u, v) = Axes(bracket);
        var by = along * u + up * v;
        var centre = stop.Centre + by;
        var metal = Math.Min(
            flat.Blank.Outline.Contains(centre.Vector) && flat.ZoneOf(centre) == (stop.Flange, null) ? MeasuredShape.MetalRound(flat.Blank.Outline, centre) : 0,
            OtherHoles(bracket).Append((stop.Centre.Vector, stop.Diameter / 2)).Min(h => h.Item1.DistanceTo(centre.Vector) - h.Item2));
        if (stop.IsSlot || metal < diameter / 2 + Between)
        {
            return null;
        }

        var measured = bracket.Measured;
        if (measured is { } m)
        {
            var moved = bracket.Folded.Flanges[0].ToLocalDirection(bracket.Folded.Flanges[stop.Flange].ToWorldDirection(Vector3.From(by)));
            measured = m with { Seat = m.Seat + moved.XY, Height = m.Height + moved.Z };
        }

        var hole = stop with { Centre = centre, Diameter = diameter, PlusMinus = 0, MetalRadius = metal };
        FlatPattern drilled = flat with { Blank = new(flat.Blank.Outline, flat.Blank.Holes.Append(Contour.Circle(centre.Vector, diameter / 2))) };
        return bracket with { Holes = bracket.Holes.SetItem(bracket.Holes.Length - 1, hole), Measured = measured, Folded = new(drilled, bracket.Folded.Flanges[0]) };
    }

    /// <summary>Directions on the stop flange, in the flat: along the bend that carries it, and away from it.</summary>
    public static (Vector2 Along, Vector2 Up) Axes(Bracket bracket) => bracket.StopBend is { } bend ? (bend.Along, bend.Across) : (new(1, 0), new(0, 1));

    private static IEnumerable<(Vector2 At, double Radius)> OtherHoles(Bracket bracket) =>
        bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt).Select(h => (h.Centre.Vector, h.Reach));
}
