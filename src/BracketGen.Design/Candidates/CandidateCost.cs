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

        var modulus = bracket.Stock.Material.Modulus;
        double Stiffness(double width) => modulus * width * Math.Pow(flat.Thickness, 3) / 12;
        var last = bracket.StopBend!;
        var length = last.Depth(bracket.Stop.Centre) - last.Allowance / 2;
        var width = Math.Max(2 * bracket.Stop.MetalRadius, (last.Length + 2 * bracket.Stop.MetalRadius) / 2);

        // Integral of M²/EI: the plain sheet from the bend on, the angle section from where a lip begins.
        var stiffened = bracket.Lip is { } lip ? Math.Max(0, length - Math.Min(last.Depth(lip.Start), last.Depth(lip.End)) + last.Allowance / 2) : 0;
        var give = tension * (Math.Pow(length, 3) - Math.Pow(stiffened, 3)) / (3 * Stiffness(width));
        if (stiffened > 0)
        {
            give += tension * Math.Pow(stiffened, 3) / (3 * modulus * AngleSection(width, LipHeight(bracket), flat.Thickness));
        }

        for (var i = 0; i < flat.Bends.Length && flat.Bends[i] != bracket.Lip; i++)
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

    /// <summary>Second moment of area (mm⁴) of a sheet of some width with a lip of some height on its edge, about its own neutral axis.</summary>
    /// <remarks>Steiner's theorem for the two rectangles; the rounding of the bend left aside.</remarks>
    public static double AngleSection(double width, double height, double thickness)
    {
        double sheet = width * thickness, lip = height * thickness;
        var distance = (height + thickness) / 2;
        return width * Math.Pow(thickness, 3) / 12 + thickness * Math.Pow(height, 3) / 12 + sheet * lip / (sheet + lip) * distance * distance;
    }

    // Over the sheet's face, to the lip's free edge.
    private static double LipHeight(Bracket bracket)
    {
        var lip = bracket.Lip!;
        var edge = bracket.Flat.Blank.Outline.Segments.Max(s => Math.Max(lip.Depth(s.Start), lip.Depth(s.End)));
        return edge - lip.Allowance + lip.InsideRadius;
    }
}
