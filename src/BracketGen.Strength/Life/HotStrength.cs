namespace BracketGen.Strength.Life;

/// <summary>A family of metals that get weaker with heat in their own way.</summary>
public enum MetalFamily
{
    /// <summary>Carbon steel.</summary>
    CarbonSteel,

    /// <summary>Austenitic stainless steel.</summary>
    StainlessSteel,

    /// <summary>Aluminium and its alloys.</summary>
    Aluminium,

    /// <summary>Anything else: how it gets weaker is not known here.</summary>
    Other,
}

/// <summary>What heat leaves of a metal's strength, as parts of that at 20 °C.</summary>
/// <param name="Yield">Of the yield strength, and of what it withstands in fatigue.</param>
/// <param name="Modulus">Of Young's modulus.</param>
public readonly record struct HotStrength(double Yield, double Modulus)
{
    private static readonly double[] SteelAt = [20, 100, 200, 300], AluminiumAt = [20, 50, 100];

    // EN 1993-1-2:2005, table 3.1: proportional limit and slope of the linear elastic range.
    private static readonly double[] CarbonYield = [1, 1, 0.807, 0.613], CarbonModulus = [1, 1, 0.9, 0.8];

    // EN 1993-1-2:2005, annex C, 1.4301: 0.2 % proof strength and slope; from memory.
    private static readonly double[] StainlessYield = [1, 0.82, 0.68, 0.64], StainlessModulus = [1, 0.96, 0.92, 0.88];

    // EN 1999-1-2:2007: lower limits of the 0.2 % proof strength ratios of all alloys, and table 2; from memory. The ratio at 50 °C lies between.
    private static readonly double[] AluminiumYield = [1, 0.9625, 0.90], AluminiumModulus = [1, 0.99, 0.97];

    /// <summary>Hottest temperature (°C) for which there is a value: for steel the last before creep counts, for aluminium the last that years of service do not soften; 20 for any other metal.</summary>
    public static double Hottest(MetalFamily family) => family switch
    {
        MetalFamily.CarbonSteel or MetalFamily.StainlessSteel => SteelAt[^1],
        MetalFamily.Aluminium => AluminiumAt[^1],
        _ => 20,
    };

    /// <summary>What is left at a temperature (°C): all of it up to 20, and beyond <see cref="Hottest"/> what is left there.</summary>
    public static HotStrength At(MetalFamily family, double temperature) => family switch
    {
        MetalFamily.CarbonSteel => new(Between(SteelAt, CarbonYield, temperature), Between(SteelAt, CarbonModulus, temperature)),
        MetalFamily.StainlessSteel => new(Between(SteelAt, StainlessYield, temperature), Between(SteelAt, StainlessModulus, temperature)),
        MetalFamily.Aluminium => new(Between(AluminiumAt, AluminiumYield, temperature), Between(AluminiumAt, AluminiumModulus, temperature)),
        _ => new(1, 1),
    };

    private static double Between(double[] at, double[] values, double temperature)
    {
        var t = Math.Clamp(temperature, at[0], at[^1]);
        var i = Math.Max(1, Array.FindIndex(at, a => a >= t));
        return values[i - 1] + (values[i] - values[i - 1]) * (t - at[i - 1]) / (at[i] - at[i - 1]);
    }
}
