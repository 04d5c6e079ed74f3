using System.Globalization;
using BracketGen.Design.Inputs;
using BracketGen.Mechanism.Motion;
using BracketGen.Units;
using BracketGen.Words.Checks;
using BracketGen.Words.Results;

namespace BracketGen.Cli.Terminal;

/// <summary>The travel from released pedal to floor, and what would mend it.</summary>
internal static class TravelTable
{
    public static void Print(TextWriter output, Job job, Travel travel, TravelRemedy? remedy)
    {
        string Length(double value) => CheckText.Number(Quantity.Length, value, job.Units);
        string Percent(double value) => CheckText.Number(Quantity.Fraction, value, job.Units);
        output.WriteLine($"  {job.Vehicle.Name} on {job.Body.Name}");
        output.WriteLine();
        TextTable.Print(output,
        [
            ["pull the pedal gives", Length(travel.AvailablePull), ""],
            ["free play", Length(travel.FreePlay), $"the valve begins to move at {Percent(travel.PedalAtFirstMove)} of the pedal"],
            ["pull from closed to wide open", Length(travel.PullToWideOpen), $"for {travel.Rotation.Degrees.ToString("0.#", CultureInfo.InvariantCulture)}° of rotation"],
            travel.ReachesWideOpen
                ? ["over-travel", Length(travel.OverTravel), $"the valve is wide open at {Percent(travel.PedalAtWideOpen)} of the pedal"]
                : ["missing pull", Length(-travel.OverTravel), $"the valve reaches {travel.Reached.Degrees.ToString("0.0", CultureInfo.InvariantCulture)}° of {travel.Rotation.Degrees.ToString("0.#", CultureInfo.InvariantCulture)}°"],
        ]);
        if (TravelText.Remedies(job, remedy) is { Count: > 0 } remedies)
        {
            output.WriteLine();
            output.WriteLine("  Any one of these would open the valve fully:");
            foreach (var one in remedies)
            {
                output.WriteLine($"    {one}");
            }
        }
        else if (TravelText.PedalStop(job, travel) is { } stop)
        {
            output.WriteLine();
            output.WriteLine($"  {stop}");
        }
    }
}
