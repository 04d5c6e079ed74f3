using BracketGen.Geometry;
using BracketGen.Mechanism.Throttles;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary>A position sensor without the rotation between its two readings, which is the quadrant's.</summary>
internal sealed record SensorReadings(double Closed, double Open, Angle? Slot, double Min, double Max)
{
    public PositionSensor Over(Angle rotation) => new(Closed, Open, rotation) { Slot = Slot, MinVolts = Min, MaxVolts = Max };
}

/// <summary><c>[sensor]</c> of a throttle body.</summary>
internal static class SensorSection
{
    /// <summary>Readings at both stops that differ by less (V) are those of a sensor that does not turn.</summary>
    public const double LeastApart = 0.1;

    private static readonly Key<double> ClosedVolts = new(
        "closed_volts", QuantityForm.Volts(0, 24), "Reading with the valve on its closed stop, cable off.");

    private static readonly Key<double> OpenVolts = new(
        "open_volts", QuantityForm.Volts(0, 24), "Reading with the valve held on its wide-open stop, cable off.");

    private static readonly Key<double> Slot = new(
        "slot", QuantityForm.Angle(0, 90), "How far the sensor can be turned in its slot, each way from where it was read; 0 if it cannot be turned. If left out, it is not known.", isRequired: false);

    private static readonly Key<double> MinVolts = Key<double>.WithDefault(
        "min_volts", QuantityForm.Volts(0, 24), "Minimum reading that still follows the shaft (default: 5 % of 5 V, common practice, no source).", PositionSensor.UsualMinVolts);

    private static readonly Key<double> MaxVolts = Key<double>.WithDefault(
        "max_volts", QuantityForm.Volts(0, 24), "Maximum reading that still follows the shaft (default: 95 % of 5 V, common practice, no source).", PositionSensor.UsualMaxVolts);

    public static Section<SensorReadings> Form { get; } = new(
        [ClosedVolts, OpenVolts, Slot, MinVolts, MaxVolts],
        v => new(v.Get(ClosedVolts), v.Get(OpenVolts), v.Has(Slot) ? new Angle(v.Get(Slot)) : null, v.Get(MinVolts), v.Get(MaxVolts)),
        [new([ClosedVolts, OpenVolts], CheckApart), new([MinVolts, MaxVolts], v => Compare.InOrder(v, MinVolts, MaxVolts, Quantity.Voltage))]);

    private static void CheckApart(SectionValues values)
    {
        if (Math.Abs(values.Get(ClosedVolts) - values.Get(OpenVolts)) < LeastApart)
        {
            values.Report(OpenVolts, new Contradiction(Contradictory.SensorVolts));
        }
    }
}
