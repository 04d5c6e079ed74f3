using BracketGen.Geometry;

namespace BracketGen.Mechanism.Throttles;

/// <summary>The sensor on the throttle shaft: a voltage linear from closed to wide open.</summary>
/// <remarks>May rise or fall with the opening.</remarks>
public sealed record PositionSensor
{
    /// <summary>Closed reading to set for a controller that learns its zero (V), and how far it may be off (V): 0.45 to 0.55 V (common practice, no source).</summary>
    public const double ClosedTarget = 0.5, ClosedWindow = 0.05;

    /// <summary>Where the reading of a sensor fed with 5 V still follows the shaft (V): 5 and 95 % of the supply (common practice, no source).</summary>
    public const double UsualMinVolts = 0.25, UsualMaxVolts = 4.75;

    /// <summary>How far the valve may open before the controller sees it, and how far open it may take the closed valve (common practice, no source).</summary>
    public static readonly Angle MaxDeadBand = Angle.FromDegrees(0.5);

    /// <summary>The sensor with the voltages read at the two stops.</summary>
    /// <param name="closedVolts">Reading with the valve on its closed stop (V).</param>
    /// <param name="openVolts">Reading with the valve on its wide-open stop (V).</param>
    /// <param name="rotation">Rotation between the stops, positive.</param>
    /// <exception cref="ArgumentException">The two readings are the same: the sensor does not turn with the shaft.</exception>
    public PositionSensor(double closedVolts, double openVolts, Angle rotation)
    {
        if (closedVolts == openVolts)
        {
            throw new ArgumentException("The sensor reads the same at both stops: it does not turn with the shaft.");
        }

        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(rotation.Radians);
        (ClosedVolts, OpenVolts, Rotation) = (closedVolts, openVolts, rotation);
    }

    /// <summary>Reading at the closed stop (V).</summary>
    public double ClosedVolts { get; }

    /// <summary>Reading at the wide-open stop (V).</summary>
    public double OpenVolts { get; }

    /// <summary>Rotation between the stops.</summary>
    public Angle Rotation { get; }

    /// <summary>How far it can be turned in its slot, each way from where it was read; null where that is not known.</summary>
    public Angle? Slot { get; init; }

    /// <summary>Lower end of the range in which the reading follows the shaft (V).</summary>
    public double MinVolts { get; init; } = UsualMinVolts;

    /// <summary>Upper end of the range in which the reading follows the shaft (V).</summary>
    public double MaxVolts { get; init; } = UsualMaxVolts;

    /// <summary>Change of the reading (V/rad), negative for a sensor that falls.</summary>
    public double VoltsPerAngle => (OpenVolts - ClosedVolts) / Rotation.Radians;

    /// <summary>Reading (V) at an opening.</summary>
    public double Volts(Angle opening) => ClosedVolts + VoltsPerAngle * opening.Radians;

    /// <summary>Opening at a reading (V); negative below the closed stop's.</summary>
    public Angle Opening(double volts) => new((volts - ClosedVolts) / VoltsPerAngle);

    /// <summary>Opening as part of the full rotation, 0 to 1, at a reading (V).</summary>
    public double Fraction(double volts) => Opening(volts).Radians / Rotation.Radians;

    /// <summary>
    /// How far to turn the sensor in the sense of opening (back if negative) for the closed stop to read
    /// <paramref name="target"/> (V).
    /// </summary>
    public Angle TurnTo(double target) => new((target - ClosedVolts) / VoltsPerAngle);

    /// <summary>How far the valve opens before the controller sees it, for a controller with a fixed zero (V); zero if it sees it at once.</summary>
    public Angle DeadBand(double controllerZero) => new(Math.Max(0, Opening(controllerZero).Radians));

    /// <summary>How far open a controller with a fixed zero (V) takes the closed valve; zero if it takes it for closed.</summary>
    public Angle TakenForOpen(double controllerZero) => new(Math.Max(0, -Opening(controllerZero).Radians));

    /// <summary>The same sensor turned by <paramref name="angle"/>.</summary>
    public PositionSensor Turned(Angle angle)
    {
        var shift = VoltsPerAngle * angle.Radians;
        return new(ClosedVolts + shift, OpenVolts + shift, Rotation) { MinVolts = MinVolts, MaxVolts = MaxVolts };
    }

    /// <summary>The same sensor as it sits now, by its reading with the valve on its closed stop (V).</summary>
    public PositionSensor ReadAtStop(double volts) => Turned(TurnTo(volts));
}
