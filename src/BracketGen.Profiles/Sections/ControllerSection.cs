using BracketGen.Design.Inputs;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[controller]</c> of a vehicle: what reads the position sensor.</summary>
internal static class ControllerSection
{
    private static readonly Key<double> ZeroVolts = new(
        "zero_volts", QuantityForm.Volts(0, 24), "Reading that it takes for the closed valve; left out where it learns its own zero.", isRequired: false);

    private static readonly Key<double> MinVolts = Key<double>.WithDefault(
        "min_volts", QuantityForm.Volts(0, 24), "Readings below it are taken for a broken wire (default: common practice, no source).", Controller.Usual.MinVolts);

    private static readonly Key<double> MaxVolts = Key<double>.WithDefault(
        "max_volts", QuantityForm.Volts(0, 24), "Readings above it are taken for a short circuit (default: common practice, no source).", Controller.Usual.MaxVolts);

    public static Section<Controller> Form { get; } = new(
        "a controller",
        [ZeroVolts, MinVolts, MaxVolts],
        v => new() { ZeroVolts = v.OrNull(ZeroVolts), MinVolts = v.Get(MinVolts), MaxVolts = v.Get(MaxVolts) },
        [new([MinVolts, MaxVolts], CheckOrder)]);

    private static void CheckOrder(SectionValues values)
    {
        if (values.Get(MinVolts) >= values.Get(MaxVolts))
        {
            values.Report(values.Has(MinVolts) ? MinVolts : MaxVolts, "min_volts below max_volts", "Exchange the two, or look them up again.");
        }
    }
}
