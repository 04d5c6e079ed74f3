using BracketGen.Strength.Model;

namespace BracketGen.Strength.Solving;

/// <summary>The lowest eigenvalues of K x = λ M x by a block Krylov space of K⁻¹M, fully reorthogonalised.</summary>
/// <remarks>
/// R. G. Grimes, J. G. Lewis, H. D. Simon, "A shifted block Lanczos algorithm for solving sparse symmetric generalized
/// eigenproblems", SIAM Journal on Matrix Analysis and Applications 15 (1994) 228-272, with shift zero. A block of three
/// finds modes that come in pairs, as on a square part.
/// </remarks>
internal static class BlockLanczos
{
    private const int Width = 3;
    private const int LargestSpace = 240;

    /// <summary>The <paramref name="count"/> lowest eigenvalues, ascending, with M-normalised vectors.</summary>
    public static (double[] Values, double[][] Vectors) Lowest(SparseCholesky stiffness, BlockMatrix mass, int count)
    {
        var size = mass.Nodes * BlockMatrix.Block;
        List<double[]> basis = [], massBasis = [];
        var projected = new double[LargestSpace + Width, LargestSpace + Width];
        var block = Start(size, mass, stiffness);
        Orthonormalise(block, basis, massBasis, mass, null);
        var from = 0;
        while (true)
        {
            var width = basis.Count - from;
            var next = new double[width][];
            for (var v = 0; v < width; v++)
            {
                next[v] = [.. massBasis[from + v]];
            }

            stiffness.Solve(next);
            for (var v = 0; v < width; v++)
            {
                for (var i = 0; i < from + width; i++)
                {
                    var h = FrontKernel.Dot(massBasis[i], next[v]);
                    projected[i, from + v] = projected[from + v, i] = h;
                }
            }

            var known = basis.Count;
            var tail = new double[width, width];
            Orthonormalise(next, basis, massBasis, mass, tail);
            var exhausted = basis.Count == known || known >= LargestSpace;
            if (known >= count + Width || exhausted)
            {
                var (values, vectors) = SymmetricEigen.Of(Leading(projected, known));
                var wanted = Math.Min(count, values.Length);
                if (exhausted || Enumerable.Range(0, wanted).All(i => Residual(tail, vectors[i], from) <= StrengthTolerance.Eigenvector * values[i]))
                {
                    return (
                        [.. values.Take(wanted).Select(v => 1 / v)],
                        [.. vectors.Take(wanted).Select(s => Combine(basis, s, known, size))]);
                }
            }

            from = known;
        }
    }

    // A fixed, structureless start, passed once through K⁻¹M so that it holds no massless motion.
    private static double[][] Start(int size, BlockMatrix mass, SparseCholesky stiffness)
    {
        var block = new double[Width][];
        var state = 0x9E3779B97F4A7C15UL;
        for (var v = 0; v < Width; v++)
        {
            var raw = new double[size];
            for (var i = 0; i < size; i++)
            {
                state = state * 6364136223846793005UL + 1442695040888963407UL;
                raw[i] = (state >> 11) / (double)(1UL << 53) - 0.5;
            }

            block[v] = new double[size];
            mass.Multiply(raw, block[v]);
        }

        stiffness.Solve(block);
        return block;
    }

    // Gram-Schmidt in the mass product, twice; vectors that vanish are dropped. `tail` gets the part outside the old basis.
    private static void Orthonormalise(
        double[][] block, List<double[]> basis, List<double[]> massBasis, BlockMatrix mass, double[,]? tail)
    {
        var known = basis.Count;
        for (var v = 0; v < block.Length; v++)
        {
            var x = block[v];
            var mx = new double[x.Length];
            mass.Multiply(x, mx);
            var before = Math.Sqrt(Math.Max(0, FrontKernel.Dot(x, mx)));
            for (var pass = 0; pass < 2; pass++)
            {
                for (var i = 0; i < basis.Count; i++)
                {
                    var h = FrontKernel.Dot(massBasis[i], x);
                    FrontKernel.Subtract(x, basis[i], h);
                    if (tail is not null && i >= known)
                    {
                        tail[i - known, v] += h;
                    }
                }
            }

            mass.Multiply(x, mx);
            var norm = Math.Sqrt(Math.Max(0, FrontKernel.Dot(x, mx)));
            if (!(norm > StrengthTolerance.Dependent * before))
            {
                continue;
            }

            if (tail is not null)
            {
                tail[basis.Count - known, v] = norm;
            }

            Multiply(x, 1 / norm);
            Multiply(mx, 1 / norm);
            basis.Add(x);
            massBasis.Add(mx);
        }
    }

    private static void Multiply(double[] x, double factor)
    {
        for (var i = 0; i < x.Length; i++)
        {
            x[i] *= factor;
        }
    }

    private static double[,] Leading(double[,] matrix, int n)
    {
        var leading = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                leading[i, j] = matrix[i, j];
            }
        }

        return leading;
    }

    private static double Residual(double[,] tail, double[] vector, int from)
    {
        var sum = 0.0;
        for (var r = 0; r < tail.GetLength(0); r++)
        {
            var value = 0.0;
            for (var c = 0; c < tail.GetLength(1); c++)
            {
                value += tail[r, c] * vector[from + c];
            }

            sum += value * value;
        }

        return Math.Sqrt(sum);
    }

    private static double[] Combine(List<double[]> basis, double[] weights, int count, int size)
    {
        var x = new double[size];
        for (var i = 0; i < count; i++)
        {
            FrontKernel.Subtract(x, basis[i], -weights[i]);
        }

        return x;
    }
}
