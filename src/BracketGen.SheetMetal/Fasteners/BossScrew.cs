using BracketGen.SheetMetal.Standards;

namespace BracketGen.SheetMetal.Fasteners;

/// <summary>A hexagon head screw that holds sheet on a tapped boss, a plain washer under its head.</summary>
/// <remarks>
/// Screw ISO 4017; washer ISO 7089. The preload is the smaller of what the screw carries (VDI 2230) and half of
/// what strips the boss's thread.
/// </remarks>
/// <param name="Thread">Thread.</param>
/// <param name="Length">Nominal length (mm).</param>
/// <param name="Engagement">How far it goes into the boss (mm).</param>
public sealed record BossScrew(MetricThread Thread, double Length, double Engagement)
{
    /// <summary>Minimum engagement over the diameter (common practice, no source: 1.5 to 2 in aluminium).</summary>
    public const double LeastEngagement = 1.5;

    /// <summary>Shear strength of a boss of cast aluminium (MPa): the weaker permanent-mould casting alloys, from memory of VDI 2230 Blatt 1, table A9.</summary>
    public const double BossShear = 110;

    /// <summary>How many times the preload the thread of the boss carries (our judgement, no source): wear, porous castings, friction lower than assumed.</summary>
    public const double StrippingReserve = 2;

    /// <summary>Nominal lengths (mm) that ISO 4017 prefers (ISO 888), within those usual from M4 to M12.</summary>
    private static readonly double[] Lengths = [8, 10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60];

    /// <summary>Property class.</summary>
    public ScrewClass Class { get; init; } = ScrewClass.Usual;

    /// <summary>Friction in thread and under the head.</summary>
    public ScrewFriction Friction { get; init; } = ScrewFriction.Usual;

    /// <summary>The metal of the boss.</summary>
    public BossMetal Boss { get; init; } = BossMetal.Usual;

    /// <summary>The sizes of its thread.</summary>
    public ScrewThread Sizes => ScrewThread.Of(Thread);

    /// <summary>Load (N) that strips the boss's thread; the chamfered tip, 0.8 pitches, does not bear (VDI 2230).</summary>
    public double StrippingLoad => Boss.Shear * Sizes.StrippingArea(Math.Max(0, Engagement - 0.8 * Thread.Pitch));

    /// <summary>Preload that the screw alone would carry (N).</summary>
    public double ScrewPreload => Tightening.PreloadAtYield(Sizes, Class.Yield, Friction.Middle);

    /// <summary>Preload (N).</summary>
    public double Preload => Math.Min(ScrewPreload, StrippingLoad / StrippingReserve);

    /// <summary>Whether the boss's thread limits it, and not the screw.</summary>
    public bool IsLimitedByBoss => StrippingLoad / StrippingReserve < ScrewPreload;

    /// <summary>Torque for the preload (N·mm), rounded down to half a newton metre as torque wrenches are set.</summary>
    public double Torque => Math.Floor(TorqueFor(Preload) / 500) * 500;

    /// <summary>Torque for a preload (N), in N·mm.</summary>
    public double TorqueFor(double preload) => Tightening.Torque(Sizes, preload, Thread.ClearanceMedium, Friction.Middle);

    /// <summary>Preload (N) that <see cref="Torque"/> gives with a friction and a wrench that is off.</summary>
    /// <param name="friction">Friction coefficient.</param>
    /// <param name="wrench">Torque applied over torque set.</param>
    public double PreloadWith(double friction, double wrench = 1) => wrench * Torque / Tightening.Torque(Sizes, 1, Thread.ClearanceMedium, friction);

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

    /// <summary>
    /// The same for a boss whose depth of full thread is known: where it is too shallow for that screw, the longest that does not bottom in it and still has one diameter
    /// of thread; where there is none, that screw all the same, and the boss fails it.
    /// </summary>
    /// <param name="thread">Thread.</param>
    /// <param name="thickness">Thickness of the sheet (mm).</param>
    /// <param name="depth">Depth of full thread in the boss (mm); null where it is not known.</param>
    public static BossScrew For(MetricThread thread, double thickness, double? depth)
    {
        var usual = For(thread, thickness);
        if (depth is not { } known || usual.ThreadNeeded <= known)
        {
            return usual;
        }

        var grip = thickness + thread.WasherThickness;
        var shorter = Lengths.Select(l => new BossScrew(thread, l, l - grip)).LastOrDefault(s => s.Engagement >= thread.Diameter && s.ThreadNeeded <= known);
        return shorter ?? usual;
    }
}
