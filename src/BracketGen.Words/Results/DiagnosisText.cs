using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Words.Results;

/// <summary>What blocks every bracket, in words; screen and report say the same.</summary>
public static class DiagnosisText
{
    /// <summary>One cause.</summary>
    public static string Obstacle(Obstacle obstacle, UnitSystem units) => obstacle.Of == 0
        ? $"{obstacle.Nearest.Code}: {obstacle.Nearest.Consequence()}"
        : $"{obstacle.Nearest.Code} stops {obstacle.Stopped} of {obstacle.Of} shapes; the nearest has {CheckText.Value(obstacle.Nearest, units)}, {CheckText.Limit(obstacle.Nearest, units)}";

    /// <summary>One remedy.</summary>
    public static string Way(WayOpened way, UnitSystem units)
    {
        string Length(double value) => units.Write(Quantity.Length, value);
        return way.Input switch
        {
            ChangedInput.KeepOut => $"{way.What} {Length(way.To)} further away, or smaller by as much",
            ChangedInput.Stock => $"{way.What} of {Length(way.To)} in stock",
            _ => $"{Name(way.Input)} of {Length(way.To)} instead of {Length(way.From)}",
        };
    }

    /// <summary>The input that is changed, in words.</summary>
    public static string Name(ChangedInput input) => input switch
    {
        ChangedInput.FreeInnerLength => "free inner length",
        ChangedInput.AdjusterRange => "adjuster range",
        ChangedInput.QuadrantRadius => "pitch radius of the quadrant",
        ChangedInput.AvailablePull => "pull to the floor (a pedal stop)",
        _ => throw new ArgumentOutOfRangeException(nameof(input), input, "Keep-out and stock are named by what they are."),
    };
}
