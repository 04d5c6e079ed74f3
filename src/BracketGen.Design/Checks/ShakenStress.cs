using System.Collections.Immutable;
using BracketGen.Strength.Analysis;

namespace BracketGen.Design.Checks;

/// <summary>What the engine's shaking does to the sheet over its life.</summary>
/// <param name="Amplitudes">Alternating von Mises stress at each node on both surfaces (MPa).</param>
/// <param name="Cycles">How often over the life.</param>
public sealed record ShakenStress(ImmutableArray<NodeStress> Amplitudes, double Cycles);
