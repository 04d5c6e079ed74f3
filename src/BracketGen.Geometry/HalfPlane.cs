namespace BracketGen.Geometry;

/// <summary>Cuts a contour along a straight line.</summary>
public static class HalfPlane
{
    /// <summary>
    /// The part of a counter-clockwise contour to the right of the cut from <paramref name="start"/> to <paramref name="end"/>, two
    /// points on the contour. The line through them may meet the contour elsewhere too; it is cut only between them.
    /// </summary>
    /// <exception cref="ArgumentException">One of the points is not on the contour.</exception>
    public static Contour KeepRight(Contour contour, Vector2 start, Vector2 end)
    {
        // With the metal on its left, the cut itself runs against the direction: the contour comes in at the start.
        var pieces = Between(contour, PlaceOf(contour, start), PlaceOf(contour, end)).ToList();
        pieces.Add(new LineSegment(pieces[^1].End, pieces[0].Start));
        return new(pieces);
    }

    private static double PlaceOf(Contour contour, Vector2 point)
    {
        for (var i = 0; i < contour.Segments.Length; i++)
        {
            var segment = contour.Segments[i];
            if (segment.DistanceTo(point) <= Tolerance.Point)
            {
                return i + (segment is ArcSegment arc
                    ? Math.Min(1, arc.FractionAt((point - arc.Centre).Polar))
                    : Math.Clamp((point - segment.Start).Dot(segment.StartTangent) / segment.Length, 0, 1));
            }
        }

        throw new ArgumentException($"The point {point} is not on the contour.", nameof(point));
    }

    private static IEnumerable<Segment> Between(Contour contour, double from, double to)
    {
        var count = contour.Segments.Length;
        if (to <= from)
        {
            to += count;
        }

        for (var i = (int)Math.Floor(from); i < to; i++)
        {
            var segment = contour.Segments[i % count];
            double start = Math.Max(0, from - i), end = Math.Min(1, to - i);
            if ((end - start) * segment.Length > Tolerance.Point)
            {
                yield return start == 0 && end == 1 ? segment : segment.Part(start, end);
            }
        }
    }
}
