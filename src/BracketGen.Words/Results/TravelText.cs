using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Motion;
using BracketGen.Units;

namespace BracketGen.Words.Results;

/// <summary>What the pedal does to the valve, and what would correct it, in words; screen and report say the same.</summary>
public static class TravelText
{
    /// <summary>The travel in a sentence or two.</summary>
    public static string Summary(Job job, Travel travel)
    {
        var first = $"The valve begins to move at {Percent(travel.PedalAtFirstMove)} of the pedal";
        return travel.ReachesWideOpen
            ? $"{first} and is wide open at {Percent(travel.PedalAtWideOpen)}; over-travel {Length(job, travel.OverTravel)}."
            : $"{first} and reaches {Degrees(travel.Reached.Degrees)} of {Degrees(travel.Rotation.Degrees)}: {Length(job, -travel.OverTravel)} of pull is missing.";
    }

    /// <summary>Where to put a stop for the pedal; null where it needs none.</summary>
    public static string? PedalStop(Job job, Travel travel) => travel.OverTravel > job.Preferences.MaxOverTravel
        ? $"Set a pedal stop at {Percent(travel.PedalAtWideOpen)} of its stroke: {Length(job, job.Vehicle.Pedal.FullStroke * travel.PedalAtWideOpen)} of pad travel from released."
        : null;

    private static string Length(Job job, double value) => job.Units.Write(Quantity.Length, value);

    private static string Percent(double value) => UnitSystem.Metric.Write(Quantity.Fraction, value);

    private static string Degrees(double value) => UnitSystems.Decimals(value, "0.#") + "°";
}
