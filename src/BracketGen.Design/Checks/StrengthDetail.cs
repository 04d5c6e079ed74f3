namespace BracketGen.Design.Checks;

/// <summary>How finely a bracket is meshed for its strength.</summary>
/// <param name="Size">Edge length of the triangles away from holes and bends (mm).</param>
/// <param name="HoleSize">Edge length at holes, washers and the seat (mm).</param>
/// <param name="BendRows">Rows of triangles across a bend.</param>
public sealed record StrengthDetail(double Size, double HoleSize, int BendRows)
{
    /// <summary>
    /// What a bracket is judged on: deflection and frequencies within a hundredth, stresses within a twentieth of what they settle at
    /// (docs/strength.md).
    /// </summary>
    public static readonly StrengthDetail Usual = new(4, 1.5, 4);
}
