using BracketGen.Geometry;

namespace BracketGen.Mechanism;

/// <summary>The accelerator pedal, as the cable feels it.</summary>
/// <param name="AvailablePull">Wire pulled at the cable by the full stroke, released to floor (mm).</param>
/// <param name="LeverRatio">Travel of the pad under the foot for 1 mm of pull at the cable; also pull force for 1 N of foot force.</param>
public sealed record Pedal(Measured AvailablePull, double LeverRatio)
{
    /// <summary>Pad travel against pull, where it was measured point by point; null where the ratio is taken as constant.</summary>
    public TabulatedLever? Table { get; init; }

    /// <summary>
    /// Force at the pad (N) with which the released pedal itself opens the valve: its own weight; negative if a spring at
    /// the pedal lifts it.
    /// </summary>
    public Measured PadLoad { get; init; }

    /// <summary>Foot force (N) of somebody who stamps on the pedal: the most that the cable is ever asked to carry.</summary>
    /// <remarks>Default 890 N: the largest force of a pilot's foot that CS 23.397 has controls designed for (200 lbf; from memory).</remarks>
    public double ProofForce { get; init; } = 890;

    /// <summary>The lever: the table where there is one.</summary>
    public PedalLever Lever => Table is { } table ? table : new ConstantLever(LeverRatio, AvailablePull.Value * LeverRatio);

    /// <summary>Travel of the pad from released to floor (mm).</summary>
    public double FullStroke => Lever.FullStroke;
}
