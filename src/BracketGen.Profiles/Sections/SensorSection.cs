using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary>The two readings of a position sensor; the rotation between them is the quadrant's.</summary>
internal sealed record SensorReadings(double Closed, double Open);

/// <summary><c>[sensor]</c> of a throttle body.</summary>
internal static class SensorSection
{
    private static readonly Key<double> ClosedVolts = new(
        "closed_volts", QuantityForm.Volts(0, 24), "Reading with the valve on its closed stop, cable off.");

    private static readonly Key<double> OpenVolts = new(
        "open_volts", QuantityForm.Volts(0, 24), "Reading with the valve held on its wide-open stop, cable off.");

    public static Section<SensorReadings> Form { get; } = new(
        [ClosedVolts, OpenVolts],
        v => new(v.Get(ClosedVolts), v.Get(OpenVolts)),
        [new([ClosedVolts, OpenVolts], CheckApart)]);

    private static void CheckApart(SectionValues values)
    {
        if (Math.Abs(values.Get(ClosedVolts) - values.Get(OpenVolts)) < 0.1)
        {
            values.Report(OpenVolts, new Contradiction(Contradictory.SensorVolts));
        }
    }
}
