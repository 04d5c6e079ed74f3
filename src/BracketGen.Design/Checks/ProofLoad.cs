namespace BracketGen.Design.Checks;

/// <summary>What the pedal stamped on puts on the stop.</summary>
/// <param name="Tension">Tension of the wire at the stop (N).</param>
/// <param name="Foot">Foot force at the pad (N) where that limits it; null where the floor does.</param>
public sealed record ProofLoad(double Tension, double? Foot);
