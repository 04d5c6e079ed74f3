namespace BracketGen.SheetMetal.Fasteners;

/// <summary>Preload and tightening torque of a screw (VDI 2230 Blatt 1).</summary>
/// <remarks>
/// Friction is assumed equal in the thread and under the head. 0.12 is the middle of the guideline's friction class B, 0.08 to
/// 0.16: plain or zinc-plated steel, dry or lightly oiled.
/// </remarks>
public static class Tightening
{
    /// <summary>Friction coefficient in thread and under the head.</summary>
    public const double Friction = 0.12;

    /// <summary>Yield strength of property class 8.8 up to M16 (MPa), ISO 898-1.</summary>
    public const double YieldOf88 = 640;

    /// <summary>Part of the yield strength that tightening uses (VDI 2230).</summary>
    public const double Utilisation = 0.9;

    /// <summary>Preload (N) at which tension and torsion together use <paramref name="utilisation"/> of the yield strength.</summary>
    /// <remarks>F = ν Rp A / √(1 + 3 (3/2 · d2/dS · (P/(π d2) + 1.155 µ))²), A and dS those of the stress area.</remarks>
    /// <param name="thread">Thread.</param>
    /// <param name="yield">Yield strength (MPa).</param>
    /// <param name="friction">Friction coefficient in the thread.</param>
    /// <param name="utilisation">Part of the yield strength, 0 to 1.</param>
    public static double PreloadAtYield(
        ScrewThread thread, double yield = YieldOf88, double friction = Friction, double utilisation = Utilisation)
    {
        var torsion = 1.5 * thread.PitchDiameter / thread.StressDiameter
            * (thread.Pitch / (Math.PI * thread.PitchDiameter) + 1.155 * friction);
        return utilisation * yield * thread.StressArea / Math.Sqrt(1 + 3 * torsion * torsion);
    }

    /// <summary>Tightening torque (N·mm) for a preload (N): M = F (0.16 P + 0.58 d2 µ + DKm/2 µ).</summary>
    /// <param name="thread">Thread.</param>
    /// <param name="preload">Preload F (N).</param>
    /// <param name="hole">Diameter of the clearance hole under the head (mm); DKm is the mean of it and of the bearing face.</param>
    /// <param name="friction">Friction coefficient µ.</param>
    public static double Torque(ScrewThread thread, double preload, double hole, double friction = Friction) =>
        preload * (0.16 * thread.Pitch + friction * (0.58 * thread.PitchDiameter + (thread.HeadBearing + hole) / 4));
}
