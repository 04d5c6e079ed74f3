using BracketGen.Geometry;

namespace BracketGen.Line.Nesting;

/// <summary>How close a polygon may come to another one that lies to its left, when it comes from far right, level.</summary>
/// <remarks>
/// Exact for polygons: two of them are first too close where a corner of one is too close to an edge of the other. Corners count as discs of the
/// gap, edges as lines set off by it.
/// </remarks>
internal sealed class Slide
{
    private readonly Vector2[] _corners;
    private readonly (double FromY, double ToY, double X, double Slope)[] _right, _left;

    /// <summary>A polygon as one side of a pair.</summary>
    /// <param name="corners">Its corners, counter-clockwise (mm).</param>
    /// <param name="gap">Metal wanted between two (mm).</param>
    public Slide(Vector2[] corners, double gap)
    {
        (_corners, Gap) = (corners, gap);
        List<(double, double, double, double)> right = [], left = [];
        for (var i = 0; i < corners.Length; i++)
        {
            Vector2 a = corners[i], b = corners[(i + 1) % corners.Length];
            if (Math.Abs(b.Y - a.Y) < Tolerance.Point)
            {
                continue; // Level edges meet others with their corners.
            }

            // Counter-clockwise: what goes up has the metal to its left and looks right.
            var out_ = gap * (b - a).Unit.Left;
            var (lower, upper) = b.Y > a.Y ? (a - out_, b - out_) : (b - out_, a - out_);
            var edge = (lower.Y, upper.Y, lower.X, (upper.X - lower.X) / (upper.Y - lower.Y));
            (b.Y > a.Y ? right : left).Add(edge);
        }

        (_right, _left) = ([.. right], [.. left]);
        Bounds = Bounds.Around(corners);
    }

    /// <summary>Metal wanted between two (mm).</summary>
    public double Gap { get; }

    /// <summary>The rectangle round it (mm).</summary>
    public Bounds Bounds { get; }

    /// <summary>The least shift along x (mm) of <paramref name="other"/>, shifted by <paramref name="up"/> along y, from which on it is clear; minus infinity where it passes.</summary>
    public double Least(Slide other, double up)
    {
        var least = double.NegativeInfinity;
        foreach (var corner in _corners)
        {
            var y = corner.Y - up;
            if (y < other.Bounds.Min.Y - Gap || y > other.Bounds.Max.Y + Gap)
            {
                continue;
            }

            foreach (var (from, to, x, slope) in other._left)
            {
                if (y >= from && y <= to)
                {
                    least = Math.Max(least, corner.X - x - slope * (y - from));
                }
            }

            foreach (var theirs in other._corners)
            {
                var apart = y - theirs.Y;
                if (Math.Abs(apart) <= Gap)
                {
                    least = Math.Max(least, corner.X - theirs.X + Math.Sqrt(Gap * Gap - apart * apart));
                }
            }
        }

        foreach (var theirs in other._corners)
        {
            var y = theirs.Y + up;
            if (y < Bounds.Min.Y - Gap || y > Bounds.Max.Y + Gap)
            {
                continue;
            }

            foreach (var (from, to, x, slope) in _right)
            {
                if (y >= from && y <= to)
                {
                    least = Math.Max(least, x + slope * (y - from) - theirs.X);
                }
            }
        }

        return least;
    }

    /// <summary>Its right-hand and left-hand ends at heights a step apart, half the gap outside, the first half a step above the lowest.</summary>
    public (double[] Right, double[] Left) Profile(double step, int count)
    {
        double[] right = [.. Enumerable.Repeat(double.NegativeInfinity, count)], left = [.. Enumerable.Repeat(double.PositiveInfinity, count)];
        var half = new Slide(_corners, Gap / 2);
        for (var k = 0; k < count; k++)
        {
            var y = Bounds.Min.Y - Gap / 2 + (k + 0.5) * step;
            foreach (var (from, to, x, slope) in half._right)
            {
                right[k] = y >= from && y <= to ? Math.Max(right[k], x + slope * (y - from)) : right[k];
            }

            foreach (var (from, to, x, slope) in half._left)
            {
                left[k] = y >= from && y <= to ? Math.Min(left[k], x + slope * (y - from)) : left[k];
            }

            foreach (var corner in _corners.Where(c => Math.Abs(c.Y - y) <= Gap / 2))
            {
                var reach = Math.Sqrt(Gap * Gap / 4 - (corner.Y - y) * (corner.Y - y));
                (right[k], left[k]) = (Math.Max(right[k], corner.X + reach), Math.Min(left[k], corner.X - reach));
            }
        }

        return (right, left);
    }
}
