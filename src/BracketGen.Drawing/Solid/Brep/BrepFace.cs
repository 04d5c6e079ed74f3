using System.Collections.Immutable;

namespace BracketGen.Drawing.Solid.Brep;

/// <summary>A face of a solid: the part of a surface within closed loops of edges.</summary>
/// <remarks>
/// The first loop is the outer one, the others are openings in the face. For an eye outside the solid, the face lies on the left of
/// travel in each of them.
/// </remarks>
/// <param name="Surface">What it lies on.</param>
/// <param name="FacesOut">Whether the surface's own normal points out of the solid.</param>
/// <param name="Loops">Its loops, each a closed chain of edges.</param>
public sealed record BrepFace(BrepSurface Surface, bool FacesOut, ImmutableArray<ImmutableArray<BrepEdgeUse>> Loops)
{
    /// <inheritdoc/>
    public bool Equals(BrepFace? other) => other is not null && Surface == other.Surface && FacesOut == other.FacesOut
        && Loops.Length == other.Loops.Length && Loops.Zip(other.Loops).All(l => l.First.SequenceEqual(l.Second));

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Surface, FacesOut, Loops.Length);
}
