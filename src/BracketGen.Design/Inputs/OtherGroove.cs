using BracketGen.Geometry;
using BracketGen.Mechanism.Grooves;

namespace BracketGen.Design.Inputs;

/// <summary>What a cable in a groove does to the valve.</summary>
public enum GrooveRole
{
    /// <summary>The cable pulls the valve open.</summary>
    Opening,

    /// <summary>The cable pulls the valve closed; the quadrant draws its wire as the valve opens.</summary>
    Closing,

    /// <summary>The quadrant pulls the cable as the valve opens.</summary>
    Pulled,
}

/// <summary>A groove of the quadrant besides the one for the cable from the pedal.</summary>
/// <param name="Name">Its name in the user's words; no other groove of the body has it.</param>
/// <param name="Role">What a cable in it does.</param>
/// <param name="Z">How far its middle plane lies outwards along the throttle shaft from that of the first groove (mm).</param>
/// <param name="Quadrant">Its part of the quadrant, in its own middle plane; the rotation is that of the whole. From the pocket the groove runs with the opening where the cable opens, and against it where the wire is drawn.</param>
public sealed record OtherGroove(string Name, GrooveRole Role, double Z, Quadrant Quadrant) : IMirrored<OtherGroove>
{
    /// <summary>Arc over which the end fitting can stay behind while the valve opens without it; null where it was not measured.</summary>
    public Angle? FreeArc { get; init; }

    /// <summary>Whether the quadrant draws the wire as the valve opens.</summary>
    public bool Draws => Role != GrooveRole.Opening;

    /// <inheritdoc/>
    public OtherGroove Mirrored() => this with { Quadrant = Quadrant.Mirrored() };
}
