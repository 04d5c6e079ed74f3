using BracketGen.Geometry;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.SheetMetal.Forming;

/// <summary>How far a bend springs back when the tools let go of it.</summary>
/// <remarks>
/// Kalpakjian and Schmid, "Manufacturing Processes for Engineering Materials", bending of sheet: with x = Ri Y / (E t) the inside radius grows
/// from Ri to Rf, Ri/Rf = 4 x³ - 3 x + 1, and the bend angle falls to the part Ks = (2 Ri/t + 1) / (2 Rf/t + 1). The same
/// closed form stands in Marciniak, Duncan and Hu, "Mechanics of Sheet Metal Forming" (both from memory; compared with a published calculation of it). Elastic, perfectly plastic
/// sheet: sheet that hardens springs back further.
/// </remarks>
public static class Springback
{
    /// <summary>Inside radius before over after springback; 0 where the sheet springs back flat.</summary>
    /// <param name="before">Inside radius under the tools (mm).</param>
    /// <param name="yield">Yield strength (MPa).</param>
    /// <param name="modulus">Young's modulus (MPa).</param>
    /// <param name="thickness">Thickness (mm).</param>
    public static double RadiusRatio(double before, double yield, double modulus, double thickness)
    {
        var x = before * yield / (modulus * thickness);
        return x < 0.5 ? 4 * x * x * x - 3 * x + 1 : 0;
    }

    /// <summary>Bend angle after over before springback.</summary>
    /// <param name="before">Inside radius under the tools (mm).</param>
    /// <param name="after">Inside radius of the finished bend (mm).</param>
    /// <param name="thickness">Thickness (mm).</param>
    public static double AngleRatio(double before, double after, double thickness) => (2 * before / thickness + 1) / (2 * after / thickness + 1);

    /// <summary>Springback allowance: how much further than its bend angle a bend must be made.</summary>
    /// <param name="turn">Bend angle of the finished bend.</param>
    /// <param name="insideRadius">Inside radius of the finished bend (mm).</param>
    /// <param name="material">The sheet.</param>
    /// <param name="thickness">Its thickness (mm).</param>
    public static Angle Allowance(Angle turn, double insideRadius, Material material, double thickness)
    {
        var before = insideRadius;
        for (var i = 0; i < Iterations; i++)
        {
            before = insideRadius * RadiusRatio(before, material.Yield, material.Modulus, thickness);
        }

        return (1 / AngleRatio(before, insideRadius, thickness) - 1) * turn.Magnitude;
    }

    // The ratio changes by less than 3 x, some thousandths, each time: a few steps are exact.
    private const int Iterations = 12;
}
