using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;

namespace BracketGen.SheetMetal.Forming;

/// <summary>Metal beside a bend that makes the shoulders of the die carry all of it: discs for <see cref="Patterns.BlankOutline.Draw"/>.</summary>
/// <remarks>
/// One disc at either end of the bend on each side, so that the edges run straight out from the bend until the leg is long enough, and only then turn. The
/// far side of the two is a straight edge parallel to the bend, where nothing else reaches beyond it.
/// </remarks>
public static class ShoulderMetal
{
    /// <summary>Discs for the flange that stays and for the one that is bent (flat coordinates, mm).</summary>
    /// <param name="bend">The bend.</param>
    /// <param name="die">The die.</param>
    /// <param name="thickness">Thickness of the sheet (mm).</param>
    /// <param name="straight">Straight edge on either side of a bend (mm), as it is drawn anyway: the least depth.</param>
    /// <param name="radius">Radius of the corners (mm), at most half the length of the bend.</param>
    public static (Disc[] From, Disc[] To) Of(Bend bend, PressBrakeDie die, double thickness, double straight, double radius)
    {
        var setback = (bend.InsideRadius + thickness) * Math.Tan(bend.Turn.Magnitude.Radians / 2);
        var depth = Math.Max(straight, ShoulderSupport.LegNeeded(die, bend.Turn) - setback);
        var round = Math.Min(radius, bend.Length / 2);
        Disc At(FlatPoint end, double inwards, double across) => new((end + inwards * bend.Along + across * bend.Across).Vector, round);

        // Behind the depth, so that the corners take nothing from it, and clear of the straight edge itself.
        var middle = Math.Max(depth, straight + round + Tolerance.OnLimit);
        return (
            [At(bend.Start, round, -middle), At(bend.End, -round, -middle)],
            [At(bend.Start, round, bend.Allowance + middle), At(bend.End, -round, bend.Allowance + middle)]);
    }
}
