using BracketGen.Geometry;

namespace BracketGen.Design.Inputs;

/// <summary>Where the cable's outer comes out of the vehicle's bulkhead.</summary>
/// <remarks>
/// It stands with the job: in the throttle frame it depends on where the engine sits in the vehicle.
/// </remarks>
/// <param name="Point">Where the outer comes out (mm).</param>
/// <param name="Direction">Direction in which it comes out, towards the engine, length one.</param>
public sealed record Bulkhead(ThrottlePoint Point, Vector3 Direction) : IMirrored<Bulkhead>
{
    /// <inheritdoc/>
    public Bulkhead Mirrored() => new(Point.Mirrored(), Direction.MirroredInY);
}
