using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;

namespace BracketGen.Design.Part;

/// <summary>How far the ± of what was measured on a finished bracket moves its seat and its metal.</summary>
/// <remarks>
/// Worst cases to first order: every reading at an end of its ± at once, lengths of movements added. What is not measured, such as the radius of a corner's rounding, counts as read.
/// </remarks>
public static class ReadingSpread
{
    // A point off in both, or in all three, coordinates (the diagonal of square and cube).
    private static readonly double Both = Math.Sqrt(2), Three = Math.Sqrt(3);

    /// <summary>How the bracket goes elsewhere on its bolts where one of its holes is elsewhere: for 1 mm of one coordinate of one hole, the movement (mm) of a point of the mount flange's plane.</summary>
    /// <remarks>The rigid motion of least squares: the bracket shifts by the mean of the holes' deviations and turns by Σ r × δ / Σ r², r from the centroid; on a single bolt it is turned by eye and only shifts.</remarks>
    /// <param name="Hole">Number of the hole among the bolts.</param>
    /// <param name="Way">The coordinate that is off, length one.</param>
    /// <param name="Shift">Movement of the centroid.</param>
    /// <param name="Turn">Turn about the centroid (rad).</param>
    internal readonly record struct FitMove(int Hole, Vector2 Way, Vector2 Shift, double Turn);

    /// <summary>The movements of every coordinate of every bolt hole, and the centroid of the holes.</summary>
    internal static (Vector2 Centroid, ImmutableArray<FitMove> Moves) OfFit(Bracket bracket)
    {
        BracketHole[] bolts = [.. Bolts(bracket)];
        var centroid = bolts.Aggregate(Vector2.Zero, (sum, b) => sum + b.Centre.Vector) / bolts.Length;
        var square = bolts.Sum(b => (b.Centre.Vector - centroid).Dot(b.Centre.Vector - centroid));
        return (centroid,
        [
            .. from hole in Enumerable.Range(0, bolts.Length)
               from way in new Vector2[] { new(1, 0), new(0, 1) }
               let turn = square > 0 ? (bolts[hole].Centre.Vector - centroid).Cross(way) / square : 0
               select new FitMove(hole, way, way / bolts.Length, turn),
        ]);
    }

    /// <summary>How far the seat may be from where it was measured, along each axis of the mount flange with z off the face (mm, either way).</summary>
    /// <param name="bracket">A finished bracket.</param>
    public static PointPlusMinus OfSeat(Bracket bracket)
    {
        if (bracket.Measured is not { } measured)
        {
            return default;
        }

        var (read, by) = (measured.PlusMinus, Moves(bracket, measured.Seat.Vector));
        return new(read + by.Sum(m => Math.Abs(m.X)), read + by.Sum(m => Math.Abs(m.Y)), read);
    }

    /// <summary>How far the way that the seat faces may be off.</summary>
    /// <param name="bracket">A finished bracket.</param>
    public static Angle OfDirection(Bracket bracket)
    {
        if (bracket.Measured is not { } measured)
        {
            return Angle.Zero;
        }

        BracketHole[] bolts = [.. Bolts(bracket)];
        return measured.NormalPlusMinus + new Angle(OfFit(bracket).Moves.Sum(m => Math.Abs(m.Turn) * bolts[m.Hole].PlacePlusMinus));
    }

    /// <summary>How much farther off its threaded hole a bolt hole may be (mm).</summary>
    /// <param name="bracket">A finished bracket.</param>
    public static double OfPattern(Bracket bracket)
    {
        BracketHole[] bolts = [.. Bolts(bracket)];
        var (centroid, moves) = OfFit(bracket);
        return bolts.Length == 1 ? 0 : Enumerable.Range(0, bolts.Length).Max(hole => moves.Sum(m => bolts[m.Hole].PlacePlusMinus
            * ((m.Hole == hole ? m.Way : Vector2.Zero) - m.Shift - m.Turn * (bolts[hole].Centre.Vector - centroid).Left).Length));
    }

    /// <summary>How far any metal of some of its flanges, or of a bend, may be from where it was measured (mm).</summary>
    /// <param name="bracket">A finished bracket.</param>
    /// <param name="flanges">Which flanges.</param>
    /// <param name="withFit">Whether it is seen from the throttle body, on which the bracket may lie elsewhere; otherwise from the bracket.</param>
    public static double OfMetal(Bracket bracket, Func<int, bool> flanges, bool withFit)
    {
        if (bracket.Readings is not { } readings)
        {
            return 0;
        }

        double WithFit(double moved, int flange, FlatPoint at) =>
            !withFit ? moved : moved + Moves(bracket, bracket.Folded.Flanges[0].ToLocal(bracket.Folded.Flanges[flange].ToThrottle(at, 0).Vector).XY).Sum(m => m.Length);
        var most = 0.0;
        for (var flange = 0; flange < bracket.Flat.FlangeCount; flange++)
        {
            foreach (var at in flanges(flange) ? bracket.Flat.FlangeRegion(flange).Outline.Segments.Select(s => new FlatPoint(s.Start)) : [])
            {
                most = Math.Max(most, WithFit(OnFlange(bracket, flange, at), flange, at));
            }
        }

        foreach (var (bend, read) in bracket.Flat.Bends.Zip(readings.Bends))
        {
            foreach (var at in new[] { bend.Start, bend.End })
            {
                // The bend's own strip: its corner line, its radius, and little of its angle.
                var own = Both * read.Line + read.Radius + read.Angle.Radians * (bend.InsideRadius + bracket.Flat.Thickness);
                most = Math.Max(most, WithFit(own + OnFlange(bracket, bend.From, at), bend.From, at));
            }
        }

        return most + readings.Thickness;
    }

    /// <summary>How far a hole of it may be from where it was measured, against the metal round it (mm).</summary>
    /// <param name="bracket">A finished bracket.</param>
    /// <param name="hole">The hole.</param>
    public static double OfHole(Bracket bracket, BracketHole hole)
    {
        if (bracket.Readings is not { } readings)
        {
            return 0;
        }

        var bends = bracket.Flat.Bends.Select((b, i) => b.From == hole.Flange || b.To == hole.Flange ? Both * readings.Bends[i].Line + readings.Bends[i].Radius : 0).DefaultIfEmpty(0).Max();

        // A bend that is farther off than the nearest edge, whatever both are off, is not what is near.
        if (MeasuredShape.FlatRound(bracket.Flat, hole) > hole.MetalRadius + bends)
        {
            bends = 0;
        }

        return hole.Purpose == HolePurpose.Bolt
            ? Both * hole.PlacePlusMinus + Math.Max(Both * readings.Edges[0], bends)
            : Three * (bracket.Measured?.PlusMinus ?? 0) + Math.Max(OnFlange(bracket, hole.Flange, hole.Centre), bends);
    }

    // Of a point of a flange, the mount flange held: its own corners, and every bend on the way to it.
    private static double OnFlange(Bracket bracket, int flange, FlatPoint at)
    {
        var readings = bracket.Readings!;
        var moved = Both * readings.Edges[flange];
        var place = bracket.Folded.Flanges[flange].ToThrottle(at, 0).Vector;
        for (var i = flange - 1; i >= 0; i = bracket.Flat.Bends[i].From - 1)
        {
            var (bend, read) = (bracket.Flat.Bends[i], readings.Bends[i]);
            var (point, axis) = bracket.Folded.AxisOf(bend);
            var arm = place - point.Vector;
            arm -= arm.Dot(axis) * axis;

            // The corner line lies outside the bend's axis by a little more than radius and thickness.
            var lever = arm.Length + Both * (bend.InsideRadius + bracket.Flat.Thickness);

            // A corner line that is turned turns the flange about the normal of the one that it starts from: what stands above the line stays.
            var beside = Beside(bend, point.Vector, axis, place);
            var across = Math.Abs(arm.Dot(bracket.Folded.Flanges[bend.From].ToWorldDirection(Vector3.From(bend.Across)))) + Both * (bend.InsideRadius + bracket.Flat.Thickness);
            moved += Both * read.Line * (1 + 2 * (across + beside) / bend.Start.DistanceTo(bend.End)) + read.Angle.Radians * lever;
        }

        return moved;
    }

    // How far past the ends of the bend, along it.
    private static double Beside(Bend bend, Vector3 point, Vector3 axis, Vector3 place)
    {
        var (length, along) = (bend.Start.DistanceTo(bend.End), Math.Abs((place - point).Dot(axis)));
        return Math.Max(0, along - length);
    }

    /// <summary>The part (0 to 1) by which its narrowest metal may be narrower than measured, and that by which the lever of its seat may be longer.</summary>
    /// <remarks>The lever is that from the nearest bend, on a flat plate from the nearest bolt: any other is longer, and its part smaller.</remarks>
    /// <param name="bracket">A finished bracket.</param>
    public static (double Width, double Lever) OfStrength(Bracket bracket)
    {
        if (bracket.Readings is not { } readings || bracket.Measured is not { } measured)
        {
            return (0, 0);
        }

        var width = 0.0;
        foreach (var hole in bracket.Holes)
        {
            width = Math.Max(width, (OfHole(bracket, hole) + hole.PlusMinus / 2) / Math.Max(Tolerance.SameSize, hole.MetalRadius - hole.Diameter / 2));
        }

        foreach (var (bend, read) in bracket.Flat.Bends.Zip(readings.Bends))
        {
            width = Math.Max(width, 2 * Both * Math.Max(read.Line, readings.Edges.Max()) / bend.Start.DistanceTo(bend.End));
        }

        var seat = bracket.Folded.Flanges[0].ToThrottle(measured.Seat, measured.Height).Vector;
        var arm = bracket.Flat.Bends.IsEmpty
            ? Bolts(bracket).Min(b => b.Centre.DistanceTo(measured.Seat))
            : bracket.Flat.Bends.Min(b => FromAxis(bracket, b, seat));
        var off = OfSeat(bracket);
        return (width, new Vector3(off.X, off.Y, off.Z).Length / Math.Max(Tolerance.SameSize, arm));
    }

    private static double FromAxis(Bracket bracket, Bend bend, Vector3 place)
    {
        var (point, axis) = bracket.Folded.AxisOf(bend);
        return (place - point.Vector).Cross(axis).Length;
    }

    /// <summary>The movements (mm) of a point of the mount flange's plane, one for each coordinate of each bolt hole at its ±.</summary>
    internal static IEnumerable<Vector2> Moves(Bracket bracket, Vector2 at)
    {
        BracketHole[] bolts = [.. Bolts(bracket)];
        var (centroid, moves) = OfFit(bracket);
        return moves.Select(m => bolts[m.Hole].PlacePlusMinus * (m.Shift + m.Turn * (at - centroid).Left));
    }

    private static IEnumerable<BracketHole> Bolts(Bracket bracket) => bracket.MountBolts;
}
