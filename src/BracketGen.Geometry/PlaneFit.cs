namespace BracketGen.Geometry;

/// <summary>The plane nearest to measured points.</summary>
public static class PlaneFit
{
    // Jacobi's sweeps square the rest each time: five take any matrix of three rows to round-off.
    private const int Sweeps = 12;

    /// <summary>
    /// The plane through the centroid for which the sum of the squares of the distances is a minimum; null where the points lie along a line or
    /// are too few, and so decide no plane.
    /// </summary>
    /// <remarks>
    /// Its normal is the singular vector of the centred points for the smallest singular value (G. H. Golub and C. F. Van Loan, SIAM J. Numer.
    /// Anal. 17 (1980) 883-893), found as an eigenvector of their 3 x 3 scatter matrix by Jacobi's rotations.
    /// </remarks>
    /// <param name="points">The points (mm).</param>
    /// <param name="towards">The side that the normal points to.</param>
    /// <param name="minSpan">Smallest width across the points' own line (mm, root of the mean square) with which they decide a plane.</param>
    public static Plane? Of(IReadOnlyList<Vector3> points, Vector3 towards, double minSpan)
    {
        if (points.Count < 3)
        {
            return null;
        }

        var centre = points.Aggregate(Vector3.Zero, (sum, p) => sum + p) / points.Count;
        var scatter = new double[3, 3];
        foreach (var point in points)
        {
            double[] r = [point.X - centre.X, point.Y - centre.Y, point.Z - centre.Z];
            for (var i = 0; i < 3; i++)
            {
                for (var j = 0; j < 3; j++)
                {
                    scatter[i, j] += r[i] * r[j];
                }
            }
        }

        var (values, vectors) = Eigen(scatter);
        int[] order = [.. Enumerable.Range(0, 3).OrderBy(i => values[i])];
        if (Math.Sqrt(Math.Max(0, values[order[1]]) / points.Count) < minSpan)
        {
            return null;
        }

        var normal = new Vector3(vectors[0, order[0]], vectors[1, order[0]], vectors[2, order[0]]);
        return new(centre, normal.Dot(towards) < 0 ? -normal : normal);
    }

    // C. G. J. Jacobi's method for a symmetric matrix: plane rotations until nothing is left beside the diagonal.
    private static (double[] Values, double[,] Vectors) Eigen(double[,] a)
    {
        var v = new double[3, 3];
        (v[0, 0], v[1, 1], v[2, 2]) = (1, 1, 1);
        for (var sweep = 0; sweep < Sweeps; sweep++)
        {
            for (var p = 0; p < 2; p++)
            {
                for (var q = p + 1; q < 3; q++)
                {
                    if (a[p, q] != 0)
                    {
                        Turn(a, v, p, q);
                    }
                }
            }
        }

        return ([a[0, 0], a[1, 1], a[2, 2]], v);
    }

    private static void Turn(double[,] a, double[,] v, int p, int q)
    {
        var angle = 0.5 * Math.Atan2(2 * a[p, q], a[q, q] - a[p, p]);
        var (s, c) = Math.SinCos(angle);
        for (var k = 0; k < 3; k++)
        {
            (a[k, p], a[k, q]) = (c * a[k, p] - s * a[k, q], s * a[k, p] + c * a[k, q]);
        }

        for (var k = 0; k < 3; k++)
        {
            (a[p, k], a[q, k]) = (c * a[p, k] - s * a[q, k], s * a[p, k] + c * a[q, k]);
            (v[k, p], v[k, q]) = (c * v[k, p] - s * v[k, q], s * v[k, p] + c * v[k, q]);
        }

        // What the rotation makes zero is zero.
        (a[p, q], a[q, p]) = (0, 0);
    }
}
