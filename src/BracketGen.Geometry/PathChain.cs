using System.Collections.Immutable;

namespace BracketGen.Geometry;

/// <summary>A point of a drawn line with the bulge of the piece that follows it.</summary>
/// <param name="At">The point (mm).</param>
/// <param name="Bulge">Tangent of a quarter of the sweep of the arc to the next point, positive counter-clockwise; 0 for a straight piece.</param>
public readonly record struct BulgedPoint(Vector2 At, double Bulge);

/// <summary>A drawn line of straight pieces and arcs.</summary>
/// <param name="Points">Its points in order; of an open one the last bulge means nothing.</param>
/// <param name="IsClosed">Whether the last point joins the first.</param>
public readonly record struct DrawnPath(ImmutableArray<BulgedPoint> Points, bool IsClosed)
{
    /// <summary>The line from one point to another.</summary>
    public static DrawnPath Line(Vector2 from, Vector2 to) => new([new(from, 0), new(to, 0)], false);

    /// <summary>An arc.</summary>
    /// <param name="centre">Its centre.</param>
    /// <param name="radius">Its radius (mm).</param>
    /// <param name="from">Polar angle of its start.</param>
    /// <param name="sweep">Its sweep, positive counter-clockwise, less than a full turn.</param>
    public static DrawnPath Arc(Vector2 centre, double radius, Angle from, Angle sweep)
    {
        // A bulge grows without bound towards a full turn: two halves.
        var (half, end) = (from + 0.5 * sweep, from + sweep);
        var bulge = Math.Tan(sweep.Radians / 8);
        return new([new(centre + Vector2.FromPolar(radius, from), bulge), new(centre + Vector2.FromPolar(radius, half), bulge), new(centre + Vector2.FromPolar(radius, end), 0)], false);
    }
}

/// <summary>Why drawn lines do not join to closed contours.</summary>
public enum ChainFault
{
    /// <summary>An end that no other end is near.</summary>
    Open,

    /// <summary>More than two ends that meet.</summary>
    Fork,
}

/// <summary>Joins drawn lines end to end.</summary>
public static class PathChain
{
    // Flatter arcs are lines: 1 m of them is less than 1e-4 mm high, and their radius is no number any more.
    private const double FlatBulge = 1e-7;

    /// <summary>The closed contours, each with the number of a path in it; or the path and its end that has no partner, or too many.</summary>
    /// <remarks>Ends within the tolerance become one point; arcs keep their bulge.</remarks>
    /// <param name="paths">The drawn lines, in any order and direction.</param>
    /// <param name="tolerance">How far ends that meet may be apart (mm).</param>
    public static (ImmutableArray<(Contour Contour, int Path)> Closed, (ChainFault Fault, int Path, Vector2 At, double Gap)? Wrong) Join(IReadOnlyList<DrawnPath> paths, double tolerance)
    {
        var closed = ImmutableArray.CreateBuilder<(Contour, int)>();
        var used = new bool[paths.Count];
        for (var first = 0; first < paths.Count; first++)
        {
            if (used[first])
            {
                continue;
            }

            used[first] = true;
            List<BulgedPoint> points = [.. paths[first].Points];
            var last = first;
            while (!paths[first].IsClosed && points[^1].At.DistanceTo(points[0].At) is var left && (points.Count < 3 || left > tolerance))
            {
                var end = points[^1].At;
                var near = Near(paths, used, end, tolerance);
                if (near.Count != 1)
                {
                    return ([], (near.Count == 0 ? ChainFault.Open : ChainFault.Fork, last, end, near.Count == 0 ? Gap(paths, used, points, end) : 0));
                }

                (last, var atEnd) = near[0];
                used[last] = true;
                var next = atEnd ? Reversed(paths[last].Points) : paths[last].Points;
                points[^1] = new(end, next[0].Bulge);
                points.AddRange(next.Skip(1));
            }

            if (!paths[first].IsClosed)
            {
                points.RemoveAt(points.Count - 1);
            }

            if (Closed(points) is { } contour)
            {
                closed.Add((contour, first));
            }
        }

        return (closed.ToImmutable(), null);
    }

    private static List<(int Path, bool AtEnd)> Near(IReadOnlyList<DrawnPath> paths, bool[] used, Vector2 end, double tolerance)
    {
        List<(int, bool)> near = [];
        for (var i = 0; i < paths.Count; i++)
        {
            if (used[i] || paths[i].IsClosed)
            {
                continue;
            }

            if (paths[i].Points[0].At.DistanceTo(end) <= tolerance)
            {
                near.Add((i, false));
            }

            if (paths[i].Points[^1].At.DistanceTo(end) <= tolerance)
            {
                near.Add((i, true));
            }
        }

        return near;
    }

    private static double Gap(IReadOnlyList<DrawnPath> paths, bool[] used, List<BulgedPoint> points, Vector2 end) => paths.Where((p, i) => !used[i] && !p.IsClosed)
        .SelectMany(p => new[] { p.Points[0].At, p.Points[^1].At }).Append(points[0].At).Min(p => p.DistanceTo(end));

    private static ImmutableArray<BulgedPoint> Reversed(ImmutableArray<BulgedPoint> points) =>
        [.. Enumerable.Range(0, points.Length).Select(i => new BulgedPoint(points[^(i + 1)].At, i + 1 < points.Length ? -points[^(i + 2)].Bulge : 0))];

    // Null where nothing is left but points. What is shorter than a joint is left out.
    private static Contour? Closed(List<BulgedPoint> drawn)
    {
        List<BulgedPoint> points = [];
        foreach (var point in drawn)
        {
            if (points.Count > 0 && points[^1].At.DistanceTo(point.At) <= Tolerance.Joint)
            {
                points[^1] = points[^1] with { Bulge = point.Bulge };
            }
            else
            {
                points.Add(point);
            }
        }

        while (points.Count > 1 && points[^1].At.DistanceTo(points[0].At) <= Tolerance.Joint)
        {
            points.RemoveAt(points.Count - 1);
        }

        return points.Count < 2 ? null : new(points.Select((p, i) => Piece(p, points[(i + 1) % points.Count].At)));
    }

    private static Segment Piece(BulgedPoint from, Vector2 to)
    {
        var (start, bulge) = from;
        if (Math.Abs(bulge) < FlatBulge)
        {
            return new LineSegment(start, to);
        }

        var chord = to - start;
        var centre = start + 0.5 * chord + (1 - bulge * bulge) / (4 * bulge) * chord.Left;
        return new ArcSegment(centre, centre.DistanceTo(start), (start - centre).Polar, new(4 * Math.Atan(bulge)));
    }
}
