namespace BracketGen.Geometry;

/// <summary>A place that must have metal: everything within a radius of a centre.</summary>
/// <remarks>The radius is zero or more (zero: a corner point).</remarks>
/// <param name="Centre">Centre.</param>
/// <param name="Radius">Radius (mm).</param>
public readonly record struct Disc(Vector2 Centre, double Radius);
