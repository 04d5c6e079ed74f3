using System.CommandLine;
using BracketGen.Cli.Terminal;
using BracketGen.Drawing.Measuring;
using BracketGen.Storage;

namespace BracketGen.Cli.Commands;

/// <summary>The measuring worksheet, to take to the vehicle.</summary>
internal static class WorksheetCommand
{
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
            DefaultValueFactory = _ => WorksheetFile.MetricPaper,
        };
        paper.AcceptOnlyFromAmong(WorksheetFile.MetricPaper, WorksheetFile.InchPaper);
        var command = new Command("worksheet", $"Write the measuring worksheet (PDF): what to measure, from where, with blanks to fill in; and the target to photograph with the throttle body.\n\n{ExitCode.Help}") { into, paper };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(into), parsed.GetRequiredValue(paper)));
        return command;
    }

    private static int Run(DirectoryInfo into, string paper)
    {
        (string Name, byte[] Bytes)[] files = [(WorksheetFile.Name, WorksheetFile.Write(paper)), (WorksheetFile.TargetName, WorksheetFile.WriteTarget(paper))];
        try
        {
            foreach (var (name, bytes) in files)
            {
                WholeFiles.WriteOne(Path.Combine(into.ToString(), name), bytes);
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"bracketgen: the worksheet could not be written to {into}: {problem.Message}");
            return ExitCode.CannotWrite;
        }

        foreach (var (name, _) in files)
        {
            Console.Out.WriteLine($"  wrote {Path.Combine(into.ToString(), name)}");
        }

        return ExitCode.Pass;
    }
}
