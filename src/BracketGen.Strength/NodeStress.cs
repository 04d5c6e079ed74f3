namespace BracketGen.Strength;

/// <summary>Von Mises stress at a node on both surfaces of the sheet.</summary>
/// <remarks>
/// From the mean of the stress tensors of the triangles around the node, weighted by area.
/// </remarks>
/// <param name="Top">Stress on the top surface (MPa).</param>
/// <param name="Bottom">Stress on the bottom surface (MPa).</param>
public readonly record struct NodeStress(double Top, double Bottom)
{
    /// <summary>The larger of the two (MPa).</summary>
    public double Largest => Math.Max(Top, Bottom);
}
