using BracketGen.Geometry;

namespace BracketGen.Strength;

/// <summary>How a part responds to a force on its seat.</summary>
/// <param name="Force">The force (N).</param>
/// <param name="SeatDeflection">Mean displacement of the seat, weighted by its share of the force (mm).</param>
/// <param name="Solution">Displacements, stresses and reactions everywhere.</param>
public sealed record SeatResponse(Vector3 Force, Vector3 SeatDeflection, StaticSolution Solution) : IMirrored<SeatResponse>
{
    /// <summary>Give of the seat along the force (mm): the pull of the wire that is lost.</summary>
    public double AlongForce => SeatDeflection.Dot(Force.Unit);

    /// <inheritdoc/>
    public SeatResponse Mirrored() => new(Force.MirroredInY, SeatDeflection.MirroredInY, Solution.Mirrored());

    /// <summary>The response to a force <paramref name="factor"/> times as large, by proportion.</summary>
    /// <param name="factor">Zero or more.</param>
    public SeatResponse Times(double factor) => new(factor * Force, factor * SeatDeflection, Solution.Times(factor));
}
