namespace BracketGen.Geometry;

/// <summary>The whole line or circle that a segment is a piece of.</summary>
/// <param name="Point">A point of the line; the circle's centre.</param>
/// <param name="Direction">Of the line, length one; zero for a circle.</param>
/// <param name="Radius">Of the circle (mm); not positive if nothing is left of it.</param>
internal readonly record struct Curve(Vector2 Point, Vector2 Direction, double Radius)
{
    private bool IsLine => Direction != default;

    /// <summary>The curve of <paramref name="segment"/>.</summary>
    public static Curve Of(Segment segment) => segment is ArcSegment arc
        ? new(arc.Centre, default, arc.Radius)
        : new(segment.Start, segment.StartTangent, 0);

    /// <summary>
    /// Fraction of <paramref name="segment"/> that lies nearest to a point of its curve: below 0 or above 1 beyond the ends of a
    /// line, above 1 anywhere beyond the ends of an arc.
    /// </summary>
    public static double FractionNearest(Segment segment, Vector2 point) => segment is ArcSegment arc
        ? arc.FractionAt((point - arc.Centre).Polar)
        : (point - segment.Start).Dot(segment.StartTangent) / segment.Length;

    /// <summary>Points that both have; none if they are the same or parallel.</summary>
    public IEnumerable<Vector2> Meet(Curve other)
    {
        if (IsLine && other.IsLine)
        {
            var cross = Direction.Cross(other.Direction);
            return Math.Abs(cross) < Tolerance.Direction
                ? []
                : [Point + (other.Point - Point).Cross(other.Direction) / cross * Direction];
        }

        return IsLine ? LineAndCircle(this, other) : other.IsLine ? LineAndCircle(other, this) : Circles(this, other);
    }

    private static IEnumerable<Vector2> LineAndCircle(Curve line, Curve circle)
    {
        var to = circle.Point - line.Point;
        double along = line.Direction.Dot(to), off = line.Direction.Cross(to);
        var half = circle.Radius * circle.Radius - off * off;
        if (circle.Radius <= 0 || half < 0)
        {
            return [];
        }

        half = Math.Sqrt(half);
        return [line.Point + (along - half) * line.Direction, line.Point + (along + half) * line.Direction];
    }

    private static IEnumerable<Vector2> Circles(Curve a, Curve b)
    {
        var between = b.Point - a.Point;
        var distance = between.Length;
        if (a.Radius <= 0 || b.Radius <= 0 || distance <= Tolerance.Point)
        {
            return [];
        }

        var along = (distance * distance + a.Radius * a.Radius - b.Radius * b.Radius) / (2 * distance);
        var half = a.Radius * a.Radius - along * along;
        if (half < 0)
        {
            return [];
        }

        var unit = between / distance;
        half = Math.Sqrt(half);
        return [a.Point + along * unit + half * unit.Left, a.Point + along * unit - half * unit.Left];
    }
}
