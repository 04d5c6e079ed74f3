using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Drawing.Dxf;

/// <summary>Where a line of text is marked on a flat part.</summary>
/// <param name="At">Lower left corner of the first letter (mm).</param>
/// <param name="Height">Height of the capitals (mm).</param>
/// <param name="Along">Direction of the line of text.</param>
internal readonly record struct MarkPlace(FlatPoint At, double Height, Angle Along)
{
    /// <summary>Metal (mm) left between the letters and edges, holes and bends.</summary>
    private const double Clear = 1;

    // Two millimetres are the least that is still read on a cut part (common practice, no source).
    private static readonly double[] Heights = [3, 2.5, 2];

    /// <summary>
    /// The first place on one flange, clear of edges, holes and bends: rather large than small, and rather level than along one of
    /// the part's longest edges; null where there is none.
    /// </summary>
    public static MarkPlace? For(string text, FlatPattern flat)
    {
        foreach (var height in Heights)
        {
            foreach (var along in Directions(flat))
            {
                if (Find(StrokeText.Width(text, height), height, along, flat) is { } at)
                {
                    return new(at, height, along);
                }
            }
        }

        return null;
    }

    private static IEnumerable<Angle> Directions(FlatPattern flat) => flat.Blank.Outline.Segments
        .OfType<LineSegment>()
        .OrderByDescending(l => Math.Round(l.Length, 6))
        .Take(4)
        .Select(l => Readable(l.StartTangent))
        .Prepend(Angle.Zero);

    private static Angle Readable(Vector2 way) => (way.X > Tolerance.Direction || (Math.Abs(way.X) <= Tolerance.Direction && way.Y > 0) ? way : -way).Polar;

    private static FlatPoint? Find(double width, double height, Angle along, FlatPattern flat)
    {
        var bounds = flat.Blank.Outline.Rotate(-along).Bounds.Grow(-Clear);
        for (var y = bounds.Min.Y; y + height <= bounds.Max.Y; y += 0.75)
        {
            for (var x = bounds.Min.X; x + width <= bounds.Max.X;)
            {
                var at = new FlatPoint(x, y).Rotate(along);
                if (Obstacle(at, width, height, along, flat) is not { } obstacle)
                {
                    return at;
                }

                x += obstacle;
            }
        }

        return null;
    }

    /// <summary>
    /// How far (mm) the text must at least be moved along itself to be clear of an obstacle: past the rightmost point that is not clear, and
    /// by what metal is lacking there, because a depth changes by no more than one moves. Null where it lies clear.
    /// </summary>
    private static double? Obstacle(FlatPoint at, double width, double height, Angle along, FlatPattern flat)
    {
        const double least = 0.75;
        Vector2 right = Vector2.FromPolar(1, along), up = right.Left;
        var steps = Math.Max(2, (int)Math.Ceiling(width));
        var flange = flat.ZoneOf(at).Flange;
        Span<double> clearDownTo = [double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity];
        for (var i = steps; i >= 0; i--)
        {
            var past = width * i / steps;
            for (var j = 0; j <= 2; j++)
            {
                var point = at + past * right + height * j / 2 * up;
                if (past < clearDownTo[j])
                {
                    var depth = flat.Blank.DepthOf(point.Vector);
                    if (depth < Clear)
                    {
                        return past + Math.Max(least, Clear - depth);
                    }

                    clearDownTo[j] = past - (depth - Clear);
                }

                if (flat.ZoneOf(point) is not { Bend: null } zone || zone.Flange != flange || flat.Bends.Any(b => IsNear(b, point)))
                {
                    return past + least;
                }
            }
        }

        return null;
    }

    private static bool IsNear(Bend bend, FlatPoint point)
    {
        var depth = bend.Depth(point);
        return depth > -Clear && depth < bend.Allowance + Clear && new LineSegment(bend.Start.Vector, bend.End.Vector).DistanceTo(point.Vector) < bend.Allowance + Clear;
    }
}
