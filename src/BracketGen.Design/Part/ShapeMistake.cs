namespace BracketGen.Design.Part;

/// <summary>Why measurements give no bracket.</summary>
public enum ShapeFault
{
    /// <summary>No edge of the flange that a bend starts from lies on the bend's corner line over its whole length.</summary>
    NoEdgeOnBend,

    /// <summary>No edge of the new flange lies on v = 0 over the whole bend.</summary>
    NoEdgeAtZero,

    /// <summary>A flange ends within the rounding of its bend; the value is the least length, the limit what the rounding takes (mm).</summary>
    FlangeTooShort,

    /// <summary>The flange runs on beside the bend, past its line, without cuts; or both flanges run on along its line.</summary>
    NoRelief,

    /// <summary>Two edges of the outline cross, or flanges lie over each other in the flat.</summary>
    EdgesCross,

    /// <summary>A corner's rounding is larger than its edges; the value is the radius, the limit what fits (mm).</summary>
    CornerRadius,

    /// <summary>A hole is not within its flange's metal.</summary>
    HoleOffMetal,

    /// <summary>The stop's hole lies off its flange as the bends put it; the value is how far, the limit what the readings explain (mm).</summary>
    StopOffFlange,

    /// <summary>The stop's slot does not run out of the metal.</summary>
    SlotNotOpen,

    /// <summary>A bend starts from a flange that does not exist yet.</summary>
    NoSuchFlange,
}

/// <summary>Where measurements give no bracket.</summary>
/// <param name="Fault">Why.</param>
/// <param name="Bend">Number of the bend, from 0; null where it is the mount flange, a bolt hole or the stop.</param>
/// <param name="Item">Number of the corner or hole in its list, from 0; null where it is none of them.</param>
/// <param name="Value">What was measured (mm); see the fault.</param>
/// <param name="Limit">What is allowed (mm); see the fault.</param>
public sealed record ShapeMistake(ShapeFault Fault, int? Bend = null, int? Item = null, double Value = 0, double Limit = 0);
