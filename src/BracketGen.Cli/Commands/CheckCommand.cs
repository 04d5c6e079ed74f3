using System.CommandLine;
using System.Text;
using BracketGen.Cli.Terminal;
using BracketGen.Design.Checks;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Profiles;
using BracketGen.Profiles.Editing;
using BracketGen.Storage;
using BracketGen.Words.Terminal;

namespace BracketGen.Cli.Commands;

/// <summary>A bracket that is there already, tried on a job: bought, from the shelf, or one of ours.</summary>
internal static class CheckCommand
{
    public static Command Create()
    {
        var files = new Argument<FileInfo[]>("files")
        {
            Description = "The files of one or more brackets (TOML), then the job file.",
            Arity = ArgumentArity.OneOrMore,
        };
        var ours = new Option<bool>("--ours") { Description = "Put the bracket that the job gets by make into the table too." };
        var write = new Option<FileInfo?>("--write-ours") { Description = "Write the bracket that the job gets by make as a bracket file, as if it had been measured." };
        var skip = new Option<bool>("--skip-strength") { Description = "Leave out whether the bracket bends, shakes or cracks; it is not proven then. What corrects it is tried whole all the same." };
        var all = CommandOptions.AllChecks();
        var command = new Command(
            "check",
            $"Say whether a bracket that is there already is good on this vehicle, and what would correct it.\n\n{ExitCode.Help} Of several brackets the best one decides.")
        {
            files, ours, write, skip, all,
        };
        command.SetAction(parsed => Run(
            parsed.GetRequiredValue(files), parsed.GetValue(ours), parsed.GetValue(write), parsed.GetValue(skip) ? null : StrengthDetail.Usual, parsed.GetValue(all)));
        return command;
    }

    private static int Run(FileInfo[] files, bool withOurs, FileInfo? write, StrengthDetail? strength, bool all)
    {
        if (files.Length < 2 && !withOurs && write is null)
        {
            Console.Error.WriteLine("bracketgen: check needs a bracket file and a job file, in this order: check BRACKET JOB.");
            return ExitCode.BadInput;
        }

        if (JobInput.Read(files[^1]) is not { } job)
        {
            return ExitCode.BadInput;
        }

        if (job.Body.Mount.Second is not null)
        {
            Console.Error.WriteLine($"bracketgen: {TrialText.OnTwoFaces(job)}");
            return ExitCode.BadInput;
        }

        List<MeasuredBracket> brackets = [];
        var isRead = true;
        foreach (var file in files[..^1])
        {
            var result = ProfileReader.ReadBracket(file.ToString(), new DiskFileSource(), job.Shop);
            isRead &= JobInput.Told(result);
            if (result.IsRead)
            {
                brackets.Add(result.Value);
            }
        }

        if (!isRead)
        {
            return ExitCode.BadInput;
        }

        var own = withOurs || write is not null ? Designer.Solve(job, new(strength) { WithOthers = true }) : null;
        if (write is not null && Write(write, own!) is not ExitCode.Pass and var refused)
        {
            return refused;
        }

        var tried = brackets.Select(b => TriedBracket.Of(b, job, strength)).ToList();
        var screen = Screen.OfConsole();
        foreach (var one in tried)
        {
            Print(screen, one, all);
            screen.Line();
        }

        if (tried.Count > 1 || withOurs)
        {
            PrintTable(screen, tried, withOurs ? own : null);
        }

        VerdictKind[] kinds = [.. tried.Select(t => t.Trial.Kind), .. withOurs ? new[] { own!.Verdict.Kind } : []];
        return kinds.Length == 0 ? ExitCode.Pass : ExitCode.Of(kinds.Max());
    }

    private static int Write(FileInfo file, Solution own)
    {
        if (own.Bracket is not { } bracket || own.Dangers.Any())
        {
            Console.Error.WriteLine("bracketgen: --write-ours: no bracket was found for this job that is safe to make. See the command make.");
            return ExitCode.CheckFailed;
        }

        try
        {
            var name = own.Job.Document.PartNumber is { Length: > 0 } number ? number : $"{own.Job.Vehicle.Name}, {own.Job.Body.Name}";
            WholeFiles.WriteOne(file.ToString(), Encoding.UTF8.GetBytes(BracketFileText.Of(BracketDescription.Of(bracket, name, $"our own drawing, {own.Job.Shop.Name}"))));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"bracketgen: the bracket could not be written to {file}: {problem.Message}");
            return ExitCode.CannotWrite;
        }

        Screen.OfConsole().Paragraph(TerminalWords.Wrote(file.ToString()));
        return ExitCode.Pass;
    }

    private static void Print(Screen screen, TriedBracket tried, bool all)
    {
        var (bracket, trial, _) = tried;
        var job = trial.Job;
        screen.Paragraph(TrialText.Heading(bracket, job), Tone.Strong);
        if (trial.Solution is { } solution)
        {
            CheckTable.PrintVerdict(screen, solution.Verdict, TrialText.Question);
            CheckTable.Print(screen, solution.Checks, job.Units, all);
            AnswerTable.PrintTravel(screen, job, solution.Travel);
        }

        screen.Line();
        foreach (var line in TrialText.Fitted(trial, bracket.Drawn is not null))
        {
            screen.Paragraph(line, trial.Solution is null ? Tone.Bad : Tone.Plain);
        }

        if (TrialText.Adjuster(trial) is { } adjuster)
        {
            screen.Paragraph(adjuster);
        }

        screen.Line();
        foreach (var line in TrialText.Assumed(bracket, job))
        {
            screen.Paragraph(line);
        }

        if (TrialText.Correction(tried) is not { } correction)
        {
            return;
        }

        screen.Line();
        screen.Paragraph(correction.Before, correction.Remedies.Count == 0 ? Tone.Bad : Tone.Strong);
        foreach (var remedy in correction.Remedies)
        {
            screen.Paragraph("- " + remedy, hang: 2);
        }

        if (correction.After is { } after)
        {
            screen.Paragraph(after);
        }
    }

    private static void PrintTable(Screen screen, List<TriedBracket> tried, Solution? own)
    {
        List<string[]> rows = [[.. TrialText.Heads]];
        foreach (var one in tried)
        {
            rows.Add(TrialText.Row(rows.Count, one));
        }

        if (own is not null)
        {
            rows.Add(TrialText.RowOfOurs(rows.Count, own));
        }

        screen.Table(rows);
    }
}
