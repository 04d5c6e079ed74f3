namespace BracketGen.Geometry;

/// <summary>A point of a flat pattern, seen from the top of the sheet.</summary>
/// <remarks>
/// Millimetres. The difference of two points is a vector of the flat pattern. Only folding the sheet turns a flat point into a
/// <see cref="ThrottlePoint"/>. Default value: the flat pattern's origin. Equality is exact.
/// </remarks>
/// <param name="Vector">The bare coordinates (mm), for geometry that does not care about the frame.</param>
public readonly record struct FlatPoint(Vector2 Vector)
{
    /// <summary>The point at <paramref name="x"/>, <paramref name="y"/> (mm).</summary>
    public FlatPoint(double x, double y)
        : this(new Vector2(x, y))
    {
    }

    /// <summary>First coordinate (mm).</summary>
    public double X => Vector.X;

    /// <summary>Second coordinate (mm).</summary>
    public double Y => Vector.Y;

    /// <summary>Mirrored in the flat pattern's y axis.</summary>
    public FlatPoint MirroredInX => new(Vector.MirroredInX);

    /// <summary>The same point with the flat pattern turned about its origin.</summary>
    public FlatPoint Rotate(Angle angle) => new(Vector.Rotate(angle));

    /// <summary>The point halfway between two.</summary>
    public static FlatPoint Middle(FlatPoint a, FlatPoint b) => new(0.5 * (a.Vector + b.Vector));

    /// <summary>Distance to another point (mm).</summary>
    public double DistanceTo(FlatPoint other) => Vector.DistanceTo(other.Vector);

    /// <summary>The point a vector further.</summary>
    public static FlatPoint operator +(FlatPoint point, Vector2 by) => new(point.Vector + by);

    /// <summary>The point a vector back.</summary>
    public static FlatPoint operator -(FlatPoint point, Vector2 by) => new(point.Vector - by);

    /// <summary>The vector from <paramref name="from"/> to <paramref name="to"/>.</summary>
    public static Vector2 operator -(FlatPoint to, FlatPoint from) => to.Vector - from.Vector;

    /// <summary>The coordinates to six decimals, for messages.</summary>
    public override string ToString() => Vector.ToString();
}
