using System.CommandLine;
using System.Text;
using BracketGen.Cli.Terminal;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Profiles;
using BracketGen.Profiles.Editing;
using BracketGen.SheetMetal.Shops;
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

    private sealed record Tried(MeasuredBracket Bracket, BracketTrial Trial, BracketRemedies.Found Found);

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

        var tried = brackets.Select(b => Try(b, job, strength)).ToList();
        var screen = Screen.OfConsole();
        foreach (var one in tried)
        {
            Print(screen, one, all);
            screen.Line();
        }

        if (tried.Count > 1 || withOurs)
        {
            PrintTable(screen, tried, withOurs ? own : null, job);
        }

        VerdictKind[] kinds = [.. tried.Select(t => t.Trial.Kind), .. withOurs ? new[] { own!.Verdict.Kind } : []];
        return kinds.Length == 0 ? ExitCode.Pass : ExitCode.Of(kinds.Max());
    }

    private static Tried Try(MeasuredBracket measured, Job job, StrengthDetail? strength)
    {
        var bracket = BracketOf(measured, job.Shop);
        var trial = BracketTrial.Of(job, bracket, measured.Thickness.PlusMinus, strength);
        return new(measured, trial, BracketRemedies.Of(trial, bracket, measured.Thickness.PlusMinus, strength));
    }

    // The reader made sure that there is one.
    private static Bracket BracketOf(MeasuredBracket measured, Shop shop) => MeasuredShape.Of(measured, measured.MetalIn(shop)!).Bracket!;

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

    private static void Print(Screen screen, Tried tried, bool all)
    {
        var (bracket, trial, found) = tried;
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

        if (trial.NothingFails)
        {
            return;
        }

        screen.Line();
        if (found.Remedies.IsEmpty)
        {
            screen.Paragraph(TrialText.NoneFound(trial, found.IsCutShort), Tone.Bad);
            return;
        }

        screen.Paragraph(TrialText.AnyOne, Tone.Strong);
        foreach (var remedy in found.Remedies)
        {
            screen.Paragraph("- " + TrialText.Remedy(remedy, job.Units), hang: 2);
        }

        screen.Paragraph(TrialText.AfterWork);
    }

    private static void PrintTable(Screen screen, List<Tried> tried, Solution? own, Job job)
    {
        List<string[]> rows = [[.. TrialText.Heads]];
        foreach (var (bracket, trial, found) in tried)
        {
            var correct = trial.Kind == VerdictKind.Passes ? TrialText.Nothing
                : trial.NothingFails ? TrialText.Measure
                : found.Remedies.IsEmpty ? TrialText.NotFound
                : TrialText.Short(found.Remedies[0], job.Units);
            rows.Add(TrialText.Row(rows.Count, bracket.Name, trial.Solution, trial.Kind, job, bracket.Price, correct));
        }

        if (own is not null)
        {
            rows.Add(TrialText.Row(
                rows.Count, TrialText.Ours, own.Bracket is null ? null : own, own.Verdict.Kind, job, TrialText.PriceOfOurs(own),
                own.Passes ? TrialText.Nothing : own.NothingFails ? TrialText.Measure : TrialText.NotFound));
        }

        screen.Table(rows);
    }
}
