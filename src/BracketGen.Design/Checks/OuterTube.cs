using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Design.Checks;

/// <summary>The outer on its line, as straight pieces of tube.</summary>
internal static class OuterTube
{
    /// <summary>How much thicker than the outer a piece may become by standing for several (mm): a sixteenth of the usual clearance.</summary>
    private const double MostBulge = 0.3;

    /// <summary>The pieces between two distances from the seat.</summary>
    /// <remarks>
    /// The line is smooth between its points, and its tangent at a point lies between the chords that meet there: it leans from either by no more than
    /// their turn φ. So between the ends of a chord of length c it lies within the triangle of both tangents, c φ/2 high at most, and each piece is thicker by that.
    /// At the line's two ends the tangent is known.
    /// </remarks>
    /// <param name="points">Points along the outer's centre line, from the seat on (mm).</param>
    /// <param name="leaving">Direction of the line at its beginning, length one.</param>
    /// <param name="arriving">Direction of the line at its end, length one.</param>
    /// <param name="radius">Radius of the outer (mm).</param>
    /// <param name="from">Distance along the line at which it begins to count (mm).</param>
    /// <param name="to">Distance along the line at which it ends to count (mm).</param>
    public static ImmutableArray<Rod> Of(
        IReadOnlyList<ThrottlePoint> points, Vector3 leaving, Vector3 arriving, double radius, double from, double to)
    {
        // A point that stands twice, as where the line is clipped, has no chord.
        ThrottlePoint[] line = [.. points.Where((p, i) => i == 0 || p.DistanceTo(points[i - 1]) > Tolerance.Point)];
        var pieces = ImmutableArray.CreateBuilder<Rod>();
        double begin = 0;
        for (var i = 0; i + 1 < line.Length; i++)
        {
            var (a, b) = (line[i], line[i + 1]);
            var chord = b - a;
            var length = chord.Length;
            var end = begin + length;
            if (end > from && begin < to)
            {
                var (before, after) = (i > 0 ? a - line[i - 1] : leaving, i + 2 < line.Length ? line[i + 2] - b : arriving);
                var turn = Math.Max(before.AngleTo(chord).Radians, chord.AngleTo(after).Radians);
                double first = Math.Max(0, (from - begin) / length), last = Math.Min(1, (to - begin) / length);
                pieces.Add(new(a + first * chord, a + last * chord, radius + length * turn / 2));
            }

            begin = end;
        }

        return Merged(pieces, radius + MostBulge);
    }

    // One piece for several that lie nearly in line. A piece is as far from a straight line as the farther of its ends: distance is convex.
    private static ImmutableArray<Rod> Merged(IReadOnlyList<Rod> pieces, double most)
    {
        var merged = ImmutableArray.CreateBuilder<Rod>();
        for (var first = 0; first < pieces.Count;)
        {
            var (best, next) = (pieces[first], first + 1);
            for (var last = next; last < pieces.Count; last++)
            {
                ThrottlePoint from = pieces[first].From, to = pieces[last].To;
                double radius = 0;
                for (var i = first; i <= last; i++)
                {
                    var off = Math.Max(MovingParts.SegmentDistance(pieces[i].From, from, to), MovingParts.SegmentDistance(pieces[i].To, from, to));
                    radius = Math.Max(radius, pieces[i].Radius + off);
                }

                if (radius > most)
                {
                    break;
                }

                (best, next) = (new(from, to, radius), last + 1);
            }

            merged.Add(best);
            first = next;
        }

        return merged.ToImmutable();
    }

    /// <summary>Length of the line (mm).</summary>
    public static double LengthOf(IReadOnlyList<ThrottlePoint> line)
    {
        double length = 0;
        for (var i = 0; i + 1 < line.Count; i++)
        {
            length += line[i].DistanceTo(line[i + 1]);
        }

        return length;
    }
}
