using System.CommandLine;
using BracketGen.Cli.Terminal;
using BracketGen.Design.Checks;
using BracketGen.Design.Kit;
using BracketGen.Line.Lists;
using BracketGen.Profiles;
using BracketGen.Storage;
using BracketGen.Words.Kit;
using BracketGen.Words.Terminal;

namespace BracketGen.Cli.Commands;

/// <summary>What makes a bare throttle body complete, from the parts at hand.</summary>
internal static class KitCommand
{
    public static Command Create()
    {
        var job = new Argument<FileInfo>("job") { Description = "The job file (TOML), which names the lists of parts in [kit]." };
        var into = JobInput.IntoOption();
        var skip = new Option<bool>("--skip-strength") { Description = "Leave out whether brackets bend, shake or crack: quicker, and no bracket is proven then." };
        var command = new Command(
            "kit",
            "Say which of the parts at hand make the throttle body complete, the cheapest set that fits, and write it as a list (CSV, XLSX, PDF).\n\n"
            + "Exit codes: 0 all that is needed fits, 1 nothing fits for something, 2 bad input, 3 outputs could not be written, 4 stopped before the end, 5 not proven: whether something fits is not known.")
        {
            job, into, skip,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(job), parsed.GetRequiredValue(into), parsed.GetValue(skip) ? null : StrengthDetail.Usual));
        return command;
    }

    private static int Run(FileInfo file, DirectoryInfo into, StrengthDetail? strength)
    {
        var read = ProfileReader.ReadKit(file.ToString(), new DiskFileSource());
        if (!JobInput.Told(read))
        {
            return ExitCode.BadInput;
        }

        var study = KitStudy.Of(read.Value!, strength);
        var folder = JobInput.FolderIn(into, file);
        var files = KitFiles.Of(study);
        try
        {
            WholeFiles.Write(folder, files, []);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"bracketgen: the files could not be written to {folder}: {problem.Message}");
            return ExitCode.CannotWrite;
        }

        var screen = Screen.OfConsole();
        Print(screen, study);
        foreach (var (name, _) in files)
        {
            screen.Paragraph(TerminalWords.Wrote(Path.Combine(folder, name)));
        }

        return study.State switch
        {
            FitState.Fits => ExitCode.Pass,
            FitState.NotKnown => ExitCode.NotProven,
            _ => ExitCode.CheckFailed,
        };
    }

    private static void Print(Screen screen, KitStudy study)
    {
        screen.Paragraph(KitText.Heading(study.Kit.Job), Tone.Strong);
        screen.Paragraph(KitText.Verdict(study), study.State switch { FitState.Fits => Tone.Good, FitState.NotKnown => Tone.Open, _ => Tone.Bad });
        if (!study.Kit.HasLists)
        {
            screen.Paragraph(KitText.NoLists);
        }

        screen.Line();
        screen.Paragraph(KitText.Set, Tone.Strong);
        screen.Table([[.. KitText.SetHeads], .. KitText.SetRows(study).Select(r => r.ToArray())]);
        screen.Line();
        foreach (var line in KitText.Account(study))
        {
            screen.Paragraph(line);
        }

        foreach (var (heading, lines) in KitText.Lists(study))
        {
            screen.Line();
            screen.Paragraph(heading, Tone.Strong);
            foreach (var line in lines)
            {
                screen.Paragraph("- " + line, hang: 2);
            }
        }

        screen.Line();
    }
}
