using BracketGen.Design.Inputs;
using BracketGen.SheetMetal.Cutting;
using BracketGen.SheetMetal.Shops;
using BracketGen.Strength.Life;
using BracketGen.Strength.Model;

namespace BracketGen.Design.Checks;

/// <summary>What the metal of a bracket withstands over the life that the job asks for, at the temperature it has.</summary>
public sealed record StrengthMetal
{
    private StrengthMetal(Material material, HotStrength heat, CuttingProcess process, bool isSteel)
    {
        (Yield, Modulus) = (heat.Yield * material.Yield, heat.Modulus * material.Modulus);
        Line = new(heat.Yield * material.Endurance, isSteel);
        Sheet = new(Modulus, material.Poisson, material.Density);
        (EdgeFactor, Pressure) = (EdgeFactorOf(process), heat.Yield * material.LimitingPressure);
    }

    /// <summary>Yield strength (MPa).</summary>
    public double Yield { get; }

    /// <summary>Young's modulus (MPa).</summary>
    public double Modulus { get; }

    /// <summary>Pressure under a washer that does not sink in (MPa).</summary>
    public double Pressure { get; }

    /// <summary>What it withstands in fatigue, inside the sheet.</summary>
    public SnLine Line { get; }

    /// <summary>Part of it that a cut edge withstands.</summary>
    public double EdgeFactor { get; }

    /// <summary>The metal for the strength calculation.</summary>
    public SheetMaterial Sheet { get; }

    /// <summary>Temperature of the bracket (°C); null where nobody measured it.</summary>
    public double? Temperature { get; private init; }

    /// <summary>What heat leaves more, at the worst temperature where nobody measured it; null where the temperature is known; not a number where it is too hot for what is known of the metal.</summary>
    public HotStrength? Worst { get; private init; }

    /// <summary>The metal of a sheet for a job.</summary>
    public static StrengthMetal Of(Job job, Material material)
    {
        var family = FamilyOf(material);
        var temperature = job.Life.Temperature;
        var heat = HotStrength.At(family, temperature ?? ServiceLife.RoomTemperature);
        return new(material, heat, job.Shop.Process, material.IsSteel)
        {
            Temperature = temperature,
            Worst = (temperature ?? ServiceLife.TemperatureAtWorst) > HotStrength.Hottest(family) ? new(double.NaN, double.NaN)
                : temperature is null ? HotStrength.At(family, ServiceLife.TemperatureAtWorst)
                : null,
        };
    }

    /// <summary>Part of the sheet's fatigue strength that an edge withstands as it comes from the cut.</summary>
    /// <remarks>
    /// EN 1993-1-9, table 8.1 (from memory): 125 for machine thermal cuts with shallow and regular drag lines over 160 for rolled faces, and 140 where they are
    /// dressed; the latter is taken for the water jet, which leaves no hardened or molten edge (common practice, no source). A rough plasma edge stands less: 0.7, common practice, no source.
    /// </remarks>
    public static double EdgeFactorOf(CuttingProcess process) => process switch
    {
        CuttingProcess.Laser => 125.0 / 160,
        CuttingProcess.WaterJet => 140.0 / 160,
        _ => 0.7,
    };

    /// <summary>The family of a sheet by what tells them apart: density and Young's modulus.</summary>
    /// <remarks>EN 10088-1 gives stainless steels 200 GPa and less, EN 1993-1-1 carbon steels 210.</remarks>
    public static MetalFamily FamilyOf(Material material) => material switch
    {
        { IsSteel: true, Modulus: < SoftestCarbonSteel } => MetalFamily.StainlessSteel,
        { IsSteel: true } => MetalFamily.CarbonSteel,
        { Density: > LightestAluminium and < HeaviestAluminium, Modulus: > SoftestAluminium and < StiffestAluminium } => MetalFamily.Aluminium,
        _ => MetalFamily.Other,
    };

    private const double SoftestCarbonSteel = 205_000;

    // Wrought alloys have 2.5 to 2.9 kg/dm³ and 68 to 75 GPa (EN 1999-1-1: 2.7 and 70); magnesium, titanium and copper lie outside (t/mm³, MPa).
    private const double LightestAluminium = 2.4e-9, HeaviestAluminium = 3e-9, SoftestAluminium = 60_000, StiffestAluminium = 80_000;
}
