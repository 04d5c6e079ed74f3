using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Analysis;

/// <summary>How the part responds to one set of loads.</summary>
/// <remarks>One entry a node in every list.</remarks>
/// <param name="Displacements">Displacements (mm).</param>
/// <param name="Rotations">Rotations (rad), right-hand rule.</param>
/// <param name="Stresses">Stresses (MPa).</param>
/// <param name="Reactions">What the supports push back with, for each node that has a held freedom.</param>
public sealed record StaticSolution(
    ImmutableArray<Vector3> Displacements,
    ImmutableArray<Vector3> Rotations,
    ImmutableArray<NodeStress> Stresses,
    ImmutableArray<NodalLoad> Reactions) : IMirrored<StaticSolution>
{
    /// <summary>The response to the same loads times <paramref name="factor"/>, if only they displaced anything.</summary>
    /// <param name="factor">Zero or more.</param>
    public StaticSolution Times(double factor) => new(
        [.. Displacements.Select(d => factor * d)],
        [.. Rotations.Select(r => factor * r)],
        [.. Stresses.Select(s => new NodeStress(factor * s.Top, factor * s.Bottom))],
        [.. Reactions.Select(r => new NodalLoad(r.Node, factor * r.Force, factor * r.Moment))]);

    /// <inheritdoc/>
    /// <remarks>Stresses stay: top is the same side of the sheet (<see cref="ShellMesh.Mirrored"/>).</remarks>
    public StaticSolution Mirrored() => new(
        [.. Displacements.Select(d => d.MirroredInY)],
        [.. Rotations.Select(r => -r.MirroredInY)],
        Stresses,
        [.. Reactions.Select(r => r.Mirrored())]);

    /// <summary>The maximum von Mises stress of any node on either surface (MPa).</summary>
    public double LargestStress => Stresses[MostStressed].Largest;

    /// <summary>The node where it is.</summary>
    public int MostStressed => Enumerable.Range(0, Stresses.Length).MaxBy(n => Stresses[n].Largest);
}

/// <summary>Von Mises stress at a node on both surfaces of the sheet.</summary>
/// <remarks>
/// From the mean of the stress tensors of the triangles around the node, weighted by area.
/// </remarks>
/// <param name="Top">Stress on the top surface (MPa).</param>
/// <param name="Bottom">Stress on the bottom surface (MPa).</param>
public readonly record struct NodeStress(double Top, double Bottom)
{
    /// <summary>The larger of the two (MPa).</summary>
    public double Largest => Math.Max(Top, Bottom);
}

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
