using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.SheetMetal.Forming;

/// <summary>How far a hole lies from the middle of a bend, and how far it must: the sheet over the die's opening is not carried while it is bent.</summary>
/// <remarks>
/// A hole stays on the shoulder from the first touch, V/2 and the shoulder's radius from the middle, to the last, where the leg is carried
/// <see cref="ShoulderSupport.LegNeeded"/> from the outside mould line: the larger of both along the flat sheet (geometry of the die). A hole nearer than that is
/// drawn out of round (common practice, no source).
/// </remarks>
/// <param name="Hole">Number of the hole in <see cref="Region.Holes"/>.</param>
/// <param name="Distance">From the bend's middle to the nearest edge of the hole (mm, on the flat pattern); 0 where the bend line crosses it.</param>
/// <param name="Limit">Minimum distance (mm).</param>
public sealed record HoleOverDie(int Hole, double Distance, double Limit)
{
    /// <summary>Minimum distance (mm, on the flat pattern) of a hole's edge from the middle of a bend.</summary>
    /// <param name="bend">The bend.</param>
    /// <param name="die">The die it is bent on.</param>
    /// <param name="thickness">Thickness of the sheet (mm).</param>
    public static double LimitOf(Bend bend, PressBrakeDie die, double thickness) => LimitOf(bend.Turn, bend.InsideRadius, bend.Allowance, die, thickness);

    /// <summary>The same for a bend of which only the section is known.</summary>
    /// <param name="turn">Bend angle.</param>
    /// <param name="insideRadius">Inside radius (mm).</param>
    /// <param name="allowance">Bend allowance (mm).</param>
    /// <param name="die">The die it is bent on.</param>
    /// <param name="thickness">Thickness of the sheet (mm).</param>
    public static double LimitOf(Angle turn, double insideRadius, double allowance, PressBrakeDie die, double thickness) => Math.Max(
        die.Opening / 2 + die.ShoulderRadius,
        ShoulderSupport.LegNeeded(die, turn) - (insideRadius + thickness) * Math.Tan(turn.Magnitude.Radians / 2) + allowance / 2);

    /// <summary>The hole that comes nearest to the bend between its ends; null where none lies beside it.</summary>
    /// <param name="flat">The flat pattern.</param>
    /// <param name="bend">One of its bends.</param>
    /// <param name="die">The die.</param>
    public static HoleOverDie? Nearest(FlatPattern flat, Bend bend, PressBrakeDie die)
    {
        HoleOverDie? nearest = null;
        var limit = LimitOf(bend, die, flat.Thickness);
        for (var i = 0; i < flat.Blank.Holes.Length; i++)
        {
            double min = double.PositiveInfinity, max = double.NegativeInfinity, first = min, last = max;
            foreach (var point in flat.Blank.Holes[i].Flatten())
            {
                var p = point - bend.Start.Vector;
                double across = p.Dot(bend.Across) - bend.Allowance / 2, along = p.Dot(bend.Along);
                (min, max) = (Math.Min(min, across), Math.Max(max, across));
                (first, last) = (Math.Min(first, along), Math.Max(last, along));
            }

            var distance = Math.Max(0, Math.Max(min, -max));
            if (last > 0 && first < bend.Length && (nearest is null || distance < nearest.Distance))
            {
                nearest = new(i, distance, limit);
            }
        }

        return nearest;
    }
}
