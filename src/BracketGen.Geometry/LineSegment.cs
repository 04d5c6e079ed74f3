namespace BracketGen.Geometry;

/// <summary>A straight piece of a contour.</summary>
public sealed record LineSegment : Segment
{
    /// <summary>The line from <paramref name="start"/> to <paramref name="end"/>.</summary>
    /// <exception cref="ArgumentException">The two are the same point.</exception>
    public LineSegment(Vector2 start, Vector2 end)
    {
        if (!(start.DistanceTo(end) > 0))
        {
            throw new ArgumentException($"A line needs two different points, not {start} twice.", nameof(end));
        }

        Start = start;
        End = end;
    }

    /// <inheritdoc/>
    public override Vector2 Start { get; }

    /// <inheritdoc/>
    public override Vector2 End { get; }

    /// <inheritdoc/>
    public override double Length => Start.DistanceTo(End);

    /// <inheritdoc/>
    public override Vector2 StartTangent => (End - Start).Unit;

    /// <inheritdoc/>
    public override Vector2 EndTangent => StartTangent;

    /// <inheritdoc/>
    internal override double SweptArea => Start.Cross(End) / 2;

    /// <inheritdoc/>
    public override Segment Reversed => new LineSegment(End, Start);

    /// <inheritdoc/>
    public override Vector2 PointAt(double fraction) => Start + fraction * (End - Start);

    /// <inheritdoc/>
    public override Segment Part(double from, double to) => new LineSegment(PointAt(from), PointAt(to));

    /// <inheritdoc/>
    public override double DistanceTo(Vector2 point)
    {
        var along = End - Start;
        var fraction = Math.Clamp((point - Start).Dot(along) / along.Dot(along), 0, 1);
        return point.DistanceTo(PointAt(fraction));
    }

    /// <inheritdoc/>
    public override Segment Shift(Vector2 by) => new LineSegment(Start + by, End + by);

    /// <inheritdoc/>
    public override Segment Rotate(Angle angle) => new LineSegment(Start.Rotate(angle), End.Rotate(angle));

    /// <inheritdoc/>
    public override Segment MirroredInX => new LineSegment(new(-Start.X, Start.Y), new(-End.X, End.Y));

    /// <inheritdoc/>
    internal override IEnumerable<Vector2> Extremes => [Start, End];

    /// <inheritdoc/>
    public override IEnumerable<(double Fraction, double Along)> CrossingsWithLine(Vector2 point, Vector2 direction)
    {
        double a = direction.Cross(Start - point), b = direction.Cross(End - point);
        if ((a < 0) == (b < 0))
        {
            yield break;
        }

        var fraction = a / (a - b);
        yield return (fraction, direction.Dot(PointAt(fraction) - point));
    }
}
