using BracketGen.Strength.Model;

namespace BracketGen.Strength.Meshing;

/// <summary>A point on a fine square grid: with whole coordinates every geometric question has an exact answer.</summary>
/// <remarks>
/// Coordinates stay below 2^29 in size, so the in-circle determinant stays below 2^126. It is computed in floating point first
/// and in whole numbers only where rounding could hide the sign.
/// </remarks>
internal readonly record struct GridPoint(int X, int Y)
{
    /// <summary>Positive where a, b, c run counter-clockwise, zero on one line (exact).</summary>
    public static long Orient(GridPoint a, GridPoint b, GridPoint c) =>
        ((long)b.X - a.X) * ((long)c.Y - a.Y) - ((long)b.Y - a.Y) * ((long)c.X - a.X);

    /// <summary>Positive where d lies inside the circle through a, b, c (counter-clockwise), zero on it (exact sign).</summary>
    public static int InCircle(GridPoint a, GridPoint b, GridPoint c, GridPoint d)
    {
        long ax = (long)a.X - d.X, ay = (long)a.Y - d.Y, bx = (long)b.X - d.X, by = (long)b.Y - d.Y, cx = (long)c.X - d.X, cy = (long)c.Y - d.Y;
        double a2 = (double)ax * ax + (double)ay * ay, b2 = (double)bx * bx + (double)by * by, c2 = (double)cx * cx + (double)cy * cy;
        double bc = (double)bx * cy - (double)by * cx, ca = (double)cx * ay - (double)cy * ax, ab = (double)ax * by - (double)ay * bx;
        var value = a2 * bc + b2 * ca + c2 * ab;
        var bound = StrengthTolerance.InCircle * (
            a2 * (Math.Abs((double)bx * cy) + Math.Abs((double)by * cx))
            + b2 * (Math.Abs((double)cx * ay) + Math.Abs((double)cy * ax))
            + c2 * (Math.Abs((double)ax * by) + Math.Abs((double)ay * bx)));
        if (value > bound)
        {
            return 1;
        }

        if (value < -bound)
        {
            return -1;
        }

        Int128 Square(long x, long y) => (Int128)x * x + (Int128)y * y;
        Int128 Cross(long x1, long y1, long x2, long y2) => (Int128)x1 * y2 - (Int128)y1 * x2;
        return Int128.Sign(
            Square(ax, ay) * Cross(bx, by, cx, cy) + Square(bx, by) * Cross(cx, cy, ax, ay) + Square(cx, cy) * Cross(ax, ay, bx, by));
    }

    /// <summary>Whether this point lies strictly inside the circle on a-b as diameter (exact).</summary>
    public bool InDiametralCircle(GridPoint a, GridPoint b) =>
        ((long)a.X - X) * ((long)b.X - X) + ((long)a.Y - Y) * ((long)b.Y - Y) < 0;
}
