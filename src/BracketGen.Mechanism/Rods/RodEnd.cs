using BracketGen.Geometry;

namespace BracketGen.Mechanism.Rods;

/// <summary>An end of the rod, clamped: it fixes place and direction, and lets the rod twist.</summary>
/// <param name="Point">Where it is (mm).</param>
/// <param name="Direction">Direction of the rod there, from its beginning to its end; any length but zero.</param>
public readonly record struct RodEnd(Vector3 Point, Vector3 Direction);

/// <summary>A point on the way that the rod runs through: a clip or a grommet.</summary>
/// <param name="Point">Where it is (mm).</param>
/// <param name="Direction">Direction that it gives the rod, any length but zero; null if it lets the rod turn.</param>
/// <param name="Along">Length of rod from its beginning to here (mm), if it is gripped there; null if the rod slides through.</param>
public readonly record struct RodSupport(Vector3 Point, Vector3? Direction = null, double? Along = null);
