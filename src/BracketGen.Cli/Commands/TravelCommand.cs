using System.CommandLine;
using BracketGen.Cli.Terminal;
using BracketGen.Design.Checks;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Words.Terminal;

namespace BracketGen.Cli.Commands;

/// <summary>The travel verdict alone, on the terminal.</summary>
internal static class TravelCommand
{
    public static Command Create()
    {
        var job = new Argument<FileInfo>("job") { Description = "The job file (TOML)." };
        var all = CommandOptions.AllChecks();
        var command = new Command("travel", $"Check the travel alone: does the pedal open the valve fully, and does it come back? Writes nothing.\n\n{ExitCode.Help}") { job, all };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(job), parsed.GetValue(all)));
        return command;
    }

    private static int Run(FileInfo file, bool all)
    {
        if (JobInput.Read(file) is not { } job)
        {
            return ExitCode.BadInput;
        }

        var study = TravelStudy.Of(job);
        var screen = Screen.OfConsole();
        screen.Paragraph(TerminalWords.Heading(job.Vehicle.Name, job.Body.Name), Tone.Strong);
        CheckTable.PrintVerdict(screen, study.Verdict, TerminalWords.TheTravel);
        CheckTable.Print(screen, study.Checks, job.Units, all);
        AnswerTable.PrintTravel(screen, job, study.Travel);
        AnswerTable.PrintCables(screen, job);
        if (study.Verdict.Kind is VerdictKind.Unsafe or VerdictKind.Fails)
        {
            // A remedy is one only where the whole job passes with it.
            var whole = Designer.Solve(job, SearchEffort.BestOnly);
            if (Diagnosis.Of(whole, SearchEffort.BestOnly) is { } diagnosis)
            {
                AnswerTable.PrintDiagnosis(screen, whole, diagnosis);
            }
        }


        AnswerTable.PrintMechanism(screen, job, study.Mechanism);
        screen.Line();
        CheckTable.PrintVerdict(screen, study.Verdict, TerminalWords.TheTravel);
        return ExitCode.Of(study.Verdict.Kind);
    }
}
