using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Strength.Analysis;
using BracketGen.Strength.Model;

namespace BracketGen.Strength.Parts;

/// <summary>A formed part meshed and factorised, ready for loads.</summary>
/// <param name="Part">The part.</param>
/// <param name="Flat">Mesh of the flat pattern.</param>
/// <param name="Model">The folded model; its node numbers are those of <paramref name="Flat"/>.</param>
/// <param name="System">The factorised system.</param>
public sealed record PreparedPart(FoldedPart Part, TriangleMesh Flat, ShellModel Model, ShellSystem System)
{
    private UnitResponses? _unit;
    private UnitResponses? _near;
    private ImmutableArray<bool> _onEdge;
    private OnBase? _onBase;

    private OnBase? OnBase => Part.Base is { } elastic ? _onBase ??= new(this, elastic) : null;

    /// <summary>Each node's share of a force on the seat.</summary>
    internal ImmutableArray<(int Node, double Share)> SeatShares { get; } = SeatLoad.Shares(Flat, Part.Seat);

    /// <summary>What <paramref name="force"/> on the seat does.</summary>
    /// <param name="force">The force (N), in the axes of the folded part: the wire's tension, as the outer hands it to the stop.</param>
    public SeatResponse Under(Vector3 force)
    {
        var motions = OnBase?.MotionsUnder(System.CombineReactions(Unit, force.X, force.Y, force.Z));
        var solution = motions is null ? System.Combine(Unit, force.X, force.Y, force.Z) : System.Combine(Unit, OnBase!.Held(motions), force.X, force.Y, force.Z);
        var (deflection, sum) = (Vector3.Zero, 0.0);
        foreach (var (node, share) in SeatShares)
        {
            deflection += Math.Abs(share) * solution.Displacements[node];
            sum += Math.Abs(share);
        }

        return new(force, deflection / sum, solution) { BaseMotions = motions is null ? [] : OnBase!.OfBase(motions) };
    }

    /// <summary>What the supports push back with under <paramref name="force"/> on the seat.</summary>
    /// <param name="force">The force (N), in the axes of the folded part.</param>
    public ImmutableArray<NodalLoad> ReactionsUnder(Vector3 force) =>
        OnBase is null ? System.CombineReactions(Unit, force.X, force.Y, force.Z) : Under(force).Solution.Reactions;

    /// <summary>Whether each node lies on a cut edge.</summary>
    public ImmutableArray<bool> OnEdge => _onEdge.IsDefault ? _onEdge = Flat.OnEdge() : _onEdge;

    /// <summary>The nodes that each washer holds; a node under two of them belongs to the nearer one.</summary>
    public ImmutableArray<ImmutableArray<int>> WasherNodes()
    {
        var nodes = Part.Washers.Select(_ => new List<int>()).ToArray();
        foreach (var node in Model.Held.Select(h => h.Node).Distinct())
        {
            var nearest = Enumerable.Range(0, nodes.Length).MinBy(w => Flat.Nodes[node].Vector.DistanceTo(Part.Washers[w].Centre));
            nodes[nearest].Add(node);
        }

        return [.. nodes.Select(n => n.ToImmutableArray())];
    }

    /// <summary>What moving one washer as a whole does, all others at rest, whatever they lie on.</summary>
    /// <param name="nodes">The nodes that it holds.</param>
    /// <param name="by">How far it is moved (mm).</param>
    public StaticSolution Moved(IEnumerable<int> nodes, Vector3 by) =>
        System.Moved(nodes.SelectMany(n => (Held[])[new(n, Freedom.X, by.X), new(n, Freedom.Y, by.Y), new(n, Freedom.Z, by.Z)]));

    /// <summary>What turning some washers as one whole does, all others at rest.</summary>
    /// <param name="nodes">The nodes that they hold.</param>
    /// <param name="about">A point of the axis (mm).</param>
    /// <param name="turn">Direction of the axis, as long as the angle (rad, right-hand rule), a small one.</param>
    public StaticSolution Turned(IEnumerable<int> nodes, ThrottlePoint about, Vector3 turn) => System.Moved(nodes.SelectMany(n =>
    {
        var by = turn.Cross(Model.Mesh.Nodes[n] - about);
        return (Held[])
        [
            new(n, Freedom.X, by.X), new(n, Freedom.Y, by.Y), new(n, Freedom.Z, by.Z), new(n, Freedom.AboutX, turn.X), new(n, Freedom.AboutY, turn.Y), new(n, Freedom.AboutZ, turn.Z),
        ];
    }));

    /// <summary>The first natural frequency is never above this (Hz): Rayleigh's quotient over what forces on the seat do.</summary>
    /// <remarks>On an elastic base: never below what <see cref="LowestModes"/> gives.</remarks>
    public double FirstFrequencyAtMost() => AtLeast(System.FirstFrequencyAtMost(Unit));

    /// <summary>The same, closer: over what the inertia of those shapes does.</summary>
    public double FirstFrequencyCloselyAtMost() => AtLeast(System.FirstFrequencyAtMost(Near));

    /// <summary>The lowest <paramref name="count"/> natural vibrations, slowest first.</summary>
    /// <remarks>On an elastic base: the shapes of the part held firmly, each with the lowest frequency that it may have on the base (<see cref="Parts.OnBase"/>).</remarks>
    public ImmutableArray<Mode> LowestModes(int count)
    {
        var modes = System.LowestModes(count, Near);
        return OnBase is null ? modes : [.. modes.Select(m => m with { Frequency = AtLeast(m.Frequency) })];
    }

    private double AtLeast(double frequency) => OnBase?.AtLeast(frequency) ?? frequency;

    /// <summary>
    /// The natural vibrations as shaking of the mount excites them: all up to <paramref name="highest"/> (Hz) and one above, as far as <paramref name="most"/> reach.
    /// </summary>
    /// <exception cref="InvalidOperationException">It lies on an elastic base, which shakes with it.</exception>
    public ModalBasis Shaken(double highest, int most = 24)
    {
        if (Part.Base is not null)
        {
            throw new InvalidOperationException("Shaking of a part on an elastic base is not known.");
        }

        for (var count = 6; ; count = Math.Min(2 * count, most))
        {
            var basis = System.Shaken(count, Near);
            if (basis.Frequencies[^1] > highest || basis.Frequencies.Length < count || count >= most)
            {
                return basis;
            }
        }
    }

    // 1 N along each axis: any force is a combination of them.
    private UnitResponses Unit => _unit ??= System.Unit(Along(new(1, 0, 0)), Along(new(0, 1, 0)), Along(new(0, 0, 1)));

    private UnitResponses Near => _near ??= System.NearModes(Unit);

    private IEnumerable<NodalLoad> Along(Vector3 axis) => SeatShares.Select(s => new NodalLoad(s.Node, s.Share * axis));
}

/// <summary>How a part responds to a force on its seat.</summary>
/// <param name="Force">The force (N).</param>
/// <param name="SeatDeflection">Mean displacement of the seat, weighted by its share of the force (mm).</param>
/// <param name="Solution">Displacements, stresses and reactions everywhere.</param>
public sealed record SeatResponse(Vector3 Force, Vector3 SeatDeflection, StaticSolution Solution) : IMirrored<SeatResponse>
{
    /// <summary>How the joints of an elastic base move (<see cref="ElasticBase.Moved"/>); empty where there is none, and in the mirror image.</summary>
    public ImmutableArray<double> BaseMotions { get; init; } = [];

    /// <inheritdoc/>
    public SeatResponse Mirrored() => new(Force.MirroredInY, SeatDeflection.MirroredInY, Solution.Mirrored());

    /// <summary>Give of the seat along the force (mm): the pull of the wire that is lost.</summary>
    public double AlongForce => SeatDeflection.Dot(Force.Unit);

    /// <summary>The response to a force <paramref name="factor"/> times as large, by proportion.</summary>
    /// <param name="factor">Zero or more.</param>
    public SeatResponse Times(double factor) =>
        new(factor * Force, factor * SeatDeflection, Solution.Times(factor)) { BaseMotions = BaseMotions.IsEmpty ? [] : [.. BaseMotions.Select(m => factor * m)] };
}
