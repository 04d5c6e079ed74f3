using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Analysis;

/// <summary>How the part responds to one set of loads.</summary>
/// <remarks>One entry a node in every list but that of reactions.</remarks>
public sealed record StaticSolution : IMirrored<StaticSolution>
{
    private readonly Lazy<ImmutableArray<NodalLoad>> _reactions;

    internal StaticSolution(
        ImmutableArray<Vector3> displacements, ImmutableArray<Vector3> rotations, ImmutableArray<NodeStress> stresses, Func<ImmutableArray<NodalLoad>> reactions) =>
        (Displacements, Rotations, Stresses, _reactions) = (displacements, rotations, stresses, new(reactions));

    /// <summary>Displacements (mm).</summary>
    public ImmutableArray<Vector3> Displacements { get; }

    /// <summary>Rotations (rad), right-hand rule.</summary>
    public ImmutableArray<Vector3> Rotations { get; }

    /// <summary>Stresses (MPa).</summary>
    public ImmutableArray<NodeStress> Stresses { get; }

    /// <summary>What the supports push back with, for each node that has a held freedom; found when first asked for.</summary>
    public ImmutableArray<NodalLoad> Reactions => _reactions.Value;

    /// <summary>The response to the same loads times <paramref name="factor"/>, if only they displaced anything.</summary>
    /// <param name="factor">Zero or more.</param>
    public StaticSolution Times(double factor) => new(
        Each(Displacements, d => factor * d),
        Each(Rotations, r => factor * r),
        Each(Stresses, s => new NodeStress(factor * s.Top, factor * s.Bottom)),
        () => Each(Reactions, r => new NodalLoad(r.Node, factor * r.Force, factor * r.Moment)));

    /// <inheritdoc/>
    /// <remarks>Stresses stay: top is the same side of the sheet (<see cref="ShellMesh.Mirrored"/>).</remarks>
    public StaticSolution Mirrored() => new(
        Each(Displacements, d => d.MirroredInY),
        Each(Rotations, r => -r.MirroredInY),
        Stresses,
        () => Each(Reactions, r => r.Mirrored()));

    /// <summary>The maximum von Mises stress of any node on either surface (MPa).</summary>
    public double LargestStress => Stresses[MostStressed].Largest;

    /// <summary>The node where it is; the first of several.</summary>
    public int MostStressed
    {
        get
        {
            var most = 0;
            for (var n = 1; n < Stresses.Length; n++)
            {
                most = Stresses[n].Largest > Stresses[most].Largest ? n : most;
            }

            return most;
        }
    }

    private static ImmutableArray<T> Each<T>(ImmutableArray<T> from, Func<T, T> change)
    {
        var to = ImmutableArray.CreateBuilder<T>(from.Length);
        foreach (var one in from)
        {
            to.Add(change(one));
        }

        return to.MoveToImmutable();
    }
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
