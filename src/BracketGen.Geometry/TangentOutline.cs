namespace BracketGen.Geometry;

/// <summary>The tangent outline of discs: the shortest contour around them all, made of arcs and common tangents.</summary>
public static class TangentOutline
{
    /// <summary>The convex outline, counter-clockwise, of <paramref name="discs"/>.</summary>
    /// <remarks>
    /// A taut line rolled round the discs. Each step takes the common tangent that needs the least turning; the outward
    /// normal's angle δ of the tangent from disc i to disc j solves n·(cj - ci) = ri - rj, the condition that the line
    /// touches both. Time O(k n) for k discs on the outline.
    /// </remarks>
    /// <exception cref="ArgumentException">There is no disc, a radius is negative, or all discs are the same point.</exception>
    public static Contour Around(IReadOnlyList<Disc> discs)
    {
        if (discs.Count == 0 || discs.Any(d => !(d.Radius >= 0)))
        {
            throw new ArgumentException("A tangent outline needs at least one disc, none of negative radius.", nameof(discs));
        }

        discs = WithoutNested(discs);
        var start = FarthestDown(discs);
        var segments = new List<Segment>();
        var current = start;
        double turned = 0;
        for (var step = 0; step <= 4 * discs.Count + 4; step++)
        {
            var (next, turn) = LeastTurn(discs, current, turned - Math.PI / 2);
            var round = turned + turn > 2 * Math.PI - Tolerance.Direction;
            var last = next < 0 || (round && current == start);
            if (round && !last)
            {
                next = start; // If several discs touch the lowest tangent, the walk ends on the disc it began on.
            }

            var arc = last ? 2 * Math.PI - turned : turn;
            if (discs[current].Radius > 0 && arc > Tolerance.Direction)
            {
                segments.Add(new ArcSegment(discs[current].Centre, discs[current].Radius, new(turned - Math.PI / 2), new(arc)));
            }

            if (last)
            {
                return Close(segments);
            }

            turned += turn;
            var normal = Vector2.FromPolar(1, new(turned - Math.PI / 2));
            segments.Add(new LineSegment(
                discs[current].Centre + discs[current].Radius * normal,
                discs[next].Centre + discs[next].Radius * normal));
            current = next;
        }

        throw new ArgumentException("The discs have no tangent outline: all are one point.", nameof(discs));
    }

    /// <summary>The discs that lie in no other one: two of them always have common tangents, and one of them is lowest.</summary>
    private static List<Disc> WithoutNested(IReadOnlyList<Disc> discs)
    {
        var free = new List<Disc>();
        foreach (var disc in discs.OrderByDescending(d => d.Radius))
        {
            if (!free.Any(f => f.Centre.DistanceTo(disc.Centre) <= f.Radius - disc.Radius + Tolerance.Point))
            {
                free.Add(disc);
            }
        }

        return free;
    }

    private static int FarthestDown(IReadOnlyList<Disc> discs)
    {
        // Exact comparison: the walk must begin with the normal straight down, and any other disc would leave a gap there.
        var best = 0;
        for (var i = 1; i < discs.Count; i++)
        {
            double down = discs[i].Centre.Y - discs[i].Radius, bestDown = discs[best].Centre.Y - discs[best].Radius;
            if (down < bestDown || (down == bestDown && discs[i].Centre.X > discs[best].Centre.X))
            {
                best = i;
            }
        }

        return best;
    }

    private static (int Next, double Turn) LeastTurn(IReadOnlyList<Disc> discs, int current, double normal)
    {
        var (best, bestTurn, bestReach) = (-1, double.PositiveInfinity, 0.0);
        for (var j = 0; j < discs.Count; j++)
        {
            if (j == current)
            {
                continue;
            }

            var between = discs[j].Centre - discs[current].Centre;
            var shrink = discs[current].Radius - discs[j].Radius;
            var turn = between.Polar.Radians - Math.Acos(shrink / between.Length) - normal;
            turn -= 2 * Math.PI * Math.Floor(turn / (2 * Math.PI));
            if (turn > 2 * Math.PI - Tolerance.Direction)
            {
                turn = 0; // The tangent just travelled, met again through round-off.
            }

            var reach = Math.Sqrt(between.Dot(between) - shrink * shrink);
            if (turn < bestTurn - Tolerance.Direction || (turn < bestTurn + Tolerance.Direction && reach > bestReach))
            {
                (best, bestTurn, bestReach) = (j, turn, reach);
            }
        }

        return (best, bestTurn);
    }

    private static Contour Close(List<Segment> segments)
    {
        // The outline began in the middle of the lowest disc's arc: join its two halves.
        if (segments.Count > 1
            && segments[0] is ArcSegment first && segments[^1] is ArcSegment last
            && first.Centre == last.Centre && first.Radius == last.Radius)
        {
            segments[0] = new ArcSegment(last.Centre, last.Radius, last.From, last.Sweep + first.Sweep);
            segments.RemoveAt(segments.Count - 1);
        }

        return new Contour(segments);
    }
}
