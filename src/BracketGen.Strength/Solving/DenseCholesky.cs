namespace BracketGen.Strength.Solving;

/// <summary>A small symmetric positive definite matrix, factorised: A = L Lᵀ (G. H. Golub, C. F. Van Loan, Matrix Computations, section 4.2).</summary>
internal sealed class DenseCholesky
{
    private readonly double[] _l;
    private readonly int _n;

    private DenseCholesky(double[] l, int n) => (_l, _n) = (l, n);

    /// <summary>Factorises a matrix, rows first, of order <paramref name="n"/>.</summary>
    /// <exception cref="InvalidOperationException">The matrix is not positive definite.</exception>
    public static DenseCholesky Factor(double[] a, int n)
    {
        var l = new double[n * n];
        for (var r = 0; r < n; r++)
        {
            for (var c = 0; c <= r; c++)
            {
                var sum = a[n * r + c];
                for (var k = 0; k < c; k++)
                {
                    sum -= l[n * r + k] * l[n * c + k];
                }

                l[n * r + c] = r > c ? sum / l[n * c + c]
                    : sum > 0 ? Math.Sqrt(sum)
                    : throw new InvalidOperationException($"Row {r} of {n}: the matrix is not positive definite.");
            }
        }

        return new(l, n);
    }

    /// <summary>The solution of A x = b.</summary>
    public double[] Solve(ReadOnlySpan<double> b)
    {
        var x = Forward(b);
        for (var r = _n - 1; r >= 0; r--)
        {
            for (var k = r + 1; k < _n; k++)
            {
                x[r] -= _l[_n * k + r] * x[k];
            }

            x[r] /= _l[_n * r + r];
        }

        return x;
    }

    /// <summary>The solution of L y = b.</summary>
    public double[] Forward(ReadOnlySpan<double> b)
    {
        var y = b.ToArray();
        for (var r = 0; r < _n; r++)
        {
            for (var k = 0; k < r; k++)
            {
                y[r] -= _l[_n * r + k] * y[k];
            }

            y[r] /= _l[_n * r + r];
        }

        return y;
    }

    /// <summary>The inverse of A, rows first.</summary>
    public double[] Inverse()
    {
        var inverse = new double[_n * _n];
        var unit = new double[_n];
        for (var c = 0; c < _n; c++)
        {
            Array.Clear(unit);
            unit[c] = 1;
            var column = Solve(unit);
            for (var r = 0; r < _n; r++)
            {
                inverse[_n * r + c] = column[r];
            }
        }

        return inverse;
    }

    /// <summary>The largest λ of B x = λ A x, B symmetric and not negative.</summary>
    public double LargestRatio(double[] b)
    {
        // L⁻¹ B L⁻ᵀ, by columns and then by rows.
        var half = new double[_n * _n];
        for (var c = 0; c < _n; c++)
        {
            var column = new double[_n];
            for (var r = 0; r < _n; r++)
            {
                column[r] = b[_n * r + c];
            }

            var solved = Forward(column);
            for (var r = 0; r < _n; r++)
            {
                half[_n * r + c] = solved[r];
            }
        }

        var whole = new double[_n * _n];
        for (var r = 0; r < _n; r++)
        {
            var solved = Forward(half.AsSpan(_n * r, _n));
            for (var c = 0; c < _n; c++)
            {
                whole[_n * r + c] = solved[c];
            }
        }

        for (var r = 0; r < _n; r++)
        {
            for (var c = 0; c < r; c++)
            {
                var mean = (whole[_n * r + c] + whole[_n * c + r]) / 2;
                (whole[_n * r + c], whole[_n * c + r]) = (mean, mean);
            }
        }

        return SymmetricEigen.Of(whole, _n).Values[0];
    }
}
