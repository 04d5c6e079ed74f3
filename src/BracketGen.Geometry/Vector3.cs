using System.Globalization;

namespace BracketGen.Geometry;

/// <summary>A point or direction in space, in the throttle frame unless stated otherwise.</summary>
/// <remarks>Millimetres where it is a point. Default value: the origin. Equality is exact.</remarks>
/// <param name="X">First coordinate.</param>
/// <param name="Y">Second coordinate.</param>
/// <param name="Z">Third coordinate; in the throttle frame, along the throttle shaft.</param>
public readonly record struct Vector3(double X, double Y, double Z)
{
    /// <summary>The origin.</summary>
    public static readonly Vector3 Zero;

    /// <summary>Length (mm).</summary>
    public double Length => Math.Sqrt(X * X + Y * Y + Z * Z);

    /// <summary>The direction of this vector, as a vector of length one.</summary>
    /// <exception cref="InvalidOperationException">The vector has no length.</exception>
    public Vector3 Unit
    {
        get
        {
            var length = Length;
            return length > 0 ? this / length : throw new InvalidOperationException("A vector of no length has no direction.");
        }
    }

    /// <summary>The first two coordinates.</summary>
    public Vector2 XY => new(X, Y);

    /// <summary>A vector in the plane z = <paramref name="z"/>.</summary>
    public static Vector3 From(Vector2 xy, double z = 0) => new(xy.X, xy.Y, z);

    /// <summary>Scalar product.</summary>
    public double Dot(Vector3 other) => X * other.X + Y * other.Y + Z * other.Z;

    /// <summary>Vector product.</summary>
    public Vector3 Cross(Vector3 other) =>
        new(Y * other.Z - Z * other.Y, Z * other.X - X * other.Z, X * other.Y - Y * other.X);

    /// <summary>Distance to another point (mm).</summary>
    public double DistanceTo(Vector3 other) => (other - this).Length;

    /// <summary>Turned about <paramref name="axis"/> (length one, through the origin) by the right-hand rule.</summary>
    /// <remarks>Rodrigues' rotation formula.</remarks>
    public Vector3 Rotate(Vector3 axis, Angle angle)
    {
        var (sin, cos) = Math.SinCos(angle.Radians);
        return Rotate(axis, sin, cos);
    }

    internal Vector3 Rotate(Vector3 axis, double sin, double cos) =>
        cos * this + sin * axis.Cross(this) + (1 - cos) * axis.Dot(this) * axis;

    /// <summary>Angle to another direction, in [0, π], accurate also near 0 and π.</summary>
    public Angle AngleTo(Vector3 other) => new(Math.Atan2(Cross(other).Length, Dot(other)));

    /// <summary>Mirrored in the plane y = 0: how a clockwise throttle body becomes a counter-clockwise one.</summary>
    public Vector3 MirroredInY => new(X, -Y, Z);

    /// <summary>Sum.</summary>
    public static Vector3 operator +(Vector3 a, Vector3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Difference.</summary>
    public static Vector3 operator -(Vector3 a, Vector3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>Opposite.</summary>
    public static Vector3 operator -(Vector3 a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>Multiple.</summary>
    public static Vector3 operator *(double k, Vector3 a) => new(k * a.X, k * a.Y, k * a.Z);

    /// <summary>Part.</summary>
    public static Vector3 operator /(Vector3 a, double k) => new(a.X / k, a.Y / k, a.Z / k);

    /// <summary>The coordinates to six decimals, for messages.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"({X:0.######}, {Y:0.######}, {Z:0.######})");
}
