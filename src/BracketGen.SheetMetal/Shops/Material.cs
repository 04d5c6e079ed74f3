using BracketGen.SheetMetal.Bending;

namespace BracketGen.SheetMetal.Shops;

/// <summary>A sheet material as the shop buys it.</summary>
public sealed record Material
{
    /// <summary>Designation with temper, as on the order: "EN AW-5754 H22".</summary>
    public required string Designation { get; init; }

    /// <summary>Density (t/mm³).</summary>
    public required double Density { get; init; }

    /// <summary>Young's modulus (MPa).</summary>
    public required double Modulus { get; init; }

    /// <summary>Poisson's ratio.</summary>
    public required double Poisson { get; init; }

    /// <summary>Yield strength or 0.2 % proof strength (MPa).</summary>
    public required double Yield { get; init; }

    /// <summary>Minimum tensile strength of the standard (MPa): what a washer may press on; null if it is not given.</summary>
    public double? MinTensile { get; init; }

    /// <summary>Pressure (MPa) under a screw's head or washer that does not sink in.</summary>
    /// <remarks>0.88 of the tensile strength: no metal of VDI 2230 Blatt 1, table A9 (2003), has less up to a tensile strength of 1000 MPa; the yield strength where the tensile strength is not known.</remarks>
    public double LimitingPressure => Math.Max(Yield, 0.88 * (MinTensile ?? 0));

    /// <summary>Maximum tensile strength that the standard allows the sheet (MPa): what a bend may take in force; null if it is not given.</summary>
    public double? MaxTensile { get; init; }

    /// <summary>Endurance limit: fully reversed stress amplitude that the sheet survives for the life of the vehicle (MPa).</summary>
    public required double Endurance { get; init; }

    /// <summary>Minimum inside radius over thickness with the bend line across the grain.</summary>
    public required double MinRadiusAcrossGrain { get; init; }

    /// <summary>Minimum inside radius over thickness with the bend line along the grain.</summary>
    public required double MinRadiusAlongGrain { get; init; }

    /// <summary>Row of Machinery's Handbook's bend allowance table.</summary>
    public required BendGroup BendGroup { get; init; }

    /// <summary>Whether it is a rolled steel: by density and Young's modulus, which no brass, copper or aluminium comes near.</summary>
    public bool IsSteel => IsSteelOf(Density, Modulus);

    /// <summary>The same by density (t/mm³) and Young's modulus (MPa).</summary>
    public static bool IsSteelOf(double density, double modulus) => density is > LightestSteel and < HeaviestSteel && modulus is > SoftestSteel and < StiffestSteel;

    // Between cast iron and brass (t/mm³); rolled steels have 7.7 to 8.0 kg/dm³ (EN 10088-1, EN 1993-1-1).
    private const double LightestSteel = 7.3e-9, HeaviestSteel = 8.3e-9;

    // Copper and brass have 100 to 130 GPa, rolled steels 190 to 220 (MPa).
    private const double SoftestSteel = 170_000, StiffestSteel = 230_000;

    /// <summary>Price of a kilogram, in the currency of the shop's rates; null for the price that they give for any sheet.</summary>
    public double? PricePerKilogram { get; init; }

    /// <summary>What protects parts made of it.</summary>
    public Finish Finish { get; init; } = Finish.NotStated;

    /// <summary>Where the numbers come from.</summary>
    public required string Source { get; init; }
}

/// <summary>A sheet in stock.</summary>
/// <param name="Material">What it is.</param>
/// <param name="Thickness">Its thickness (mm).</param>
public sealed record Stock(Material Material, double Thickness);
