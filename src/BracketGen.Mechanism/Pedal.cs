using BracketGen.Geometry;

namespace BracketGen.Mechanism;

/// <summary>The accelerator pedal, as the cable feels it.</summary>
/// <remarks>Immutable, thread-safe.</remarks>
/// <param name="AvailablePull">Wire pulled at the cable by the full stroke, released to floor (mm).</param>
/// <param name="LeverRatio">Travel of the pad under the foot for 1 mm of pull at the cable; also pull force for 1 N of foot force.</param>
public sealed record Pedal(Measured AvailablePull, double LeverRatio)
{
    /// <summary>Travel of the pad from released to floor (mm).</summary>
    public double FullStroke => AvailablePull.Value * LeverRatio;
}
