using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Photo;

/// <summary>A thing that was clicked in a photograph: its middle, once or more, or points round its rim.</summary>
/// <param name="Height">Its height over the face that the target lies on, towards the camera (mm).</param>
/// <param name="IsRim">Whether the clicks lie round a circle whose middle is meant; three or more then.</param>
/// <param name="Clicks">The clicks (pixels); one or more.</param>
public sealed record MarkedPoint(Measured Height, bool IsRim, ImmutableArray<Vector2> Clicks);

/// <summary>The edge of the quadrant, clicked along its front flange.</summary>
/// <param name="Height">Height of that flange's front over the face (mm).</param>
/// <param name="ToWire">From the edge inwards to the middle of the wire (mm); null where it is not known.</param>
/// <param name="IsCam">Whether the edge is no circle about the shaft: each click is then a point of a cam.</param>
/// <param name="Clicks">The clicks (pixels); three or more for a circle, six or more for a cam.</param>
public sealed record MarkedEdge(Measured Height, Measured? ToWire, bool IsCam, ImmutableArray<Vector2> Clicks);

/// <summary>What was marked of a throttle body.</summary>
/// <remarks>The face with the target is square to the throttle shaft.</remarks>
public sealed record MarkedBody
{
    /// <summary>The end of the throttle shaft.</summary>
    public required MarkedPoint Shaft { get; init; }

    /// <summary>Height of the groove's middle over the face (mm).</summary>
    public required Measured GrooveHeight { get; init; }

    /// <summary>The quadrant's edge; null where it was not marked.</summary>
    public MarkedEdge? Edge { get; init; }

    /// <summary>The end fitting's pocket on the closed stop; null where it was not marked.</summary>
    public MarkedPoint? Pocket { get; init; }

    /// <summary>The holes of the mount, in their order; null for one that was not marked.</summary>
    public ImmutableArray<MarkedPoint?> Holes { get; init; } = [];
}
