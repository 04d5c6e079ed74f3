using System.Collections.Immutable;
using BracketGen.Design.Checks;

namespace BracketGen.Design.Study;

/// <summary>An input that can be changed to open a way.</summary>
public enum ChangedInput
{
    /// <summary>Pitch radius of the quadrant (mm); the outer radius grows or shrinks by as much.</summary>
    QuadrantRadius,

    /// <summary>Range of the adjuster (mm).</summary>
    AdjusterRange,

    /// <summary>Free inner length of the cable (mm).</summary>
    FreeInnerLength,

    /// <summary>Free play wanted (mm).</summary>
    FreePlay,

    /// <summary>How much smaller a keep-out must be on every side (mm).</summary>
    KeepOut,

    /// <summary>Distance of the wire's hole from the pedal's pivot, as a part of what it is today; the pad's stroke stays.</summary>
    PedalHole,

    /// <summary>Pull of the pedal to a pedal stop (mm), on the same cable arm.</summary>
    PedalStop,

    /// <summary>Axial stiffness of the outer (N), where it is assumed: measured, and no more than this.</summary>
    OuterStiffness,

    /// <summary>A thickness of sheet to be bought (mm).</summary>
    Stock,

    /// <summary>Preference: the thinnest sheet allowed (mm).</summary>
    MinThickness,

    /// <summary>Preference: the thickest sheet allowed (mm).</summary>
    MaxThickness,

    /// <summary>Preference: a material that is in stock and not allowed.</summary>
    Materials,

    /// <summary>Preference: maximum give (mm).</summary>
    MaxGive,

    /// <summary>Preference: minimum factor against yield.</summary>
    MinYieldFactor,

    /// <summary>Preference: minimum factor against cracking.</summary>
    MinEnduranceFactor,

    /// <summary>Preference: minimum first natural frequency over the firing frequency.</summary>
    MinFrequencyRatio,

    /// <summary>Preference: clearance of what moves (mm).</summary>
    SweepClearance,

    /// <summary>Preference: clearance of bracket and keep-outs (mm).</summary>
    KeepOutClearance,

    /// <summary>Preference: clearance of the outer (mm).</summary>
    OuterClearance,

    /// <summary>Preference: clearance of the end fitting (mm).</summary>
    FittingClearance,

    /// <summary>Preference: minimum wrap angle (rad).</summary>
    MinWrap,

    /// <summary>Preference: minimum free play (mm).</summary>
    MinFreePlay,

    /// <summary>Preference: minimum over-travel (mm).</summary>
    MinOverTravel,

    /// <summary>Preference: part of the adjuster's half range left unused.</summary>
    AdjusterReserve,

    /// <summary>Preference: how far slotted mount holes let the bracket be shifted (mm); zero for round holes.</summary>
    SlotTravel,
}

/// <summary>The change of one input.</summary>
/// <param name="Input">What is changed.</param>
/// <param name="What">Which one, in the user's words: the keep-out's name, the material; null where the input says it.</param>
/// <param name="From">Its value today, in the unit of <see cref="ChangedInput"/>; zero for a keep-out, a sheet and a material.</param>
/// <param name="To">Its new value; for a keep-out how much smaller, for a material the thickness in stock (mm).</param>
public sealed record InputChange(ChangedInput Input, string? What, double From, double To);

/// <summary>A change of one input, or of two together, that was tried: the job so changed has a bracket with which nothing fails, strength and tolerances counted.</summary>
/// <param name="Changes">One change, or two that belong together.</param>
/// <param name="Decides">The tightest check of the bracket there: what decides now; null where all that is left has no margin.</param>
public sealed record WayOpened(ImmutableArray<InputChange> Changes, Check? Decides);
