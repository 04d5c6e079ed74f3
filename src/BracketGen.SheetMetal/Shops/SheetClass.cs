using System.Collections.Immutable;
using BracketGen.SheetMetal.Bending;

namespace BracketGen.SheetMetal.Shops;

/// <summary>Sheet of which only the kind of metal is known: a magnet and a scratch tell that much of a bought part.</summary>
/// <remarks>
/// Each stands for the weakest sheet of its kind that is sold for bent parts, so that a part that is strong enough as this one is strong enough as any of them.
/// Strengths are the minimum values of the standards, from memory; endurance is 0.4 of the tensile strength for steel and 0.3 for aluminium (common practice, no
/// source).
/// </remarks>
public static class SheetClass
{
    // In t/mm³.
    private const double KilogramPerCubicMetre = 1e-12;

    /// <summary>The classes, each by the word that a bracket's file gives.</summary>
    public static ImmutableArray<Material> All { get; } =
    [
        new()
        {
            Designation = "steel",
            Density = 7850 * KilogramPerCubicMetre,
            Modulus = 210_000,
            Poisson = 0.3,
            Yield = 140,
            MinTensile = 270,
            Endurance = 108,
            MinRadiusAcrossGrain = 0.5,
            MinRadiusAlongGrain = 1,
            BendGroup = BendGroup.ColdRolledOrSpringSteel,
            Source = "the weakest usual: DC01, EN 10130, Rm 270 MPa, Re 140 MPa as its note allows for design; from memory",
        },
        new()
        {
            Designation = "stainless steel",
            Density = 7900 * KilogramPerCubicMetre,
            Modulus = 200_000,
            Poisson = 0.3,
            Yield = 210,
            MinTensile = 520,
            Endurance = 208,
            MinRadiusAcrossGrain = 1,
            MinRadiusAlongGrain = 1.5,
            BendGroup = BendGroup.ColdRolledOrSpringSteel,
            Source = "the weakest usual: 1.4301 hot-rolled, EN 10088-2, Rp0.2 210, Rm 520 MPa; from memory",
        },
        new()
        {
            Designation = "aluminium",
            Density = 2700 * KilogramPerCubicMetre,
            Modulus = 69_000,
            Poisson = 0.33,
            Yield = 20,
            MinTensile = 65,
            Endurance = 19,
            MinRadiusAcrossGrain = 0.5,
            MinRadiusAlongGrain = 1,
            BendGroup = BendGroup.SoftSteelOrAluminium,
            Source = "the weakest usual: EN AW-1050A O, EN 485-2, Rp0.2 20, Rm 65 MPa; from memory",
        },
    ];

    /// <summary>The class that a word names; null where it names none.</summary>
    /// <param name="word">The word.</param>
    public static Material? Of(string word) => All.FirstOrDefault(m => m.Designation == word);
}
