namespace BracketGen.Geometry;

/// <summary>Cuts a contour along a straight line.</summary>
public static class HalfPlane
{
    /// <summary>
    /// The part of a counter-clockwise contour to the right of the line through <paramref name="point"/> along
    /// <paramref name="direction"/> (length one); the contour itself where the line misses it.
    /// </summary>
    /// <exception cref="ArgumentException">The line crosses the contour more than twice: the part would be in pieces.</exception>
    public static Contour KeepRight(Contour contour, Vector2 point, Vector2 direction)
    {
        var crossings = new List<(double At, double Along)>();
        for (var i = 0; i < contour.Segments.Length; i++)
        {
            crossings.AddRange(contour.Segments[i].CrossingsWithLine(point, direction).Select(c => (i + c.Fraction, c.Along)));
        }

        crossings.Sort((a, b) => a.At.CompareTo(b.At));
        if (crossings.Count == 0)
        {
            return contour;
        }

        if (crossings.Count != 2)
        {
            throw new ArgumentException($"The line meets the contour {crossings.Count} times, where two are expected.", nameof(contour));
        }

        // With the metal on its left, the cut itself runs against the direction: the contour comes in at the near crossing.
        var (enter, leave) = crossings[0].Along < crossings[1].Along ? (crossings[0], crossings[1]) : (crossings[1], crossings[0]);
        var pieces = Between(contour, enter.At, leave.At).ToList();
        pieces.Add(new LineSegment(pieces[^1].End, pieces[0].Start));
        return new(pieces);
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
