using BracketGen.Design;
using BracketGen.Drawing.Text;

namespace BracketGen.Cli.Terminal;

/// <summary>What stands in the way of a bracket, and what would open one.</summary>
internal static class DiagnosisTable
{
    public static void Print(TextWriter output, Diagnosis diagnosis, LengthUnit units)
    {
        output.WriteLine();
        output.WriteLine("  No bracket passes. What stands in the way:");
        foreach (var obstacle in diagnosis.Obstacles)
        {
            output.WriteLine(obstacle.Of == 0
                ? $"    {obstacle.Nearest.Id}: {obstacle.Nearest.Consequence}"
                : $"    {obstacle.Nearest.Id} stops {obstacle.Stopped} of {obstacle.Of} shapes; the nearest has {CheckText.Value(obstacle.Nearest, units)}, {CheckText.Limit(obstacle.Nearest, units)}");
        }

        output.WriteLine(diagnosis.Ways.IsEmpty
            ? "  No single change of quadrant, adjuster, free inner length, keep-out or sheet was found that opens a way."
            : "  Any one of these would open a way:");
        foreach (var way in diagnosis.Ways)
        {
            output.WriteLine($"    {Sentence(way, units)}");
        }
    }

    private static string Sentence(WayOpened way, LengthUnit units)
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
