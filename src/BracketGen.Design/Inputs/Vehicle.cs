using System.Collections.Immutable;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Pedals;

namespace BracketGen.Design.Inputs;

/// <summary>The vehicle: its cable and its pedal.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Cable">The cable it brings.</param>
/// <param name="Pedal">The pedal it brings.</param>
public sealed record Vehicle(string Name, Cable Cable, Pedal Pedal)
{
    /// <summary>Whether its gross mass is above 4,536 kg: 49 CFR 571.124 then gives the throttle more time to close.</summary>
    public bool IsHeavy { get; init; }

    /// <summary>What reads the position sensor.</summary>
    public Controller Controller { get; init; } = Controller.Usual;

    /// <summary>The cables it brings besides the one from the pedal.</summary>
    public ImmutableArray<OtherCable> OtherCables { get; init; } = [];
}
