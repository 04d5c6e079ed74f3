using System.Collections.Immutable;
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
        if (bracket.Stop.Flange == 0)
        {
            return 0;
        }

        ImmutableArray<Disc> bolts = [.. bracket.Holes.Where(h => h.Purpose == HolePurpose.Bolt && h.Flange == 0).SelectMany(h => h.MetalDiscs())];
        var (main, seat, stop) = (flat.Bends[..bracket.Stop.Flange], bracket.FoldedSeat.Point, bracket.Stop);
        ThrottlePoint Foot(Bend bend, int number) => bracket.Folded.Fold(bend.Middle, 0);
        var give = Plain(bracket.Stock, main.AsSpan(), stop.Centre, stop.MetalRadius, bolts, seat, Foot);
        return tension * ((bracket.Lip ?? bracket.ReturnFlange) is { } lip
            ? give - SavedBy(lip, LipHeight(bracket, lip), bracket.Stock, main.AsSpan(), stop.Centre, stop.MetalRadius, bolts, seat, Foot)
            : give);
    }

    /// <summary>What a return lip or return flange takes off the give for 1 N (mm/N).</summary>
    /// <remarks>Integral of M²/EI where it runs: the angle section in place of the plain sheet.</remarks>
    /// <param name="lip">Its bend.</param>
    /// <param name="height">Its height over the sheet's face, to its free edge (mm).</param>
    /// <param name="stock">The sheet.</param>
    /// <param name="bends">The bends from mount to stop, at least one.</param>
    /// <param name="stop">Centre of the stop's hole, flat coordinates (mm).</param>
    /// <param name="stopMetal">Radius of metal around it (mm).</param>
    /// <param name="bolts">Metal around the bolts, flat coordinates (mm).</param>
    /// <param name="seat">Where the seat lies in space (mm).</param>
    /// <param name="foot">Where the middle of a bend's near edge lies in space (mm): of the bend with that number.</param>
    internal static double SavedBy(
        Bend lip, double height, Stock stock, ReadOnlySpan<Bend> bends, FlatPoint stop, double stopMetal, IReadOnlyList<Disc> bolts, ThrottlePoint seat,
        Func<Bend, int, ThrottlePoint> foot)
    {
        double Stiffer(double width) => (1 / PlainSection(width, stock.Thickness) - 1 / AngleSection(width, height, stock.Thickness)) / stock.Material.Modulus;
        if (lip.From == bends.Length)
        {
            var last = bends[^1];
            var stiffened = Math.Max(0, last.Depth(stop) - Math.Min(last.Depth(lip.Start), last.Depth(lip.End)));
            return Math.Pow(stiffened, 3) / 3 * Stiffer(StopFlangeWidth(last, stopMetal));
        }

        // Along what turns before the next bend, as far as it is free.
        var next = bends[lip.From];
        var free = lip.From == 0 ? FromBolts(next, bolts) : bends[lip.From - 1].Depth(next.Middle) - bends[lip.From - 1].Allowance;
        double near = -Math.Max(next.Depth(lip.Start), next.Depth(lip.End)), far = -Math.Min(next.Depth(lip.Start), next.Depth(lip.End));
        var lever = seat.DistanceTo(foot(next, lip.From));
        return lever * Math.Max(0, Math.Min(free, far) - near) * Stiffer(next.Length) * lever;
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

    // Square to the bend; to the nearest bolt whichever way where the bend lies among them.
    private static double FromBolts(Bend bend, IReadOnlyList<Disc> bolts)
    {
        var line = bend.Relief > 0 ? new LineSegment(bend.Start.Vector, bend.End.Vector) : null;
        var least = double.PositiveInfinity;
        for (var i = 0; i < bolts.Count; i++)
        {
            least = Math.Min(least, (line?.DistanceTo(bolts[i].Centre) ?? -bend.Depth(new(bolts[i].Centre))) - bolts[i].Radius);
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

    // Over the sheet's face, to the lip's free edge. Other flanges may reach across the lip's line in the flat.
    private static double LipHeight(Bracket bracket, Bend lip)
    {
        var edge = bracket.Flat.Blank.Outline.Segments
            .Where(s => bracket.Flat.ZoneOf(new(s.PointAt(0.5))).Flange == lip.To)
            .Max(s => Math.Max(lip.Depth(new(s.Start)), lip.Depth(new(s.End))));
        return edge - lip.Allowance + lip.InsideRadius;
    }
}
