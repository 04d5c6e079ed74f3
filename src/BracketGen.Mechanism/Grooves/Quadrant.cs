using BracketGen.Geometry;

namespace BracketGen.Mechanism.Grooves;

/// <summary>The grooved sector on the throttle shaft that the wire turns.</summary>
/// <remarks>
/// Angles are polar angles in the throttle frame, counter-clockwise, with the valve on its closed stop. The mechanism's
/// solvers take a quadrant that opens counter-clockwise; one that opens clockwise is mirrored first.
/// </remarks>
public sealed record Quadrant : IMirrored<Quadrant>
{
    /// <summary>The wire's centre line.</summary>
    public required Groove Groove { get; init; }

    /// <summary>Rotation from the closed stop to the wide-open stop, positive.</summary>
    public required MeasuredAngle Rotation { get; init; }

    /// <summary>Polar angle of the end fitting's centre at the closed stop.</summary>
    public required MeasuredAngle Pocket { get; init; }

    /// <summary>Arc of groove, from the pocket on, that can carry the wire, positive.</summary>
    public required Angle GrooveExtent { get; init; }

    /// <summary>Width of the groove (mm): the wire must fit in it.</summary>
    public required double GrooveWidth { get; init; }

    /// <summary>Width of the slot through which the wire enters the pocket (mm).</summary>
    public required double SlotWidth { get; init; }

    /// <summary>Shape of the pocket; null where it was not measured.</summary>
    public FittingPocket? PocketShape { get; init; }

    /// <summary>Radius over the rims of the groove (mm).</summary>
    public required double OuterRadius { get; init; }

    /// <summary>Thickness over the rims of the groove (mm), half of it on each side of z = 0.</summary>
    public required double Thickness { get; init; }

    /// <summary>Radius of the hub (mm): every part of the quadrant outside the grooved sector lies within it.</summary>
    public required double HubRadius { get; init; }

    /// <summary>Outward normal of the groove at the pocket: where the wire's wrap begins.</summary>
    public Angle PocketNormal => Groove.NormalAt(Pocket.Value);

    /// <summary>Centre of the end fitting after the valve has opened by <paramref name="opening"/> (mm, z = 0).</summary>
    public Vector2 FittingAt(Angle opening) => Groove.PointWithNormal(PocketNormal).Rotate(opening);

    /// <inheritdoc/>
    public Quadrant Mirrored() => this with
    {
        Groove = Groove.Mirrored(),
        Pocket = Pocket with { Value = -Pocket.Value },
    };
}
