using BracketGen.Geometry;
using MathNet.Numerics.LinearAlgebra;

namespace BracketGen.Photo;

/// <summary>The circle nearest to points in a plane.</summary>
internal static class CircleThrough
{
    // Gauss-Newton's steps from the algebraic circle: each squares the rest.
    private const int Steps = 12;

    // Three points this near to a line, as a part of their spread, decide no circle.
    private const double InLine = 1e-3;

    /// <summary>
    /// The circle for which the sum of the squares of the distances to the points is a minimum; null of fewer than three points and of points in line. It starts from the algebraic circle
    /// (I. Kåsa, IEEE Trans. Instrumentation and Measurement 25 (1976) 8-14), which lies inside where the points cover a short arc.
    /// </summary>
    /// <param name="points">The points (mm).</param>
    public static (Vector2 Centre, double Radius)? Of(IReadOnlyList<Vector2> points)
    {
        if (points.Count < 3)
        {
            return null;
        }

        var middle = CameraFit.Middle(points);
        var spread = points.Max(p => p.DistanceTo(middle));
        var rows = Matrix<double>.Build.Dense(points.Count, 3, (i, j) => j switch { 0 => (points[i] - middle).X / spread, 1 => (points[i] - middle).Y / spread, _ => 1 });
        var values = rows.Svd(false).S;
        if (!(spread > 0) || values[2] < InLine * values[0])
        {
            return null;
        }

        var right = Vector<double>.Build.Dense(points.Count, i => (points[i] - middle).Dot(points[i] - middle) / (spread * spread));
        var algebraic = rows.TransposeThisAndMultiply(rows).Cholesky().Solve(rows.TransposeThisAndMultiply(right));
        var centre = middle + spread / 2 * new Vector2(algebraic[0], algebraic[1]);
        var radius = points.Average(p => p.DistanceTo(centre));
        for (var step = 0; step < Steps; step++)
        {
            Vector2[] outwards = [.. points.Select(p => (p - centre).Unit)];
            var slopes = Matrix<double>.Build.Dense(points.Count, 3, (i, j) => j switch { 0 => outwards[i].X, 1 => outwards[i].Y, _ => 1 });
            var off = Vector<double>.Build.Dense(points.Count, i => points[i].DistanceTo(centre) - radius);
            var by = slopes.TransposeThisAndMultiply(slopes).Cholesky().Solve(slopes.TransposeThisAndMultiply(off));
            (centre, radius) = (centre + new Vector2(by[0], by[1]), radius + by[2]);
        }

        return (centre, radius);
    }
}
