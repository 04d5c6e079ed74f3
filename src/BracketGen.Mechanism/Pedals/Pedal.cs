using BracketGen.Geometry;

namespace BracketGen.Mechanism.Pedals;

/// <summary>The accelerator pedal, as seen from the cable.</summary>
/// <param name="AvailablePull">Wire pulled at the cable by the full stroke, released to floor (mm).</param>
/// <param name="LeverRatio">Travel of the pad under the foot for 1 mm of pull at the cable; also pull force for 1 N of foot force.</param>
public sealed record Pedal(Measured AvailablePull, double LeverRatio)
{
    /// <summary>Pad travel against pull, if it was measured point by point; null if the ratio is assumed constant.</summary>
    public TabulatedLever? Table { get; init; }

    /// <summary>What the pad load may be where nobody measured it (N; common practice, no source): a heavy pedal without a spring.</summary>
    public const double PadLoadAtWorst = 5;

    /// <summary>
    /// Force at the pad (N) with which the released pedal itself opens the valve: its own weight; negative if a spring at
    /// the pedal lifts it. Default zero, assumed.
    /// </summary>
    public Measured PadLoad { get; init; }

    /// <summary>Mass of the moving pedal as felt at the pad (t): it must come up with the wire.</summary>
    /// <remarks>Default 0.5 kg (common practice, no source).</remarks>
    public double PadMass { get; init; } = 0.0005;

    /// <summary>Foot force (N) of somebody who stamps on the pedal: the maximum load on the cable.</summary>
    /// <remarks>Default 890 N: the maximum force of a pilot's foot that 14 CFR 23.397, amendment 23-45 of 1993, has rudder pedals designed for (200 lbf).</remarks>
    public double ProofForce { get; init; } = 890;

    /// <summary>The lever: the table if there is one.</summary>
    public PedalLever Lever => Table is { } table ? table : new ConstantLever(LeverRatio, AvailablePull.Value * LeverRatio);

    /// <summary>Travel of the pad from released to floor (mm).</summary>
    public double FullStroke => Lever.FullStroke;
}
