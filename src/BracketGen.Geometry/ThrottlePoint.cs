namespace BracketGen.Geometry;

/// <summary>A point in the throttle frame.</summary>
/// <remarks>
/// Millimetres. Origin where the throttle shaft's axis crosses the middle plane of the groove, z along the shaft, outwards. The
/// difference of two points is a vector of the throttle frame. Default value: the origin. Equality is exact.
/// </remarks>
/// <param name="Vector">The bare coordinates (mm), for geometry that does not care about the frame.</param>
public readonly record struct ThrottlePoint(Vector3 Vector) : IMirrored<ThrottlePoint>
{
    /// <summary>The point at <paramref name="x"/>, <paramref name="y"/>, <paramref name="z"/> (mm).</summary>
    public ThrottlePoint(double x, double y, double z)
        : this(new Vector3(x, y, z))
    {
    }

    /// <summary>First coordinate (mm).</summary>
    public double X => Vector.X;

    /// <summary>Second coordinate (mm).</summary>
    public double Y => Vector.Y;

    /// <summary>Coordinate along the throttle shaft (mm).</summary>
    public double Z => Vector.Z;

    /// <summary>The foot of the point in the groove's plane, z = 0 (mm).</summary>
    public Vector2 XY => Vector.XY;

    /// <summary>The point halfway between two.</summary>
    public static ThrottlePoint Middle(ThrottlePoint a, ThrottlePoint b) => new(0.5 * (a.Vector + b.Vector));

    /// <summary>Distance to another point (mm).</summary>
    public double DistanceTo(ThrottlePoint other) => Vector.DistanceTo(other.Vector);

    /// <inheritdoc/>
    public ThrottlePoint Mirrored() => new(Vector.MirroredInY);

    /// <summary>The point a vector further.</summary>
    public static ThrottlePoint operator +(ThrottlePoint point, Vector3 by) => new(point.Vector + by);

    /// <summary>The point a vector back.</summary>
    public static ThrottlePoint operator -(ThrottlePoint point, Vector3 by) => new(point.Vector - by);

    /// <summary>The vector from <paramref name="from"/> to <paramref name="to"/>.</summary>
    public static Vector3 operator -(ThrottlePoint to, ThrottlePoint from) => to.Vector - from.Vector;

    /// <summary>The coordinates to six decimals, for messages.</summary>
    public override string ToString() => Vector.ToString();
}
