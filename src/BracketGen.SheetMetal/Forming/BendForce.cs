using BracketGen.SheetMetal.Shops;

namespace BracketGen.SheetMetal.Forming;

/// <summary>Force of air bending in a V die.</summary>
/// <remarks>
/// F/L = C Rm t² / V. Of two handbooks the larger: C = 1.33 (Kalpakjian and Schmid, V die, 1.2 to 1.33) and C = 1 + 4 t/V (Schuler, "Metal
/// Forming Handbook"; from memory).
/// </remarks>
public static class BendForce
{
    /// <summary>Tensile strength over yield strength that is assumed where no tensile strength is given: more than any sheet in common use has (1.4301: 3.3).</summary>
    public const double AssumedTensileOverYield = 3.5;

    /// <summary>Force per length of bend (N/mm, the same as kN/m).</summary>
    /// <param name="tensile">Tensile strength (MPa).</param>
    /// <param name="thickness">Thickness (mm).</param>
    /// <param name="opening">Die opening (mm).</param>
    public static double PerLength(double tensile, double thickness, double opening) =>
        Math.Max(1.33, 1 + 4 * thickness / opening) * tensile * thickness * thickness / opening;

    /// <summary>The tensile strength (MPa) to count with: the maximum of the standard, or assumed.</summary>
    public static double TensileOf(Material material) => material.MaxTensile ?? AssumedTensileOverYield * material.Yield;
}
