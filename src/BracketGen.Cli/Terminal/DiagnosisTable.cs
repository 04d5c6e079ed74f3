using BracketGen.Design.Study;
using BracketGen.Units;
using BracketGen.Words.Results;

namespace BracketGen.Cli.Terminal;

/// <summary>What stands in the way of a bracket, and what would open one.</summary>
internal static class DiagnosisTable
{
    public static void Print(TextWriter output, Diagnosis diagnosis, UnitSystem units)
    {
        output.WriteLine();
        output.WriteLine("  No bracket passes. What stands in the way:");
        foreach (var obstacle in diagnosis.Obstacles)
        {
            output.WriteLine($"    {DiagnosisText.Obstacle(obstacle, units)}");
        }

        output.WriteLine(diagnosis.Ways.IsEmpty
            ? "  No single change of quadrant, adjuster, free inner length, keep-out or sheet was found that opens a way."
            : "  Any one of these would open a way:");
        foreach (var way in diagnosis.Ways)
        {
            output.WriteLine($"    {DiagnosisText.Way(way, units)}");
        }
    }
}
