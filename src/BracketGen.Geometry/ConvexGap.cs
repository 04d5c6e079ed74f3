namespace BracketGen.Geometry;

/// <summary>Whether two convex polygons are apart.</summary>
public static class ConvexGap
{
    /// <summary>
    /// Whether a strip of width <paramref name="gap"/> (mm) square to a side of one of the polygons fits between them. If it does,
    /// they are at least that far apart; polygons that face each other with corners may be farther apart without such a strip.
    /// </summary>
    /// <remarks>The separating axis theorem. The polygons may run either way; a side shorter than <see cref="Tolerance.Point"/> is none.</remarks>
    public static bool IsAtLeast(double gap, ReadOnlySpan<Vector2> one, ReadOnlySpan<Vector2> other) =>
        HasStrip(gap, one, other) || HasStrip(gap, other, one);

    private static bool HasStrip(double gap, ReadOnlySpan<Vector2> sides, ReadOnlySpan<Vector2> others)
    {
        // The sides' polygon may run either way: its own middle shows which side of each edge is outside.
        var middle = Vector2.Zero;
        foreach (var corner in sides)
        {
            middle += corner;
        }

        middle /= sides.Length;
        for (var i = 0; i < sides.Length; i++)
        {
            var along = sides[(i + 1) % sides.Length] - sides[i];
            if (along.Length < Tolerance.Point)
            {
                continue;
            }

            var left = along.Unit.Left;

            // Two points, or all on one line, have their middle on every side: then each side is outside, once on the way there and once back.
            var outwards = (middle - sides[i]).Dot(left) > Tolerance.Point ? -left : left;
            var fits = true;
            for (var j = 0; j < others.Length && fits; j++)
            {
                fits = (others[j] - sides[i]).Dot(outwards) >= gap;
            }

            if (fits)
            {
                return true;
            }
        }

        return false;
    }
}
