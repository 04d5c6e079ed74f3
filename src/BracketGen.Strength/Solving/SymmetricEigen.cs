using BracketGen.Strength.Model;

namespace BracketGen.Strength.Solving;

/// <summary>All eigenvalues and eigenvectors of a small symmetric matrix by cyclic Jacobi rotations.</summary>
/// <remarks>G. H. Golub, C. F. Van Loan, Matrix Computations, section 8.5.</remarks>
internal static class SymmetricEigen
{
    /// <summary>Eigenvalues, largest first, and for each its vector of length one.</summary>
    public static (double[] Values, double[][] Vectors) Of(double[,] matrix)
    {
        var n = matrix.GetLength(0);
        var a = (double[,])matrix.Clone();
        var v = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            v[i, i] = 1;
        }

        for (var sweep = 0; sweep < 60; sweep++)
        {
            double off = 0, all = 0;
            for (var i = 0; i < n; i++)
            {
                for (var j = 0; j < n; j++)
                {
                    all += a[i, j] * a[i, j];
                    off += i == j ? 0 : a[i, j] * a[i, j];
                }
            }

            if (off <= StrengthTolerance.OffDiagonal * all)
            {
                break;
            }

            for (var p = 0; p < n; p++)
            {
                for (var q = p + 1; q < n; q++)
                {
                    Rotate(a, v, n, p, q);
                }
            }
        }

        var order = Enumerable.Range(0, n).OrderByDescending(i => a[i, i]).ToArray();
        return (
            [.. order.Select(i => a[i, i])],
            [.. order.Select(i => Enumerable.Range(0, n).Select(r => v[r, i]).ToArray())]);
    }

    private static void Rotate(double[,] a, double[,] v, int n, int p, int q)
    {
        var apq = a[p, q];
        if (apq == 0)
        {
            return;
        }

        var theta = (a[q, q] - a[p, p]) / (2 * apq);
        var t = (theta >= 0 ? 1 : -1) / (Math.Abs(theta) + Math.Sqrt(theta * theta + 1));
        var c = 1 / Math.Sqrt(t * t + 1);
        var s = t * c;
        for (var k = 0; k < n; k++)
        {
            (a[k, p], a[k, q]) = (c * a[k, p] - s * a[k, q], s * a[k, p] + c * a[k, q]);
        }

        for (var k = 0; k < n; k++)
        {
            (a[p, k], a[q, k]) = (c * a[p, k] - s * a[q, k], s * a[p, k] + c * a[q, k]);
            (v[k, p], v[k, q]) = (c * v[k, p] - s * v[k, q], s * v[k, p] + c * v[k, q]);
        }
    }
}
