using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;

namespace BracketGen.SheetMetal.Patterns;

/// <summary>Draws the outline of a blank: round what must have metal on each flange, straight across each bend.</summary>
public static class BlankOutline
{
    /// <summary>
    /// The outline, or null if it cannot be drawn: metal needed on a flange reaches into a bend, or past its ends.
    /// </summary>
    /// <remarks>
    /// Each flange is the tangent outline of its discs and of the ends of its bends. Over a bend, and for
    /// <paramref name="straight"/> on either side, the edges run square to it, so that they become circles and lines in the
    /// bent part and no relief cut is needed. The corners where they meet the flanges are rounded, both ways. A bend with a
    /// <see cref="Bend.Relief"/> makes a flange between wings of the one that stays: from the straight edge on, a cut with a round bottom runs beside it to the edge,
    /// and what lay beyond its end is cut away.
    /// </remarks>
    /// <param name="bends">The bends; bend i makes flange i + 1.</param>
    /// <param name="discs">What must have metal on each flange, flat coordinates (mm).</param>
    /// <param name="straight">Straight edge on either side of a bend (mm), positive.</param>
    /// <param name="cornerRadius">Target radius at the corners (mm); smaller if it does not fit.</param>
    public static Contour? Draw(
        IReadOnlyList<Bend> bends, IReadOnlyList<IReadOnlyList<Disc>> discs, double straight, double cornerRadius)
    {
        if (!KeepApart(bends, discs, straight))
        {
            return null;
        }

        var corners = new HashSet<Vector2>();
        var flanges = new Contour?[discs.Count];
        var chain = Around(0, null, bends, discs, straight, corners, flanges);
        return chain is null || bends.Count > 1 && Overlaps(flanges, bends, straight)
            ? null
            : RoundCorners(new Contour(chain), corners, straight, cornerRadius);
    }

    /// <summary>
    /// Whether what must have metal stays clear of the bends at either end of its flange, and so do the bends of each other: without
    /// it <see cref="Draw"/> gives no outline. Quick.
    /// </summary>
    /// <param name="bends">The bends.</param>
    /// <param name="discs">What must have metal on each flange (mm).</param>
    /// <param name="straight">Straight edge on either side of a bend (mm), positive.</param>
    public static bool KeepApart(IReadOnlyList<Bend> bends, IReadOnlyList<IReadOnlyList<Disc>> discs, double straight)
    {
        for (var i = 0; i < bends.Count; i++)
        {
            // Everything beyond a bend lies behind its whole line: the press brake's tools are that wide, and the side of the
            // line a point lies on shows what it belongs to.
            var bend = bends[i];
            double before = -straight + Tolerance.OnLimit, behind = bend.Allowance + straight - Tolerance.OnLimit;
            for (var flange = 0; flange < discs.Count; flange++)
            {
                var (own, hangs) = (flange == bend.From, HangsOn(bends, flange, bend));
                for (var k = 0; (own || hangs) && k < discs[flange].Count; k++)
                {
                    var disc = discs[flange][k];
                    var depth = bend.Depth(new(disc.Centre));
                    if ((own && depth + disc.Radius > before && !IsBesideNotch(bend, disc)) || (hangs && depth - disc.Radius < behind)
                        || (own && bend.Relief > 0 && ReachesRelief(bend, disc, straight)) || (hangs && bend.Relief > 0 && ReachesWings(bend, disc)))
                    {
                        return false;
                    }
                }
            }

            for (var k = 0; k < bends.Count; k++)
            {
                var next = bends[k];
                if (HangsOn(bends, next.From, bend) && (Reaches(next, next.Start) || Reaches(next, next.End)))
                {
                    return false;
                }

                if (next.From == bend.To && (
                    next.Depth(FarEnd(bend, bend.Start, straight)) > before || next.Depth(FarEnd(bend, bend.End, straight)) > before))
                {
                    return false;
                }
            }

            bool Reaches(Bend next, FlatPoint end) =>
                bend.Depth(NearEnd(next, end, straight)) < behind || bend.Depth(FarEnd(next, end, straight)) < behind;
        }

        return true;
    }

    // In a wing: clear of the notch over its whole depth.
    private static bool IsBesideNotch(Bend bend, Disc disc)
    {
        var along = AlongOf(bend, disc.Centre);
        return bend.Relief > 0
            && (along - disc.Radius >= bend.Length + bend.Relief - Tolerance.OnLimit || along + disc.Radius <= -bend.Relief + Tolerance.OnLimit);
    }

    // Into the round bottom of a cut.
    private static bool ReachesRelief(Bend bend, Disc disc, double straight) =>
        ((FlatPoint[])[bend.Start - bend.Relief / 2 * bend.Along, bend.End + bend.Relief / 2 * bend.Along])
            .Any(e => NearEnd(bend, e, straight).Vector.DistanceTo(disc.Centre) < disc.Radius + bend.Relief / 2 - Tolerance.OnLimit);

    // What hangs on the bend is no wider than it.
    private static bool ReachesWings(Bend bend, Disc disc)
    {
        var along = AlongOf(bend, disc.Centre);
        return along - disc.Radius < -Tolerance.OnLimit || along + disc.Radius > bend.Length + Tolerance.OnLimit;
    }

    private static double AlongOf(Bend bend, Vector2 point) => (point - bend.Start.Vector).Dot(bend.Along);

    /// <summary>Whether a flange hangs on a bend, directly or by others.</summary>
    /// <param name="bends">The bends; bend i makes flange i + 1.</param>
    /// <param name="flange">Number of the flange.</param>
    /// <param name="bend">One of the bends.</param>
    public static bool HangsOn(IReadOnlyList<Bend> bends, int flange, Bend bend)
    {
        while (flange != 0)
        {
            if (flange == bend.To)
            {
                return true;
            }

            // Bend i makes flange i + 1, and attaches it to an earlier one.
            flange = bends[flange - 1].From;
        }

        return false;
    }

    // In the flat, no flange may come nearer than the straight edge to one it is not attached to, or to the bend of another.
    private static bool Overlaps(Contour?[] flanges, IReadOnlyList<Bend> bends, double gap)
    {
        var polygons = Array.ConvertAll(flanges, f => f?.Flatten(FlatteningError));
        for (var i = 0; i < polygons.Length; i++)
        {
            if (polygons[i] is not { } one)
            {
                continue;
            }

            for (var j = i + 1; j < polygons.Length; j++)
            {
                if (polygons[j] is { } other && !bends.Any(b => b.From == i && b.To == j) && !ConvexGap.IsAtLeast(gap, one.AsSpan(), other.AsSpan()))
                {
                    return true;
                }
            }

            foreach (var bend in bends)
            {
                var across = bend.Allowance * bend.Across;
                if (bend.From != i && bend.To != i
                    && !ConvexGap.IsAtLeast(gap, one.AsSpan(), [bend.End.Vector, bend.Start.Vector, (bend.Start + across).Vector, (bend.End + across).Vector]))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>How exactly flanges are distinguished (mm): small compared with the straight edge that must lie between them.</summary>
    private const double FlatteningError = 0.1;

    private static List<Segment>? Around(
        int flange, Bend? hangsOn, IReadOnlyList<Bend> bends, IReadOnlyList<IReadOnlyList<Disc>> discs, double straight,
        HashSet<Vector2> corners, Contour?[] flanges)
    {
        var own = bends.Where(b => b.From == flange).ToList();
        var all = discs[flange].ToList();
        if (hangsOn is not null)
        {
            all.Add(new(FarEnd(hangsOn, hangsOn.Start, straight).Vector, 0));
            all.Add(new(FarEnd(hangsOn, hangsOn.End, straight).Vector, 0));
        }

        foreach (var bend in own)
        {
            all.Add(new(NearEnd(bend, bend.Start, straight).Vector, 0));
            all.Add(new(NearEnd(bend, bend.End, straight).Vector, 0));
        }

        if (all.Count == 0 || all.Count == 1 && all[0].Radius == 0)
        {
            return null;
        }

        var whole = TangentOutline.Around(all);
        flanges[flange] = whole;
        if (own is [{ Relief: > 0 } notched] && hangsOn is null)
        {
            all.AddRange(RoundCuts(notched, discs[flange], whole, straight));
            whole = flanges[flange] = TangentOutline.Around(all);
            return Around(notched.To, notched, bends, discs, straight, corners, flanges) is { } tab ? Notched(whole, notched, tab, straight, corners) : null;
        }

        var outline = whole.Segments.ToList();
        if (hangsOn is not null)
        {
            Vector2 from = FarEnd(hangsOn, hangsOn.Start, straight).Vector, to = FarEnd(hangsOn, hangsOn.End, straight).Vector;
            if (FindEdge(outline, from, to) is not var (first, count))
            {
                return null;
            }

            outline = [.. Enumerable.Range(first + count, outline.Count - count).Select(i => outline[i % outline.Count])];
        }

        foreach (var bend in own)
        {
            Vector2 from = NearEnd(bend, bend.End, straight).Vector, to = NearEnd(bend, bend.Start, straight).Vector;
            if (FindEdge(outline, from, to) is not var (first, count) || (first + count > outline.Count && hangsOn is not null)
                || Around(bend.To, bend, bends, discs, straight, corners, flanges) is not { } beyond)
            {
                return null;
            }

            Vector2 farEnd = FarEnd(bend, bend.End, straight).Vector, farStart = FarEnd(bend, bend.Start, straight).Vector;
            corners.UnionWith([from, to, farEnd, farStart]);
            if (first + count > outline.Count)
            {
                (outline, first) = ([.. outline.Skip(first), .. outline.Take(first)], 0); // It begins on this edge.
            }

            outline.RemoveRange(first, count);
            outline.InsertRange(first, [new LineSegment(from, farEnd), .. beyond, new LineSegment(farStart, to)]);
        }

        return outline;
    }

    // Metal as wide as the straight edge round the bottom of each cut: on the sides that have a wing, or metal beside the bend's end anyway.
    private static IEnumerable<Disc> RoundCuts(Bend bend, IReadOnlyList<Disc> discs, Contour whole, double straight)
    {
        foreach (var (end, side) in new[] { (bend.Start, -1), (bend.End, 1) })
        {
            var corner = NearEnd(bend, end, straight).Vector;
            var hasWing = discs.Any(d => IsBesideNotch(bend, d) && side * (AlongOf(bend, d.Centre) - bend.Length / 2) > 0);
            if (hasWing || whole.Segments.All(s => s.Start.DistanceTo(corner) >= Tolerance.Point))
            {
                yield return new(corner + side * bend.Relief / 2 * bend.Along, bend.Relief / 2 + straight);
            }
        }
    }

    // Round a flange that has the one bent from it between its wings: from where the cut on the left leaves it to where the cut on the right does.
    private static List<Segment>? Notched(Contour whole, Bend bend, List<Segment> tab, double straight, HashSet<Vector2> corners)
    {
        Vector2 right = NearEnd(bend, bend.End, straight).Vector, left = NearEnd(bend, bend.Start, straight).Vector;
        Vector2 farEnd = FarEnd(bend, bend.End, straight).Vector, farStart = FarEnd(bend, bend.Start, straight).Vector;
        if (SideOf(whole, right, bend.Relief * bend.Along, bend.Across, isEnd: true) is not var (enter, into, rightWing)
            || SideOf(whole, left, -bend.Relief * bend.Along, bend.Across, isEnd: false) is not var (leave, out_, leftWing) || !(rightWing || leftWing))
        {
            return null;
        }

        var segments = whole.Segments;
        var outline = new List<Segment>();
        if (enter == leave && into > out_)
        {
            AddPart(outline, segments[enter], out_, into);
        }
        else
        {
            AddPart(outline, segments[leave], out_, 1);
            for (var i = (leave + 1) % segments.Length; i != enter; i = (i + 1) % segments.Length)
            {
                outline.Add(segments[i]);
            }

            AddPart(outline, segments[enter], 0, into);
        }

        if (outline.Count == 0)
        {
            return null;
        }

        Vector2 first = outline[0].Start, last = outline[^1].End;
        corners.UnionWith([first, last, farEnd, farStart]);
        if (rightWing)
        {
            outline.Add(new LineSegment(last, right + bend.Relief * bend.Along));
            outline.Add(new ArcSegment(right + bend.Relief / 2 * bend.Along, bend.Relief / 2, bend.Along.Polar, -Angle.Straight));
        }

        outline.Add(new LineSegment(right, farEnd));
        outline.AddRange(tab);
        outline.Add(new LineSegment(farStart, left));
        if (leftWing)
        {
            outline.Add(new ArcSegment(left - bend.Relief / 2 * bend.Along, bend.Relief / 2, bend.Along.Polar, -Angle.Straight));
            outline.Add(new LineSegment(left - bend.Relief * bend.Along, first));
        }

        return outline;
    }

    // Where the flange that stays ends beside the notch: at the bend's own corner, or where the far side of the cut leaves it. Null where a cut begins off the flange.
    private static (int Index, double Fraction, bool IsWing)? SideOf(Contour whole, Vector2 corner, Vector2 over, Vector2 across, bool isEnd)
    {
        for (var i = 0; i < whole.Segments.Length; i++)
        {
            if ((isEnd ? whole.Segments[i].End : whole.Segments[i].Start).DistanceTo(corner) < Tolerance.Point)
            {
                return (i, isEnd ? 1 : 0, false);
            }
        }

        var from = corner + over;
        if (!whole.Contains(from))
        {
            return null;
        }

        for (var i = 0; i < whole.Segments.Length; i++)
        {
            foreach (var (fraction, along) in whole.Segments[i].CrossingsWithLine(from, across))
            {
                if (along > Tolerance.Point)
                {
                    return (i, fraction, true);
                }
            }
        }

        return null;
    }

    private static void AddPart(List<Segment> outline, Segment segment, double from, double to)
    {
        if ((to - from) * segment.Length > Tolerance.Point)
        {
            outline.Add(segment.Part(from, to));
        }
    }

    private static FlatPoint NearEnd(Bend bend, FlatPoint end, double straight) => end - straight * bend.Across;

    private static FlatPoint FarEnd(Bend bend, FlatPoint end, double straight) => end + (bend.Allowance + straight) * bend.Across;

    // The pieces of a closed outline that run straight from one point to another, counted past its end from its beginning: more than one where a disc touches the edge, and by
    // round-off comes over it. Null where there are none.
    private static (int First, int Count)? FindEdge(List<Segment> outline, Vector2 from, Vector2 to)
    {
        var across = (to - from).Unit.Left;
        bool IsOn(Vector2 point) => Math.Abs((point - from).Dot(across)) < Tolerance.Point;
        for (var first = 0; first < outline.Count; first++)
        {
            if (outline[first].Start.DistanceTo(from) >= Tolerance.Point)
            {
                continue;
            }

            for (var count = 1; count <= outline.Count; count++)
            {
                var piece = outline[(first + count - 1) % outline.Count];
                if (!IsOn(piece.End) || !IsOn(piece.PointAt(0.5)))
                {
                    break;
                }

                if (piece.End.DistanceTo(to) < Tolerance.Point)
                {
                    return (first, count);
                }
            }
        }

        return null;
    }

    private static Contour RoundCorners(Contour contour, HashSet<Vector2> corners, double straight, double radius)
    {
        for (var i = 0; i < contour.Segments.Length; i++)
        {
            var corner = contour.Segments[i].End;
            if (!corners.Any(c => c.DistanceTo(corner) < Tolerance.Point))
            {
                continue;
            }

            // The rounding may use up the straight edge beside the bend, but not reach into the bend itself.
            Segment before = contour.Segments[i], after = contour.Segments[(i + 1) % contour.Segments.Length];
            var turn = (after.StartTangent.Polar - before.EndTangent.Polar).Normalised.Magnitude;
            var tangent = Math.Tan(turn.Radians / 2);
            var room = 0.999 * Math.Min(straight, Math.Min(RoomOn(before, before.Start), RoomOn(after, after.End)));
            if (tangent > Tolerance.Smooth && radius > Tolerance.Point && Fillet.Round(contour, i, Math.Min(radius, room / tangent)) is { } rounded)
            {
                contour = rounded;
            }
        }

        return JoinLines(contour);

        // An edge with another corner at its other end is shared with it.
        double RoomOn(Segment edge, Vector2 otherEnd) => corners.Any(c => c.DistanceTo(otherEnd) < Tolerance.Point) ? edge.Length / 2 : edge.Length;
    }

    private static Contour JoinLines(Contour contour)
    {
        var joined = new List<Segment>();
        foreach (var segment in contour.Segments)
        {
            if (segment is LineSegment && joined.Count > 0 && joined[^1] is LineSegment before
                && Math.Abs(before.EndTangent.Cross(segment.StartTangent)) < Tolerance.Direction)
            {
                joined[^1] = new LineSegment(before.Start, segment.End);
            }
            else
            {
                joined.Add(segment);
            }
        }

        // The walk round may have begun on a straight edge.
        if (joined.Count > 2 && joined[0] is LineSegment first && joined[^1] is LineSegment last
            && Math.Abs(last.EndTangent.Cross(first.StartTangent)) < Tolerance.Direction)
        {
            joined[0] = new LineSegment(last.Start, first.End);
            joined.RemoveAt(joined.Count - 1);
        }

        return new(joined);
    }
}
