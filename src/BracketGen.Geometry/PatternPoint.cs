namespace BracketGen.Geometry;

/// <summary>A point of a face with holes, seen from outside, in coordinates of that face's own.</summary>
/// <remarks>Millimetres; origin and axes are as the pattern was measured. Default value: the origin. Equality is exact.</remarks>
/// <param name="Vector">The bare coordinates (mm), for geometry that does not care about the frame.</param>
public readonly record struct PatternPoint(Vector2 Vector)
{
    /// <summary>The point at <paramref name="x"/>, <paramref name="y"/> (mm).</summary>
    public PatternPoint(double x, double y)
        : this(new Vector2(x, y))
    {
    }

    /// <summary>First coordinate (mm).</summary>
    public double X => Vector.X;

    /// <summary>Second coordinate (mm).</summary>
    public double Y => Vector.Y;

    /// <summary>Distance to another point (mm).</summary>
    public double DistanceTo(PatternPoint other) => Vector.DistanceTo(other.Vector);

    /// <summary>The coordinates to six decimals, for messages.</summary>
    public override string ToString() => Vector.ToString();
}
