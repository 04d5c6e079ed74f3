using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Design.Checks;

/// <summary>The outer on its line, as straight pieces of tube.</summary>
internal static class OuterTube
{
    /// <summary>The pieces between two distances from the seat.</summary>
    /// <remarks>
    /// The line is smooth between its points: with chords of length c that turn by φ where they meet, an arc lies c φ/8 beside its chord.
    /// Each piece is thicker by twice that, so that a line that bends unevenly is held as well.
    /// </remarks>
    /// <param name="line">Points along the outer's centre line, from the seat on (mm).</param>
    /// <param name="radius">Radius of the outer (mm).</param>
    /// <param name="from">Distance along the line at which it begins to count (mm).</param>
    /// <param name="to">Distance along the line at which it ends to count (mm).</param>
    public static ImmutableArray<Rod> Of(IReadOnlyList<ThrottlePoint> line, double radius, double from, double to)
    {
        var pieces = ImmutableArray.CreateBuilder<Rod>();
        double begin = 0;
        for (var i = 0; i + 1 < line.Count; i++)
        {
            var (a, b) = (line[i], line[i + 1]);
            var chord = b - a;
            var length = chord.Length;
            var end = begin + length;
            if (length > Tolerance.Point && end > from && begin < to)
            {
                var turn = Math.Max(i > 0 ? TurnAt(line, i) : 0, i + 2 < line.Count ? TurnAt(line, i + 1) : 0);
                double first = Math.Max(0, (from - begin) / length), last = Math.Min(1, (to - begin) / length);
                pieces.Add(new(a + first * chord, a + last * chord, radius + length * turn / 4));
            }

            begin = end;
        }

        return pieces.ToImmutable();
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

    private static double TurnAt(IReadOnlyList<ThrottlePoint> line, int i)
    {
        Vector3 before = line[i] - line[i - 1], after = line[i + 1] - line[i];
        return before.Length > Tolerance.Point && after.Length > Tolerance.Point ? before.AngleTo(after).Radians : 0;
    }
}
