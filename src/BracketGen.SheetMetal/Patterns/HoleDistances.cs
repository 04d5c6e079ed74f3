namespace BracketGen.SheetMetal.Patterns;

/// <summary>Minimum distances of holes from edges and bends.</summary>
public static class HoleDistances
{
    /// <summary>Minimum distance (mm) from a clearance hole's centre to the edge for a hole diameter (mm).</summary>
    /// <remarks>EN 1993-1-8, table 3.3: e1 and e2 at least 1.2 d0.</remarks>
    public static double CentreToEdge(double holeDiameter) => 1.2 * holeDiameter;

    /// <summary>Minimum distance (mm) from a hole's edge to the beginning of a bend.</summary>
    /// <remarks>Common practice, no source: two thicknesses, so that the hole stays round.</remarks>
    public static double EdgeToBend(double thickness) => 2 * thickness;
}
