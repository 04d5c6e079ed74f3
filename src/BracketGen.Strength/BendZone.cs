using BracketGen.Geometry;

namespace BracketGen.Strength;

/// <summary>The strip of the flat pattern that becomes a bend.</summary>
/// <remarks>The borders run the same way and may stick out of the metal.</remarks>
/// <param name="Start">Where the bend begins.</param>
/// <param name="End">Where it ends.</param>
public readonly record struct BendZone(LineSegment Start, LineSegment End)
{
    /// <summary>Width of the strip (mm): the arc length of the middle surface.</summary>
    public double Width => Start.DistanceTo((End.Start + End.End) / 2);
}
