using System.CommandLine;
using BracketGen.Cli.Terminal;
using BracketGen.Drawing.Measuring;
using BracketGen.Drawing.Sheet;
using BracketGen.Storage;
using BracketGen.Units;

namespace BracketGen.Cli.Commands;

/// <summary>The measuring worksheet, to take to the vehicle.</summary>
internal static class WorksheetCommand
{
    private const string FileName = "measuring-worksheet.pdf";

    public static Command Create()
    {
        var into = new Option<DirectoryInfo>("--into")
        {
            Description = "Folder for the file.",
            DefaultValueFactory = _ => new("output"),
        };
        var paper = new Option<string>("--paper")
        {
            Description = "Sheet: A4 (millimetres) or A (8.5 x 11 inches, lengths in inches).",
            DefaultValueFactory = _ => "A4",
        };
        paper.AcceptOnlyFromAmong("A4", "A");
        var command = new Command("worksheet", $"Write the measuring worksheet (PDF): what to measure, from where, with blanks to fill in.\n\n{ExitCode.Help}") { into, paper };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(into), parsed.GetRequiredValue(paper)));
        return command;
    }

    private static int Run(DirectoryInfo into, string paper)
    {
        var pages = paper == "A"
            ? Worksheet.Compose(PageFormat.AnsiA, UnitSystem.Inch)
            : Worksheet.Compose(PageFormat.A4, UnitSystem.Metric);

        // The sheet is the same every day: a fixed date keeps its bytes the same.
        var bytes = PdfWriter.Write(pages, new("Measuring worksheet", "BracketGen", new DateOnly(2000, 1, 1)));
        try
        {
            WholeFiles.WriteOne(Path.Combine(into.ToString(), FileName), bytes);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"bracketgen: the worksheet could not be written to {into}: {problem.Message}");
            return ExitCode.CannotWrite;
        }

        Console.Out.WriteLine($"  wrote {Path.Combine(into.ToString(), FileName)}");
        return ExitCode.Pass;
    }
}
