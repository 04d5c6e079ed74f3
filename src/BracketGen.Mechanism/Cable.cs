using BracketGen.Geometry;

namespace BracketGen.Mechanism;

/// <summary>The throttle cable that the vehicle brings.</summary>
/// <remarks>Immutable, thread-safe.</remarks>
public sealed record Cable
{
    /// <summary>What sits in the quadrant's pocket.</summary>
    public required EndFitting Fitting { get; init; }

    /// <summary>Diameter of the wire (mm).</summary>
    public required double WireDiameter { get; init; }

    /// <summary>How the outer ends at the bracket.</summary>
    public required OuterEnd OuterEnd { get; init; }

    /// <summary>Diameter of the outer (mm).</summary>
    public required double OuterDiameter { get; init; }

    /// <summary>Wire from the stop's seat to the fitting's centre (mm): adjuster at mid range, pedal released, wire taut.</summary>
    public required Measured FreeInnerLength { get; init; }

    /// <summary>Largest fleet angle the wire stands (rad).</summary>
    public required double FleetLimit { get; init; }

    /// <summary>Least bend radius of the outer (mm).</summary>
    public required double LeastBendRadius { get; init; }
}
