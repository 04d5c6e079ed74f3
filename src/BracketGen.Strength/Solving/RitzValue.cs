using BracketGen.Strength.Model;

namespace BracketGen.Strength.Solving;

/// <summary>The lowest value of Rayleigh's quotient xᵀKx / xᵀMx over a few vectors: never below the lowest eigenvalue of K x = λ M x.</summary>
/// <remarks>W. Ritz, Journal für die reine und angewandte Mathematik 135 (1909) 1-61 (from memory); K.-J. Bathe, Finite Element Procedures, section 10.3.</remarks>
internal static class RitzValue
{
    /// <summary>The lowest quotient; infinite where the vectors hold no mass.</summary>
    /// <param name="vectors">The vectors x.</param>
    /// <param name="forces">K x for each.</param>
    /// <param name="mass">M.</param>
    public static double Lowest(double[][] vectors, double[][] forces, MassMatrix mass)
    {
        // With xᵀKx = L Lᵀ the largest eigenvalue of L⁻¹ (xᵀMx) L⁻ᵀ is the inverse of the lowest quotient.
        var n = vectors.Length;
        var (stiffness, moving) = (new double[n * n], new double[n * n]);
        var product = new double[vectors[0].Length];
        for (var i = 0; i < n; i++)
        {
            mass.Multiply(vectors[i], product);
            for (var j = 0; j < n; j++)
            {
                moving[n * j + i] = FrontKernel.Dot(vectors[j], product);
                stiffness[n * j + i] = FrontKernel.Dot(vectors[j], forces[i]);
            }
        }

        for (var j = 0; j < n; j++)
        {
            var pivot = stiffness[(n + 1) * j];
            for (var k = 0; k < j; k++)
            {
                pivot -= stiffness[n * j + k] * stiffness[n * j + k];
            }

            // A vector that the others hold adds nothing.
            var isOutside = pivot > StrengthTolerance.DependentShape * stiffness[(n + 1) * j];
            var root = Math.Sqrt(Math.Max(0, pivot));
            stiffness[(n + 1) * j] = root;
            for (var i = j + 1; i < n; i++)
            {
                for (var k = 0; k < j; k++)
                {
                    stiffness[n * i + j] -= stiffness[n * i + k] * stiffness[n * j + k];
                }

                stiffness[n * i + j] = isOutside ? stiffness[n * i + j] / root : 0;
            }

            for (var c = 0; c < n; c++)
            {
                for (var k = 0; k < j; k++)
                {
                    moving[n * j + c] -= stiffness[n * j + k] * moving[n * k + c];
                }

                moving[n * j + c] = isOutside ? moving[n * j + c] / root : 0;
            }
        }

        for (var j = 0; j < n; j++)
        {
            for (var r = 0; r < n; r++)
            {
                for (var k = 0; k < j; k++)
                {
                    moving[n * r + j] -= stiffness[n * j + k] * moving[n * r + k];
                }

                moving[n * r + j] = stiffness[(n + 1) * j] > 0 ? moving[n * r + j] / stiffness[(n + 1) * j] : 0;
            }
        }

        return 1 / SymmetricEigen.Of(moving, n).Values[0];
    }
}
