using System.Collections.Immutable;

namespace BracketGen.SheetMetal.Fasteners;

/// <summary>The metal that a mount hole is tapped in.</summary>
/// <remarks>
/// Shear strength and limiting pressure of the weakest usual grade: VDI 2230 Blatt 1, table A9 (shear from memory; pressures
/// GK-AlSi9Cu3 220, AlMgSi1 F31 260, GJL-250 900, S235 490 MPa of the 2003 edition as printed in the technical pages of a screw
/// catalogue; where two values are known the lower one). Young's moduli: EN 1999-1-1, EN 1561, EN 1993-1-1.
/// </remarks>
/// <param name="Name">Name.</param>
/// <param name="Shear">Shear strength (MPa).</param>
/// <param name="Pressure">Limiting pressure on its face (MPa).</param>
/// <param name="Modulus">Young's modulus (MPa).</param>
public sealed record BossMetal(string Name, double Shear, double Pressure, double Modulus)
{
    /// <summary>Cast aluminium: what is taken where the throttle body's file names none; no usual metal is weaker.</summary>
    public static BossMetal Usual { get; } = new("cast aluminium", MountScrew.BossShear, 220, 70_000);

    /// <summary>The metals the program knows.</summary>
    public static ImmutableArray<BossMetal> All { get; } =
        [Usual, new("wrought aluminium", 170, 230, 70_000), new("cast iron", 200, 600, 100_000), new("steel", 200, 260, 205_000)];
}
