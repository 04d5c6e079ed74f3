using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Design.Part;

/// <summary>Costs that a bracket cannot fall below, found before its outline is drawn.</summary>
/// <remarks>Never above <see cref="BracketCost.Total"/> of the bracket that the draft becomes.</remarks>
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
    public static double WithoutGive(BracketDraft draft, double adjusterRange) => Of(draft, 0, adjusterRange);

    /// <summary>The bound with the give, which needs no outline and so is exact.</summary>
    /// <param name="draft">The bracket.</param>
    /// <param name="give">Its give under the largest tension in the wire (mm).</param>
    /// <param name="adjusterRange">Range of the adjuster (mm).</param>
    public static double Of(BracketDraft draft, double give, double adjusterRange) =>
        BracketCost.Of(
            new(draft.Choice.Stock, LeastMass(draft), draft.LeastCut, Pierces(draft.Choice.Sheet)), draft.Bends, draft.Choice.Placement, give, adjusterRange,
            draft.Choice.Sheet.Rates).Total - DesignTolerance.CostRounding;

    /// <summary>Mass (t) that it cannot fall below.</summary>
    public static double LeastMass(BracketDraft draft) =>
        draft.LeastArea * (1 - DesignTolerance.AreaRounding) * draft.Choice.Stock.Thickness * draft.Choice.Stock.Material.Density;

    /// <summary>The bound for any bracket of one sheet with <paramref name="bends"/> bends to a placement.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="bends">Number of bends, at least 1: the stop is on another flange than the bolts.</param>
    /// <param name="stiffened">Whether it has one bend more, that of a return flange: nothing is known of its metal.</param>
    public static double OfAny(SheetOnMount sheet, int bends, bool stiffened = false)
    {
        var stop = sheet.StopMetalRadius;

        // On either side of a bend the edges run straight.
        var strips = bends * LeastBendLength(sheet) * 2 * sheet.Straight;
        // A flange may stand in a notch of one bend between the bolts: all that is sure of the mount flange then is the metal round each.
        // Of a second mount flange nothing is counted but its holes' edges and what rounding its corners may take.
        var second = sheet.SecondBolts.IsEmpty ? 0 : 1;
        var area = (bends == 1 ? OfLargest(sheet.BoltMetal) : Hull(sheet.BoltMetal, [])) + Math.PI * stop * stop + strips - Corners(bends + second, sheet.Straight)
            - BoltHoleArea(sheet.Bolts) - StopHoleArea(sheet);
        area = Math.Max(0, area);
        var blank = new BracketCost.Blank(
            sheet.Stock, area * sheet.Stock.Thickness * sheet.Stock.Material.Density, LeastOutline(area) + HoleEdges(sheet), Pierces(sheet));
        return BracketCost.OfWork(blank, bends + second + (stiffened ? 1 : 0), 0, 0, sheet.Rates).Total - DesignTolerance.CostRounding;
    }

    /// <summary>What the angle of a single bend costs: it stands between mount face and stop, whatever the sheet.</summary>
    /// <param name="mount">Normal of the mount face, length one.</param>
    /// <param name="stop">The stop's direction, length one.</param>
    /// <param name="rates">What work costs.</param>
    public static double OfSingleAngle(Vector3 mount, Vector3 stop, ShopRates rates) =>
        Math.Abs(mount.Dot(stop)) > TwoBendBound.Odd ? BracketCost.OfAngle(rates) : 0;

    /// <summary>Length (mm) of cut that the blank of <paramref name="draft"/> cannot fall below.</summary>
    /// <remarks>
    /// An outline is no shorter than a circle round as much metal, and no shorter than the convex hull of what it encloses. Rounding a corner beside a
    /// bend takes at most the straight edge twice; a slot only adds, but for its rounded mouth, for which its width is taken twice.
    /// </remarks>
    public static double LeastCut(BracketDraft draft)
    {
        var sheet = draft.Choice.Sheet;
        Span<Vector2> ends = stackalloc Vector2[4 * draft.Bends.Length];
        var count = 0;
        foreach (var bend in draft.Bends)
        {
            ends[count++] = bend.Start.Vector - sheet.Straight * bend.Across;
            ends[count++] = bend.End.Vector - sheet.Straight * bend.Across;
            ends[count++] = bend.Start.Vector + (bend.Allowance + sheet.Straight) * bend.Across;
            ends[count++] = bend.End.Vector + (bend.Allowance + sheet.Straight) * bend.Across;
        }

        var hull = new Compassed(stackalloc Vector2[Directions], stackalloc double[Directions]);
        foreach (var discs in draft.Discs)
        {
            hull.Add(discs);
        }

        hull.Add(ends);
        // Each bend has four corners; a notch has two more, where its cuts reach the edge.
        var corners = 4 * draft.Bends.Length + (draft.Bends is [{ Relief: > 0 }] ? 2 : 0);
        var hullEdge = hull.Perimeter - 2 * corners * sheet.Straight - (sheet.Seat.IsSlot ? 2 * sheet.Seat.Opening : 0);
        return Math.Max(hullEdge, LeastOutline(draft.LeastArea)) * (1 - DesignTolerance.AreaRounding) + HoleEdges(sheet);
    }

    // The holes.
    private static double HoleEdges(SheetOnMount sheet)
    {
        var length = sheet.Seat.IsSlot ? 0 : EdgeOf(sheet.Seat.Outline, sheet.Seat.Opening);
        foreach (var bolt in sheet.Bolts)
        {
            length += EdgeOf(bolt.Outline, bolt.Diameter);
        }

        foreach (var bolt in sheet.SecondBolts)
        {
            length += EdgeOf(bolt.Outline, bolt.Diameter);
        }

        return length;
    }

    private static double EdgeOf(HoleOutline? outline, double size) => outline?.Round(new(0, 0), size).Perimeter ?? Math.PI * size;

    private static double AreaOf(HoleOutline? outline, double size) => outline?.Round(new(0, 0), size).SignedArea ?? Math.PI / 4 * size * size;

    private static int Pierces(SheetOnMount sheet) => 1 + sheet.Bolts.Length + sheet.SecondBolts.Length + (sheet.Seat.IsSlot ? 0 : 1);

    // Of all outlines round an area the circle is the shortest.
    private static double LeastOutline(double area) => 2 * Math.Sqrt(Math.PI * area);

    /// <summary>No bend is shorter (mm): as the stop's metal is wide, or the bolts'.</summary>
    public static double LeastBendLength(SheetOnMount sheet)
    {
        var least = sheet.StopMetalRadius;
        foreach (var bolt in sheet.BoltMetal)
        {
            least = Math.Min(least, bolt.Radius);
        }

        return 2 * least;
    }

    /// <summary>Area (mm²) that the blank of <paramref name="draft"/> cannot fall below.</summary>
    public static double LeastArea(BracketDraft draft)
    {
        var sheet = draft.Choice.Sheet;
        var straight = sheet.Straight;
        var area = 0.0;
        Span<Vector2> ends = stackalloc Vector2[2 * draft.Bends.Length];
        for (var flange = 0; flange < draft.Discs.Length; flange++)
        {
            var count = 0;
            foreach (var bend in draft.Bends)
            {
                if (bend.From == flange)
                {
                    ends[count++] = bend.Start.Vector - straight * bend.Across;
                    ends[count++] = bend.End.Vector - straight * bend.Across;
                }
                else if (bend.To == flange)
                {
                    ends[count++] = bend.Start.Vector + (bend.Allowance + straight) * bend.Across;
                    ends[count++] = bend.End.Vector + (bend.Allowance + straight) * bend.Across;
                }
            }

            area += flange == 0 && draft.Bends is [{ Relief: > 0 } notched]
                ? BesideNotch(notched, draft.Discs[0], ends[..count], straight)
                : Hull(draft.Discs[flange], ends[..count]);
        }

        foreach (var bend in draft.Bends)
        {
            area += bend.Length * (bend.Allowance + 2 * straight);
        }

        area -= Corners(draft.Bends.Length, straight) + StopHoleArea(sheet) + BoltHoleArea(sheet.Bolts) + BoltHoleArea(sheet.SecondBolts);
        return Math.Max(1, area);
    }

    // What lies before the straight edge is kept, but for the round bottoms of two cuts; or else the metal round one bolt.
    private static double BesideNotch(Bend bend, IReadOnlyList<Disc> bolts, ReadOnlySpan<Vector2> ends, double straight)
    {
        List<Disc> before = [.. bolts.Where(b => bend.Depth(new(b.Centre)) + b.Radius <= -straight)];
        return Math.Max(OfLargest(bolts), Hull(before, ends) - Math.PI / 4 * bend.Relief * bend.Relief);
    }

    private static double OfLargest(IReadOnlyList<Disc> discs)
    {
        var largest = 0.0;
        for (var i = 0; i < discs.Count; i++)
        {
            largest = Math.Max(largest, discs[i].Radius);
        }

        return Math.PI * largest * largest;
    }

    private static double BoltHoleArea(ImmutableArray<BracketHole> bolts)
    {
        var area = 0.0;
        foreach (var bolt in bolts)
        {
            area += AreaOf(bolt.Outline, bolt.Diameter);
        }

        return area;
    }

    private static double Corners(int bends, double straight) => 4 * bends * RoundedOff * straight * straight;

    // A slot runs from the stop's centre to the edge, at most the metal's radius away where nothing lies beyond it; twice that is taken.
    private static double StopHoleArea(SheetOnMount sheet) =>
        AreaOf(sheet.Seat.Outline, sheet.Seat.Opening) + (sheet.Seat.IsSlot ? 2 * sheet.Seat.Opening * sheet.StopMetalRadius : 0);

    private static double Hull(IReadOnlyList<Disc> discs, ReadOnlySpan<Vector2> points)
    {
        if (discs.Count == 0 && points.IsEmpty)
        {
            return 0;
        }

        var hull = new Compassed(stackalloc Vector2[Directions], stackalloc double[Directions]);
        hull.Add(discs);
        hull.Add(points);
        return hull.Area;
    }

    // The polygon through the farthest points in every direction of the compass: it lies within the hull.
    private readonly ref struct Compassed
    {
        private readonly Span<Vector2> _farthest;
        private readonly Span<double> _most;

        public Compassed(Span<Vector2> farthest, Span<double> most)
        {
            _farthest = farthest;
            _most = most;
            most.Fill(double.NegativeInfinity);
        }

        public double Area
        {
            get
            {
                var area = 0.0;
                for (var i = 0; i < Directions; i++)
                {
                    area += _farthest[i == 0 ? Directions - 1 : i - 1].Cross(_farthest[i]) / 2;
                }

                return area;
            }
        }

        public double Perimeter
        {
            get
            {
                var length = 0.0;
                for (var i = 0; i < Directions; i++)
                {
                    length += _farthest[i == 0 ? Directions - 1 : i - 1].DistanceTo(_farthest[i]);
                }

                return length;
            }
        }

        public void Add(IReadOnlyList<Disc> discs)
        {
            for (var k = 0; k < discs.Count; k++)
            {
                var disc = discs[k];
                for (var i = 0; i < Directions; i++)
                {
                    var reach = disc.Centre.Dot(Compass[i]) + disc.Radius;
                    if (reach > _most[i])
                    {
                        (_most[i], _farthest[i]) = (reach, disc.Centre + disc.Radius * Compass[i]);
                    }
                }
            }
        }

        public void Add(ReadOnlySpan<Vector2> points)
        {
            foreach (var point in points)
            {
                for (var i = 0; i < Directions; i++)
                {
                    var reach = point.Dot(Compass[i]);
                    if (reach > _most[i])
                    {
                        (_most[i], _farthest[i]) = (reach, point);
                    }
                }
            }
        }
    }
}
