namespace BracketGen.Geometry;

/// <summary>How far two convex solids are apart.</summary>
/// <remarks>
/// E. G. Gilbert, D. W. Johnson, S. S. Keerthi, "A fast procedure for computing the distance between complex objects in
/// three-dimensional space", IEEE J. Robotics and Automation 4 (1988) 193-203: the point nearest to the origin in the difference of
/// both solids, found through simplices of its farthest points. Any plane that has the whole difference on its far side bounds the distance
/// from below; that bound is what is returned, so a gap is never told too large. Where the solids overlap, the shortest of the ways tried
/// that take them apart is the negative gap: a move by that much along it frees them.
/// </remarks>
public static class SolidGap
{
    /// <summary>A gap is settled when it is known to this (mm): a nanometre, which nothing here is measured to.</summary>
    private const double Settled = 1e-6;

    /// <summary>The nearest point of the difference lies at the origin when it is nearer than this (mm): the solids touch.</summary>
    private const double Touching = 1e-8;

    /// <summary>Part of the greatest distance below which corners of a simplex count as one: round-off of their coordinates.</summary>
    private const double OneCorner = 1e-12;

    /// <summary>Steps after which the bound found so far is returned; most gaps settle within twenty.</summary>
    private const int MostSteps = 200;

    /// <summary>Directions in which two overlapping solids are first tried to be taken apart.</summary>
    private const int Directions = 128;

    /// <summary>How many of them are followed to the shortest way near by.</summary>
    private const int Starts = 8;

    /// <summary>Gap between two solids (mm), never above the true one and within a micrometre of it; negative where they overlap.</summary>
    /// <param name="one">One solid.</param>
    /// <param name="other">The other.</param>
    public static double Between(ConvexSolid one, ConvexSolid other)
    {
        var rounding = one.Rounding + other.Rounding;
        return (Distance(one, other) ?? -Overlap(one, other)) - rounding;
    }

    // A lower bound of the distance without their roundings; null where they overlap.
    private static double? Distance(ConvexSolid one, ConvexSolid other)
    {
        Span<Vector3> simplex = stackalloc Vector3[4];
        var count = 0;
        var nearest = one.Inside - other.Inside;
        if (nearest.Length < Touching)
        {
            return null;
        }

        var bound = double.NegativeInfinity;
        for (var step = 0; step < MostSteps; step++)
        {
            var length = nearest.Length;
            var corner = one.Farthest(-nearest) - other.Farthest(nearest);
            bound = Math.Max(bound, corner.Dot(nearest) / length);
            if (length - bound <= Settled || Holds(simplex[..count], corner))
            {
                return bound;
            }

            simplex[count++] = corner;
            (nearest, count) = Nearest(simplex, count);
            if (nearest.Length < Touching)
            {
                return null;
            }

            // Round-off has the last word: no corner brings the simplex nearer any more.
            if (step > 0 && nearest.Length >= length)
            {
                return bound;
            }
        }

        return bound;
    }

    private static bool Holds(ReadOnlySpan<Vector3> simplex, Vector3 corner)
    {
        foreach (var known in simplex)
        {
            if (known.DistanceTo(corner) <= OneCorner * (1 + corner.Length))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The point of a simplex nearest to the origin; the corners it needs are moved to the front, and their count is returned.</summary>
    private static (Vector3 Point, int Count) Nearest(Span<Vector3> simplex, int count)
    {
        // Every face is tried: with four corners there are fifteen, and none can be overlooked through round-off.
        var (best, bestFace) = (Vector3.Zero, 0);
        var least = double.PositiveInfinity;
        for (var face = 1; face < 1 << count; face++)
        {
            if (NearestOfFace(simplex, face) is { } point && point.Dot(point) < least)
            {
                (best, bestFace, least) = (point, face, point.Dot(point));
            }
        }

        var kept = 0;
        for (var i = 0; i < count; i++)
        {
            if ((bestFace >> i & 1) != 0)
            {
                simplex[kept++] = simplex[i];
            }
        }

        return (best, kept);
    }

    // The foot of the perpendicular from the origin on the plane, line or point of a face; null where it lies outside the face, or the face is flat.
    private static Vector3? NearestOfFace(ReadOnlySpan<Vector3> simplex, int face)
    {
        Span<Vector3> corners = stackalloc Vector3[4];
        var count = 0;
        for (var i = 0; i < simplex.Length; i++)
        {
            if ((face >> i & 1) != 0)
            {
                corners[count++] = simplex[i];
            }
        }

        var origin = corners[0];
        switch (count)
        {
            case 1:
                return origin;
            case 2:
                var along = corners[1] - origin;
                var part = -origin.Dot(along) / along.Dot(along);
                return part is > 0 and < 1 ? origin + part * along : null;
            case 3:
                Vector3 first = corners[1] - origin, second = corners[2] - origin;
                var normal = first.Cross(second);
                var area = normal.Dot(normal);
                if (!(area > 0))
                {
                    return null;
                }

                var b = (-origin).Cross(second).Dot(normal) / area;
                var c = first.Cross(-origin).Dot(normal) / area;

                // Along the normal itself, the foot keeps its figures even where the triangle is a sliver.
                return b > 0 && c > 0 && b + c < 1 ? origin.Dot(normal) / area * normal : null;
            default:
                return HoldsOrigin(corners) ? Vector3.Zero : null;
        }
    }

    // Whether the origin lies inside a tetrahedron: on the same side of each face as the corner across from it.
    private static bool HoldsOrigin(ReadOnlySpan<Vector3> corners)
    {
        for (var i = 0; i < 4; i++)
        {
            Vector3 a = corners[(i + 1) % 4], b = corners[(i + 2) % 4], c = corners[(i + 3) % 4];
            var normal = (b - a).Cross(c - a);
            double inside = (corners[i] - a).Dot(normal), origin = (-a).Dot(normal);
            if (!(inside * origin > 0))
            {
                return false;
            }
        }

        return true;
    }

    // How far one must be moved to come free, along the best of many directions and of those near it.
    private static double Overlap(ConvexSolid one, ConvexSolid other)
    {
        double Along(Vector3 way) => Math.Max(0, (one.Farthest(way) - other.Farthest(-way)).Dot(way));
        List<Vector3> ways = [];
        foreach (var sign in (double[])[-1, 1])
        {
            ways.AddRange([new(sign, 0, 0), new(0, sign, 0), new(0, 0, sign)]);
        }

        // Points on a spiral round the ball, spread evenly (the golden angle).
        for (var i = 0; i < Directions; i++)
        {
            var z = 1 - (2 * i + 1.0) / Directions;
            ways.Add(Vector3.From(Vector2.FromPolar(Math.Sqrt(1 - z * z), new(i * Math.PI * (3 - Math.Sqrt(5)))), z));
        }

        // The way out has several shortest ones near by: the best starts are all followed.
        var least = double.PositiveInfinity;
        foreach (var start in ways.OrderBy(Along).Take(Starts))
        {
            least = Math.Min(least, Along(Turned(start, Along)));
        }

        return least;
    }

    // The direction near a given one, length one, that is shortest by a measure: turned four ways by less and less.
    private static Vector3 Turned(Vector3 way, Func<Vector3, double> measure)
    {
        var best = measure(way);
        for (var turn = 0.2; turn > Settled; turn /= 2)
        {
            for (var again = true; again;)
            {
                var before = best;
                var frame = Frame.FromZX(Vector3.Zero, way, Math.Abs(way.X) < 0.8 ? new(1, 0, 0) : new(0, 1, 0));
                foreach (var aside in (Vector3[])[frame.X, frame.Y, -frame.X, -frame.Y])
                {
                    var turned = (frame.Z + turn * aside).Unit;
                    if (measure(turned) is var found && found < best)
                    {
                        (way, best) = (turned, found);
                    }
                }

                again = best < before - Settled;
            }
        }

        return way;
    }
}
