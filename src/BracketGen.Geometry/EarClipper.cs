namespace BracketGen.Geometry;

/// <summary>Cuts a polygon with holes into triangles, without new corners.</summary>
/// <remarks>
/// Each hole is joined to what lies to the right of it by a seam, then ears are cut (Eberly, "Triangulation by ear clipping").
/// It always ends; on input that crosses itself the triangles may overlap.
/// </remarks>
public static class EarClipper
{
    /// <summary>An ear with no more area (mm²) is none: round-off of coordinates of a metre.</summary>
    private const double NoArea = 1e-12;

    /// <summary>
    /// Triangles, counter-clockwise, as numbers into <paramref name="points"/>. The first loop runs counter-clockwise, the others
    /// are holes and run clockwise.
    /// </summary>
    public static List<(int A, int B, int C)> Triangulate(IReadOnlyList<Vector2> points, IReadOnlyList<IReadOnlyList<int>> loops)
    {
        var ring = loops[0].ToList();
        foreach (var hole in loops.Skip(1).OrderByDescending(h => h.Max(i => points[i].X)))
        {
            ring = Join(points, ring, hole);
        }

        return Clip(points, ring);
    }

    private static List<int> Join(IReadOnlyList<Vector2> points, List<int> ring, IReadOnlyList<int> hole)
    {
        var start = Enumerable.Range(0, hole.Count).MaxBy(i => points[hole[i]].X);
        var from = points[hole[start]];
        var seam = -1;
        var nearest = double.PositiveInfinity;
        for (var i = 0; i < ring.Count; i++)
        {
            Vector2 a = points[ring[i]], b = points[ring[(i + 1) % ring.Count]];
            if ((a.Y <= from.Y) == (b.Y <= from.Y))
            {
                continue;
            }

            var x = a.X + (from.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X);
            if (x >= from.X && x < nearest)
            {
                nearest = x;
                seam = a.X > b.X ? i : (i + 1) % ring.Count;
            }
        }

        if (seam < 0)
        {
            return ring;
        }

        // A corner between the seam and the way to the right would be cut by it: take the one seen under the least angle.
        Vector2 hit = new(nearest, from.Y), end = points[ring[seam]];
        var best = Slope(end);
        for (var i = 0; i < ring.Count; i++)
        {
            var p = points[ring[i]];
            if (p.X > from.X && p != end && InTriangle(p, from, hit, end) && Slope(p) is var slope
                && (slope < best || slope == best && p.X < points[ring[seam]].X))
            {
                (best, seam) = (slope, i);
            }
        }

        // Where seams end already a corner stands in the ring more than once: the new one starts from the copy whose inside it runs in.
        seam = Enumerable.Range(0, ring.Count)
            .Where(i => ring[i] == ring[seam] && IsInside(i))
            .Append(seam)
            .First();

        return
        [
            .. ring.Take(seam + 1), .. Enumerable.Range(0, hole.Count + 1).Select(i => hole[(start + i) % hole.Count]),
            .. ring.Skip(seam),
        ];

        bool IsInside(int i)
        {
            Vector2 p = points[ring[i]], before = points[ring[(i + ring.Count - 1) % ring.Count]], after = points[ring[(i + 1) % ring.Count]];
            double fromBefore = (p - before).Cross(from - p), toAfter = (after - p).Cross(from - p);
            return (p - before).Cross(after - p) >= 0 ? fromBefore >= 0 && toAfter >= 0 : fromBefore >= 0 || toAfter >= 0;
        }

        double Slope(Vector2 p) => Math.Abs(p.Y - from.Y) / Math.Max(NoArea, p.X - from.X);
    }

    private static List<(int A, int B, int C)> Clip(IReadOnlyList<Vector2> points, List<int> ring)
    {
        var triangles = new List<(int A, int B, int C)>(ring.Count);
        var n = ring.Count;
        var next = Enumerable.Range(0, n).Select(i => (i + 1) % n).ToArray();
        var previous = Enumerable.Range(0, n).Select(i => (i + n - 1) % n).ToArray();
        int left = n, at = 0, tried = 0;
        var relaxed = 0;
        while (left > 3)
        {
            int a = previous[at], c = next[at];
            if (IsEar(a, at, c, relaxed))
            {
                triangles.Add((ring[a], ring[at], ring[c]));
                next[a] = c;
                previous[c] = a;
                left--;

                // Going on two corners further keeps the triangles from becoming one long fan.
                at = next[c];
                (tried, relaxed) = (0, 0);
                continue;
            }

            at = c;
            if (++tried > left)
            {
                // No clean ear: rounding, or a ring that crosses itself. First accept flat ones, then any.
                relaxed++;
                tried = 0;
            }
        }

        triangles.Add((ring[previous[at]], ring[at], ring[next[at]]));
        return triangles;

        bool IsEar(int a, int b, int c, int relaxation)
        {
            Vector2 pa = points[ring[a]], pb = points[ring[b]], pc = points[ring[c]];
            var area = (pb - pa).Cross(pc - pb);
            if (relaxation > 1)
            {
                return true;
            }

            if (relaxation == 0 ? area <= NoArea : area < -Tolerance.OnLimit)
            {
                return false;
            }

            for (var k = next[c]; k != a; k = next[k])
            {
                var p = points[ring[k]];
                if (p != pa && p != pb && p != pc && InTriangle(p, pa, pb, pc))
                {
                    return false;
                }
            }

            return true;
        }
    }

    private static bool InTriangle(Vector2 p, Vector2 a, Vector2 b, Vector2 c)
    {
        double d = (b - a).Cross(p - a), e = (c - b).Cross(p - b), f = (a - c).Cross(p - c);
        return d >= 0 && e >= 0 && f >= 0 || d <= 0 && e <= 0 && f <= 0;
    }
}
