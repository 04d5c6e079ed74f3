namespace BracketGen.Geometry;

/// <summary>A slot along an arc about an axis, by its middle line; a round hole where the arc is nothing.</summary>
/// <remarks>Default value: a hole on the axis. Equality is exact.</remarks>
/// <param name="Middle">Middle of the slot, from the axis (mm).</param>
/// <param name="Half">Half the angle that its middle line spans, zero or more.</param>
public readonly record struct ArcSlot(PatternPoint Middle, Angle Half);
