using BracketGen.Geometry;

namespace BracketGen.Mechanism.Cables;

/// <summary>How the wire lies in the outer's bore, and what a change of the outer's bends does to the free play.</summary>
/// <remarks>
/// A taut wire lies on the inside of every bend: its path is shorter than the outer's line by c β, c the radial clearance, β the bends added up. If β
/// changes, the path changes by c Δβ. A slack wire may lie on either side, so as much again.
/// </remarks>
public static class WireLay
{
    /// <summary>Radial clearance (mm) of a wire in a bore: half of the difference of the diameters (mm).</summary>
    public static double Clearance(double bore, double wireDiameter) => (bore - wireDiameter) / 2;

    /// <summary>Change of a taut wire's path (mm).</summary>
    /// <param name="clearance">Radial clearance (mm).</param>
    /// <param name="change">Change of the bends.</param>
    public static double Taut(double clearance, Angle change) => clearance * change.Magnitude.Radians;

    /// <summary>Maximum change of a slack wire's path (mm): what it can take of the free play.</summary>
    /// <param name="clearance">Radial clearance (mm).</param>
    /// <param name="change">Change of the bends.</param>
    public static double Slack(double clearance, Angle change) => 2 * Taut(clearance, change);
}
