using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Line.Nesting;

/// <summary>Finds the lattices in which like pieces take the least sheet.</summary>
/// <remarks>
/// For each turn with its opposite, rows along and across the sheet: the second of a pair at every height beside the first, the next row at
/// every shift along the last one, both in steps of about a hundredth of the piece and judged by profiles. The most promising are worked out
/// exactly and shifted in smaller steps.
/// </remarks>
internal sealed class LatticeSearch
{
    private const double Chord = 0.005;
    private const int Kept = 24, Polished = 4, Fineness = 90;

    private readonly NestPiece _piece;
    private readonly double _length, _width, _gap;

    private LatticeSearch(NestPiece piece, double length, double width, double spacing)
    {
        // A round edge is flattened on its inner side, on both pieces.
        (_piece, _length, _width) = (piece, length, width);
        _gap = spacing + (piece.Outline.Segments.All(s => s is LineSegment) ? 0 : 2 * Chord);
    }

    /// <summary>The best lattices, worked out exactly, the best first; empty where the piece does not fit.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="length">Length of the room inside the border (mm).</param>
    /// <param name="width">Its width (mm).</param>
    /// <param name="spacing">Metal between two pieces (mm).</param>
    public static ImmutableArray<Lattice> Of(NestPiece piece, double length, double width, double spacing) =>
        new LatticeSearch(piece, length, width, spacing).Best();

    /// <summary>Length (mm) that so many pieces take in a lattice, one full room after the other.</summary>
    /// <param name="ends">Ends of the places of a full room, from small to large.</param>
    /// <param name="count">How many pieces.</param>
    /// <param name="length">Length of the room (mm).</param>
    public static double Used(ImmutableArray<LatticePlace> ends, int count, double length)
    {
        if (ends.IsEmpty)
        {
            return double.PositiveInfinity;
        }

        var full = (count - 1) / ends.Length;
        return full * length + ends[count - full * ends.Length - 1].End;
    }

    private sealed record Rows(Angle Turn, Angle? Other, bool Stands, Vector2 Size, Slide First, Slide Second, Slide FirstUp, Slide SecondUp);

    private sealed record Rough(Rows Rows, double Up, double Along, double Score, double Area, bool IsPair);

    private ImmutableArray<Lattice> Best()
    {
        var turns = Turns().ToArray();
        var rough = turns.SelectMany(Candidates).ToArray();
        var chosen = turns.SelectMany(Plain).Concat(rough.OrderBy(r => r.Score).ThenBy(r => r.Area).Take(Kept).Concat(rough.OrderBy(r => r.Area).Take(Kept / 3))).Distinct();
        var exact = chosen.Select(r => (Rough: r, Made: Exact(r.Rows, r.IsPair, r.Up, r.Along))).Where(e => e.Made is not null)
            .Select(e => (e.Rough, Made: e.Made!, Used: Value(e.Made!))).OrderBy(e => e.Used).ThenBy(e => e.Made.AreaOfOne).ToArray();
        return
        [
            .. exact.Take(Polished).Select(e => Polish(e.Rough, e.Made, e.Used)).Concat(exact.Skip(Polished).Select(e => (e.Made, e.Used)))
                .OrderBy(e => e.Used).ThenBy(e => e.Made.AreaOfOne).Select(e => e.Made).Take(Kept / 2),
        ];
    }

    private double Value(Lattice lattice) => Math.Round(LatticeSearch.Used(lattice.Fill(_length, _width), _piece.Count, _length), 3);

    private (Lattice Made, double Used) Polish(Rough rough, Lattice made, double used)
    {
        var (best, up, along) = ((Made: made, Used: used), rough.Up, rough.Along);
        var step = StepOf(rough.Rows.First) / 2;
        for (var round = 0; round < 4; round++, step /= 2)
        {
            foreach (var (dUp, dAlong) in rough.IsPair ? ((double, double)[])[(step, 0), (-step, 0), (0, step), (0, -step)] : [(0, step), (0, -step)])
            {
                if (Exact(rough.Rows, rough.IsPair, up + dUp, along + dAlong) is { } other && Value(other) is var value
                    && (value < best.Used || (value == best.Used && other.AreaOfOne < best.Made.AreaOfOne)))
                {
                    (best, up, along) = ((other, value), up + dUp, along + dAlong);
                }
            }
        }

        return best;
    }

    // Of two opposite turns the first; the other one is its partner.
    private IEnumerable<Rows> Turns()
    {
        var taken = new List<Angle>();
        foreach (var turn in _piece.Turns)
        {
            if (taken.Any(t => Opposite(t, turn)))
            {
                continue;
            }

            taken.Add(turn);
            Angle? other = _piece.Turns.Where(t => Opposite(t, turn)).Select(t => (Angle?)t).FirstOrDefault();
            Vector2[] first = Corners(turn), second = Corners(turn + Angle.Straight);
            var size = _piece.Outline.Rotate(turn).Bounds;
            if (size.Width > _length + Tolerance.SameSize || size.Height > _width + Tolerance.SameSize)
            {
                continue;
            }

            foreach (var stands in (bool[])[false, true])
            {
                var (one, two) = stands ? (Swapped(first), Swapped(second)) : (first, second);
                yield return new(turn, other, stands, stands ? new(size.Height, size.Width) : new(size.Width, size.Height), new(one, _gap), new(two, _gap), new(Swapped(one), _gap), new(Swapped(two), _gap));
            }
        }
    }

    private static bool Opposite(Angle a, Angle b) => (a - b + Angle.Straight).Normalised.Magnitude.Radians < Tolerance.Smooth;

    private Vector2[] Corners(Angle turn)
    {
        var outline = _piece.Outline.Rotate(turn);
        return [.. outline.Flatten(Chord).Select(p => p - outline.Bounds.Min)];
    }

    private static Vector2[] Swapped(Vector2[] polygon) => [.. polygon.Reverse().Select(p => new Vector2(p.Y, p.X))];

    private static double StepOf(Slide slide) => Math.Max(slide.Bounds.Width, slide.Bounds.Height) / Fineness;

    private IEnumerable<Rough> Candidates(Rows rows)
    {
        var step = StepOf(rows.First);
        var gap = rows.First.Gap;
        int high = (int)Math.Ceiling((rows.First.Bounds.Height + gap) / step), wide = (int)Math.Ceiling((rows.First.Bounds.Width + gap) / step);
        var (right, left) = rows.First.Profile(step, high);
        var (otherRight, otherLeft) = rows.Second.Profile(step, high);
        var (top, bottom) = rows.FirstUp.Profile(step, wide);
        var (otherTop, otherBottom) = rows.SecondUp.Profile(step, wide);
        var alone = Apart(right, left, 0);
        foreach (var rough in Shifts(rows, false, 0, alone, step, [top], [bottom], [0]))
        {
            yield return rough;
        }

        if (rows.Other is null)
        {
            yield break;
        }

        for (var up = -high + 1; up < high; up++)
        {
            var second = Apart(right, otherLeft, up);
            var pitch = Math.Max(second + Apart(otherRight, left, -up), alone);
            if (!double.IsFinite(pitch) || second < 0)
            {
                continue;
            }

            var height = up * step;
            foreach (var rough in Shifts(
                rows, true, height, pitch, step, [top, [.. otherTop.Select(t => t + height)]], [bottom, [.. otherBottom.Select(b => b + height)]],
                [0, (int)Math.Round(second / step)]))
            {
                yield return rough;
            }
        }
    }

    // Whatever looks most promising: no worse than rows that lie straight above one another, or shifted by half a pitch.
    private static IEnumerable<Rough> Plain(Rows rows)
    {
        foreach (var isPair in rows.Other is null ? (bool[])[false] : [false, true])
        {
            if (Exact(rows, isPair, 0, 0) is { } straight)
            {
                yield return new(rows, 0, 0, 0, straight.AreaOfOne, isPair);
                yield return new(rows, 0, straight.Pitch / 2, 0, straight.AreaOfOne, isPair);
            }
        }
    }

    private static double Apart(double[] right, double[] left, int up)
    {
        var apart = double.NegativeInfinity;
        for (var k = Math.Max(0, up); k < Math.Min(right.Length, left.Length + up); k++)
        {
            apart = Math.Max(apart, right[k] - left[k - up]);
        }

        return apart;
    }

    // The best shift of the next row, by the profiles of a whole row, and the plain ones.
    private IEnumerable<Rough> Shifts(Rows rows, bool isPair, double up, double pitch, double step, double[][] tops, double[][] bottoms, int[] at)
    {
        if (!(pitch > 0))
        {
            yield break;
        }

        var period = Math.Max(1, (int)Math.Round(pitch / step));
        double[] top = [.. Enumerable.Repeat(double.NegativeInfinity, period)], bottom = [.. Enumerable.Repeat(double.PositiveInfinity, period)];
        for (var piece = 0; piece < at.Length; piece++)
        {
            for (var i = 0; i < tops[piece].Length; i++)
            {
                var place = (i + at[piece]) % period;
                (top[place], bottom[place]) = (Math.Max(top[place], tops[piece][i]), Math.Min(bottom[place], bottoms[piece][i]));
            }
        }

        List<Rough> found = [];
        for (var shift = 0; shift < period; shift++)
        {
            var rise = double.NegativeInfinity;
            for (var i = 0; i < period; i++)
            {
                rise = Math.Max(rise, top[i] - bottom[i >= shift ? i - shift : i - shift + period]);
            }

            if (rise > 0 && double.IsFinite(rise))
            {
                found.Add(new(rows, up, shift * pitch / period, Guess(rows, isPair, up, pitch, rise), pitch * rise / (isPair ? 2 : 1), isPair));
            }
        }

        foreach (var rough in found.OrderBy(r => r.Score).ThenBy(r => r.Area).Take(isPair ? 2 : 4))
        {
            yield return rough;
        }
    }

    // Length that the pieces would take, about.
    private double Guess(Rows rows, bool isPair, double up, double pitch, double rise)
    {
        var (along, across) = rows.Stands ? (_width, _length) : (_length, _width);
        var size = rows.First.Bounds;
        var inRow = (isPair ? 2 : 1) * Math.Max(0, (along - size.Width) / pitch) + 1;
        var count = Math.Floor((across - size.Height - Math.Abs(up)) / rise + 1.02);
        var full = Math.Max(1, Math.Floor(inRow + 0.02) * Math.Max(1, count));
        var sheets = Math.Floor((_piece.Count - 1) / full);
        var left = _piece.Count - sheets * full;
        var last = rows.Stands
            ? size.Height + Math.Abs(up) + (Math.Ceiling(left / Math.Floor(inRow + 0.02)) - 1) * rise
            : size.Width + Math.Max(0, left / Math.Max(1, count) - 1) * pitch / (isPair ? 2 : 1);
        return sheets * _length + last;
    }

    private static Lattice? Exact(Rows rows, bool isPair, double up, double along)
    {
        var (pitch, second) = (rows.First.Least(rows.First, 0), Vector2.Zero);
        if (isPair)
        {
            second = new(rows.First.Least(rows.Second, up), up);
            pitch = Math.Max(pitch, second.X + rows.Second.Least(rows.First, -up));
        }

        if (!double.IsFinite(pitch) || !(pitch > 0) || !double.IsFinite(second.X) || second.X < 0)
        {
            return null;
        }

        (Slide Up, Vector2 At)[] row = isPair ? [(rows.FirstUp, Vector2.Zero), (rows.SecondUp, second)] : [(rows.FirstUp, Vector2.Zero)];
        var size = rows.First.Bounds;
        double rise = 0, height = size.Height + Math.Abs(second.Y) + rows.First.Gap;
        for (var n = 1; n == 1 || (n < 6 && n * rise < height); n++)
        {
            foreach (var (below, from) in row)
            {
                foreach (var (above, to) in row)
                {
                    var reach = size.Width + rows.First.Gap;
                    var apart = to.X - from.X + n * along;
                    for (var k = Math.Ceiling((-reach - apart) / pitch); apart + k * pitch <= reach; k++)
                    {
                        rise = Math.Max(rise, (below.Least(above, apart + k * pitch) + from.Y - to.Y) / n);
                    }
                }
            }
        }

        return rise > Tolerance.Joint && 6 * rise >= height
            ? new()
            {
                Turn = rows.Turn,
                OtherTurn = isPair ? rows.Other : null,
                Stands = rows.Stands,
                Size = rows.Size,
                Pitch = pitch,
                Second = second,
                Step = new(along, rise),
            }
            : null;
    }
}
