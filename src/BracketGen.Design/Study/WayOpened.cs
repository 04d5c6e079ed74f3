namespace BracketGen.Design.Study;

/// <summary>An input that can be changed to open a way.</summary>
public enum ChangedInput
{
    /// <summary>Pitch radius of the quadrant (mm).</summary>
    QuadrantRadius,

    /// <summary>Range of the adjuster (mm).</summary>
    AdjusterRange,

    /// <summary>Free inner length of the cable (mm).</summary>
    FreeInnerLength,

    /// <summary>How far something in the way must be moved off (mm).</summary>
    KeepOut,

    /// <summary>Pull of the pedal to the floor (mm).</summary>
    AvailablePull,

    /// <summary>A thickness of sheet to be bought (mm).</summary>
    Stock,
}

/// <summary>The smallest change of one input, all others kept, that lets a bracket pass.</summary>
/// <param name="Input">What is changed.</param>
/// <param name="What">Which one, in the user's words: the keep-out's name, the material; null where the input says it.</param>
/// <param name="From">Its value today (mm); zero for a keep-out.</param>
/// <param name="To">Its value that opens a way (mm); for a keep-out, how far it must be moved off.</param>
public sealed record WayOpened(ChangedInput Input, string? What, double From, double To);
