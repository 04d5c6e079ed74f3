namespace BracketGen.Geometry;

/// <summary>One exact piece of a contour: a straight line or a circular arc.</summary>
/// <remarks>Directed from <see cref="Start"/> to <see cref="End"/>. Lengths in mm.</remarks>
public abstract record Segment
{
    /// <summary>Where it begins.</summary>
    public abstract Vector2 Start { get; }

    /// <summary>Where it ends.</summary>
    public abstract Vector2 End { get; }

    /// <summary>Length along it (mm).</summary>
    public abstract double Length { get; }

    /// <summary>Direction of travel at the start, length one.</summary>
    public abstract Vector2 StartTangent { get; }

    /// <summary>Direction of travel at the end, length one.</summary>
    public abstract Vector2 EndTangent { get; }

    /// <summary>Its part of the enclosed area by Green's theorem: half the integral of x dy - y dx (mm²).</summary>
    internal abstract double SweptArea { get; }

    /// <summary>The same piece travelled the other way.</summary>
    public abstract Segment Reversed { get; }

    /// <summary>The point after <paramref name="fraction"/> (0 to 1) of its length.</summary>
    public abstract Vector2 PointAt(double fraction);

    /// <summary>The part from <paramref name="from"/> to <paramref name="to"/> of its length, each 0 to 1.</summary>
    public abstract Segment Part(double from, double to);

    /// <summary>Distance from <paramref name="point"/> to the nearest point of it (mm).</summary>
    public abstract double DistanceTo(Vector2 point);

    /// <summary>Shifted by <paramref name="by"/> (mm).</summary>
    public abstract Segment Shift(Vector2 by);

    /// <summary>Turned about the origin.</summary>
    public abstract Segment Rotate(Angle angle);

    /// <summary>Mirrored in the y axis (x becomes -x); the direction of travel stays from start to end.</summary>
    public abstract Segment MirroredInX { get; }

    /// <summary>Points where it is farthest left, right, up or down: its ends and, on an arc, the compass points it passes.</summary>
    internal abstract IEnumerable<Vector2> Extremes { get; }

    /// <summary>The smallest upright rectangle around it.</summary>
    public Bounds Bounds => Bounds.Around(Extremes);

    /// <summary>
    /// Fractions of its length where it crosses the line through <paramref name="point"/> along
    /// <paramref name="direction"/> (length one), each with the signed distance along that line (mm).
    /// </summary>
    public abstract IEnumerable<(double Fraction, double Along)> CrossingsWithLine(Vector2 point, Vector2 direction);

    /// <summary>Its kind and ends, for messages.</summary>
    /// <remarks>Sealed, because a record's own text would follow <see cref="Reversed"/> without end.</remarks>
    public sealed override string ToString() =>
        this is ArcSegment arc ? $"arc {Start} to {End} through {arc.Sweep}" : $"line {Start} to {End}";
}
