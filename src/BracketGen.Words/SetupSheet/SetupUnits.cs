using BracketGen.Geometry;
using BracketGen.Units;

namespace BracketGen.Words.SetupSheet;

/// <summary>Numbers of the set-up sheet, each on one line with its unit.</summary>
internal readonly record struct SetupUnits(UnitSystem System)
{
    public string Length(double value) => Phrases.Tied(System.Write(Quantity.Length, value));

    public string Size(double value) => Phrases.Tied(System.WriteSize(value));

    /// <summary>A range of lengths; it may break at "to".</summary>
    public string Range(double from, double to) => $"{System.Number(Quantity.Length, from)} to {Length(to)}";

    public string Fine(double value) => Phrases.Tied(System.WriteFine(Quantity.Length, value));

    public string Volts(double value) => Phrases.Tied(System.Write(Quantity.Voltage, value));

    public string Degrees(Angle angle) => System.Write(Quantity.Angle, angle.Radians);

    public string Torque(double value) => Phrases.Tied(System.WriteCoarse(Quantity.Torque, value));

    public string Load(double value) => Phrases.Tied(System.WriteCoarse(Quantity.Force, value));

    public string Stress(double value) => Phrases.Tied(System.WriteCoarse(Quantity.Stress, value));
}
