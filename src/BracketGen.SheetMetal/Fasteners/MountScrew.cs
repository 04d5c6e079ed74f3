using BracketGen.SheetMetal.Standards;

namespace BracketGen.SheetMetal.Fasteners;

/// <summary>What holds sheet at a mount hole: a hexagon head screw in a tapped boss, a bolt through a flange with its nut, or the nut of a stud; a plain washer under each head and nut.</summary>
/// <remarks>
/// Screw ISO 4017 or ASME B18.2.1; washer ISO 7089 or ASME B18.21.1, type A, narrow. The preload is the smaller of what the screw carries (VDI 2230) and half of
/// what strips the boss's thread; where a nut holds, what the screw carries at the bad end of friction and wrench.
/// </remarks>
/// <param name="Thread">Thread.</param>
/// <param name="Length">Nominal length (mm); of a stud, how far it stands out of the face.</param>
/// <param name="Engagement">How far it goes into the boss (mm); zero for a bolt with a nut.</param>
public sealed record MountScrew(FastenerThread Thread, double Length, double Engagement)
{
    /// <summary>Minimum engagement over the diameter (common practice, no source: 1.5 to 2 in aluminium).</summary>
    public const double LeastEngagement = 1.5;

    /// <summary>Shear strength of a boss of cast aluminium (MPa): the weaker permanent-mould casting alloys, from memory of VDI 2230 Blatt 1, table A9.</summary>
    public const double BossShear = 110;

    /// <summary>How many times the preload the thread of the boss carries (our judgement, no source): wear, porous castings, friction lower than assumed.</summary>
    public const double StrippingReserve = 2;

    /// <summary>Nominal lengths (mm) that ISO 4017 prefers (ISO 888), within those usual from M4 to M12.</summary>
    private static readonly double[] Metric = [8, 10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80, 90, 100];

    /// <summary>Nominal lengths (mm) of hexagon cap screws that dealers keep: eighths of an inch up to 1 in, quarters above (common practice, no source).</summary>
    private static readonly double[] Inch = [.. ((double[])[3, 4, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 32]).Select(eighths => eighths / 8 * 25.4)];

    /// <summary>The nominal lengths (mm) that dealers keep, shortest first.</summary>
    public static IReadOnlyList<double> NominalLengths(FastenerThread thread) => LengthsOf(thread);

    private static double[] LengthsOf(FastenerThread thread) => thread.System == ThreadSystem.Inch ? Inch : Metric;

    /// <summary>Property class.</summary>
    public ScrewClass Class { get; init; } = ScrewClass.Usual;

    /// <summary>Friction in thread and under the head.</summary>
    public ScrewFriction Friction { get; init; } = ScrewFriction.Usual;

    /// <summary>The metal of the boss.</summary>
    public BossMetal Boss { get; init; } = BossMetal.Usual;

    /// <summary>The spacer between sheet and boss; null where there is none.</summary>
    public Spacer? Spacer { get; init; }

    /// <summary>How the hole holds it.</summary>
    public Fixing Fixing { get; init; } = new TappedHole();

    /// <summary>Whether a nut holds it.</summary>
    public bool HasNut => Fixing is not TappedHole;

    /// <summary>Whether the thread of a boss holds it.</summary>
    public bool HoldsInBoss => Fixing is not ThroughHole;

    /// <summary>Plain washers: under each head and each nut.</summary>
    public int Washers => Fixing is ThroughHole ? 2 : 1;

    /// <summary>Thickness of the flange that it clamps besides the sheet (mm).</summary>
    public double Flange => Fixing is ThroughHole through ? through.Flange : 0;

    /// <summary>Load (N) that the nut carries without stripping: proof stress of its class times the stress area.</summary>
    public double NutLoad => Class.Nut.Proof * Sizes.StressArea;

    /// <summary>Length (mm) that the end of the thread stands out of its nut, or more: one pitch on a stud, two on a bolt, whose length has a tolerance (common practice, no source).</summary>
    public double PastNut => (Fixing is MountStud ? 1 : 2) * Thread.Pitch;

    /// <summary>How far a stud must stand out of the face (mm): sheet, washer, nut and a pitch.</summary>
    public double StudNeeded(double thickness) => thickness + Thread.WasherThickness + Thread.NutHeight + PastNut;

    /// <summary>Room (mm) needed behind the flange: what the bolt stands out of it.</summary>
    public double RoomNeeded(double thickness) => Length - thickness - Thread.WasherThickness - Flange;

    /// <summary>The sizes of its thread.</summary>
    public ScrewThread Sizes => ScrewThread.Of(Thread);

    /// <summary>Load (N) that strips the boss's thread; the chamfered tip, 0.8 pitches, does not bear (VDI 2230).</summary>
    public double StrippingLoad => Boss.Shear * Sizes.StrippingArea(Math.Max(0, Engagement - 0.8 * Thread.Pitch));

    /// <summary>Preload that the screw alone would carry (N).</summary>
    /// <remarks>
    /// With the middle of its friction class in a boss, whose thread is weaker as a rule. A nut is as strong as its screw: the torque must not stretch the screw where friction is at its minimum and the wrench
    /// reads low (VDI 2230, tightening torque for the minimum friction).
    /// </remarks>
    public double ScrewPreload => HasNut
        ? Tightening.PreloadAtYield(Sizes, Class.Yield, Friction.Min) / (1 + ClampedJoint.WrenchError)
            * Tightening.Torque(Sizes, 1, Thread.ClearanceMedium, Friction.Min) / Tightening.Torque(Sizes, 1, Thread.ClearanceMedium, Friction.Middle)
        : Tightening.PreloadAtYield(Sizes, Class.Yield, Friction.Middle);

    /// <summary>Preload (N).</summary>
    public double Preload => HoldsInBoss ? Math.Min(ScrewPreload, StrippingLoad / StrippingReserve) : ScrewPreload;

    /// <summary>Whether the boss's thread limits it, and not the screw.</summary>
    public bool IsLimitedByBoss => HoldsInBoss && StrippingLoad / StrippingReserve < ScrewPreload;

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
    public MountScrew With(double engagement) => this with { Engagement = engagement };

    /// <summary>The shortest screw of the standard that holds sheet of <paramref name="thickness"/> (mm) with its washer and goes deep enough.</summary>
    public static MountScrew For(FastenerThread thread, double thickness)
    {
        var grip = thickness + thread.WasherThickness;
        var length = LengthsOf(thread).First(l => l - grip >= LeastEngagement * thread.Diameter);
        return new(thread, length, length - grip);
    }

    /// <summary>What holds the sheet at a hole of any kind.</summary>
    /// <param name="thread">Thread.</param>
    /// <param name="thickness">Thickness of the sheet with its spacer (mm).</param>
    /// <param name="depth">Depth of full thread in the boss, or of the stud in it (mm); null where it is not known.</param>
    /// <param name="fixing">How the hole holds it.</param>
    public static MountScrew For(FastenerThread thread, double thickness, double? depth, Fixing fixing) => fixing switch
    {
        ThroughHole through => Through(thread, thickness, through),
        MountStud stud => new(thread, stud.StandsOut, depth ?? thread.Diameter) { Fixing = stud },
        _ => For(thread, thickness, depth),
    };

    // Sheet, flange, two washers, the nut, and the end of the thread.
    private static MountScrew Through(FastenerThread thread, double thickness, ThroughHole hole)
    {
        var any = new MountScrew(thread, 0, 0) { Fixing = hole };
        var needed = thickness + hole.Flange + 2 * thread.WasherThickness + thread.NutHeight + any.PastNut;
        return any with { Length = LengthsOf(thread).First(l => l >= needed) };
    }

    /// <summary>
    /// The same for a boss whose depth of full thread is known: where it is too shallow for that screw, the longest that does not bottom in it and still has one diameter
    /// of thread; where there is none, that screw all the same, and the boss fails it.
    /// </summary>
    /// <param name="thread">Thread.</param>
    /// <param name="thickness">Thickness of the sheet with its spacer (mm).</param>
    /// <param name="depth">Depth of full thread in the boss (mm); null where it is not known.</param>
    public static MountScrew For(FastenerThread thread, double thickness, double? depth)
    {
        var usual = For(thread, thickness);
        if (depth is not { } known || usual.ThreadNeeded <= known)
        {
            return usual;
        }

        var grip = thickness + thread.WasherThickness;
        var shorter = LengthsOf(thread).Select(l => new MountScrew(thread, l, l - grip)).LastOrDefault(s => s.Engagement >= thread.Diameter && s.ThreadNeeded <= known);
        return shorter ?? usual;
    }
}
