using BracketGen.Geometry;

namespace BracketGen.Strength.Meshing;

/// <summary>Puts points into a constrained Delaunay triangulation until every triangle is small and well shaped.</summary>
/// <remarks>
/// J. Ruppert, "A Delaunay refinement algorithm for quality 2-dimensional mesh generation", Journal of Algorithms 18 (1995) 548-585:
/// a bad triangle's circumcentre is inserted or, if it would come too near to a line, the line's edge is halved. Halving stops at a
/// share of the wanted size, so that sharp corners of the input cannot go on for ever.
/// </remarks>
internal sealed class Refinement(Triangulation mesh, SizeField sizes, Func<GridPoint, Vector2> toPlane)
{
    // Circumradius over the wanted edge length; an equilateral triangle of that edge has 0.577.
    private const double LargestRadius = 0.76;

    // Circumradius over shortest edge: below 1.25 no angle is under 23.6°.
    private const double WorstShape = 1.25;

    // No edge of a line is cut shorter than this share of the wanted length.
    private const double ShortestHalf = 0.2;

    private const int MostPoints = 400_000;

    private readonly Queue<(int T, int A, int B, int C)> _queue = new();

    /// <summary>Refines until nothing is left to do.</summary>
    public void Run()
    {
        mesh.Touched.Clear();
        for (var t = 0; t < mesh.TriangleCount; t++)
        {
            Enqueue(t);
        }

        while (_queue.TryDequeue(out var next) && mesh.PointCount < MostPoints)
        {
            var (t, a, b, c) = next;
            if (mesh.Corner(t, 0) == a && mesh.Corner(t, 1) == b && mesh.Corner(t, 2) == c && IsBad(t, out var centre))
            {
                Treat(t, centre);
                mesh.Touched.Sort();
                var previous = -1;
                foreach (var changed in mesh.Touched)
                {
                    if (changed != previous)
                    {
                        Enqueue(changed);
                    }

                    previous = changed;
                }

                mesh.Touched.Clear();
            }
        }
    }

    private void Treat(int t, GridPoint centre)
    {
        var at = mesh.Locate(centre, t, true, out var blockedBy, out var lost);
        if (lost)
        {
            return;
        }

        if (blockedBy >= 0)
        {
            if (Halve(at, blockedBy))
            {
                _queue.Enqueue((t, mesh.Corner(t, 0), mesh.Corner(t, 1), mesh.Corner(t, 2)));
            }

            return;
        }

        // Lines around the hole that the point would make among the triangles.
        var near = LinesNear(at, centre);
        if (near.Count == 0)
        {
            if (mesh.Inside(at))
            {
                mesh.Insert(centre);
            }

            return;
        }

        var halved = false;
        foreach (var (a, b) in near)
        {
            halved |= mesh.FindEdge(a, b, out var owner, out var edge) && Halve(owner, edge);
        }

        if (halved)
        {
            _queue.Enqueue((t, mesh.Corner(t, 0), mesh.Corner(t, 1), mesh.Corner(t, 2)));
        }
    }

    private List<(int A, int B)> LinesNear(int start, GridPoint p)
    {
        var result = new List<(int, int)>();
        var seen = new HashSet<int> { start };
        var stack = new Stack<int>([start]);
        while (stack.TryPop(out var t))
        {
            for (var i = 0; i < 3; i++)
            {
                int a = mesh.Corner(t, i), b = mesh.Corner(t, (i + 1) % 3), u = mesh.Neighbour(t, i);
                if (mesh.Kind(t, i) != EdgeKind.Free)
                {
                    if (p.InDiametralCircle(mesh.Point(a), mesh.Point(b)))
                    {
                        result.Add((a, b));
                    }
                }
                else if (u >= 0 && !seen.Contains(u)
                    && GridPoint.InCircle(mesh.Point(mesh.Corner(u, 0)), mesh.Point(mesh.Corner(u, 1)), mesh.Point(mesh.Corner(u, 2)), p) > 0)
                {
                    seen.Add(u);
                    stack.Push(u);
                }
            }
        }

        return result;
    }

    private bool Halve(int t, int i)
    {
        GridPoint a = mesh.Point(mesh.Corner(t, i)), b = mesh.Point(mesh.Corner(t, (i + 1) % 3));
        Vector2 pa = toPlane(a), pb = toPlane(b);
        if (pa.DistanceTo(pb) / 2 < ShortestHalf * sizes.At((pa + pb) / 2))
        {
            return false;
        }

        mesh.SplitEdge(t, i, new((int)(((long)a.X + b.X) / 2), (int)(((long)a.Y + b.Y) / 2)));
        return true;
    }

    private void Enqueue(int t)
    {
        if (mesh.Inside(t) && IsBad(t, out _))
        {
            _queue.Enqueue((t, mesh.Corner(t, 0), mesh.Corner(t, 1), mesh.Corner(t, 2)));
        }
    }

    private bool IsBad(int t, out GridPoint centre)
    {
        GridPoint a = mesh.Point(mesh.Corner(t, 0)), b = mesh.Point(mesh.Corner(t, 1)), c = mesh.Point(mesh.Corner(t, 2));
        double bx = (double)b.X - a.X, by = (double)b.Y - a.Y, cx = (double)c.X - a.X, cy = (double)c.Y - a.Y;
        double twice = bx * cy - by * cx, b2 = bx * bx + by * by, c2 = cx * cx + cy * cy;
        double ux = (cy * b2 - by * c2) / (2 * twice), uy = (bx * c2 - cx * b2) / (2 * twice);
        var radius = Math.Sqrt(ux * ux + uy * uy);
        var shortest = Math.Sqrt(Math.Min(Math.Min(b2, c2), (bx - cx) * (bx - cx) + (by - cy) * (by - cy)));
        centre = default;
        if (!(radius < 1 << 28))
        {
            // A sliver on a line: its circumcentre is far away, so its own middle gives the side.
            return false;
        }

        centre = new((int)Math.Round(a.X + ux), (int)Math.Round(a.Y + uy));
        if (radius > WorstShape * shortest)
        {
            return true;
        }

        Vector2 pa = toPlane(a), pb = toPlane(b), pc = toPlane(c);
        var scale = pa.DistanceTo(pb) / Math.Sqrt(b2);
        return sizes.IsMoreThan(LargestRadius, (pa + pb + pc) / 3, radius * scale);
    }
}
