using BracketGen.Geometry;
using BracketGen.SheetMetal;

namespace BracketGen.Design;

/// <summary>Costs that a bracket cannot fall below, found before its outline is drawn.</summary>
/// <remarks>Never above <see cref="CandidateCost.Of"/> of the bracket that the draft becomes.</remarks>
internal static class CostBound
{
    private const int Directions = 32;

    private static readonly Vector2[] Compass =
        [.. Enumerable.Range(0, Directions).Select(i => Vector2.FromPolar(1, new(2 * Math.PI * i / Directions)))];

    /// <summary>
    /// Largest area (over the square of the straight edge) that rounding one corner takes away: r² (tan u - u) with r tan u at most
    /// the straight edge and u half the turn; (tan u - u) / tan² u is largest, 0.2344, near u = 1.1.
    /// </summary>
    private const double RoundedOff = 0.24;

    /// <summary>The bound from the metal alone, give left out: needs no travel.</summary>
    public static double WithoutGive(BracketShape.Draft draft, double adjusterRange) => Of(draft, 0, adjusterRange);

    /// <summary>The bound with the give, which needs no outline and so is exact.</summary>
    /// <param name="draft">The bracket.</param>
    /// <param name="tension">Largest tension in the wire (N).</param>
    /// <param name="adjusterRange">Range of the adjuster (mm).</param>
    public static double Of(BracketShape.Draft draft, double tension, double adjusterRange)
    {
        var side = Math.Sqrt(LeastArea(draft));
        var flat = new FlatPattern
        {
            // A square of that area stands for the blank: cost and give ask it for nothing but its area.
            Blank = new(Contour.Polygon([new(0, 0), new(side, 0), new(side, side), new(0, side)]), []),
            Thickness = draft.Choice.Stock.Thickness,
            Bends = [.. draft.Bends],
        };
        var stand = new Bracket
        {
            Stock = draft.Choice.Stock,
            Die = draft.Choice.Die,
            Folded = new(flat, draft.MountFrame),
            Holes = [.. draft.Bolts, draft.StopHole],
            Seat = draft.Seat,
            SeatOnTop = draft.SeatOnTop,
        };
        var give = tension > 0 ? CandidateCost.Give(stand, tension) : 0;
        return CandidateCost.Of(stand, draft.Choice.Placement, give, adjusterRange) - 1e-9;
    }

    /// <summary>The bound for any bracket of one sheet with <paramref name="bends"/> bends to a placement.</summary>
    /// <param name="mount">The mount face.</param>
    /// <param name="frame">The mount flange's frame.</param>
    /// <param name="seat">What the outer's end needs in this sheet.</param>
    /// <param name="stock">The sheet.</param>
    /// <param name="bends">Number of bends, at least 1: the stop is on another flange than the bolts.</param>
    public static double OfAny(MountFace mount, Frame frame, StopSeat seat, Stock stock, int bends)
    {
        var bolts = mount.Holes.Select(h => new Disc(frame.ToLocal(h.At).XY, BracketShape.BoltMetalRadius(h))).ToArray();
        var stop = seat.MetalRadius(stock.Thickness);

        // No bend is shorter than the stop's metal is wide, or the bolts'; on either side of it the edges run straight.
        var strips = bends * 2 * Math.Min(stop, bolts.Min(b => b.Radius)) * 2 * BracketShape.StraightBesideBend(stock.Thickness);
        var area = Hull(bolts, []) + Math.PI * stop * stop + strips - Corners(bends, stock.Thickness)
            - mount.Holes.Sum(h => Math.PI / 4 * h.Thread.ClearanceMedium * h.Thread.ClearanceMedium) - StopHoleArea(seat, stock.Thickness);
        return Math.Max(0, area) * stock.Thickness * stock.Material.Density * 1e6 / 100 + 0.5 * bends - 1e-9;
    }

    private static double LeastArea(BracketShape.Draft draft)
    {
        var thickness = draft.Choice.Stock.Thickness;
        var straight = BracketShape.StraightBesideBend(thickness);
        var area = 0.0;
        for (var flange = 0; flange < draft.Discs.Length; flange++)
        {
            List<Vector2> ends = [];
            foreach (var bend in draft.Bends)
            {
                if (bend.From == flange)
                {
                    ends.Add(bend.Start - straight * bend.Across);
                    ends.Add(bend.End - straight * bend.Across);
                }
                else if (bend.To == flange)
                {
                    ends.Add(bend.Start + (bend.Allowance + straight) * bend.Across);
                    ends.Add(bend.End + (bend.Allowance + straight) * bend.Across);
                }
            }

            area += Hull(draft.Discs[flange], ends);
        }

        foreach (var bend in draft.Bends)
        {
            area += bend.Length * (bend.Allowance + 2 * straight);
        }

        area -= Corners(draft.Bends.Count, thickness) + StopHoleArea(draft.Seat, thickness);
        foreach (var bolt in draft.Bolts)
        {
            area -= Math.PI / 4 * bolt.Diameter * bolt.Diameter;
        }

        return Math.Max(1, area);
    }

    private static double Corners(int bends, double thickness)
    {
        var straight = BracketShape.StraightBesideBend(thickness);
        return 4 * bends * RoundedOff * straight * straight;
    }

    // A slot runs from the stop's centre to the edge, at most the metal's radius away where nothing lies beyond it; twice that is taken.
    private static double StopHoleArea(StopSeat seat, double thickness) =>
        Math.PI / 4 * seat.Opening * seat.Opening + (seat.IsSlot ? 2 * seat.Opening * seat.MetalRadius(thickness) : 0);

    // Area of the polygon through the farthest points in every direction of the compass: it lies within the hull.
    private static double Hull(IReadOnlyList<Disc> discs, List<Vector2> points)
    {
        if (discs.Count == 0 && points.Count == 0)
        {
            return 0;
        }

        var area = 0.0;
        Vector2 first = default, before = default;
        for (var i = 0; i < Directions; i++)
        {
            var way = Compass[i];
            var (most, farthest) = (double.NegativeInfinity, default(Vector2));
            for (var k = 0; k < discs.Count; k++)
            {
                var reach = discs[k].Centre.Dot(way) + discs[k].Radius;
                if (reach > most)
                {
                    (most, farthest) = (reach, discs[k].Centre + discs[k].Radius * way);
                }
            }

            foreach (var point in points)
            {
                var reach = point.Dot(way);
                if (reach > most)
                {
                    (most, farthest) = (reach, point);
                }
            }

            if (i == 0)
            {
                first = farthest;
            }
            else
            {
                area += before.Cross(farthest) / 2;
            }

            before = farthest;
        }

        return area + before.Cross(first) / 2;
    }
}
