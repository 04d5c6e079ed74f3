namespace BracketGen.Strength;

/// <summary>Something heavy fixed to a node, small enough not to turn.</summary>
/// <param name="Node">The node.</param>
/// <param name="Mass">Its mass (tonne), zero or more.</param>
public readonly record struct PointMass(int Node, double Mass);
