using System.Globalization;

namespace BracketGen.Geometry;

/// <summary>A plane angle.</summary>
/// <remarks>
/// Stored in radians, unbounded, positive counter-clockwise. Default value: zero. Equality is exact.
/// </remarks>
/// <param name="Radians">The angle in radians.</param>
public readonly record struct Angle(double Radians) : IComparable<Angle>
{
    /// <summary>No angle.</summary>
    public static readonly Angle Zero = new(0);

    /// <summary>A quarter turn.</summary>
    public static readonly Angle Right = new(Math.PI / 2);

    /// <summary>A half turn.</summary>
    public static readonly Angle Straight = new(Math.PI);

    /// <summary>The angle in degrees.</summary>
    public double Degrees => Radians * (180 / Math.PI);

    /// <summary>The angle without its sign.</summary>
    public Angle Magnitude => new(Math.Abs(Radians));

    /// <summary>The same direction in (-180°, 180°].</summary>
    public Angle Normalised
    {
        get
        {
            var turn = Math.IEEERemainder(Radians, 2 * Math.PI);
            return new(turn <= -Math.PI ? turn + 2 * Math.PI : turn);
        }
    }

    /// <summary>The angle of <paramref name="degrees"/> degrees.</summary>
    public static Angle FromDegrees(double degrees) => new(degrees * (Math.PI / 180));

    /// <inheritdoc/>
    public int CompareTo(Angle other) => Radians.CompareTo(other.Radians);

    /// <summary>Sum.</summary>
    public static Angle operator +(Angle a, Angle b) => new(a.Radians + b.Radians);

    /// <summary>Difference.</summary>
    public static Angle operator -(Angle a, Angle b) => new(a.Radians - b.Radians);

    /// <summary>The angle turned the other way.</summary>
    public static Angle operator -(Angle a) => new(-a.Radians);

    /// <summary>Multiple.</summary>
    public static Angle operator *(double k, Angle a) => new(k * a.Radians);

    /// <summary>Order by size.</summary>
    public static bool operator <(Angle a, Angle b) => a.Radians < b.Radians;

    /// <summary>Order by size.</summary>
    public static bool operator >(Angle a, Angle b) => a.Radians > b.Radians;

    /// <summary>Order by size.</summary>
    public static bool operator <=(Angle a, Angle b) => a.Radians <= b.Radians;

    /// <summary>Order by size.</summary>
    public static bool operator >=(Angle a, Angle b) => a.Radians >= b.Radians;

    /// <summary>Degrees to two decimals, for messages.</summary>
    public override string ToString() => Degrees.ToString("0.##", CultureInfo.InvariantCulture) + "°";
}
