namespace BracketGen.Strength.Parts;

/// <summary>What the curvature of a bend does to the stress of bending: flat shells do not know it.</summary>
/// <remarks>
/// E. Winkler's and C. Bach's theory of the curved beam (S. Timoshenko, Strength of Materials, part II, chapter on curved bars; W. C. Young, R. G. Budynas, Roark's Formulas, chapter on curved beams): sections stay
/// plane, so the fibres of the inside, which are shorter, take more. With inside radius r, outside radius r + t and neutral radius n = t/ln(1 + t/r):
/// σ = M (n - r)/(t e r) per width at the inside, e = r + t/2 - n, against 6 M/t² in a flat sheet.
/// </remarks>
public static class CurvedSheet
{
    // A sharp corner has no finite elastic stress; a bend that is tighter than a tenth of its thickness cracks before.
    private const double Tightest = 0.1;

    /// <summary>Stress of bending at the inside of a bend over that of a flat sheet, one or more.</summary>
    /// <param name="radius">Inside radius over thickness; below a tenth it counts as a tenth.</param>
    public static double InsideFactor(double radius)
    {
        var r = Math.Max(Tightest, radius);
        if (r > 1e3)
        {
            return 1;
        }

        var neutral = 1 / Math.Log(1 + 1 / r);
        return (neutral - r) / (6 * (r + 0.5 - neutral) * r);
    }
}
