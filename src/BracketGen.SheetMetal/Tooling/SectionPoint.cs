using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Tooling;

/// <summary>A point of the section square to a bend, as it stands in the machine.</summary>
/// <remarks>Millimetres, from the middle of the bend at the level of the die's top, or from a tool's own tip. Default value: that point. Equality is exact.</remarks>
/// <param name="Across">Across the bend, positive towards the back gauge.</param>
/// <param name="Up">Upwards.</param>
public readonly record struct SectionPoint(double Across, double Up)
{
    internal Vector2 Vector => new(Across, Up);

    internal static SectionPoint From(Vector2 point) => new(point.X, point.Y);
}
