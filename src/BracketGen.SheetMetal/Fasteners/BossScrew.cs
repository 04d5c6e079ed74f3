using BracketGen.SheetMetal.Standards;

namespace BracketGen.SheetMetal.Fasteners;

/// <summary>A hexagon head screw that holds sheet on a tapped boss of cast aluminium, a plain washer under its head.</summary>
/// <remarks>
/// Screw ISO 4017, property class 8.8; washer ISO 7089. The preload is the smaller of what the screw carries (VDI 2230) and half of
/// what strips the boss's thread.
/// </remarks>
/// <param name="Thread">Thread.</param>
/// <param name="Length">Nominal length (mm).</param>
/// <param name="Engagement">How far it goes into the boss (mm).</param>
public sealed record BossScrew(MetricThread Thread, double Length, double Engagement)
{
    /// <summary>Minimum engagement over the diameter (common practice, no source: 1.5 to 2 in aluminium).</summary>
    public const double LeastEngagement = 1.5;

    /// <summary>Shear strength of the boss (MPa): the weaker permanent-mould casting alloys, from memory of VDI 2230 Blatt 1, table A9.</summary>
    public const double BossShear = 110;

    /// <summary>How many times the preload the thread of the boss carries (our judgement, no source): wear, porous castings, friction lower than assumed.</summary>
    public const double StrippingReserve = 2;

    /// <summary>Nominal lengths (mm) that ISO 4017 prefers (ISO 888), within those usual from M4 to M12.</summary>
    private static readonly double[] Lengths = [8, 10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60];

    private ScrewThread Sizes => ScrewThread.Of(Thread);

    /// <summary>Load (N) that strips the boss's thread; the chamfered tip, 0.8 pitches, does not bear (VDI 2230).</summary>
    public double StrippingLoad => BossShear * Sizes.StrippingArea(Math.Max(0, Engagement - 0.8 * Thread.Pitch));

    /// <summary>Preload that the screw alone would carry (N).</summary>
    public double ScrewPreload => Tightening.PreloadAtYield(Sizes);

    /// <summary>Preload (N).</summary>
    public double Preload => Math.Min(ScrewPreload, StrippingLoad / StrippingReserve);

    /// <summary>Whether the boss's thread limits it, and not the screw.</summary>
    public bool IsLimitedByBoss => StrippingLoad / StrippingReserve < ScrewPreload;

    /// <summary>Torque for the preload (N·mm), rounded down to half a newton metre as torque wrenches are set.</summary>
    public double Torque => Math.Floor(TorqueFor(Preload) / 500) * 500;

    /// <summary>Torque for a preload (N), in N·mm.</summary>
    public double TorqueFor(double preload) => Tightening.Torque(Sizes, preload, Thread.ClearanceMedium);

    /// <summary>
    /// Depth of full thread that the boss must have (mm): the screw, half a millimetre in case the sheet is thinner, and two pitches so
    /// that the screw never bottoms (common practice, no source).
    /// </summary>
    public double ThreadNeeded => Engagement + 0.5 + 2 * Thread.Pitch;

    /// <summary>The same screw with less thread in the boss (mm).</summary>
    public BossScrew With(double engagement) => this with { Engagement = engagement };

    /// <summary>The shortest screw of the standard that holds sheet of <paramref name="thickness"/> (mm) with its washer and goes deep enough.</summary>
    public static BossScrew For(MetricThread thread, double thickness)
    {
        var grip = thickness + thread.WasherThickness;
        var length = Lengths.First(l => l - grip >= LeastEngagement * thread.Diameter);
        return new(thread, length, length - grip);
    }
}
