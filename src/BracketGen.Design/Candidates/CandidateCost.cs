using BracketGen.Mechanism;

namespace BracketGen.Design;

/// <summary>How one passing bracket is weighed against another.</summary>
public static class CandidateCost
{
    /// <summary>
    /// Cost of a bracket: a hundred grams, a tenth of a millimetre of give under the wire's tension, a bend, and a bend angle that
    /// is not 90° by as much as a third of a bend.
    /// </summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="placement">Where the stop is.</param>
    /// <param name="give">Give of the stop along the wire under its largest tension (mm).</param>
    /// <param name="adjusterRange">Whole range of the adjuster (mm).</param>
    public static double Of(Bracket bracket, StopPlacement placement, double give, double adjusterRange)
    {
        var odd = bracket.Flat.Bends.Count(b => Math.Abs(b.Turn.Magnitude.Degrees - 90) > 0.5);
        var shift = adjusterRange > 0 ? Math.Abs(placement.AdjusterShift) / adjusterRange : 0;
        return bracket.Mass * 1e6 / 100 + give / 0.1 + 0.5 * bracket.Flat.Bends.Length + 0.15 * odd + shift;
    }

    /// <summary>Rough give (mm) of the stop along the wire under <paramref name="tension"/> (N).</summary>
    /// <remarks>
    /// Beam theory (Roark, table of beams, end load and end moment): the stop flange as a cantilever from its bend, F l³ / (3 E I) with
    /// I = b t³ / 12; then each flange before it, which the load turns by M a / (E I) over its free length a, carried to the stop by
    /// the distance. For choosing between candidates only: finite elements tell the truth.
    /// </remarks>
    public static double Give(Bracket bracket, double tension)
    {
        var flat = bracket.Flat;
        if (flat.Bends.IsEmpty)
        {
            return 0;
        }

        double Stiffness(double width) => bracket.Stock.Material.Modulus * width * Math.Pow(flat.Thickness, 3) / 12;
        var last = flat.Bends[^1];
        var length = last.Depth(bracket.Stop.Centre) - last.Allowance / 2;
        var width = Math.Max(2 * bracket.Stop.MetalRadius, (last.Length + 2 * bracket.Stop.MetalRadius) / 2);
        var give = tension * Math.Pow(length, 3) / (3 * Stiffness(width));
        for (var i = 0; i < flat.Bends.Length; i++)
        {
            var bend = flat.Bends[i];
            var free = i == 0
                ? bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt).Min(h => -bend.Depth(h.Centre) - h.MetalRadius)
                : flat.Bends[i - 1].Depth(0.5 * (bend.Start + bend.End)) - flat.Bends[i - 1].Allowance;
            var lever = bracket.FoldedSeat.Point.DistanceTo(bracket.Folded.Fold(0.5 * (bend.Start + bend.End), 0));
            give += tension * lever * Math.Max(0, free + bend.Allowance / 2) / Stiffness(bend.Length) * lever;
        }

        return give;
    }
}
