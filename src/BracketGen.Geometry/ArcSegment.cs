namespace BracketGen.Geometry;

/// <summary>A circular piece of a contour, up to a full circle.</summary>
/// <remarks>
/// The radius is positive; the sweep is not zero and at most a full turn either way, positive counter-clockwise.
/// </remarks>
public sealed record ArcSegment : Segment
{
    /// <summary>The arc about <paramref name="centre"/> from polar angle <paramref name="from"/> on through <paramref name="sweep"/>.</summary>
    /// <exception cref="ArgumentException">The radius is not positive, or the sweep is zero or more than a full turn.</exception>
    public ArcSegment(Vector2 centre, double radius, Angle from, Angle sweep)
    {
        if (!(radius > 0))
        {
            throw new ArgumentException($"An arc needs a positive radius, not {radius}.", nameof(radius));
        }

        if (sweep.Radians == 0 || !(Math.Abs(sweep.Radians) <= 2 * Math.PI + Tolerance.Direction))
        {
            throw new ArgumentException($"An arc sweeps more than 0° and at most 360°, not {sweep}.", nameof(sweep));
        }

        Centre = centre;
        Radius = radius;
        From = from;
        Sweep = sweep;
        Start = centre + Vector2.FromPolar(radius, from);
        End = centre + Vector2.FromPolar(radius, from + sweep);
    }

    /// <summary>Centre of the circle.</summary>
    public Vector2 Centre { get; }

    /// <summary>Radius of the circle (mm).</summary>
    public double Radius { get; }

    /// <summary>Polar angle of the start, seen from the centre.</summary>
    public Angle From { get; }

    /// <summary>Angle travelled, positive counter-clockwise.</summary>
    public Angle Sweep { get; }

    /// <summary>Whether it closes on itself.</summary>
    public bool IsFullCircle => Math.Abs(Sweep.Radians) >= 2 * Math.PI - Tolerance.Direction;

    private double Sign => Math.Sign(Sweep.Radians);

    /// <inheritdoc/>
    public override Vector2 Start { get; }

    /// <inheritdoc/>
    public override Vector2 End { get; }

    /// <inheritdoc/>
    public override double Length => Radius * Math.Abs(Sweep.Radians);

    /// <inheritdoc/>
    public override Vector2 StartTangent => Sign * Vector2.FromPolar(1, From).Left;

    /// <inheritdoc/>
    public override Vector2 EndTangent => Sign * Vector2.FromPolar(1, From + Sweep).Left;

    /// <inheritdoc/>
    internal override double SweptArea => (Centre.Cross(End - Start) + Radius * Radius * Sweep.Radians) / 2;

    /// <inheritdoc/>
    public override Segment Reversed => new ArcSegment(Centre, Radius, From + Sweep, -Sweep);

    /// <inheritdoc/>
    public override Vector2 PointAt(double fraction) => Centre + Vector2.FromPolar(Radius, From + fraction * Sweep);

    /// <inheritdoc/>
    public override Segment Part(double from, double to) =>
        new ArcSegment(Centre, Radius, From + from * Sweep, (to - from) * Sweep);

    /// <summary>Fraction of the sweep at which the polar <paramref name="angle"/> is passed; above 1 if it is not.</summary>
    public double FractionAt(Angle angle)
    {
        var turn = Sign * (angle - From).Radians;
        turn -= 2 * Math.PI * Math.Floor(turn / (2 * Math.PI));
        return turn / Math.Abs(Sweep.Radians);
    }

    /// <summary>How many equal chords stand for it so that none is farther from it than <paramref name="error"/> (mm): at least two.</summary>
    // sin²(step/4) = error/(2 radius), in the form that stays exact where the error is tiny.
    public int ChordCount(double error) =>
        Math.Max(2, (int)Math.Ceiling(Math.Abs(Sweep.Radians) / (4 * Math.Asin(Math.Sqrt(Math.Min(0.5, error / (2 * Radius)))))));

    /// <inheritdoc/>
    public override double DistanceTo(Vector2 point)
    {
        var out_ = point - Centre;
        return Passes(out_)
            ? Math.Abs(out_.Length - Radius)
            : Math.Min(point.DistanceTo(Start), point.DistanceTo(End));
    }

    // Whether the ray from the centre along `way` meets the arc: called so often that no angle is computed.
    private bool Passes(Vector2 way)
    {
        if (IsFullCircle)
        {
            return true;
        }

        Vector2 first = Start - Centre, last = End - Centre;
        if (Sweep.Radians < 0)
        {
            (first, last) = (last, first);
        }

        return Math.Abs(Sweep.Radians) <= Math.PI
            ? first.Cross(way) >= 0 && way.Cross(last) >= 0
            : !(last.Cross(way) > 0 && way.Cross(first) > 0);
    }

    /// <inheritdoc/>
    public override Segment Shift(Vector2 by) => new ArcSegment(Centre + by, Radius, From, Sweep);

    /// <inheritdoc/>
    public override Segment Rotate(Angle angle) => new ArcSegment(Centre.Rotate(angle), Radius, From + angle, Sweep);

    /// <inheritdoc/>
    public override Segment MirroredInX => new ArcSegment(new(-Centre.X, Centre.Y), Radius, Angle.Straight - From, -Sweep);

    /// <inheritdoc/>
    internal override IEnumerable<Vector2> Extremes
    {
        get
        {
            yield return Start;
            yield return End;
            for (var quarter = 0; quarter < 4; quarter++)
            {
                var angle = quarter * Angle.Right;
                if (FractionAt(angle) < 1)
                {
                    yield return Centre + Vector2.FromPolar(Radius, angle);
                }
            }
        }
    }

    /// <inheritdoc/>
    public override IEnumerable<(double Fraction, double Along)> CrossingsWithLine(Vector2 point, Vector2 direction)
    {
        var toCentre = Centre - point;
        double middle = direction.Dot(toCentre), off = direction.Cross(toCentre);
        var half = Radius * Radius - off * off;
        if (half <= 0)
        {
            yield break;
        }

        half = Math.Sqrt(half);
        double[] alongs = [middle - half, middle + half];
        foreach (var along in alongs)
        {
            // A line through the join with a neighbour must not slip between the two by round-off.
            var fraction = FractionAt((point + along * direction - Centre).Polar);
            var slack = Tolerance.Point / Length;
            if (fraction <= 1 + slack)
            {
                yield return (Math.Min(fraction, 1), along);
            }
            else if (fraction >= 2 * Math.PI / Math.Abs(Sweep.Radians) - slack)
            {
                yield return (0, along);
            }
        }
    }
}
