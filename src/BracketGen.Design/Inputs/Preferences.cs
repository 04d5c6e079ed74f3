using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Design.Inputs;

/// <summary>How the outer's end is let into the stop flange.</summary>
public enum StopOpening
{
    /// <summary>A round hole where the end fitting can be threaded through it, an open slot where it cannot.</summary>
    AsNeeded,

    /// <summary>A round hole.</summary>
    Hole,

    /// <summary>A slot open to the edge, into which the outer's end is laid sideways.</summary>
    OpenSlot,
}

/// <summary>What the user wants of the bracket, with the limits the checks hold it to.</summary>
/// <remarks>The defaults are common practice, no source, unless they say otherwise.</remarks>
public sealed record Preferences : IMirrored<Preferences>
{
    /// <summary>Slack wanted in the wire at the closed stop (mm).</summary>
    public Measured FreePlay { get; init; } = new(2, 0.5);

    /// <summary>Minimum free play with which the valve surely closes (mm).</summary>
    public double MinFreePlay { get; init; } = 1;

    /// <summary>Minimum over-travel: pull left with the valve wide open (mm).</summary>
    public double MinOverTravel { get; init; } = 0.5;

    /// <summary>Maximum over-travel, above which the pedal needs a pedal stop (mm).</summary>
    public double MaxOverTravel { get; init; } = 4;

    /// <summary>Minimum wrap angle at the wide-open stop.</summary>
    public Angle MinWrap { get; init; } = Angle.FromDegrees(10);

    /// <summary>Clearance between the end fitting and the stop, with everything that stands out of it (mm).</summary>
    public double FittingClearance { get; init; } = 5;

    /// <summary>Clearance between what moves and what stands (mm).</summary>
    public double SweepClearance { get; init; } = 3;

    /// <summary>Clearance between the outer and what stands round it (mm).</summary>
    public double OuterClearance { get; init; } = 5;

    /// <summary>Clearance between the bracket and keep-out spaces (mm).</summary>
    public double KeepOutClearance { get; init; } = 2;

    /// <summary>How many times the measured drag of cable and shaft counts for dirt and cold, where the return is judged.</summary>
    public double DirtAndCold { get; init; } = 1.5;

    /// <summary>Part of the adjuster's half range that must be left unused by the design, 0 to 1.</summary>
    public double AdjusterReserve { get; init; } = 0.5;

    /// <summary>Hole or slot.</summary>
    public StopOpening StopOpening { get; init; } = StopOpening.AsNeeded;

    /// <summary>Slotted mount holes; null for round ones.</summary>
    public MountSlots? MountSlots { get; init; }

    /// <summary>Designations of the materials allowed; empty for all in stock.</summary>
    public ImmutableArray<string> Materials { get; init; } = [];

    /// <summary>Thinnest sheet allowed (mm).</summary>
    public double MinThickness { get; init; } = 2;

    /// <summary>Thickest sheet allowed (mm).</summary>
    public double MaxThickness { get; init; } = 6;

    /// <summary>Minimum yield strength over stress with the pedal stamped on.</summary>
    public double MinYieldFactor { get; init; } = 1.2;

    /// <summary>Minimum safety factor against cracking, every opening counted.</summary>
    public double MinEnduranceFactor { get; init; } = 1.5;

    /// <summary>Minimum first natural frequency over the engine's firing frequency at its maximum speed.</summary>
    public double MinFrequencyRatio { get; init; } = 1.2;

    /// <summary>Maximum give of the stop along the wire under the largest tension of an opening (mm).</summary>
    public double MaxGive { get; init; } = 0.5;

    /// <summary>Radius wanted at outline corners (mm).</summary>
    public double CornerRadius { get; init; } = 5;

    /// <inheritdoc/>
    public Preferences Mirrored() => this with { MountSlots = MountSlots?.Mirrored() };

    /// <inheritdoc/>
    public bool Equals(Preferences? other) => other is not null
        && FreePlay == other.FreePlay && MinFreePlay == other.MinFreePlay && MinOverTravel == other.MinOverTravel
        && MaxOverTravel == other.MaxOverTravel && MinWrap == other.MinWrap && FittingClearance == other.FittingClearance
        && SweepClearance == other.SweepClearance && OuterClearance == other.OuterClearance && KeepOutClearance == other.KeepOutClearance
        && AdjusterReserve == other.AdjusterReserve && StopOpening == other.StopOpening
        && Materials.SequenceEqual(other.Materials) && MinThickness == other.MinThickness
        && MaxThickness == other.MaxThickness && CornerRadius == other.CornerRadius
        && MinYieldFactor == other.MinYieldFactor && MinEnduranceFactor == other.MinEnduranceFactor && MinFrequencyRatio == other.MinFrequencyRatio && MaxGive == other.MaxGive
        && DirtAndCold == other.DirtAndCold && MountSlots == other.MountSlots;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(FreePlay, MinWrap, StopOpening, MinThickness, MaxThickness);
}
