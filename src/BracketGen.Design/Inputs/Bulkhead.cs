using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Design.Inputs;

/// <summary>A clip or grommet that the outer runs through between the stop and the bulkhead.</summary>
/// <param name="Point">Where it holds the outer's middle (mm).</param>
/// <param name="Direction">Direction of the outer in it, from the stop to the bulkhead, length one; null where it lets the outer turn.</param>
/// <param name="Along">Length of outer from the stop's seat to it (mm), where it grips the outer; null where the outer slides through.</param>
public sealed record OuterClip(ThrottlePoint Point, Vector3? Direction = null, double? Along = null) : IMirrored<OuterClip>
{
    /// <inheritdoc/>
    public OuterClip Mirrored() => this with { Point = Point.Mirrored(), Direction = Direction?.MirroredInY };
}

/// <summary>Where the cable's outer comes out of the vehicle's bulkhead, and what holds it on its way to the stop.</summary>
/// <remarks>
/// It stands with the job: in the throttle frame it depends on where the engine sits in the vehicle.
/// </remarks>
/// <param name="Point">Where the outer comes out (mm).</param>
/// <param name="Direction">Direction in which it comes out, towards the engine, length one.</param>
public sealed record Bulkhead(ThrottlePoint Point, Vector3 Direction) : IMirrored<Bulkhead>
{
    /// <summary>Clips and grommets on the way, in order from the stop to the bulkhead.</summary>
    public ImmutableArray<OuterClip> Clips { get; init; } = [];

    /// <inheritdoc/>
    public Bulkhead Mirrored() => new(Point.Mirrored(), Direction.MirroredInY) { Clips = [.. Clips.Select(c => c.Mirrored())] };

    /// <summary>Equality by value, the clips one by one.</summary>
    public bool Equals(Bulkhead? other) =>
        other is not null && Point == other.Point && Direction == other.Direction && Clips.SequenceEqual(other.Clips);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Point, Direction, Clips.Length);
}
