using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Mechanism.Rods;

/// <summary>The rod that runs straight from end to end: nothing of it is left over, and nothing turns it.</summary>
internal static class StraightLine
{
    /// <summary>The straight line through points on one line, in order.</summary>
    public static ElasticLine Through(Vector3[] points, double length)
    {
        var direction = (points[^1] - points[0]).Unit;
        return new()
        {
            Points = ImmutableArray.Create(points),
            Directions = [.. points.Select(_ => direction)],
            Along = [.. points.Select(p => p == points[^1] ? length : p.DistanceTo(points[0]))],
            Bend = Angle.Zero,
            MinRadius = double.PositiveInfinity,
            TightestAt = 0,
            StartMoment = Vector3.Zero,
            EndMoment = Vector3.Zero,
            EndForce = Vector3.Zero,
            Energy = 0,
            NegativeModes = 0,
            Turning = Angle.Zero,
        };
    }
}
