using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Pedals;

namespace BracketGen.Design.Inputs;

/// <summary>The vehicle: its cable and its pedal.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Cable">The cable it brings.</param>
/// <param name="Pedal">The pedal it brings.</param>
public sealed record Vehicle(string Name, Cable Cable, Pedal Pedal)
{
    /// <summary>What reads the position sensor.</summary>
    public Controller Controller { get; init; } = Controller.Usual;
}
