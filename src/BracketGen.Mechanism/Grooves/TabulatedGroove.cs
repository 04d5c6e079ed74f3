using System.Collections.Immutable;
using System.Globalization;
using BracketGen.Geometry;
using BracketGen.Mechanism.Numerics;

namespace BracketGen.Mechanism.Grooves;

/// <summary>One measured point of a groove, from the shaft axis, at the closed stop.</summary>
/// <param name="Polar">Polar angle.</param>
/// <param name="Radius">Distance of the wire's centre line from the shaft axis (mm).</param>
public readonly record struct GroovePoint(Angle Polar, double Radius);

/// <summary>A groove given by measured points: a smooth convex curve through all of them.</summary>
/// <remarks>
/// The radius is a cubic spline of the polar angle, so that the curve, its direction and its curvature are continuous (C. de Boor,
/// <i>A Practical Guide to Splines</i>, 1978, chapter IV). A table that goes all the way round is closed; any other continues past each end on
/// the circle that fits the end best (its osculating circle), because a wire that has run off the measured groove still needs a
/// line: a separate check covers whether the wire stays on the groove. The two circles meet, with a step, opposite to the table's middle. With r(p) the curve's normal has the polar angle
/// ν = p - atan(r'/r), and h = r cos(p - ν), h' = r sin(p - ν). Equal where the points are.
/// </remarks>
public sealed record TabulatedGroove : Groove
{
    private readonly CubicSpline radius;
    private readonly bool closed;
    private readonly double[] arcs;
    private readonly double[] normals;
    private readonly (double First, double Last) ends;
    private readonly double lengthOfTurn;

    /// <summary>The groove through <paramref name="points"/>.</summary>
    /// <param name="points">At least four, by rising polar angle, over less than a turn.</param>
    /// <param name="closed">Whether the table goes all the way round: the last point is then followed by the first.</param>
    /// <param name="plusMinus">How well the radii are known (mm), as one error common to all.</param>
    /// <exception cref="ArgumentException">
    /// Too few points, wrong order, a radius that is not positive, or a curve that is not convex: the message names the row,
    /// counted from 1.
    /// </exception>
    public TabulatedGroove(IEnumerable<GroovePoint> points, bool closed = false, double plusMinus = 0)
    {
        Points = [.. points];
        PlusMinus = plusMinus;
        this.closed = closed;
        CheckRows();
        IEnumerable<GroovePoint> all = closed ? [.. Points, Points[0] with { Polar = Points[0].Polar + 2 * Angle.Straight }] : Points;
        double[] angles = [.. all.Select(p => p.Polar.Radians)], radii = [.. all.Select(p => p.Radius)];
        radius = closed ? CubicSpline.Closed(angles, radii) : CubicSpline.Open(angles, radii);
        CheckConvex();
        normals = [.. angles.Select(Normal)];
        if (closed)
        {
            normals[^1] = normals[0] + 2 * Math.PI; // Round-off must not let a normal fall between the ends.
        }

        arcs = new double[angles.Length];
        for (var i = 0; i + 1 < angles.Length; i++)
        {
            arcs[i + 1] = arcs[i] + ArcLength(i, angles[i], angles[i + 1]);
        }

        ends = (AtPolar(angles[0]).Radius, AtPolar(angles[^1]).Radius);
        lengthOfTurn = arcs[^1] + (ends.First + ends.Last) / 2 * (2 * Math.PI - (normals[^1] - normals[0]));
    }

    /// <summary>The points, by rising polar angle.</summary>
    public ImmutableArray<GroovePoint> Points { get; }

    /// <summary>Whether the table goes all the way round.</summary>
    public bool IsClosed => closed;

    /// <inheritdoc/>
    public override double PlusMinus { get; }

    /// <inheritdoc/>
    public override double Support(Angle normal) => Tangent(normal).Support;

    /// <inheritdoc/>
    public override double Slope(Angle normal) => Tangent(normal).Slope;

    /// <inheritdoc/>
    public override (double Support, double Slope) Tangent(Angle normal)
    {
        var (support, slope, _) = Local(normal);
        return (support, slope);
    }

    /// <inheritdoc/>
    public override double RadiusOfCurvature(Angle normal) => Local(normal).Radius;

    /// <inheritdoc/>
    internal override (double Support, double Slope, double Radius) Local(Angle normal)
    {
        var (turned, _) = OnTurn(normal.Radians);
        if (Beyond(turned) is not { } past)
        {
            return AtPolar(PolarOf(turned));
        }

        // The circle's centre is the end's point less ρ n: support and slope of the centre turn with the normal.
        var end = AtPolar(past.Polar);
        var (sin, cos) = Math.SinCos(turned - past.Normal);
        var along = end.Support - past.Radius;
        return (past.Radius + along * cos + end.Slope * sin, end.Slope * cos - along * sin, past.Radius);
    }

    /// <inheritdoc/>
    public override double ArcBetween(Angle from, Angle to) => ArcTo(to.Radians) - ArcTo(from.Radians);

    /// <inheritdoc/>
    public override Angle NormalAt(Angle polar)
    {
        double first = Points[0].Polar.Radians, last = radius.Knot(radius.Pieces);
        var middle = (first + last) / 2;
        var turns = Math.Floor((polar.Radians - middle + Math.PI) / (2 * Math.PI));
        var at = polar.Radians - turns * 2 * Math.PI;
        var turn = turns * 2 * Math.PI;
        if (at >= first && at <= last)
        {
            return new(Normal(at) + turn);
        }

        // On the circle past an end: its centre is e from the shaft at γ, as for the eccentric groove.
        var (end, normal, rho) = at < first ? (first, normals[0], ends.First) : (last, normals[^1], ends.Last);
        var centre = Vector2.FromPolar(radius.At(end).Value, new(end)) - Vector2.FromPolar(rho, new(normal));
        var offAxis = Math.Clamp(centre.Cross(Vector2.FromPolar(1, new(at))) / rho, -1, 1);
        return new(at + Math.Asin(offAxis) + turn);
    }

    /// <inheritdoc/>
    public override Groove Mirrored() => new TabulatedGroove(
        Points.Reverse().Select(p => p with { Polar = -p.Polar }), closed, PlusMinus);

    /// <inheritdoc/>
    public bool Equals(TabulatedGroove? other) => other is not null
        && closed == other.closed && PlusMinus == other.PlusMinus && Points.SequenceEqual(other.Points);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Points.Length, Points[0], closed);

    private double Normal(double polar)
    {
        var (r, first, _) = radius.At(polar);
        return polar - Math.Atan(first / r);
    }

    private (double Support, double Slope, double Radius) AtPolar(double polar)
    {
        // With tan(p - ν) = r'/r no angle need be formed: r cos and r sin of it are these.
        var at = radius.At(polar);
        var root = Math.Sqrt(at.Value * at.Value + at.First * at.First);
        return (at.Value * at.Value / root, at.Value * at.First / root, root / Turning(at));
    }

    /// <summary>dν/dp; positive where the curve is convex.</summary>
    private static double Turning((double R, double First, double Second) at) =>
        (at.R * at.R + 2 * at.First * at.First - at.R * at.Second) / (at.R * at.R + at.First * at.First);

    /// <summary>The normal on the turn in the middle of which the table lies, and the whole turns taken off (rad).</summary>
    private (double Normal, double Turn) OnTurn(double normal)
    {
        var middle = (normals[0] + normals[^1]) / 2;
        var turn = 2 * Math.PI * Math.Floor((normal - middle + Math.PI) / (2 * Math.PI));
        return (normal - turn, turn);
    }

    private (double Polar, double Normal, double Radius)? Beyond(double normal) =>
        closed ? null
        : normal < normals[0] ? (radius.Knot(0), normals[0], ends.First)
        : normal > normals[^1] ? (radius.Knot(radius.Pieces), normals[^1], ends.Last)
        : null;

    /// <summary>Polar angle of the point with a normal within the table: Newton's method, kept within the piece by bisection.</summary>
    private double PolarOf(double normal)
    {
        var i = Array.BinarySearch(normals, normal);
        i = Math.Clamp(i >= 0 ? i : ~i - 1, 0, normals.Length - 2);
        double low = radius.Knot(i), high = radius.Knot(i + 1);
        var polar = low + (high - low) * Math.Clamp((normal - normals[i]) / (normals[i + 1] - normals[i]), 0, 1);
        for (var step = 0; step < 60; step++)
        {
            var at = radius.At(i, polar);
            var error = polar - Math.Atan(at.First / at.Value) - normal;
            (low, high) = error > 0 ? (low, polar) : (polar, high);
            var next = polar - error / Turning(at);
            next = next >= low && next <= high ? next : (low + high) / 2;
            var moved = Math.Abs(next - polar);
            polar = next;
            if (moved < 1e-9)
            {
                break; // The error falls with the square: it is round-off by now.
            }
        }

        return polar;
    }

    /// <summary>Length (mm) from the first point to the one with <paramref name="normal"/>, over whole turns as well.</summary>
    private double ArcTo(double normal)
    {
        var (turned, turn) = OnTurn(normal);
        var within = turned < normals[0] ? ends.First * (turned - normals[0])
            : turned > normals[^1] ? arcs[^1] + ends.Last * (turned - normals[^1])
            : ArcToPolar(PolarOf(turned));
        return Math.Round(turn / (2 * Math.PI)) * lengthOfTurn + within;
    }

    private double ArcToPolar(double polar)
    {
        var i = radius.PieceOf(polar);
        return arcs[i] + ArcLength(i, radius.Knot(i), polar);
    }

    /// <summary>∫ sqrt(r² + r'²) dp within one piece, by Gauss and Legendre's rule of five points (exact to round-off over some 30°).</summary>
    private double ArcLength(int piece, double from, double to)
    {
        ReadOnlySpan<double> nodes = [0.538469310105683091, 0.906179845938663993];
        ReadOnlySpan<double> weights = [0.478628670499366468, 0.236926885056189088];
        double middle = (from + to) / 2, half = (to - from) / 2, sum = 0.568888888888888889 * Speed(middle);
        for (var i = 0; i < 2; i++)
        {
            sum += weights[i] * (Speed(middle + half * nodes[i]) + Speed(middle - half * nodes[i]));
        }

        return sum * half;

        double Speed(double polar)
        {
            var (r, first, _) = radius.At(piece, polar);
            return Math.Sqrt(r * r + first * first);
        }
    }

    private void CheckRows()
    {
        if (Points.Length < 4)
        {
            throw new ArgumentException($"A groove table needs at least four rows; this one has {Points.Length}.");
        }

        for (var i = 0; i < Points.Length; i++)
        {
            if (!(Points[i].Radius > 0))
            {
                throw new ArgumentException(Text($"Groove table, row {i + 1}: the radius {Points[i].Radius:0.###} mm must be positive."));
            }

            if (i > 0 && !(Points[i].Polar > Points[i - 1].Polar))
            {
                throw new ArgumentException(Text(
                    $"Groove table, row {i + 1}: the angle {Points[i].Polar} does not come after {Points[i - 1].Polar} in row {i}."));
            }
        }

        if ((Points[^1].Polar - Points[0].Polar).Radians >= 2 * Math.PI - 1e-9)
        {
            throw new ArgumentException(Text(
                $"Groove table, row {Points.Length}: the angle {Points[^1].Polar} is a whole turn or more after the first row's {Points[0].Polar}. Leave the repeated row out."));
        }
    }

    private void CheckConvex()
    {
        // A point inside the line between its neighbours is the plainest mistake; it says by how much.
        for (var i = closed ? 0 : 1; i < Points.Length - (closed ? 0 : 1); i++)
        {
            Vector2 At(int k) => Vector2.FromPolar(Points[(k + Points.Length) % Points.Length].Radius, Points[(k + Points.Length) % Points.Length].Polar);
            var line = (At(i + 1) - At(i - 1)).Unit;
            var outside = (At(i) - At(i - 1)).Cross(line);
            if (outside <= 0)
            {
                throw new ArgumentException(Text(
                    $"Groove table, row {i + 1} ({Points[i].Polar}, {Points[i].Radius:0.###} mm) lies {-outside:0.00} mm inside the line between its neighbours: a wire would bridge it. Measure it again."));
            }
        }

        const int Samples = 16;
        for (var i = 0; i < radius.Pieces; i++)
        {
            for (var k = 0; k <= Samples; k++)
            {
                var polar = radius.Knot(i) + (radius.Knot(i + 1) - radius.Knot(i)) * k / Samples;
                var at = radius.At(polar);
                if (at.Value <= 0 || Turning(at) <= 0)
                {
                    throw new ArgumentException(Text(
                        $"Groove table, rows {i + 1} and {(i + 1) % Points.Length + 1}: the smooth curve through them is hollow near {new Angle(polar)}, where a wire would bridge it. One of these two rows or of their neighbours is off; measure them again."));
                }
            }
        }
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
