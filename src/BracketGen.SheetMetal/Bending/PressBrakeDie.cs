using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Bending;

/// <summary>A V die of the press brake with the inside radius it gives in air bending.</summary>
/// <param name="Opening">Die opening (mm).</param>
/// <param name="InsideRadius">Inside radius of the bend it gives (mm).</param>
public sealed record PressBrakeDie(double Opening, double InsideRadius)
{
    /// <summary>Minimum die opening over thickness.</summary>
    /// <remarks>Common practice, no source: 6 to 12 thicknesses; under 6 the force marks the sheet.</remarks>
    public const double LeastOpeningRatio = 6;

    /// <summary>Maximum die opening over thickness (common practice, no source).</summary>
    public const double MostOpeningRatio = 12;

    /// <summary>Whether the die suits sheet of <paramref name="thickness"/> (mm).</summary>
    public bool Suits(double thickness) =>
        Opening >= LeastOpeningRatio * thickness && Opening <= MostOpeningRatio * thickness;

    /// <summary>
    /// Shortest flange (mm), from the outside corner (where the outsides of the two flanges would meet) to the edge, that still
    /// lies on the shoulder of the V at the end of the bend.
    /// </summary>
    /// <remarks>
    /// The leg lies at half the bend angle to the level and must span half the opening: (V/2) / cos(A/2). At 90° this is
    /// 0.707 V, the 0.7 V of common practice.
    /// </remarks>
    public double ShortestFlange(Angle bend) => Opening / 2 / Math.Cos(bend.Magnitude.Radians / 2);
}
