using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Motion;
using BracketGen.Units;

namespace BracketGen.Words.Terminal;

/// <summary>The travel from released pedal to floor as rows: name, value, remark.</summary>
public static class TravelRows
{
    /// <summary>The rows.</summary>
    public static IReadOnlyList<string[]> Of(Job job, Travel travel)
    {
        string Length(double value) => job.Units.Write(Quantity.Length, value);
        string Percent(double value) => job.Units.Write(Quantity.Fraction, value);
        string Degrees(Geometry.Angle value) => job.Units.Write(Quantity.Angle, value.Radians);
        return
        [
            ["available pull", Length(travel.AvailablePull), "at the cable, pedal released to floor"],
            ["free play", Length(travel.FreePlay), $"the valve begins to move at {Percent(travel.PedalAtFirstMove)} of the pedal"],
            ["pull from closed to wide open", Length(travel.PullToWideOpen), $"for {Degrees(travel.Rotation)} of rotation"],
            travel.ReachesWideOpen
                ? ["over-travel", Length(travel.OverTravel), $"the valve is wide open at {Percent(travel.PedalAtWideOpen)} of the pedal"]
                : ["missing pull", Length(-travel.OverTravel), $"the valve reaches {Degrees(travel.Reached)} of {Degrees(travel.Rotation)}"],
        ];
    }
}
