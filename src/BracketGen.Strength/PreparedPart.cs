using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Strength;

/// <summary>A formed part meshed and factorised, ready for loads.</summary>
/// <param name="Part">The part.</param>
/// <param name="Flat">Mesh of the flat pattern.</param>
/// <param name="Model">The folded model; its node numbers are those of <paramref name="Flat"/>.</param>
/// <param name="System">The factorised system.</param>
public sealed record PreparedPart(FoldedPart Part, TriangleMesh Flat, ShellModel Model, ShellSystem System)
{
    /// <summary>What <paramref name="force"/> on the seat does.</summary>
    /// <param name="force">The force (N), in the axes of the folded part: the wire's tension, as the outer hands it to the stop.</param>
    public SeatResponse Under(Vector3 force)
    {
        var loads = SeatLoad.Spread(Flat, Part.Seat, force);
        var solution = System.Solve(loads);
        var deflection = loads.Aggregate(Vector3.Zero, (sum, l) => sum + l.Force.Length * solution.Displacements[l.Node])
            / loads.Sum(l => l.Force.Length);
        return new(force, deflection, solution);
    }

    /// <summary>The lowest <paramref name="count"/> natural vibrations, slowest first.</summary>
    public ImmutableArray<Mode> LowestModes(int count) => System.LowestModes(count);
}
