using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;
using BracketGen.SheetMetal.Shops;
using BracketGen.SheetMetal.Standards;

namespace BracketGen.Design.Part;

/// <summary>Makes a bracket of what somebody measured on a folded part.</summary>
/// <remarks>
/// The folded part is what counts: the flat pattern made of it folds back to the same part whatever its bend allowance, which is that of Machinery's Handbook.
/// </remarks>
public static class MeasuredShape
{
    /// <summary>Readings to a tenth of a millimetre: an edge this near to a corner line, or to the side of a slot, lies on it (mm; our judgement, no source).</summary>
    internal const double OnLine = 0.5;

    // Written numbers are rounded: roundings that meet may overlap by this (mm).
    private const double Rounded = 0.01;

    // A flange wider than its bend is taken to end so far before the bend (mm): what stands exactly on the bend's line would belong to neither side.
    private const double Beside = 0.5;

    // Less sheet than this (mm²) is no bracket: the corners lie on a line.
    private const double MinArea = 10;

    /// <summary>Part of the thickness that the stop may lie off a face of its flange where its direction does not say which face it is: any more, and it could be the other.</summary>
    public const double PartOfThickness = 0.4;

    /// <summary>How far the stop may lie off its flange where the direction says which face it is (mm): a degree of the bend over 60 mm, and the reading (our judgement, no source).</summary>
    public const double MostOffFlange = 1.5;

    /// <summary>The bracket, its mount flange in its own coordinates; or why there is none.</summary>
    /// <remarks>Every measured hole is a bolt hole of it, with the thread that its diameter is made for.</remarks>
    /// <param name="measured">What was measured.</param>
    /// <param name="material">The metal.</param>
    public static (Bracket? Bracket, ShapeMistake? Mistake) Of(MeasuredBracket measured, Material material)
    {
        var chain = new Chain(measured);
        if (chain.Outline() is not { } corners)
        {
            return (null, chain.Mistake);
        }

        corners = [.. corners.Where((c, i) => c.At.DistanceTo(corners[(i + 1) % corners.Count].At) > Tolerance.Joint)];
        if (corners.Count < 3 || Area(corners) < MinArea)
        {
            return (null, new(ShapeFault.EdgesCross));
        }

        if (CrossingOf(corners) is { } crossing)
        {
            return (null, new(ShapeFault.EdgesCross, crossing.Flange > 0 ? crossing.Flange - 1 : null));
        }

        if (RoundedOff(corners, out var tooRound) is not { } outline)
        {
            return (null, tooRound);
        }

        var thickness = measured.Thickness.Value;
        var flat = new FlatPattern { Blank = new(outline, []), Thickness = thickness, Bends = [.. chain.Bends] };
        for (var i = 0; i < measured.Holes.Length; i++)
        {
            // Of a slotted hole both ends.
            var (hole, half) = (measured.Holes[i], measured.Holes[i].LongestSlot?.HalfTravel ?? Vector2.Zero);
            if (!((FlatPoint[])[hole.At - half, hole.At + half]).All(at =>
                outline.Contains(at.Vector) && flat.ZoneOf(at) == (0, null) && outline.DistanceTo(at.Vector) >= hole.Diameter / 2))
            {
                return (null, new(ShapeFault.HoleOffMetal, null, i));
            }
        }

        return WithStop(measured, material, flat);
    }

    private static (Bracket? Bracket, ShapeMistake? Mistake) WithStop(MeasuredBracket measured, Material material, FlatPattern flat)
    {
        var (stop, thickness) = (measured.Stop, measured.Thickness.Value);
        var flange = stop.Flange ?? flat.Bends.Length;
        if (flange > flat.Bends.Length)
        {
            return (null, new(ShapeFault.NoSuchFlange));
        }

        var frame = new FoldedSheet(flat, Frame.Identity).Flanges[flange];
        var at = Vector3.From(stop.At.On.Vector, stop.At.Height);
        var local = frame.ToLocal(at);
        var direction = stop.Direction?.Unit;
        var onTop = direction is { } way ? way.Dot(frame.Z) > 0 : local.Z > thickness / 2;
        var off = Math.Abs(local.Z - (onTop ? thickness : 0));
        var most = direction is null ? PartOfThickness * thickness : MostOffFlange;
        if (off > most)
        {
            return (null, new(ShapeFault.StopOffFlange, null, null, off, most));
        }

        var centre = new FlatPoint(local.XY);
        var outline = flat.Blank.Outline;
        var isDrawn = stop.SlotTowards is not null && !outline.Contains(centre.Vector) && Math.Abs(outline.DistanceTo(centre.Vector) - stop.Size.Value / 2) <= OnLine;
        if (!(outline.Contains(centre.Vector) || isDrawn) || flat.ZoneOf(centre) != (flange, null) || (stop.SlotTowards is null && outline.DistanceTo(centre.Vector) < (stop.Outline?.Reach(stop.Size.Value) ?? stop.Size.Value / 2)))
        {
            return (null, new(ShapeFault.HoleOffMetal));
        }

        var bolts = measured.Holes.Select((h, i) => new BracketHole(
            Inputs.MountFace.HoleName(i), HolePurpose.Bolt, 0, h.At, h.Diameter, null, MadeFor(h.Diameter), MetalRound(outline, h.At))
        {
            PlusMinus = h.DiameterPlusMinus,
            PlacePlusMinus = h.PlusMinus,
            Outline = h.LongestSlot,
        }).Select(h => h.IsSlotted ? h with { MetalRadius = h.ToEdge(outline) } : h);
        // The way out of the slot is given on the flange's own axes: u along the bend, v up the flange. On the mount flange they are x and y.
        Vector2 OnFlat(Vector2 own) => (flange == 0 ? own : own.X * flat.Bends[flange - 1].Along + own.Y * flat.Bends[flange - 1].Across).Unit;
        Vector2? towards = stop.SlotTowards is { } open ? OnFlat(open) : null;
        var opening = new BracketHole(
            Inputs.MountFace.HoleName(measured.Holes.Length), HolePurpose.Stop, flange, centre, stop.Size.Value, towards, null, MetalRound(outline, centre, towards, stop.Size.Value / 2))
        {
            PlusMinus = stop.Size.PlusMinus,
            Outline = stop.Outline is { } shape ? shape with { Along = OnFlat(shape.Along) } : null,
        };
        if ((isDrawn ? outline : BracketShape.WithSlot(outline, opening)) is not { } slotted)
        {
            return (null, new(ShapeFault.SlotNotOpen));
        }

        ImmutableArray<BracketHole> holes = [.. bolts, opening];
        return (new()
        {
            Stock = new(material with { Finish = Finish.NotStated }, thickness),
            Die = null,
            Folded = new(flat with { Blank = new(slotted, holes.Where(h => !h.IsSlot).Select(h => h.Cut())) }, Frame.Identity),
            Holes = holes,
            Seat = new(stop.Size.Value, towards is not null, null, 0, 0, 0, thickness),
            SeatOnTop = onTop,
            IsMadeElsewhere = true,
            Measured = new(stop.At.On, stop.At.Height, direction ?? (onTop ? frame.Z : -frame.Z), stop.PlusMinus)
            {
                NormalPlusMinus = stop.DirectionPlusMinus + (direction is null ? OfFlange(measured, flange) : Angle.Zero),
            },
            Readings = ShapeReadings.Of(measured),
        }, null);
    }

    /// <summary>How far the direction of a flange may be off by the ± of the bends that lead to it.</summary>
    /// <param name="measured">What was measured.</param>
    /// <param name="flange">Number of the flange.</param>
    public static Angle OfFlange(MeasuredBracket measured, int flange)
    {
        var off = 0.0;
        for (var i = flange - 1; i >= 0; i = measured.Bends[i].From - 1)
        {
            // Both ends of its line may be off to opposite sides.
            var bend = measured.Bends[i];
            off += bend.IncludedPlusMinus.Radians + 2 * Math.Sqrt(2) * bend.LinePlusMinus / bend.Start.DistanceTo(bend.End);
        }

        return new(off);
    }

    /// <summary>The thread whose bolt a hole of a diameter (mm) is drilled for: the largest that goes through it.</summary>
    public static FastenerThread MadeFor(double diameter) => FastenerThread.All.Where(t => t.ClearanceFine <= diameter + HoleReading).MaxBy(t => t.ClearanceFine) ?? FastenerThread.All[0];

    /// <summary>How far a caliper may read a hole too small (mm; common practice, no source).</summary>
    public const double HoleReading = 0.05;

    /// <summary>Radius (mm) of metal round a point of the flat: to the nearest edge, bent metal counted. A slot's own way out does not count.</summary>
    /// <param name="outline">Outline of the blank.</param>
    /// <param name="at">The point.</param>
    /// <param name="slotTowards">The slot's way out; null for a round hole.</param>
    /// <param name="half">Half the slot's width (mm): the slot's own edge, where the outline has it, does not count.</param>
    public static double MetalRound(Contour outline, FlatPoint at, Vector2? slotTowards = null, double half = 0)
    {
        if (slotTowards is not { } open)
        {
            return outline.DistanceTo(at.Vector);
        }

        // Beside the slot and behind it.
        return Enumerable.Range(0, 37).Select(i => (-open).Rotate(Angle.FromDegrees(5 * (i - 18))))
            .Min(way => outline.Segments.SelectMany(s => s.CrossingsWithLine(at.Vector, way)).Where(c => c.Along > half + OnLine).Select(c => c.Along).DefaultIfEmpty(0).Min());
    }

    /// <summary>How far (mm) a flange is flat round a point: to where its nearest bend begins; infinite without one.</summary>
    /// <param name="flat">The flat pattern.</param>
    /// <param name="flange">Number of the flange.</param>
    /// <param name="at">The point.</param>
    public static double FlatRound(FlatPattern flat, int flange, FlatPoint at) => flat.Bends
        .Where(b => b.From == flange || b.To == flange)
        .Select(b => b.From == flange ? -b.Beyond(at) : b.Depth(at) - b.Allowance)
        .DefaultIfEmpty(double.PositiveInfinity).Min();

    /// <summary>The same round a hole; of a slotted one round both of its ends.</summary>
    /// <param name="flat">The flat pattern.</param>
    /// <param name="hole">The hole.</param>
    public static double FlatRound(FlatPattern flat, BracketHole hole) =>
        Math.Min(FlatRound(flat, hole.Flange, hole.Centre - hole.HalfTravel), FlatRound(flat, hole.Flange, hole.Centre + hole.HalfTravel));

    // Corners in flat coordinates, each with the flange it belongs to.
    private readonly record struct Corner(Vector2 At, double Radius, int Flange, int? Item);

    private sealed class Chain(MeasuredBracket measured)
    {
        private readonly Bend[] _bends = new Bend[measured.Bends.Length];

        public IEnumerable<Bend> Bends => _bends;

        public ShapeMistake? Mistake { get; private set; }

        public List<Corner>? Outline()
        {
            var thickness = measured.Thickness.Value;
            for (var i = 0; i < _bends.Length; i++)
            {
                if (measured.Bends[i].From > i)
                {
                    Mistake = new(ShapeFault.NoSuchFlange, i);
                    return null;
                }
            }

            return Around(0, thickness);
        }

        // From a flange's own coordinates to the flat pattern's.
        private Vector2 ToFlat(int flange, Vector2 own)
        {
            if (flange == 0)
            {
                return own;
            }

            var (bend, given) = (_bends[flange - 1], measured.Bends[flange - 1]);
            return (bend.Start + own.X * bend.Along + (bend.Allowance + own.Y - given.Setback(measured.Thickness.Value)) * bend.Across).Vector;
        }

        private List<Corner>? Around(int flange, double thickness)
        {
            var given = flange == 0 ? measured.MountFlange : measured.Bends[flange - 1].Outline;
            var corners = given.Select((c, i) => new Corner(ToFlat(flange, c.At.Vector), c.Radius, flange, i)).ToList();
            if (Area(corners) < 0)
            {
                corners.Reverse();
            }

            // The edge at v = 0 goes back to where the flange is flat; what hangs on it takes its place.
            if (flange > 0)
            {
                var (bend, setback) = (_bends[flange - 1], measured.Bends[flange - 1].Setback(thickness));
                Vector2 start = (bend.Start + bend.Allowance * bend.Across).Vector, end = (bend.End + bend.Allowance * bend.Across).Vector;
                if (Edge(corners, start - setback * bend.Across, end - setback * bend.Across) is not { } at)
                {
                    Mistake = new(ShapeFault.NoEdgeAtZero, flange - 1);
                    return null;
                }

                corners = [.. corners.Skip(at), .. corners.Take(at)];
                if (!MoveBack(corners, start, bend.Along, bend.Across, flange - 1))
                {
                    return null;
                }

                // First two corners: the edge itself. It is walked from the second on round to the first.
                var (first, second) = (corners[0], corners[1]);
                corners = [.. corners.Skip(2)];
                corners.Insert(0, new(end, 0, flange, null));
                if (second.At.DistanceTo(end) > Rounded)
                {
                    corners.InsertRange(1, [new(end + Beside * bend.Across, 0, flange, null), second with { At = second.At + Beside * bend.Across, Radius = 0 }]);
                }

                if (first.At.DistanceTo(start) > Rounded)
                {
                    corners.AddRange([first with { At = first.At + Beside * bend.Across, Radius = 0 }, new(start + Beside * bend.Across, 0, flange, null)]);
                }

                corners.Add(new(start, 0, flange, null));
            }

            for (var i = 0; i < _bends.Length; i++)
            {
                if (measured.Bends[i].From == flange && !Attach(corners, i, thickness))
                {
                    return null;
                }
            }

            return corners;
        }

        private bool Attach(List<Corner> corners, int number, double thickness)
        {
            var given = measured.Bends[number];
            Vector2 lineStart = ToFlat(given.From, given.Start.Vector), lineEnd = ToFlat(given.From, given.End.Vector);
            var along = (lineEnd - lineStart).Unit;
            var (across, setback) = (along.Left, given.Setback(thickness));
            Vector2 start = lineStart - setback * across, end = lineEnd - setback * across;
            var turn = Math.PI - given.Included.Radians;
            var rule = new MachinerysHandbookRule(BendGroup.SoftSteelOrAluminium);
            _bends[number] = new()
            {
                From = given.From,
                To = number + 1,
                Start = new(start),
                End = new(end),
                Turn = new(given.IsUp ? turn : -turn),
                InsideRadius = given.InsideRadius,
                Allowance = rule.Allowance(new(turn), given.InsideRadius, thickness),
                Rule = rule,
                Relief = given.Relief,
            };
            if (Edge(corners, lineEnd, lineStart) is not { } at)
            {
                Mistake = new(ShapeFault.NoEdgeOnBend, number);
                return false;
            }

            var turned = corners.Skip(at).Concat(corners.Take(at)).ToList();
            if (!MoveBack(turned, end, -along, -across, number))
            {
                return false;
            }

            if (given.Relief <= 0 && turned.Any(c => c.Flange == given.From && (c.At - start).Dot(across) > OnLine))
            {
                Mistake = new(ShapeFault.NoRelief, number);
                return false;
            }

            // Where both flanges run on past the same end, metal that is not bent would join them.
            var (first, second) = (turned[0], turned[1]);
            double[] foot = [.. given.Outline.Where(c => Math.Abs(c.At.Y) <= OnLine).Select(c => c.At.X)];
            if (foot.Length > 0
                && ((foot.Max() > start.DistanceTo(end) + OnLine && (first.At - end).Dot(along) > OnLine) || (foot.Min() < -OnLine && (start - second.At).Dot(along) > OnLine)))
            {
                Mistake = new(ShapeFault.NoRelief, number);
                return false;
            }

            if (Around(number + 1, thickness) is not { } beyond)
            {
                return false;
            }

            // Up to the end of the bend, over it, round the new flange, and back over it.
            List<Corner> whole = [];
            if (first.At.DistanceTo(end) > Rounded)
            {
                whole.AddRange([first with { At = first.At - Beside * across, Radius = 0 }, new(end - Beside * across, 0, given.From, null)]);
            }

            whole.Add(new(end, 0, given.From, null));
            whole.AddRange(beyond);
            whole.Add(new(start, 0, given.From, null));
            if (second.At.DistanceTo(start) > Rounded)
            {
                whole.AddRange([new(start - Beside * across, 0, given.From, null), second with { At = second.At - Beside * across, Radius = 0 }]);
            }

            whole.AddRange(turned.Skip(2));
            corners.Clear();
            corners.AddRange(whole);
            return true;
        }

        // The corner before which an edge runs along the line from one point to another, over all of it.
        private static int? Edge(List<Corner> corners, Vector2 from, Vector2 to)
        {
            var along = (to - from).Unit;
            var length = from.DistanceTo(to);
            for (var i = 0; i < corners.Count; i++)
            {
                Vector2 a = corners[i].At - from, b = corners[(i + 1) % corners.Count].At - from;
                if (Math.Abs(a.Dot(along.Left)) <= OnLine && Math.Abs(b.Dot(along.Left)) <= OnLine && a.Dot(along) <= OnLine && b.Dot(along) >= length - OnLine)
                {
                    return i;
                }
            }

            return null;
        }

        // The first edge, from its corner line back to a line parallel to it; its neighbours are shortened by as much.
        private bool MoveBack(List<Corner> corners, Vector2 on, Vector2 along, Vector2 inwards, int bend)
        {
            Vector2? Cut(Vector2 far, Vector2 near)
            {
                double there = (far - on).Dot(inwards), here = (near - on).Dot(inwards);
                return there <= Tolerance.Joint ? null : near + here / (here - there) * (far - near);
            }

            if (Cut(corners[^1].At, corners[0].At) is { } first && Cut(corners[2].At, corners[1].At) is { } second && (second - first).Dot(along) > 0)
            {
                corners[0] = corners[0] with { At = first };
                corners[1] = corners[1] with { At = second };
                return true;
            }

            var setback = measured.Bends[bend].Setback(measured.Thickness.Value);
            Mistake = new(ShapeFault.FlangeTooShort, bend, null, setback + Math.Min((corners[^1].At - on).Dot(inwards), (corners[2].At - on).Dot(inwards)), setback);
            return false;
        }
    }

    private static double Area(List<Corner> corners) =>
        corners.Select((c, i) => c.At.Cross(corners[(i + 1) % corners.Count].At)).Sum() / 2;

    private static Corner? CrossingOf(List<Corner> corners)
    {
        var count = corners.Count;
        for (var i = 0; i < count; i++)
        {
            Vector2 a = corners[i].At, b = corners[(i + 1) % count].At;
            for (var j = i + 2; j < count; j++)
            {
                if (i == 0 && j == count - 1)
                {
                    continue;
                }

                Vector2 c = corners[j].At, d = corners[(j + 1) % count].At;
                if ((b - a).Cross(c - a) * (b - a).Cross(d - a) < -Tolerance.SameSize && (d - c).Cross(a - c) * (d - c).Cross(b - c) < -Tolerance.SameSize)
                {
                    return corners[j];
                }
            }
        }

        return null;
    }

    private static Contour? RoundedOff(List<Corner> corners, out ShapeMistake? mistake)
    {
        mistake = null;
        var count = corners.Count;
        Vector2 Way(int i) => (corners[(i + 1) % count].At - corners[i].At).Unit;
        double Length(int i) => corners[i].At.DistanceTo(corners[(i + 1) % count].At);
        var turns = Enumerable.Range(0, count).Select(i => Math.Atan2(Way((i + count - 1) % count).Cross(Way(i)), Way((i + count - 1) % count).Dot(Way(i)))).ToArray();
        var tangents = Enumerable.Range(0, count).Select(i => Math.Abs(turns[i]) < Tolerance.Smooth ? 0 : corners[i].Radius * Math.Tan(Math.Abs(turns[i]) / 2)).ToArray();
        var shares = new double[count];
        Array.Fill(shares, 1);
        for (var i = 0; i < count; i++)
        {
            var next = (i + 1) % count;
            var (needed, room) = (tangents[i] + tangents[next], Length(i));
            if (needed > room + Rounded)
            {
                var large = tangents[i] > tangents[next] ? i : next;
                mistake = new(
                    ShapeFault.CornerRadius, corners[large].Flange > 0 ? corners[large].Flange - 1 : null, corners[large].Item, corners[large].Radius,
                    Math.Max(0, (room - (needed - tangents[large])) / Math.Tan(Math.Abs(turns[large]) / 2)));
                return null;
            }

            if (needed > room)
            {
                (shares[i], shares[next]) = (Math.Min(shares[i], room / needed), Math.Min(shares[next], room / needed));
            }
        }

        var segments = new List<Segment>();
        for (var i = 0; i < count; i++)
        {
            var next = (i + 1) % count;
            var (tangent, radius, side) = (shares[i] * tangents[i], shares[i] * corners[i].Radius, Math.Sign(turns[i]));
            Vector2 into = Way((i + count - 1) % count), out_ = Way(i);
            var from = corners[i].At - tangent * into;
            if (tangent > 0)
            {
                var centre = from + side * radius * into.Left;
                segments.Add(new ArcSegment(centre, radius, (from - centre).Polar, new(turns[i])));
            }

            Vector2 lineFrom = corners[i].At + tangent * out_, lineTo = corners[next].At - shares[next] * tangents[next] * out_;
            if (lineFrom.DistanceTo(lineTo) > Tolerance.Point)
            {
                segments.Add(new LineSegment(lineFrom, lineTo));
            }
        }

        return new(segments);
    }
}
