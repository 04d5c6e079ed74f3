using BracketGen.Geometry;

namespace BracketGen.Mechanism.Grooves;

/// <summary>A round groove with its centre off the throttle shaft, so that the moment arm changes over the sweep.</summary>
/// <remarks>
/// h = ρ + e cos(ν - γ), so that h + h'' = ρ: the radius of curvature is the circle's.
/// </remarks>
public sealed record EccentricGroove : Groove
{
    /// <summary>The circle of <paramref name="radius"/> with its centre <paramref name="offset"/> from the shaft axis.</summary>
    /// <param name="radius">Radius of the wire's centre line about its own centre (mm).</param>
    /// <param name="offset">Distance of that centre from the shaft axis (mm), less than the radius.</param>
    /// <param name="direction">Polar angle of that centre at the closed stop.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not positive, or the shaft axis is not inside the circle.</exception>
    public EccentricGroove(Measured radius, double offset, Angle direction)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(radius.Value);
        ArgumentOutOfRangeException.ThrowIfNegative(offset);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(offset, radius.Value);
        (Radius, Offset, Direction) = (radius, offset, direction);
    }

    /// <summary>Radius ρ of the wire's centre line about its own centre (mm).</summary>
    public Measured Radius { get; }

    /// <summary>Distance e of that centre from the shaft axis (mm).</summary>
    public double Offset { get; }

    /// <summary>Polar angle γ of that centre at the closed stop.</summary>
    public Angle Direction { get; }

    /// <inheritdoc/>
    public override double PlusMinus => Radius.PlusMinus;

    /// <inheritdoc/>
    public override double Support(Angle normal) => Radius.Value + Offset * Math.Cos((normal - Direction).Radians);

    /// <inheritdoc/>
    public override double Slope(Angle normal) => -Offset * Math.Sin((normal - Direction).Radians);

    /// <inheritdoc/>
    public override double RadiusOfCurvature(Angle normal) => Radius.Value;

    /// <inheritdoc/>
    public override double ArcBetween(Angle from, Angle to) => Radius.Value * (to - from).Radians;

    /// <inheritdoc/>
    /// <remarks>The point c + ρ n(ν) lies in the direction u of the polar angle: its cross product with u is zero.</remarks>
    public override Angle NormalAt(Angle polar) =>
        new(polar.Radians + Math.Asin(Offset * Math.Sin((polar - Direction).Radians) / Radius.Value));

    /// <inheritdoc/>
    public override Groove Mirrored() => new EccentricGroove(Radius, Offset, -Direction);

    /// <inheritdoc/>
    public override Groove Grown(double by) =>
        new EccentricGroove(Radius with { Value = Radius.Value + by }, Offset, Direction);

    /// <inheritdoc/>
    /// <remarks>In closed form, seen from the circle's centre: cos(polar of (stop - c) - φ) = ρ/|stop - c|.</remarks>
    public override Angle LeavingNormal(Vector2 stop, Angle opening)
    {
        var from = stop - Vector2.FromPolar(Offset, Direction + opening);
        var distance = from.Length;
        return distance > Radius.Value ? new(from.Polar.Radians - Math.Acos(Radius.Value / distance)) : throw Unreachable(stop);
    }
}
