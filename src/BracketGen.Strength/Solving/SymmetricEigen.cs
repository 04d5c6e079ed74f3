using BracketGen.Strength.Model;

namespace BracketGen.Strength.Solving;

/// <summary>All eigenvalues and eigenvectors of a small symmetric matrix by cyclic Jacobi rotations.</summary>
/// <remarks>G. H. Golub, C. F. Van Loan, Matrix Computations, section 8.5.</remarks>
internal static class SymmetricEigen
{
    /// <summary>Eigenvalues, largest first, and for each its vector of length one.</summary>
    /// <param name="a">The matrix, rows first; used up.</param>
    /// <param name="n">Its order.</param>
    public static (double[] Values, double[][] Vectors) Of(double[] a, int n)
    {
        // One vector a row.
        var v = new double[n * n];
        for (var i = 0; i < n; i++)
        {
            v[(n + 1) * i] = 1;
        }

        for (var sweep = 0; sweep < 60 && !IsDiagonal(a, n); sweep++)
        {
            for (var p = 0; p < n; p++)
            {
                for (var q = p + 1; q < n; q++)
                {
                    Rotate(a, v, n, p, q);
                }
            }
        }

        var order = Enumerable.Range(0, n).OrderByDescending(i => a[(n + 1) * i]).ToArray();
        return ([.. order.Select(i => a[(n + 1) * i])], [.. order.Select(i => v.AsSpan(n * i, n).ToArray())]);
    }

    private static bool IsDiagonal(double[] a, int n)
    {
        double off = 0, all = 0;
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                var square = a[n * i + j] * a[n * i + j];
                all += square;
                off += i == j ? 0 : square;
            }
        }

        return off <= StrengthTolerance.OffDiagonal * all;
    }

    private static void Rotate(double[] a, double[] v, int n, int p, int q)
    {
        var apq = a[n * p + q];
        if (apq == 0)
        {
            return;
        }

        var theta = (a[(n + 1) * q] - a[(n + 1) * p]) / (2 * apq);
        var t = (theta >= 0 ? 1 : -1) / (Math.Abs(theta) + Math.Sqrt(theta * theta + 1));
        var c = 1 / Math.Sqrt(t * t + 1);
        var s = t * c;
        Turn(a.AsSpan(n * p, n), a.AsSpan(n * q, n), c, s);
        for (var k = 0; k < n; k++)
        {
            double kp = a[n * k + p], kq = a[n * k + q];
            (a[n * k + p], a[n * k + q]) = (c * kp - s * kq, s * kp + c * kq);
        }

        Turn(v.AsSpan(n * p, n), v.AsSpan(n * q, n), c, s);
    }

    private static void Turn(Span<double> one, Span<double> other, double c, double s)
    {
        for (var k = 0; k < one.Length; k++)
        {
            (one[k], other[k]) = (c * one[k] - s * other[k], s * one[k] + c * other[k]);
        }
    }
}
