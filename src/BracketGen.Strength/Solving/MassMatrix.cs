namespace BracketGen.Strength.Solving;

/// <summary>The mass of a sheet and of the bodies that hang on it: M = M₀ + Σ rᵀ r, M₀ sparse in blocks, r a few rows over the nodes that hold a body.</summary>
/// <remarks>The rows stand apart, because each couples all nodes of a seat with each other: added to the blocks they would fill them.</remarks>
/// <param name="sheet">M₀.</param>
/// <param name="rows">The rows.</param>
internal sealed class MassMatrix(BlockMatrix sheet, params MassRow[] rows)
{
    /// <summary>Number of nodes.</summary>
    public int Nodes => sheet.Nodes;

    /// <summary>The product with <paramref name="x"/>, six numbers a node, into <paramref name="result"/>.</summary>
    public void Multiply(ReadOnlySpan<double> x, Span<double> result)
    {
        sheet.Multiply(x, result);
        foreach (var (at, values) in rows)
        {
            var along = 0.0;
            for (var i = 0; i < at.Length; i++)
            {
                along += values[i] * x[at[i]];
            }

            for (var i = 0; i < at.Length; i++)
            {
                result[at[i]] += along * values[i];
            }
        }
    }
}

/// <summary>A row that adds rᵀ r to a mass.</summary>
/// <param name="At">Where its entries stand, six places a node.</param>
/// <param name="Values">The entries; the square root of a mass is in them.</param>
internal readonly record struct MassRow(int[] At, double[] Values);
