namespace BracketGen.Geometry;

/// <summary>A point of the mount face, seen from outside the casting.</summary>
/// <remarks>
/// Millimetres, from the first hole; x along the line to the second. The mount face's frame turns it into a
/// <see cref="ThrottlePoint"/>. Default value: the first hole. Equality is exact.
/// </remarks>
/// <param name="Vector">The bare coordinates (mm), for geometry that does not care about the frame.</param>
public readonly record struct FacePoint(Vector2 Vector)
{
    /// <summary>The point at <paramref name="x"/>, <paramref name="y"/> (mm).</summary>
    public FacePoint(double x, double y)
        : this(new Vector2(x, y))
    {
    }

    /// <summary>First coordinate (mm).</summary>
    public double X => Vector.X;

    /// <summary>Second coordinate (mm).</summary>
    public double Y => Vector.Y;

    /// <summary>Distance to another point (mm).</summary>
    public double DistanceTo(FacePoint other) => Vector.DistanceTo(other.Vector);

    /// <summary>The coordinates to six decimals, for messages.</summary>
    public override string ToString() => Vector.ToString();
}
