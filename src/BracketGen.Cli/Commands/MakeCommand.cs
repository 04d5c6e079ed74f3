using System.CommandLine;
using System.Globalization;
using System.Text;
using BracketGen.Cli.Terminal;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Drawing;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Solid.Step;
using BracketGen.Profiles.Editing;
using BracketGen.SheetMetal.Cutting;
using BracketGen.Storage;
using BracketGen.Words.CutFile;
using BracketGen.Words.Results;
using BracketGen.Words.Terminal;

namespace BracketGen.Cli.Commands;

/// <summary>The main job: from measurements to a bracket that can be cut out.</summary>
internal static class MakeCommand
{
    public static Command Create()
    {
        var job = new Argument<FileInfo>("job") { Description = "The job file (TOML)." };
        var into = JobInput.IntoOption();
        var accept = new Option<string[]>("--accept-danger")
        {
            Description = "Name of a failed safety check (as the table gives it) despite which the cut file and the STEP file are written. The drawing then carries it in large type.",
            AllowMultipleArgumentsPerToken = true,
        };
        var date = new Option<string?>("--date") { Description = "Date of issue for the title block, YYYY-MM-DD; overrides the job's own." };
        date.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<string?>() is { } text && ParseDate(text) is null)
            {
                result.AddError($"--date was given as '{text}'; a date is written YYYY-MM-DD, such as 2026-03-02.");
            }
        });
        var choice = new Option<int?>("--choice")
        {
            Description = "Number of the bracket to make, of those the job's table offers; 1 is the best. If left out: the bracket chosen in the job file, or the best.",
        };
        var keep = new Option<bool>("--keep-choice")
        {
            Description = "Write the bracket that is made into the job file (key chosen), so that it is made again as it was. It must not fail a check.",
        };
        var dxf = new Option<string>("--dxf")
        {
            Description = "Release of the cut file's format: r2000, or r12 for old machines.",
            DefaultValueFactory = _ => "r2000",
        };
        dxf.AcceptOnlyFromAmong("r2000", "r12");
        var kerf = new Option<bool>("--kerf-compensated")
        {
            Description = $"Write also {JobFiles.KerfFile}: the beam path, half the shop's kerf off the finished edge, for machines that cannot offset it themselves.",
        };
        var cutFileText = new Option<bool>("--cut-file-text")
        {
            Description = "Write part number, revision, material, thickness and quantity as text below the part in the cut file, on a layer of its own that is not cut.",
        };
        var quantity = new Option<int?>("--quantity") { Description = "How many parts to cut, for --cut-file-text; 1 if left out." };
        quantity.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int?>() is < 1)
            {
                result.AddError("--quantity is how many parts to cut: 1 or more.");
            }
        });
        var step = new Option<string>("--step")
        {
            Description = "Schema of the STEP file: ap214, which older programs read too, or ap242.",
            DefaultValueFactory = _ => "ap214",
        };
        step.AcceptOnlyFromAmong("ap214", "ap242");
        var paper = new Option<string?>("--paper")
        {
            Description = "Sheet of the drawing: A3, A4, or B (17 x 11 inches), A (8.5 x 11 inches); overrides the job's own.",
        };
        paper.AcceptOnlyFromAmong("A3", "A4", "B", "A");
        var skip = new Option<bool>("--skip-strength")
        {
            Description = "Do not calculate whether the bracket bends, shakes or cracks: a fraction of a second sooner, and not for a bracket that is to be made.",
        };
        var most = new Option<int>("--judge")
        {
            Description = "How many brackets are judged by their strength at most before the search gives up; a search that gives up says so.",
            DefaultValueFactory = _ => SearchEffort.UsualSolves,
        };
        var all = CommandOptions.AllChecks();
        var command = new Command("make", $"Design the bracket and write its cut file, drawing, 1:1 template, set-up sheet, solid model, report and result.\n\n{ExitCode.Help}")
        {
            job, into, accept, date, choice, keep, paper, dxf, kerf, cutFileText, quantity, step, skip, most, all,
        };
        command.Validators.Add(result =>
        {
            if (result.GetResult(quantity) is { Implicit: false } && !result.GetValue(cutFileText))
            {
                result.AddError("--quantity is for the text below the part: give --cut-file-text too.");
            }
        });
        command.SetAction(parsed => Run(
            parsed.GetRequiredValue(job), parsed.GetRequiredValue(into), parsed.GetValue(accept) ?? [],
            parsed.GetValue(date) is { } text ? ParseDate(text) : null, parsed.GetValue(choice), parsed.GetValue(keep),
            new(parsed.GetValue(skip) ? null : StrengthDetail.Usual) { WithOthers = true, MaxSolves = parsed.GetValue(most) },
            new(parsed.GetValue(dxf) == "r12" ? DxfVersion.R12 : DxfVersion.R2000, PageFormat.Named(parsed.GetValue(paper)), null)
            {
                TextQuantity = parsed.GetValue(cutFileText) ? parsed.GetValue(quantity) ?? 1 : null,
                Step = parsed.GetValue(step) == "ap242" ? StepSchema.Ap242 : StepSchema.Ap214,
            },
            parsed.GetValue(kerf), parsed.GetValue(all)));
        return command;
    }

    /// <summary>The files of a job as they are made without any option.</summary>
    /// <returns>The exit code.</returns>
    public static int Usual(FileInfo job, DirectoryInfo into) =>
        Run(job, into, [], null, null, isKept: false, new(StrengthDetail.Usual) { WithOthers = true }, new(DxfVersion.R2000, null, null), compensated: false, all: false);

    private static DateOnly? ParseDate(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date : null;

    private static int Run(
        FileInfo file, DirectoryInfo into, string[] accepted, DateOnly? date, int? choice, bool isKept, SearchEffort effort, FileChoices choices, bool compensated, bool all)
    {
        if (JobInput.Read(file) is not { } job)
        {
            return ExitCode.BadInput;
        }

        if (date is not null)
        {
            job = job with { Document = job.Document with { Date = date } };
        }

        // A number that is asked for goes before what was chosen.
        var solution = Designer.Solve(choice is null ? job : job with { Chosen = null }, effort, choice ?? 1);
        if (choice is not null && choice != solution.Choice)
        {
            Console.Error.WriteLine(
                $"bracketgen: --choice was given as {choice}; this job offers "
                + (solution.Offers.Length > 1 ? $"1 to {solution.Offers.Length}." : "only 1."));
            return ExitCode.BadInput;
        }

        if (isKept && (!solution.NothingFails || solution.Taken is null))
        {
            Console.Error.WriteLine("bracketgen: --keep-choice keeps a bracket that fails no check; this one fails. Make another one, or leave the option out.");
            return ExitCode.BadInput;
        }

        var kept = isKept ? WithChosen(file.ToString(), solution.Taken!) : null;
        if (isKept && kept is null)
        {
            Console.Error.WriteLine($"bracketgen: --keep-choice: the key {ChosenValue.Key} cannot be written into {file}. A packed job must be unpacked first.");
            return ExitCode.BadInput;
        }

        var unknown = accepted.Except(solution.Dangers.Select(d => d.Code)).ToList();
        if (unknown.Count > 0)
        {
            Console.Error.WriteLine(
                $"bracketgen: --accept-danger names {string.Join(", ", unknown)}, which is not a failed safety check of this job"
                + (solution.Dangers.Any() ? $"; those are: {string.Join(", ", solution.Dangers.Select(d => d.Code))}." : "; there is none."));
            return ExitCode.BadInput;
        }

        var path = compensated ? FlatPatternDxf.PathFor(solution) : null;
        if (compensated && solution.Bracket is not null && KerfText.Refusal(path, job.Units) is { } refusal)
        {
            Console.Error.WriteLine($"bracketgen: --kerf-compensated: {refusal} Or leave the option out.");
            return ExitCode.BadInput;
        }

        solution = solution with { Diagnosis = Diagnosis.Of(solution, effort) };
        var folder = JobInput.FolderIn(into, file);
        var files = JobFiles.Of(solution, accepted, choices with { CutPath = path });
        try
        {
            WholeFiles.Write(folder, files.Written, files.Withheld);
            if (kept is not null)
            {
                WholeFiles.WriteOne(file.ToString(), Encoding.UTF8.GetBytes(kept));
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"bracketgen: the files could not be written to {folder}{(isKept ? $" or {file}" : "")}: {problem.Message}");
            return ExitCode.CannotWrite;
        }

        Report(solution, folder, files, path, accepted, all);
        if (isKept)
        {
            Screen.OfConsole().Paragraph(TerminalWords.Kept(file.ToString()));
        }

        return ExitCode.Of(solution.Verdict.Kind);
    }

    // The job's text with that bracket chosen; null where it has no place for it.
    private static string? WithChosen(string file, ChosenBracket chosen)
    {
        var text = File.ReadAllText(file);
        return ProfileValues.Summary(text) is ("job", _) ? ChosenValue.Apply(text, chosen) : null;
    }

    private static void Report(Solution solution, string folder, JobFiles files, CutPath? path, string[] accepted, bool all)
    {
        var screen = Screen.OfConsole();
        var verdict = solution.Verdict;
        screen.Paragraph(TerminalWords.Heading(solution.Job.Vehicle.Name, solution.Job.Body.Name), Tone.Strong);
        CheckTable.PrintVerdict(screen, verdict);
        CheckTable.Print(screen, solution.Checks, solution.Job.Units, all);
        if (ChosenText.Of(solution) is { } chosen)
        {
            screen.Line();
            screen.Paragraph(chosen, solution.ChosenIs == ChosenState.Passes ? Tone.Plain : Tone.Bad);
        }

        AnswerTable.PrintTravel(screen, solution.Job, solution.Travel);
        AnswerTable.PrintCables(screen, solution.Job);
        AnswerTable.PrintBracket(screen, solution);
        screen.Line();
        foreach (var (name, _) in files.Written)
        {
            screen.Paragraph(TerminalWords.Wrote(Path.Combine(folder, name)));
            foreach (var remark in name == JobFiles.KerfFile ? KerfText.OnScreen(path!, solution.Job.Units) : [])
            {
                screen.Paragraph(remark);
            }
        }

        var open = solution.Dangers.Select(d => d.Code).Except(accepted).ToList();
        if (open.Count > 0 && solution.Bracket is not null)
        {
            screen.Line();
            foreach (var line in TerminalWords.Withheld(open))
            {
                screen.Paragraph(line, Tone.Bad);
            }
        }

        screen.Line();
        CheckTable.PrintVerdict(screen, verdict);
    }
}
