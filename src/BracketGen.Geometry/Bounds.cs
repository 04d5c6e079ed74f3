namespace BracketGen.Geometry;

/// <summary>An upright rectangle that holds a figure.</summary>
/// <remarks>Millimetres; <see cref="Min"/> is at or below <see cref="Max"/> in both coordinates.</remarks>
/// <param name="Min">Lower left corner.</param>
/// <param name="Max">Upper right corner.</param>
public readonly record struct Bounds(Vector2 Min, Vector2 Max)
{
    /// <summary>Width (mm).</summary>
    public double Width => Max.X - Min.X;

    /// <summary>Height (mm).</summary>
    public double Height => Max.Y - Min.Y;

    /// <summary>Middle point.</summary>
    public Vector2 Centre => new((Min.X + Max.X) / 2, (Min.Y + Max.Y) / 2);

    /// <summary>The smallest rectangle around <paramref name="points"/> (at least one).</summary>
    public static Bounds Around(IEnumerable<Vector2> points)
    {
        double minX = double.PositiveInfinity, minY = minX, maxX = double.NegativeInfinity, maxY = maxX;
        foreach (var p in points)
        {
            minX = Math.Min(minX, p.X);
            minY = Math.Min(minY, p.Y);
            maxX = Math.Max(maxX, p.X);
            maxY = Math.Max(maxY, p.Y);
        }

        return minX <= maxX
            ? new(new(minX, minY), new(maxX, maxY))
            : throw new InvalidOperationException("No points, no bounds.");
    }

    /// <summary>The smallest rectangle around both.</summary>
    public Bounds Union(Bounds other) => Around([Min, Max, other.Min, other.Max]);

    /// <summary>Grown by <paramref name="margin"/> (mm) on every side.</summary>
    public Bounds Grow(double margin) => new(new(Min.X - margin, Min.Y - margin), new(Max.X + margin, Max.Y + margin));
}
