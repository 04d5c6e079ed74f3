namespace BracketGen.Geometry;

/// <summary>Splits a polygon into convex polygons, and puts a convex polygon round points.</summary>
public static class ConvexParts
{
    /// <summary>
    /// Convex polygons, counter-clockwise, that fill <paramref name="polygon"/> (counter-clockwise, at least three corners, not crossing
    /// itself) without overlap: at most four times as many as are needed (Hertel and Mehlhorn, 1983).
    /// </summary>
    public static IReadOnlyList<Vector2[]> Of(IReadOnlyList<Vector2> polygon)
    {
        var parts = EarClipper.Triangulate(polygon, [[.. Enumerable.Range(0, polygon.Count)]])
            .Where(t => (polygon[t.B] - polygon[t.A]).Cross(polygon[t.C] - polygon[t.A]) > 0)
            .Select(t => new List<int> { t.A, t.B, t.C }).ToList();
        for (var joined = true; joined;)
        {
            joined = false;
            for (var i = 0; i < parts.Count && !joined; i++)
            {
                for (var j = i + 1; j < parts.Count && !joined; j++)
                {
                    if (Join(polygon, parts[i], parts[j]) is { } whole)
                    {
                        parts[i] = whole;
                        parts.RemoveAt(j);
                        joined = true;
                    }
                }
            }
        }

        return [.. parts.Select(p => p.Select(i => polygon[i]).ToArray())];
    }

    /// <summary>The convex hull of <paramref name="points"/>, counter-clockwise, without corners on its sides (Andrew's monotone chain).</summary>
    public static Vector2[] Hull(IReadOnlyCollection<Vector2> points)
    {
        var sorted = points.Distinct().OrderBy(p => p.X).ThenBy(p => p.Y).ToArray();
        if (sorted.Length < 3)
        {
            return sorted;
        }

        var hull = new List<Vector2>(sorted.Length + 1);
        Chain(sorted);
        hull.RemoveAt(hull.Count - 1);
        Array.Reverse(sorted);
        Chain(sorted);
        hull.RemoveAt(hull.Count - 1);
        return [.. hull];

        void Chain(Vector2[] way)
        {
            var first = hull.Count;
            foreach (var p in way)
            {
                while (hull.Count >= first + 2 && (hull[^1] - hull[^2]).Cross(p - hull[^1]) <= 0)
                {
                    hull.RemoveAt(hull.Count - 1);
                }

                hull.Add(p);
            }
        }
    }

    // The two parts as one, where they have a side in common and stay convex without it.
    private static List<int>? Join(IReadOnlyList<Vector2> points, List<int> one, List<int> other)
    {
        for (var i = 0; i < one.Count; i++)
        {
            int from = one[i], to = one[(i + 1) % one.Count];
            var at = other.IndexOf(to);
            if (at < 0 || other[(at + 1) % other.Count] != from)
            {
                continue;
            }

            List<int> whole = [];
            for (var k = 1; k <= one.Count; k++)
            {
                whole.Add(one[(i + k) % one.Count]);
            }

            for (var k = 2; k < other.Count; k++)
            {
                whole.Add(other[(at + k) % other.Count]);
            }

            return IsConvex(points, whole) ? whole : null;
        }

        return null;
    }

    private static bool IsConvex(IReadOnlyList<Vector2> points, List<int> ring)
    {
        for (var i = 0; i < ring.Count; i++)
        {
            Vector2 a = points[ring[i]], b = points[ring[(i + 1) % ring.Count]], c = points[ring[(i + 2) % ring.Count]];
            if ((b - a).Cross(c - b) < 0)
            {
                return false;
            }
        }

        return true;
    }
}
