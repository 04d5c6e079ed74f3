using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Design.Part;

/// <summary>How far the stop yields along the wire, by beam theory.</summary>
public static class StopGive
{
    /// <summary>Rough give (mm) of the stop along the wire under <paramref name="tension"/> (N).</summary>
    /// <remarks>
    /// Beam theory (Roark, table of beams, end load and end moment): the stop flange as a cantilever from its bend, F l³ / (3 E I) with
    /// I = b t³ / 12; then each flange before it, which the load turns by M a / (E I) over its free length a, carried to the stop by
    /// the distance. For choosing between candidates only: finite elements tell the truth.
    /// </remarks>
    public static double Of(Bracket bracket, double tension)
    {
        var flat = bracket.Flat;
        if (flat.Bends.IsEmpty)
        {
            return 0;
        }

        var lip = bracket.Lip;
        var bends = lip is null ? flat.Bends : flat.Bends.Remove(lip);
        var give = Plain(
            bracket.Stock, bends.AsSpan(), bracket.Stop.Centre, bracket.Stop.MetalRadius,
            [.. bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt).Select(h => new Disc(h.Centre.Vector, h.MetalRadius))],
            bracket.FoldedSeat.Point, (bend, _) => bracket.Folded.Fold(bend.Middle, 0));
        if (lip is not null)
        {
            // Integral of M²/EI: the plain sheet from the bend on, the angle section from where the lip begins.
            var last = bracket.StopBend!;
            var modulus = bracket.Stock.Material.Modulus;
            var width = StopFlangeWidth(last, bracket.Stop.MetalRadius);
            var stiffened = Math.Max(0, last.Depth(bracket.Stop.Centre) - Math.Min(last.Depth(lip.Start), last.Depth(lip.End)));
            give += Math.Pow(stiffened, 3) / (3 * modulus) * (1 / AngleSection(width, LipHeight(bracket), flat.Thickness)
                - 1 / PlainSection(width, flat.Thickness));
        }

        return tension * give;
    }

    /// <summary>The give for 1 N (mm/N) of a bracket without a lip.</summary>
    /// <param name="stock">The sheet.</param>
    /// <param name="bends">The bends from mount to stop, at least one.</param>
    /// <param name="stop">Centre of the stop's hole, flat coordinates (mm).</param>
    /// <param name="stopMetal">Radius of metal around it (mm).</param>
    /// <param name="bolts">Metal around the bolts, flat coordinates (mm).</param>
    /// <param name="seat">Where the seat lies in space (mm).</param>
    /// <param name="foot">Where the middle of a bend's near edge lies in space (mm): of the bend with that number.</param>
    internal static double Plain(
        Stock stock, ReadOnlySpan<Bend> bends, FlatPoint stop, double stopMetal, IReadOnlyList<Disc> bolts, ThrottlePoint seat, Func<Bend, int, ThrottlePoint> foot)
    {
        var modulus = stock.Material.Modulus;
        var last = bends[^1];
        var length = last.Depth(stop) - last.Allowance / 2;
        var give = length * length * length / (3 * modulus * PlainSection(StopFlangeWidth(last, stopMetal), stock.Thickness));
        for (var i = 0; i < bends.Length; i++)
        {
            var bend = bends[i];
            var free = i == 0 ? FromBolts(bend, bolts) : bends[i - 1].Depth(bend.Middle) - bends[i - 1].Allowance;
            var lever = seat.DistanceTo(foot(bend, i));
            give += lever * Math.Max(0, free + bend.Allowance / 2) / (modulus * PlainSection(bend.Length, stock.Thickness)) * lever;
        }

        return give;
    }

    private static double FromBolts(Bend bend, IReadOnlyList<Disc> bolts)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < bolts.Count; i++)
        {
            least = Math.Min(least, -bend.Depth(new(bolts[i].Centre)) - bolts[i].Radius);
        }

        return least;
    }

    private static double StopFlangeWidth(Bend bend, double stopMetal) => Math.Max(2 * stopMetal, (bend.Length + 2 * stopMetal) / 2);

    /// <summary>Give (mm/N) for a second moment of area of a plain section so wide (mm), and an integral of moment times lever so large (mm³).</summary>
    internal static double OfSection(double width, double integral, Stock stock) => integral / (stock.Material.Modulus * PlainSection(width, stock.Thickness));

    private static double PlainSection(double width, double thickness) => width * (thickness * thickness * thickness) / 12;

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
        var edge = bracket.Flat.Blank.Outline.Segments.Max(s => Math.Max(lip.Depth(new(s.Start)), lip.Depth(new(s.End))));
        return edge - lip.Allowance + lip.InsideRadius;
    }
}
