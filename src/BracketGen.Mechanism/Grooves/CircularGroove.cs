using BracketGen.Geometry;

namespace BracketGen.Mechanism.Grooves;

/// <summary>A groove of constant radius about the throttle shaft: the usual quadrant.</summary>
public sealed record CircularGroove : Groove
{
    /// <summary>The groove of the given pitch radius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not positive.</exception>
    public CircularGroove(Measured pitchRadius)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pitchRadius.Value);
        PitchRadius = pitchRadius;
    }

    /// <summary>Radius of the wire's centre line (mm).</summary>
    public Measured PitchRadius { get; }

    /// <inheritdoc/>
    public override double PlusMinus => PitchRadius.PlusMinus;

    /// <inheritdoc/>
    public override double Support(Angle normal) => PitchRadius.Value;

    /// <inheritdoc/>
    public override double Slope(Angle normal) => 0;

    /// <inheritdoc/>
    public override double RadiusOfCurvature(Angle normal) => PitchRadius.Value;

    /// <inheritdoc/>
    public override double ArcBetween(Angle from, Angle to) => PitchRadius.Value * (to - from).Radians;

    /// <inheritdoc/>
    public override Angle NormalAt(Angle polar) => polar;

    /// <inheritdoc/>
    public override Groove Mirrored() => this;

    /// <inheritdoc/>
    public override Groove Grown(double by) => new CircularGroove(PitchRadius with { Value = PitchRadius.Value + by });

    /// <inheritdoc/>
    /// <remarks>In closed form: cos(polar - φ) = R/|stop|.</remarks>
    public override Angle LeavingNormal(Vector2 stop, Angle opening)
    {
        var distance = stop.Length;
        return distance > PitchRadius.Value
            ? new(stop.Polar.Radians - Math.Acos(PitchRadius.Value / distance))
            : throw Unreachable(stop);
    }
}
