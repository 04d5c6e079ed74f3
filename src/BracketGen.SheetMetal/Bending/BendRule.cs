using System.Globalization;
using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Bending;

/// <summary>How much sheet a bend takes up: the source of its bend allowance.</summary>
public abstract record BendRule
{
    /// <summary>Name and source, as the drawing gives it.</summary>
    public abstract string Name { get; }

    /// <summary>± of the K factor that it leads to; times bend angle (rad) and thickness it is the ± of the bend allowance (mm). 0 where nothing is known of it.</summary>
    public double KPlusMinus { get; init; }

    /// <summary>Whether the shop tried it on this sheet and die.</summary>
    public bool IsTested => this is TestBendRule;

    /// <summary>
    /// Bend allowance: length (mm, positive) of flat sheet that becomes the bend, for a bend angle (0 for flat), inside
    /// radius (mm) and thickness (mm).
    /// </summary>
    public abstract double Allowance(Angle bend, double insideRadius, double thickness);
}

/// <summary>The neutral axis found by the shop's own test bend.</summary>
/// <param name="K">Distance of the neutral axis from the inside face, over the thickness; 0 to 0.5 in any real bend.</param>
/// <param name="Where">Whose test and what was bent.</param>
public sealed record TestBendRule(double K, string Where) : BendRule
{
    /// <inheritdoc/>
    public override string Name => $"test bend, {Where}";

    /// <inheritdoc/>
    public override double Allowance(Angle bend, double insideRadius, double thickness) =>
        bend.Magnitude.Radians * (insideRadius + K * thickness);
}

/// <summary>DIN 6935: cold bending of flat rolled steel.</summary>
/// <remarks>
/// Neutral axis at r + k s/2, k = 0.65 + 0.5 log10(r/s) for r/s up to 5, else 1. The formula falls to zero at r/s = 0.05;
/// below that it is held at zero.
/// </remarks>
public sealed record Din6935Rule : BendRule
{
    /// <inheritdoc/>
    public override string Name => "DIN 6935";

    /// <summary>The correction factor k for an inside radius and a thickness (mm).</summary>
    public static double CorrectionFactor(double insideRadius, double thickness) =>
        insideRadius / thickness > 5 ? 1 : Math.Clamp(0.65 + 0.5 * Math.Log10(insideRadius / thickness), 0, 1);

    /// <inheritdoc/>
    public override double Allowance(Angle bend, double insideRadius, double thickness) =>
        bend.Magnitude.Radians * (insideRadius + CorrectionFactor(insideRadius, thickness) * thickness / 2);
}

/// <summary>The groups for which Machinery's Handbook gives a bend allowance of its own.</summary>
public enum BendGroup
{
    /// <summary>Soft brass and copper.</summary>
    SoftBrassOrCopper,

    /// <summary>Half-hard brass and copper, soft steel, aluminium.</summary>
    SoftSteelOrAluminium,

    /// <summary>Bronze, hard copper, cold-rolled and spring steel.</summary>
    ColdRolledOrSpringSteel,
}

/// <summary>Machinery's Handbook, "Bending sheet metal": length of a 90° bend, in proportion for other angles.</summary>
/// <param name="Group">Row of the table.</param>
public sealed record MachinerysHandbookRule(BendGroup Group) : BendRule
{
    /// <inheritdoc/>
    public override string Name => string.Create(CultureInfo.InvariantCulture, $"Machinery's Handbook, L = {Factor:0.00} T + 1.57 R at 90°");

    private double Factor => Group switch
    {
        BendGroup.SoftBrassOrCopper => 0.55,
        BendGroup.SoftSteelOrAluminium => 0.64,
        _ => 0.71,
    };

    /// <inheritdoc/>
    public override double Allowance(Angle bend, double insideRadius, double thickness) =>
        (Factor * thickness + 1.57 * insideRadius) * bend.Magnitude.Degrees / 90;
}
