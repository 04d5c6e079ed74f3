using System.Globalization;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Units;
using BracketGen.Words.Checks;

namespace BracketGen.Cli.Terminal;

/// <summary>Whether the bracket bends, shakes or cracks.</summary>
internal static class StrengthTable
{
    public static void Print(TextWriter output, Solution solution)
    {
        output.WriteLine();
        if (solution.Strength is not { } report)
        {
            if (solution.Bracket is not null)
            {
                output.WriteLine("  Strength was NOT calculated: whether the bracket bends, shakes or cracks is not known.");
            }

            return;
        }

        var units = solution.Job.Units;
        string Force(double value) => CheckText.Number(Quantity.Force, value, units);
        string Length(double value) => CheckText.Number(Quantity.Length, value, units);
        string Number(double value, string unit) => value.ToString("0", CultureInfo.InvariantCulture) + unit;
        TextTable.Print(output,
        [
            ["largest tension of an opening", Force(report.Opening.Tension), $"{Number(report.Opening.LargestStress, " MPa")}, the stop gives {Length(report.Opening.Give)}"],
            ["pedal stamped on", Force(report.Stamped.Tension), $"{Number(report.Stamped.LargestStress, " MPa")}, {(report.LimitingFootForce is { } foot ? $"a foot of {Force(foot)}" : "the floor stops the pedal, the over-travel stretches the cable")}"],
            ["natural frequencies", string.Join(", ", report.Frequencies.Select(f => Number(f, ""))) + " Hz", report.FiringFrequency is { } firing ? $"the engine fires at up to {Number(firing, " Hz")}" : "the engine is not told: [engine] in the throttle body's file"],
        ]);
    }
}
