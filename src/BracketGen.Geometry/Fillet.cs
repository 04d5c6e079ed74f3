namespace BracketGen.Geometry;

/// <summary>Rounds a corner of a contour by an arc tangent to both sides.</summary>
public static class Fillet
{
    /// <summary>
    /// The contour with the corner between segment <paramref name="index"/> and the next one rounded, inside corners and
    /// outside corners alike; null if an arc of <paramref name="radius"/> (mm) does not fit, the same contour if the two
    /// sides already meet smoothly.
    /// </summary>
    /// <remarks>
    /// The centre lies at <paramref name="radius"/> from both sides, on the side to which the contour turns: it is where the
    /// two sides, offset by the radius, meet.
    /// </remarks>
    public static Contour? Round(Contour contour, int index, double radius)
    {
        var segments = contour.Segments;
        var nextIndex = (index + 1) % segments.Length;
        Segment before = segments[index], after = segments[nextIndex];
        var turn = before.EndTangent.Cross(after.StartTangent);
        if (Math.Abs(turn) < Tolerance.Smooth && before.EndTangent.Dot(after.StartTangent) > 0)
        {
            return contour;
        }

        double side = Math.Sign(turn);
        var corner = before.End;
        (Vector2 Centre, double Cut, double Keep)? best = null;
        foreach (var centre in OffsetOf(before, side * radius).Meet(OffsetOf(after, side * radius)))
        {
            double cut = Curve.FractionNearest(before, centre), keep = Curve.FractionNearest(after, centre);
            if (cut is > 0 and <= 1 && keep is >= 0 and < 1
                && (best is null || centre.DistanceTo(corner) < best.Value.Centre.DistanceTo(corner)))
            {
                best = (centre, cut, keep);
            }
        }

        if (best is not { } fit)
        {
            return null;
        }

        Segment shortBefore = before.Part(0, fit.Cut), shortAfter = after.Part(fit.Keep, 1);
        Angle from = (shortBefore.End - fit.Centre).Polar, to = (shortAfter.Start - fit.Centre).Polar;
        var sweep = (to - from).Normalised;
        if (sweep.Radians * side <= 0)
        {
            return null; // The arc would run the long way round: the sides cross before it touches them.
        }

        var rounded = segments.ToList();
        rounded[index] = shortBefore;
        rounded[nextIndex] = shortAfter;
        rounded.Insert(index + 1, new ArcSegment(fit.Centre, radius, from, sweep));
        return new Contour(rounded);
    }

    private static Curve OffsetOf(Segment segment, double left) => segment switch
    {
        ArcSegment arc => new(arc.Centre, default, arc.Radius - Math.Sign(arc.Sweep.Radians) * left),
        _ => new(segment.Start + left * segment.StartTangent.Left, segment.StartTangent, 0),
    };
}
