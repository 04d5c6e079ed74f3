using System.Collections.Immutable;
using BracketGen.SheetMetal.Bending;

namespace BracketGen.SheetMetal.Shops;

/// <summary>Sheet that a small shop buys, ready to be named in its file.</summary>
/// <remarks>
/// Yield strength and tensile strength are minimum values of the standard, and the lowest of its thicknesses from 1 to 6 mm; each source says what was read and what is from memory. Minimum radii are for
/// a bend of 90 degrees, the largest of those thicknesses. Endurance is 0.4 of the minimum tensile strength for steel and 0.3 for aluminium (common practice, no source). A shop's file may give any of the numbers anew.
/// </remarks>
public static class SheetLibrary
{
    // t/mm³ for kg/m³.
    private const double KilogramPerCubicMetre = 1e-12;

    private const string Memory = "; radii common practice; from memory";

    /// <summary>The sheets, by designation as on the order.</summary>
    public static ImmutableArray<Material> All { get; } =
    [
        Steel("S235JR", 235, 360, 510, 1.25, 1.6, BendGroup.SoftSteelOrAluminium, "EN 10025-2: ReH 235, Rm 360 to 510 MPa; radii as for S235JRC, 3 to 5 mm; from memory"),
        Steel("S315MC", 315, 390, 510, 0.5, 1, BendGroup.SoftSteelOrAluminium, "EN 10149-2: ReH 315, Rm 390 to 510 MPa, radius 0.5 t for 3 to 6 mm, as a mill prints it; twice that along the grain common practice"),
        Steel("S355MC", 355, 430, 550, 0.5, 1, BendGroup.SoftSteelOrAluminium, "EN 10149-2: ReH 355, Rm 430 to 550 MPa, radius 0.5 t for 3 to 6 mm, as a mill prints it; twice that along the grain common practice"),
        Steel("DC01", 140, 270, 410, 0.5, 1, BendGroup.ColdRolledOrSpringSteel, "EN 10130: Rm 270 to 410 MPa, Re 140 MPa as its note allows for design" + Memory),
        Steel("DC04", 140, 270, 350, 0.5, 0.5, BendGroup.ColdRolledOrSpringSteel, "EN 10130: Rm 270 to 350 MPa, Re 140 MPa as its note allows for design" + Memory),
        Steel("DX51D+Z", 140, 270, 500, 1, 1, BendGroup.ColdRolledOrSpringSteel, "EN 10346: Rm 270 to 500 MPa; it promises no yield strength, so that of DC01 counts" + Memory),
        Steel("S250GD+Z", 250, 330, null, 1, 1.5, BendGroup.ColdRolledOrSpringSteel, "EN 10346: Rp0.2 250, Rm 330 MPa" + Memory),
        Stainless("1.4301", 210, 520, 750, "EN 10088-2: Rp0.2 210 MPa hot-rolled (230 cold-rolled), Rm 520 to 750 MPa" + Memory),
        Stainless("1.4307", 200, 500, 700, "EN 10088-2: Rp0.2 200 MPa hot-rolled, Rm 500 to 700 MPa" + Memory),
        Stainless("1.4404", 220, 530, 680, "EN 10088-2: Rp0.2 220 MPa hot-rolled, Rm 530 to 680 MPa" + Memory),
        Aluminium("EN AW-1050A H14", 85, 105, 145, 1.5, 2, 2700, "EN 485-2: Rp0.2 85, Rm 105 to 145 MPa" + Memory),
        Aluminium("EN AW-5754 H111", 80, 190, 240, 1, 1.5, 2670, "EN 485-2: Rp0.2 80, Rm 190 to 240 MPa" + Memory),
        Aluminium("EN AW-5754 H22", 130, 220, 270, 1.5, 2, 2670, "EN 485-2: Rp0.2 130, Rm 220 to 270 MPa" + Memory),
        Aluminium("EN AW-5083 H111", 125, 275, 350, 1.5, 2, 2660, "EN 485-2: Rp0.2 125, Rm 275 to 350 MPa" + Memory),
        Aluminium("EN AW-6082 T6", 255, 300, null, 4.5, 6, 2700, "EN 485-2: Rp0.2 255, Rm 300 MPa; it cracks when it is bent tighter" + Memory),
        Steel("ASTM A36", 250, 400, 550, 1.5, 2, BendGroup.SoftSteelOrAluminium, "ASTM A36: yield 250, tensile 400 to 550 MPa" + Memory),
        Steel("ASTM A1008 CS Type B", 140, 270, 410, 0.5, 1, BendGroup.ColdRolledOrSpringSteel, "ASTM A1008 promises no strength for commercial steel: that of DC01 counts" + Memory),
        Steel("ASTM A1011 SS Grade 36 Type 1", 250, 365, null, 1.5, 2, BendGroup.SoftSteelOrAluminium, "ASTM A1011: yield 250, tensile 365 MPa" + Memory),
        Stainless("ASTM A240 304", 205, 515, null, "ASTM A240: yield 205, tensile 515 MPa" + Memory),
        Stainless("ASTM A240 304L", 170, 485, null, "ASTM A240: yield 170, tensile 485 MPa" + Memory),
        Stainless("ASTM A240 316L", 170, 485, null, "ASTM A240: yield 170, tensile 485 MPa" + Memory),
        Aluminium("ASTM B209 3003-H14", 115, 140, 180, 1, 1.5, 2730, "ASTM B209: yield 17 ksi, tensile 20 to 26 ksi" + Memory),
        Aluminium("ASTM B209 5052-H32", 160, 215, 265, 1.5, 2, 2680, "ASTM B209: yield 23 ksi, tensile 31 to 38 ksi" + Memory),
        Aluminium("ASTM B209 6061-T6", 240, 290, null, 4, 6, 2700, "ASTM B209: yield 35 ksi, tensile 42 ksi; it cracks when it is bent tighter" + Memory),
    ];

    /// <summary>The sheet of a designation, spelled as here; null where there is none.</summary>
    /// <param name="designation">The designation.</param>
    public static Material? Of(string designation) => All.FirstOrDefault(m => m.Designation == designation);

    private static Material Steel(string designation, double yield, double tensile, double? max, double across, double along, BendGroup group, string source) =>
        Sheet(designation, (yield, tensile, max), 0.4, (across, along), group, (7850, 210_000, 0.3), source);

    // Rolled austenitic sheet bends the same along the grain and across; half a thickness more is the trade's caution.
    private static Material Stainless(string designation, double yield, double tensile, double? max, string source) =>
        Sheet(designation, (yield, tensile, max), 0.4, (1, 1.5), BendGroup.ColdRolledOrSpringSteel, (7900, 200_000, 0.3), source);

    internal static Material Aluminium(string designation, double yield, double tensile, double? max, double across, double along, double density, string source) =>
        Sheet(designation, (yield, tensile, max), 0.3, (across, along), BendGroup.SoftSteelOrAluminium, (density, 70_000, 0.33), source);

    private static Material Sheet(
        string designation, (double Yield, double Min, double? Max) strength, double endurance, (double Across, double Along) radius, BendGroup group, (double Density, double Modulus, double Poisson) elastic, string source)
    {
        return new()
        {
            Designation = designation,
            Density = elastic.Density * KilogramPerCubicMetre,
            Modulus = elastic.Modulus,
            Poisson = elastic.Poisson,
            Yield = strength.Yield,
            MinTensile = strength.Min,
            MaxTensile = strength.Max,
            Endurance = endurance * strength.Min,
            MinRadiusAcrossGrain = radius.Across,
            MinRadiusAlongGrain = radius.Along,
            BendGroup = group,
            Source = source,
        };
    }
}
