using System.CommandLine;
using BracketGen.Cli.Terminal;
using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Cli.Commands;

/// <summary>The travel verdict alone, on the terminal.</summary>
internal static class TravelCommand
{
    // Here the uncertainty is the answer, not one check of many.
    private const int Samples = 65_536;

    public static Command Create()
    {
        var job = new Argument<FileInfo>("job") { Description = "The job file (TOML)." };
        var command = new Command("travel", $"Check the travel alone: does the pedal open the valve fully, and does it come back? Writes nothing.\n\n{ExitCode.Help}") { job };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(job)));
        return command;
    }

    private static int Run(FileInfo file)
    {
        if (JobInput.Read(file) is not { } job)
        {
            return ExitCode.BadInput;
        }

        var study = TravelStudy.Of(job, Samples, StrengthDetail.Usual);
        TravelTable.Print(Console.Out, job, study.Travel, study.Remedy);
        MechanismTable.Print(Console.Out, job, study.Mechanism);
        CheckTable.Print(Console.Out, study.Checks, job.Units);
        return study.Checks.All(c => c.Passes || c.Kind == CheckKind.Advice) ? ExitCode.Pass : ExitCode.CheckFailed;
    }
}
