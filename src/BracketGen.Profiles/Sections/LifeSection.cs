using BracketGen.Design.Inputs;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[life]</c> of a job: every key may be left out.</summary>
internal static class LifeSection
{
    private static readonly ServiceLife Usual = new();

    private static readonly Key<double> Openings = Key<double>.WithDefault(
        "openings", QuantityForm.Number(1000, 1e9), "Pedal openings over the whole life; no unit.", Usual.Openings);

    private static readonly Key<double> EngineHours = Key<double>.WithDefault(
        "engine_hours", QuantityForm.Number(1, 1e6), "Hours that the engine runs over the whole life; no unit.", Usual.EngineHours);

    private static readonly Key<double> Temperature = new(
        "temperature", QuantityForm.Number(-40, 500),
        "Temperature of the bracket with the engine hot, in degrees Celsius; no unit. If left out: not known; strength must hold at 20 and at 100 to count as proven.", isRequired: false);

    public static Section<ServiceLife> Form { get; } = new(
        [Openings, EngineHours, Temperature],
        v => new() { Openings = v.Get(Openings), EngineHours = v.Get(EngineHours), Temperature = v.OrNull(Temperature) });
}
