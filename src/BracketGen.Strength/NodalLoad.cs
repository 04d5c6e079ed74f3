using BracketGen.Geometry;

namespace BracketGen.Strength;

/// <summary>Force and moment on one node, in the axes of the model.</summary>
/// <param name="Node">The node.</param>
/// <param name="Force">Force (N).</param>
/// <param name="Moment">Moment (N·mm), right-hand rule.</param>
public readonly record struct NodalLoad(int Node, Vector3 Force, Vector3 Moment = default) : IMirrored<NodalLoad>
{
    /// <inheritdoc/>
    /// <remarks>A moment is a turn about an axis: it mirrors the other way round from a force.</remarks>
    public NodalLoad Mirrored() => new(Node, Force.MirroredInY, -Moment.MirroredInY);
}
