using BracketGen.Strength.Elements;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Solving;

/// <summary>The lowest eigenvalues of K x = λ M x by a block Krylov space of K⁻¹M, fully reorthogonalised.</summary>
/// <remarks>
/// R. G. Grimes, J. G. Lewis, H. D. Simon, "A shifted block Lanczos algorithm for solving sparse symmetric generalized
/// eigenproblems", SIAM Journal on Matrix Analysis and Applications 15 (1994) 228-272, with shift zero. A block of three
/// finds modes that come in pairs, as on a square part.
/// </remarks>
internal sealed class BlockLanczos
{
    private const int Width = 3;
    private const int LargestSpace = 240;

    private readonly SparseCholesky _stiffness;
    private readonly MassMatrix _mass;
    private readonly List<double[]> _basis = [];
    private readonly List<double[]> _massBasis = [];

    // For each vector of the space, what K⁻¹M makes of it along itself and those before.
    private readonly List<double[]> _projected = [];

    private BlockLanczos(SparseCholesky stiffness, MassMatrix mass) => (_stiffness, _mass) = (stiffness, mass);

    /// <summary>The <paramref name="count"/> lowest eigenvalues, ascending, with M-normalised vectors.</summary>
    /// <param name="stiffness">The stiffness, factorised.</param>
    /// <param name="mass">The mass.</param>
    /// <param name="count">How many; fewer come where the space runs out.</param>
    /// <param name="start">Vectors to begin with, used up; they must hold no massless motion, and some of every mode (<see cref="Start"/>).</param>
    public static (double[] Values, double[][] Vectors) Lowest(SparseCholesky stiffness, MassMatrix mass, int count, double[][]? start = null) =>
        new BlockLanczos(stiffness, mass).Run(count, start ?? Start(stiffness, mass, []));

    /// <summary>
    /// A block that holds some of every mode: <paramref name="likely"/> vectors with a little of something fixed and structureless, passed once through
    /// K⁻¹M so that it holds no massless motion.
    /// </summary>
    /// <param name="stiffness">The stiffness, factorised.</param>
    /// <param name="mass">The mass.</param>
    /// <param name="likely">Vectors near the lowest modes, at most as many as the block has; none where nothing is known.</param>
    public static double[][] Start(SparseCholesky stiffness, MassMatrix mass, double[][] likely)
    {
        var block = Forces(mass, likely);
        stiffness.Solve(block);
        return block;
    }

    /// <summary>What <see cref="Start"/> solves for: the mass times its vectors.</summary>
    public static double[][] Forces(MassMatrix mass, double[][] likely)
    {
        var size = mass.Nodes * Block6.Order;
        var block = new double[Width][];
        var state = 0x9E3779B97F4A7C15UL;
        for (var v = 0; v < Width; v++)
        {
            var raw = new double[size];
            var scale = v < likely.Length ? StrengthTolerance.Structureless * LargestOf(likely[v]) : 1;
            for (var i = 0; i < size; i++)
            {
                state = state * 6364136223846793005UL + 1442695040888963407UL;
                raw[i] = scale * ((state >> 11) / (double)(1UL << 53) - 0.5) + (v < likely.Length ? likely[v][i] : 0);
            }

            block[v] = new double[size];
            mass.Multiply(raw, block[v]);
        }

        return block;
    }

    private static double LargestOf(double[] x)
    {
        var largest = 0.0;
        foreach (var value in x)
        {
            largest = Math.Max(largest, Math.Abs(value));
        }

        return largest;
    }

    private (double[] Values, double[][] Vectors) Run(int count, double[][] block)
    {
        Orthonormalise(block, null);
        var from = 0;
        while (true)
        {
            var (known, width) = (_basis.Count, _basis.Count - from);
            var next = new double[width][];
            for (var v = 0; v < width; v++)
            {
                next[v] = _massBasis[from + v].AsSpan().ToArray();
                _projected.Add(new double[known]);
            }

            _stiffness.Solve(next);
            var tail = new double[width * width];
            Orthonormalise(next, tail);
            var exhausted = _basis.Count == known || known >= LargestSpace;
            if (known >= count + Width || exhausted)
            {
                var (values, vectors) = SymmetricEigen.Of(Projected(known), known);
                var wanted = Math.Min(count, values.Length);
                if (exhausted || AreSettled(values, vectors, wanted, tail, from))
                {
                    return ([.. values.Take(wanted).Select(v => 1 / v)], [.. vectors.Take(wanted).Select(s => Combine(s, known))]);
                }
            }

            from = known;
        }
    }

    // Gram-Schmidt in the mass product, twice; vectors that vanish are dropped. With a `tail` the block is K⁻¹M of the last vectors: what lies along the
    // space so far is kept as projected, what lies outside goes to the tail.
    private void Orthonormalise(double[][] block, double[]? tail)
    {
        var known = _basis.Count;
        for (var v = 0; v < block.Length; v++)
        {
            var x = block[v];
            var along = 0.0;
            for (var pass = 0; pass < 2; pass++)
            {
                for (var i = 0; i < _basis.Count; i++)
                {
                    var h = FrontKernel.Dot(_massBasis[i], x);
                    FrontKernel.Subtract(x, _basis[i], h);
                    along += h * h;
                    if (tail is null)
                    {
                        continue;
                    }

                    if (i < known)
                    {
                        _projected[known - block.Length + v][i] += h;
                    }
                    else
                    {
                        tail[block.Length * (i - known) + v] += h;
                    }
                }
            }

            // The vector's own square is the sum of those of its parts.
            var mx = new double[x.Length];
            _mass.Multiply(x, mx);
            var square = Math.Max(0, FrontKernel.Dot(x, mx));
            var norm = Math.Sqrt(square);
            if (!(norm > StrengthTolerance.Dependent * Math.Sqrt(along + square)))
            {
                continue;
            }

            if (tail is not null)
            {
                tail[block.Length * (_basis.Count - known) + v] = norm;
            }

            Multiply(x, 1 / norm);
            Multiply(mx, 1 / norm);
            _basis.Add(x);
            _massBasis.Add(mx);
        }
    }

    private static void Multiply(double[] x, double factor)
    {
        for (var i = 0; i < x.Length; i++)
        {
            x[i] *= factor;
        }
    }

    private double[] Projected(int n)
    {
        var matrix = new double[n * n];
        for (var c = 0; c < n; c++)
        {
            for (var r = 0; r < _projected[c].Length; r++)
            {
                matrix[n * r + c] = matrix[n * c + r] = _projected[c][r];
            }
        }

        return matrix;
    }

    private static bool AreSettled(double[] values, double[][] vectors, int wanted, double[] tail, int from)
    {
        var width = vectors[0].Length - from;
        for (var i = 0; i < wanted; i++)
        {
            var square = 0.0;
            for (var r = 0; r < width; r++)
            {
                var value = 0.0;
                for (var c = 0; c < width; c++)
                {
                    value += tail[width * r + c] * vectors[i][from + c];
                }

                square += value * value;
            }

            if (!(Math.Sqrt(square) <= StrengthTolerance.Eigenvector * values[i]))
            {
                return false;
            }
        }

        return true;
    }

    private double[] Combine(double[] weights, int count)
    {
        var x = new double[_basis[0].Length];
        for (var i = 0; i < count; i++)
        {
            FrontKernel.Subtract(x, _basis[i], -weights[i]);
        }

        return x;
    }
}
