using BracketGen.Geometry;

namespace BracketGen.Strength.Meshing;

/// <summary>Everything that mesh edges must follow, cut at every meeting and divided into edges of the wanted length.</summary>
internal sealed class LineWork
{
    // Closer than this (mm) is the same point: well above the grid, well below what a cut can show.
    private const double Same = 1e-4;

    // Neighbours of a contour that join smoothly may meet again this near to the joint, by rounding.
    private const double Joint = 0.02;

    // A followed line nearer to a contour than this share of the edge length would only make slivers; it is left out there.
    private const double TooNear = 0.2;

    private readonly Dictionary<(long, long), int> _found = [];

    private LineWork()
    {
    }

    /// <summary>Points, on their lines.</summary>
    public List<Vector2> Points { get; } = [];

    /// <summary>Edges by point numbers.</summary>
    public List<(int A, int B, EdgeKind Kind)> Edges { get; } = [];

    public static LineWork For(MeshRequest request, SizeField sizes)
    {
        List<(Segment Line, EdgeKind Kind)> lines = [
            .. request.Region.Contours.SelectMany(c => c.Segments).Select(s => (s, EdgeKind.Border)),
            .. request.Lines.Select(l => (l.Line, EdgeKind.Line))];
        var cuts = lines.Select(_ => new List<double> { 0, 1 }).ToArray();
        var bounds = lines.Select(l => l.Line.Bounds).ToArray();
        for (var i = 0; i < lines.Count; i++)
        {
            for (var j = i + 1; j < lines.Count; j++)
            {
                if (Apart(bounds[i], bounds[j]))
                {
                    continue;
                }

                foreach (var point in Meetings(lines[i].Line, lines[j].Line))
                {
                    if (lines[i].Kind == EdgeKind.Border && lines[j].Kind == EdgeKind.Border)
                    {
                        if (FromEnds(lines[i].Line, point) > Joint || FromEnds(lines[j].Line, point) > Joint)
                        {
                            throw new MeshException(FormattableString.Invariant(
                                $"The flat pattern's contours cut each other near ({point.X:0.###}, {point.Y:0.###}) mm."));
                        }

                        continue;
                    }

                    CutAt(lines[i].Line, point, cuts[i]);
                    CutAt(lines[j].Line, point, cuts[j]);
                }
            }
        }

        var work = new LineWork();
        for (var i = 0; i < lines.Count; i++)
        {
            var (line, kind) = lines[i];
            cuts[i].Sort();
            var from = 0.0;
            foreach (var to in cuts[i])
            {
                if ((to - from) * line.Length > Same)
                {
                    work.Divide(line.Part(from, to), kind, request, sizes);
                    from = to;
                }
            }
        }

        return work;
    }

    private void Divide(Segment part, EdgeKind kind, MeshRequest request, SizeField sizes)
    {
        var region = request.Region;
        // The wanted number of edges is the integral of 1/size; points are set at equal shares of it.
        var samples = Math.Clamp((int)Math.Ceiling(part.Length / sizes.At(part.PointAt(0.5))) * 8, 16, 4096);
        var share = new double[samples + 1];
        for (var s = 0; s < samples; s++)
        {
            share[s + 1] = share[s] + part.Length / samples / sizes.At(part.PointAt((s + 0.5) / samples));
        }

        var count = Math.Max(1, (int)Math.Round(share[samples] + 0.2));
        if (part is ArcSegment arc)
        {
            count = Math.Max(count, (int)Math.Ceiling(Math.Abs(arc.Sweep.Radians) / request.AnglePerEdge - Tolerance.OnLimit));
        }

        var previous = part.Start;
        for (int k = 1, s = 0; k <= count; k++)
        {
            var target = share[samples] * k / count;
            while (s < samples - 1 && share[s + 1] < target)
            {
                s++;
            }

            var next = k == count ? part.End : part.PointAt((s + (target - share[s]) / (share[s + 1] - share[s])) / samples);
            var middle = (previous + next) / 2;
            if (kind == EdgeKind.Border
                || (region.Contains(middle)
                    && region.Contours.Min(c => c.DistanceTo(middle)) > TooNear * previous.DistanceTo(next)))
            {
                int a = NumberOf(previous), b = NumberOf(next);
                if (a != b)
                {
                    Edges.Add((a, b, kind));
                }
            }

            previous = next;
        }
    }

    private int NumberOf(Vector2 point)
    {
        // Cells of the tolerance's size: a match lies in the same or a neighbouring one.
        long cx = (long)Math.Floor(point.X / Same), cy = (long)Math.Floor(point.Y / Same);
        for (var dx = -1; dx <= 1; dx++)
        {
            for (var dy = -1; dy <= 1; dy++)
            {
                if (_found.TryGetValue((cx + dx, cy + dy), out var known) && Points[known].DistanceTo(point) <= Same)
                {
                    return known;
                }
            }
        }

        Points.Add(point);
        _found[(cx, cy)] = Points.Count - 1;
        return Points.Count - 1;
    }

    private static double FromEnds(Segment line, Vector2 point) => Math.Min(point.DistanceTo(line.Start), point.DistanceTo(line.End));

    private static bool Apart(Bounds a, Bounds b) =>
        a.Min.X > b.Max.X + Same || b.Min.X > a.Max.X + Same || a.Min.Y > b.Max.Y + Same || b.Min.Y > a.Max.Y + Same;

    private static void CutAt(Segment line, Vector2 point, List<double> cuts)
    {
        var fraction = line switch
        {
            ArcSegment arc => arc.FractionAt((point - arc.Centre).Polar),
            _ => (point - line.Start).Dot(line.End - line.Start) / (line.Length * line.Length),
        };
        if (fraction > 0 && fraction < 1 && fraction * line.Length > Same && (1 - fraction) * line.Length > Same)
        {
            cuts.Add(fraction);
        }
    }

    private static IEnumerable<Vector2> Meetings(Segment a, Segment b)
    {
        foreach (var end in (Vector2[])[a.Start, a.End])
        {
            if (b.DistanceTo(end) <= Same)
            {
                yield return end;
            }
        }

        foreach (var end in (Vector2[])[b.Start, b.End])
        {
            if (a.DistanceTo(end) <= Same)
            {
                yield return end;
            }
        }

        if (a is LineSegment line)
        {
            foreach (var point in WithLine(line, b))
            {
                yield return point;
            }
        }
        else if (b is LineSegment other)
        {
            foreach (var point in WithLine(other, a))
            {
                yield return point;
            }
        }
        else
        {
            foreach (var point in OfArcs((ArcSegment)a, (ArcSegment)b))
            {
                yield return point;
            }
        }
    }

    private static IEnumerable<Vector2> WithLine(LineSegment line, Segment other)
    {
        var direction = line.StartTangent;
        foreach (var (_, along) in other.CrossingsWithLine(line.Start, direction))
        {
            if (along >= 0 && along <= line.Length)
            {
                yield return line.Start + along * direction;
            }
        }
    }

    private static IEnumerable<Vector2> OfArcs(ArcSegment a, ArcSegment b)
    {
        var between = b.Centre - a.Centre;
        var distance = between.Length;
        if (distance <= Same)
        {
            yield break;
        }

        var along = (a.Radius * a.Radius - b.Radius * b.Radius + distance * distance) / (2 * distance);
        var half = a.Radius * a.Radius - along * along;
        if (half < 0)
        {
            yield break;
        }

        var (direction, off) = (between / distance, Math.Sqrt(half));
        foreach (var side in (double[])[off, -off])
        {
            var point = a.Centre + along * direction + side * direction.Left;
            if (a.DistanceTo(point) <= Same && b.DistanceTo(point) <= Same)
            {
                yield return point;
            }
        }
    }
}
