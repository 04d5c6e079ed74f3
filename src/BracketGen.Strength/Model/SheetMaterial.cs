namespace BracketGen.Strength.Model;

/// <summary>What the strength calculation knows of the sheet's metal: linear, the same in every direction.</summary>
/// <remarks>Equality by value.</remarks>
public sealed record SheetMaterial
{
    /// <summary>A material.</summary>
    /// <param name="youngsModulus">Young's modulus (MPa), positive.</param>
    /// <param name="poissonsRatio">Poisson's ratio, from 0 to below 0.5.</param>
    /// <param name="density">Density (tonne/mm³), zero or more: steel 7.85e-9.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public SheetMaterial(double youngsModulus, double poissonsRatio, double density)
    {
        if (!(youngsModulus > 0 && double.IsFinite(youngsModulus)))
        {
            throw new ArgumentOutOfRangeException(nameof(youngsModulus), youngsModulus, "Young's modulus must be more than zero (MPa).");
        }

        if (!(poissonsRatio is >= 0 and < 0.5))
        {
            throw new ArgumentOutOfRangeException(nameof(poissonsRatio), poissonsRatio, "Poisson's ratio must be from 0 to below 0.5.");
        }

        if (!(density >= 0 && double.IsFinite(density)))
        {
            throw new ArgumentOutOfRangeException(nameof(density), density, "Density cannot be below zero (tonne/mm³).");
        }

        YoungsModulus = youngsModulus;
        PoissonsRatio = poissonsRatio;
        Density = density;
    }

    /// <summary>Young's modulus (MPa).</summary>
    public double YoungsModulus { get; }

    /// <summary>Poisson's ratio.</summary>
    public double PoissonsRatio { get; }

    /// <summary>Density (tonne/mm³).</summary>
    public double Density { get; }
}
