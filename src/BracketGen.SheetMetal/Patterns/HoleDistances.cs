namespace BracketGen.SheetMetal.Patterns;

/// <summary>Minimum distances of holes from edges and bends.</summary>
public static class HoleDistances
{
    /// <summary>Sheet below this thickness (mm) is thin-gauge: EN 1993-1-3 holds besides EN 1993-1-8.</summary>
    public const double ThinSheet = 3;

    /// <summary>Minimum distance (mm) from a clearance hole's centre to an edge that the force acts towards.</summary>
    /// <remarks>
    /// EN 1993-1-8, table 3.3: e1 at least 1.2 d0; EN 1993-1-3, table 8.4, for sheet under 3 mm: e1 at least 1.0 d0 (from memory). The larger of both. The
    /// second is written for M6 and larger in steel; M4, M5 and aluminium are taken by the same numbers (EN 1999-1-1, table 8.2, minimum 1.2 d0; from
    /// memory).
    /// </remarks>
    /// <param name="holeDiameter">Hole diameter (mm).</param>
    public static double AlongForce(double holeDiameter) => 1.2 * holeDiameter;

    /// <summary>Minimum distance (mm) from a clearance hole's centre to an edge beside the force; where the force may act any way, to every edge.</summary>
    /// <remarks>
    /// EN 1993-1-8, table 3.3: e2 at least 1.2 d0; EN 1993-1-3, table 8.4, for sheet under 3 mm: e2 at least 1.5 d0 (from memory). The larger of both.
    /// M4, M5 and aluminium as for <see cref="AlongForce"/>.
    /// </remarks>
    /// <param name="holeDiameter">Hole diameter (mm).</param>
    /// <param name="thickness">Thickness of the sheet (mm).</param>
    public static double AcrossForce(double holeDiameter, double thickness) => (thickness < ThinSheet ? 1.5 : 1.2) * holeDiameter;

    /// <summary>Minimum distance (mm) from the middle line of a slotted hole to every edge.</summary>
    /// <remarks>EN 1993-1-8, table 3.3: e3 and e4, to the sides and to the ends of a slot from the centre of its round end, at least 1.5 d0 (from memory).</remarks>
    /// <param name="width">Width of the slot (mm).</param>
    public static double RoundSlot(double width) => 1.5 * width;

    /// <summary>Minimum distance (mm) from a hole's edge to the beginning of a bend.</summary>
    /// <remarks>Common practice, no source: two thicknesses, so that the hole stays round.</remarks>
    public static double EdgeToBend(double thickness) => 2 * thickness;
}
