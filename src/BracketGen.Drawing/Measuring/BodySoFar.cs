using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Measuring;

/// <summary>What is known of a throttle body while it is measured. Lengths in mm, angles in radians, in the throttle frame; null where it is not measured yet.</summary>
public sealed record BodySoFar
{
    /// <summary>Whether it opens clockwise, seen from outside along the shaft.</summary>
    public bool OpensClockwise { get; init; }

    /// <summary>Diameter of the throttle shaft.</summary>
    public double? ShaftDiameter { get; init; }

    /// <summary>The groove: its centre from the shaft and its radius to the middle of the wire.</summary>
    public (Vector2 Centre, double Radius)? Groove { get; init; }

    /// <summary>Points of a groove that is not round, each by its polar angle and radius.</summary>
    public ImmutableArray<Vector2> GroovePoints { get; init; } = [];

    /// <summary>Radius over the rims.</summary>
    public double? OuterRadius { get; init; }

    /// <summary>Radius of the hub.</summary>
    public double? HubRadius { get; init; }

    /// <summary>Thickness over the rims.</summary>
    public double? Thickness { get; init; }

    /// <summary>Polar angle of the pocket, valve closed.</summary>
    public double? PocketAngle { get; init; }

    /// <summary>Diameter or width of the pocket.</summary>
    public double? PocketSize { get; init; }

    /// <summary>Turn from closed to wide open.</summary>
    public double? Rotation { get; init; }

    /// <summary>How far the groove goes from the pocket on.</summary>
    public double? GrooveExtent { get; init; }

    /// <summary>The bore at the valve plate.</summary>
    public double? Bore { get; init; }

    /// <summary>Where the bore's axis crosses the shaft's.</summary>
    public double? BoreZ { get; init; }

    /// <summary>Polar angle of the bore's axis.</summary>
    public double? BoreDirection { get; init; }

    /// <summary>Outside diameter of the casting round the bore.</summary>
    public double? CastingDiameter { get; init; }

    /// <summary>How far the casting goes from the shaft along the bore's axis, and the other way.</summary>
    public (double Ahead, double Behind)? Casting { get; init; }

    /// <summary>Out of the mount face.</summary>
    public Vector3? Normal { get; init; }

    /// <summary>Mount holes whose centre is known, by their number, with the diameter of their boss.</summary>
    public ImmutableArray<(int Number, Vector3 At, double? Boss)> Holes { get; init; } = [];

    /// <summary>Boxes that are kept clear: name, minimum and maximum corner.</summary>
    public ImmutableArray<(string Name, Vector3 Min, Vector3 Max)> KeepOuts { get; init; } = [];
}
