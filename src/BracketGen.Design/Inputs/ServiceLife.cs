namespace BracketGen.Design.Inputs;

/// <summary>How long a bracket must last, and how hot it gets.</summary>
/// <remarks>The usual values are common practice, no source: 300,000 km with ten openings a kilometre, at 50 km/h.</remarks>
public sealed record ServiceLife
{
    /// <summary>Pedal openings.</summary>
    public double Openings { get; init; } = 3_000_000;

    /// <summary>Hours that the engine runs.</summary>
    public double EngineHours { get; init; } = 6000;

    /// <summary>Temperature of the bracket with the engine hot (°C); null where nobody measured it.</summary>
    public double? Temperature { get; init; }

    /// <summary>Temperature where nobody measured it (°C): what the strengths are stated at, and what it may be (common practice, no source).</summary>
    public const double RoomTemperature = 20, TemperatureAtWorst = 100;
}
