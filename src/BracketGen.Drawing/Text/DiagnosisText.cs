using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Study;
using BracketGen.SheetMetal;

namespace BracketGen.Drawing.Text;

/// <summary>What stands in the way of a bracket, in words; screen and report say the same.</summary>
public static class DiagnosisText
{
    /// <summary>One check in the way.</summary>
    public static string Obstacle(Obstacle obstacle, LengthUnit units) => obstacle.Of == 0
        ? $"{obstacle.Nearest.Id}: {obstacle.Nearest.Consequence}"
        : $"{obstacle.Nearest.Id} stops {obstacle.Stopped} of {obstacle.Of} shapes; the nearest has {CheckText.Value(obstacle.Nearest, units)}, {CheckText.Limit(obstacle.Nearest, units)}";

    /// <summary>One change that would open a way.</summary>
    public static string Way(WayOpened way, LengthUnit units)
    {
        string Length(double value) => CheckText.Number(CheckUnit.Length, value, units);
        return way.Input switch
        {
            ChangedInput.KeepOut => $"{way.What} {Length(way.To)} farther away, or smaller by as much",
            ChangedInput.Stock => $"{way.What} of {Length(way.To)} in stock",
            _ => $"{way.What} of {Length(way.To)} instead of {Length(way.From)}",
        };
    }
}
