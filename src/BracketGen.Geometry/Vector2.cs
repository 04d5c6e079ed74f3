using System.Globalization;

namespace BracketGen.Geometry;

/// <summary>A point or direction in a plane: the groove's plane, a face, or a flat pattern.</summary>
/// <remarks>Millimetres where it is a point. Default value: the origin. Equality is exact.</remarks>
/// <param name="X">First coordinate.</param>
/// <param name="Y">Second coordinate.</param>
public readonly record struct Vector2(double X, double Y)
{
    /// <summary>The origin.</summary>
    public static readonly Vector2 Zero;

    /// <summary>Length (mm).</summary>
    public double Length => Math.Sqrt(X * X + Y * Y);

    /// <summary>The direction of this vector, as a vector of length one.</summary>
    /// <exception cref="InvalidOperationException">The vector has no length.</exception>
    public Vector2 Unit
    {
        get
        {
            var length = Length;
            return length > 0 ? this / length : throw new InvalidOperationException("A vector of no length has no direction.");
        }
    }

    /// <summary>Turned a quarter turn counter-clockwise.</summary>
    public Vector2 Left => new(-Y, X);

    /// <summary>Polar angle in (-π, π].</summary>
    public Angle Polar => new(Math.Atan2(Y, X));

    /// <summary>The point at <paramref name="radius"/> (mm) and polar <paramref name="angle"/>.</summary>
    public static Vector2 FromPolar(double radius, Angle angle) =>
        new(radius * Math.Cos(angle.Radians), radius * Math.Sin(angle.Radians));

    /// <summary>Scalar product.</summary>
    public double Dot(Vector2 other) => X * other.X + Y * other.Y;

    /// <summary>Signed area of the parallelogram: positive where <paramref name="other"/> lies counter-clockwise.</summary>
    public double Cross(Vector2 other) => X * other.Y - Y * other.X;

    /// <summary>Distance to another point (mm).</summary>
    public double DistanceTo(Vector2 other) => (other - this).Length;

    /// <summary>Turned counter-clockwise about the origin.</summary>
    public Vector2 Rotate(Angle angle)
    {
        var (sin, cos) = Math.SinCos(angle.Radians);
        return new(cos * X - sin * Y, sin * X + cos * Y);
    }

    /// <summary>Mirrored in the x axis: in the groove's plane, the mirror image in the plane y = 0.</summary>
    public Vector2 MirroredInY => new(X, -Y);

    /// <summary>Mirrored in the y axis: in a flat pattern, which <see cref="Frame.Mirrored"/> turns over end for end.</summary>
    public Vector2 MirroredInX => new(-X, Y);

    /// <summary>Sum.</summary>
    public static Vector2 operator +(Vector2 a, Vector2 b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>Difference.</summary>
    public static Vector2 operator -(Vector2 a, Vector2 b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>Opposite.</summary>
    public static Vector2 operator -(Vector2 a) => new(-a.X, -a.Y);

    /// <summary>Multiple.</summary>
    public static Vector2 operator *(double k, Vector2 a) => new(k * a.X, k * a.Y);

    /// <summary>Part.</summary>
    public static Vector2 operator /(Vector2 a, double k) => new(a.X / k, a.Y / k);

    /// <summary>The coordinates to six decimals, for messages.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"({X:0.######}, {Y:0.######})");
}
