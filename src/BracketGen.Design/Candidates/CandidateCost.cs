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
    /// <param name="tension">Largest tension of the wire (N).</param>
    /// <param name="adjusterRange">Whole range of the adjuster (mm).</param>
    public static double Of(Bracket bracket, StopPlacement placement, double tension, double adjusterRange)
    {
        var odd = bracket.Flat.Bends.Count(b => Math.Abs(b.Turn.Magnitude.Degrees - 90) > 0.5);
        var shift = adjusterRange > 0 ? Math.Abs(placement.AdjusterShift) / adjusterRange : 0;
        return bracket.Mass * 1e6 / 100 + Give(bracket, tension) / 0.1 + 0.5 * bracket.Flat.Bends.Length + 0.15 * odd + shift;
    }

    /// <summary>Rough give (mm) of the stop along the wire under <paramref name="tension"/> (N).</summary>
    /// <remarks>
    /// The stop flange as a cantilever from the last bend, F l³ / (3 E I) with I = b t³ / 12, its root turned by what the flange
    /// before it bends (M a / (E I)); Roark, table of beams, end load and end moment. For choosing between candidates only.
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
        var first = flat.Bends[0];
        var overhang = bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt)
            .Min(h => -first.Depth(h.Centre) - h.MetalRadius) + first.Allowance / 2;
        return give + tension * length * Math.Max(0, overhang) / Stiffness(first.Length) * length;
    }
}
