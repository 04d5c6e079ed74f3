using BracketGen.Mechanism.Grooves;
using BracketGen.Mechanism.Throttles;

namespace BracketGen.Mechanism.Forces;

/// <summary>Moment of inertia of what turns with the throttle shaft, estimated on the heavy side.</summary>
/// <remarks>
/// Plate: a disc of the bore's diameter about its own diameter, m r²/4; shaft and quadrant: solid cylinders about their axis, m r²/2 (any handbook of mechanics). The quadrant counts as a whole
/// disc. Steel throughout; plate 2 mm thick, shaft 60 mm longer than the bore (common practice, no source).
/// </remarks>
public static class ShaftInertia
{
    // t/mm³.
    private const double SteelDensity = 7.85e-9;

    private const double PlateThickness = 2, ShaftBeyondBore = 60;

    /// <summary>The estimate (t·mm²).</summary>
    /// <param name="valve">The valve.</param>
    /// <param name="quadrant">The quadrant.</param>
    public static double Estimate(ButterflyValve valve, Quadrant quadrant) =>
        Math.PI / 4 * SteelDensity * PlateThickness * Math.Pow(valve.Bore / 2, 4)
        + Cylinder(valve.Shaft / 2, valve.Bore + ShaftBeyondBore)
        + Cylinder(quadrant.OuterRadius, quadrant.Thickness);

    private static double Cylinder(double radius, double length) => Math.PI / 2 * SteelDensity * length * Math.Pow(radius, 4);
}
