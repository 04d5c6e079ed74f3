using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Strength.Model;

/// <summary>A rigid body that hangs on several nodes and swings with them; it adds mass and no stiffness.</summary>
/// <remarks>
/// It moves with the weighted mean of its nodes' displacements, and turns with the rotation that fits them best: the least sum of squares of what the fit leaves. Any
/// rigid motion of the nodes moves it exactly.
/// </remarks>
/// <param name="Nodes">The nodes, each with its share; the shares add up to one and their centre is the body's point of reference. The nodes must not lie in one line.</param>
/// <param name="Mass">Mass (tonne), zero or more.</param>
/// <param name="Offset">Centre of gravity from the point of reference (mm).</param>
/// <param name="Axis">Axis of symmetry, length one.</param>
/// <param name="AboutAxis">Moment of inertia about the axis through the centre of gravity (tonne·mm²), zero or more.</param>
/// <param name="AboutAcross">Moment of inertia about any line across it there (tonne·mm²), zero or more.</param>
public sealed record AttachedBody(
    ImmutableArray<(int Node, double Share)> Nodes, double Mass, Vector3 Offset, Vector3 Axis, double AboutAxis, double AboutAcross);
