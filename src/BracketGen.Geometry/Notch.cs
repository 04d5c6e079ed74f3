namespace BracketGen.Geometry;

/// <summary>Cuts an open slot with a round bottom into a contour.</summary>
public static class Notch
{
    /// <summary>
    /// The contour with an open slot from its edge down to a half circle about <paramref name="bottom"/>; null if one of the
    /// slot's sides does not reach the edge, or reaches it through a corner that leaves nothing of a segment.
    /// </summary>
    /// <param name="contour">A counter-clockwise outline that holds <paramref name="bottom"/>.</param>
    /// <param name="bottom">Centre of the round bottom (mm).</param>
    /// <param name="towards">The way out, length one.</param>
    /// <param name="width">Slot width (mm), positive.</param>
    public static Contour? Cut(Contour contour, Vector2 bottom, Vector2 towards, double width)
    {
        var half = width / 2;
        Vector2 right = bottom - half * towards.Left, left = bottom + half * towards.Left;
        if (FirstCrossing(contour, right, towards) is not { } enter || FirstCrossing(contour, left, towards) is not { } leave)
        {
            return null;
        }

        // Travel starts where the slot's left side leaves the metal, goes round the outline, and comes back to its right side.
        var segments = contour.Segments;
        var pieces = new List<Segment>();
        if (enter.Index == leave.Index && enter.Fraction > leave.Fraction)
        {
            pieces.Add(segments[enter.Index].Part(leave.Fraction, enter.Fraction));
        }
        else
        {
            AddPart(pieces, segments[leave.Index], leave.Fraction, 1);
            for (var i = (leave.Index + 1) % segments.Length; i != enter.Index; i = (i + 1) % segments.Length)
            {
                pieces.Add(segments[i]);
            }

            AddPart(pieces, segments[enter.Index], 0, enter.Fraction);
        }

        if (pieces.Count == 0)
        {
            return null;
        }

        pieces.Add(new LineSegment(pieces[^1].End, right));
        pieces.Add(new ArcSegment(bottom, half, (-towards.Left).Polar, -Angle.Straight));
        pieces.Add(new LineSegment(left, pieces[0].Start));
        return new Contour(pieces);
    }

    private static void AddPart(List<Segment> pieces, Segment segment, double from, double to)
    {
        if ((to - from) * segment.Length > Tolerance.Point)
        {
            pieces.Add(segment.Part(from, to));
        }
    }

    private static (int Index, double Fraction)? FirstCrossing(Contour contour, Vector2 from, Vector2 towards)
    {
        (int Index, double Fraction)? first = null;
        var nearest = double.PositiveInfinity;
        for (var i = 0; i < contour.Segments.Length; i++)
        {
            foreach (var (fraction, along) in contour.Segments[i].CrossingsWithLine(from, towards))
            {
                if (along > Tolerance.Point && along < nearest)
                {
                    nearest = along;
                    first = (i, fraction);
                }
            }
        }

        return first;
    }
}
