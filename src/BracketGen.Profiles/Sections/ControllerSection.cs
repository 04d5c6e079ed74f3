using BracketGen.Design.Inputs;
using BracketGen.Profiles.Forms;
using BracketGen.Units;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[controller]</c> of a vehicle: what reads the position sensor.</summary>
internal static class ControllerSection
{
    private static readonly Key<double> ZeroVolts = new(
        "zero_volts", QuantityForm.Volts(0, 24), "Reading that it takes for the closed valve. Leave out if it learns its own zero.", isRequired: false);

    private static readonly Key<double> MinVolts = Key<double>.WithDefault(
        "min_volts", QuantityForm.Volts(0, 24), "Minimum reading; below it the controller reports a broken wire (default: common practice, no source).", Controller.Usual.MinVolts);

    private static readonly Key<double> MaxVolts = Key<double>.WithDefault(
        "max_volts", QuantityForm.Volts(0, 24), "Maximum reading; above it the controller reports a short circuit (default: common practice, no source).", Controller.Usual.MaxVolts);

    public static Section<Controller> Form { get; } = new(
        [ZeroVolts, MinVolts, MaxVolts],
        v => new() { ZeroVolts = v.OrNull(ZeroVolts), MinVolts = v.Get(MinVolts), MaxVolts = v.Get(MaxVolts) },
        [new([MinVolts, MaxVolts], v => Compare.InOrder(v, MinVolts, MaxVolts, Quantity.Voltage))]);
}
