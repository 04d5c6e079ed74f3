namespace BracketGen.Geometry;

/// <summary>How far two convex contours stand apart.</summary>
public static class ConvexGap
{
    /// <summary>
    /// The widest strip (mm) that parts two convex contours, of those square to one of their sides; negative where they overlap. Never
    /// more than their distance, by which it is safe as a clearance.
    /// </summary>
    /// <remarks>The separating axis theorem on polygons within <see cref="Tolerance.Chord"/> of the contours.</remarks>
    public static double Between(Contour one, Contour other)
    {
        var (a, b) = (one.Flatten(0.1), other.Flatten(0.1));
        return Math.Max(WidestStrip(a, b), WidestStrip(b, a));
    }

    private static double WidestStrip(IReadOnlyList<Vector2> sides, IReadOnlyList<Vector2> others)
    {
        // The sides' polygon may run either way: its own middle says which side of each edge is out.
        var middle = 1.0 / sides.Count * sides.Aggregate(Vector2.Zero, (sum, p) => sum + p);
        var widest = double.NegativeInfinity;
        for (var i = 0; i < sides.Count; i++)
        {
            var along = sides[(i + 1) % sides.Count] - sides[i];
            if (along.Length < Tolerance.Point)
            {
                continue;
            }

            var out_ = -along.Unit.Left;
            out_ = (middle - sides[i]).Dot(out_) > 0 ? -out_ : out_;
            var nearest = double.PositiveInfinity;
            foreach (var point in others)
            {
                nearest = Math.Min(nearest, (point - sides[i]).Dot(out_));
            }

            widest = Math.Max(widest, nearest);
        }

        return widest;
    }
}
