using System.Collections.Immutable;
using BracketGen.Design.Part;
using BracketGen.Geometry;

namespace BracketGen.Line.Parts;

/// <summary>The ways in which a part may lie on a sheet whose grain runs along x.</summary>
public static class GrainTurns
{
    private const int FreeSteps = 8;

    /// <summary>
    /// Where every bend is gentle enough for the grain to run along it: any angle, in steps of 45° from the way in which its rectangle is
    /// smallest. Else two: the first bend across the grain, as the check of its inside radius took it to lie.
    /// </summary>
    public static ImmutableArray<Angle> Of(Bracket bracket)
    {
        var flat = bracket.Flat;
        var least = bracket.Stock.Material.MinRadiusAlongGrain * bracket.Stock.Thickness;
        if (flat.Bends.Any(b => b.InsideRadius < least * (1 - Tolerance.LimitSlack)))
        {
            var turn = -flat.Bends[0].Across.Polar;
            return [turn.Normalised, (turn + Angle.Straight).Normalised];
        }

        var tight = TightestTurn(flat.Blank.Outline);
        return [.. Enumerable.Range(0, FreeSteps).Select(i => (tight + (2.0 * i / FreeSteps) * Angle.Straight).Normalised)];
    }

    /// <summary>Whether the grain decides how it lies.</summary>
    public static bool IsBound(Bracket bracket) => Of(bracket).Length == 2;

    // In steps of one degree: the rectangle's area changes by less than the cells it is laid in.
    private static Angle TightestTurn(Contour outline)
    {
        var points = outline.Flatten(0.2);
        return Enumerable.Range(0, 90).Select(d => Angle.FromDegrees(d)).MinBy(turn =>
        {
            var bounds = Bounds.Around(points.Select(p => p.Rotate(turn)));
            return Math.Round(bounds.Width * bounds.Height, 6);
        });
    }
}
