using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[pedal]</c> of a vehicle.</summary>
internal static class PedalSection
{
    private static readonly Key<Measured> AvailablePull = new(
        "available_pull", new MeasuredForm(QuantityForm.Length(5, 200), 50), "Wire pulled at the cable's end by the full stroke of the pedal.");

    private static readonly Key<double> LeverRatio = new(
        "lever_ratio", QuantityForm.Number(0.2, 20), "Travel of the pad under the foot over the pull at the cable; no unit.");

    public static Section<Pedal> Form { get; } = new(
        "a pedal", [AvailablePull, LeverRatio], v => new(v.Get(AvailablePull), v.Get(LeverRatio)));
}
