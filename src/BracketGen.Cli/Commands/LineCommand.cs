using System.CommandLine;
using BracketGen.Cli.Terminal;
using BracketGen.Line.Running;
using BracketGen.Profiles;
using BracketGen.Words.Line;
using BracketGen.Words.Profiles;

namespace BracketGen.Cli.Commands;

/// <summary>A product line: every vehicle on every throttle body, with few parts.</summary>
internal static class LineCommand
{
    private sealed record Wishes(FileInfo Family, DirectoryInfo Into, FileInfo? Register, FileInfo? Order, bool Own, bool Strength, bool Drawings, bool Anew, bool SolveOnly, int Threads, bool ChooseAnew, IReadOnlyList<string> Redraw, bool Rebuild);

    public static Command Create()
    {
        var family = new Argument<FileInfo>("family") { Description = "The family file (TOML)." };
        var into = new Option<DirectoryInfo>("--into")
        {
            Description = "Folder for the files; one folder named after the family is made in it.",
            DefaultValueFactory = _ => new("output"),
        };
        var register = new Option<FileInfo?>("--register") { Description = "The register of part numbers and revisions; by default beside the family file, with the ending .register.jsonl. Back it up: it only grows, and holds every number given out." };
        var order = new Option<FileInfo?>("--order") { Description = "What to nest on stock sheets: a CSV file with the columns part_number and quantity. By default the family's quantity of every part." };
        var own = new Option<bool>("--own-parts") { Description = "Give every variant its own part, even if another variant's part fits." };
        var drawings = new Option<bool>("--drawings") { Description = "Also write a drawing (PDF) of every variant." };
        var weak = new Option<bool>("--skip-strength") { Description = "Do not calculate whether the brackets bend, shake or crack: many times quicker, but do not make brackets from it." };
        var anew = new Option<bool>("--anew") { Description = "Make every variant again, unchanged ones too." };
        var solveOnly = new Option<bool>("--solve-only") { Description = "Only solve: cut files, results and register; no shared parts, lists or stock sheets." };
        var threads = new Option<int>("--at-once") { Description = "How many variants to work on at once; by default one on each processor.", DefaultValueFactory = _ => Environment.ProcessorCount };
        var chooseAnew = new Option<bool>("--choose-anew") { Description = "Choose the parts anew: variants may lose parts that still pass. Without it every variant keeps its part where that still passes." };
        var redraw = new Option<string[]>("--redraw") { Description = "Draw this part anew, though the revision given out still passes. Repeat it for several parts; all for all of them. Pinned parts stay.", DefaultValueFactory = _ => [] };
        var rebuild = new Option<bool>("--rebuild-register") { Description = "Make a lost register again from its copy in the line's folder and from the products there; nothing else is made." };
        threads.Validators.Add(result =>
        {
            if (result.Errors.Any() || result.GetValueOrDefault<int>() is < 1 or > 1024)
            {
                result.AddError("--at-once is a whole number from 1 to 1024.");
            }
        });
        var command = new Command(
            "line",
            $"""
            Make a whole product line: solve, number and register every variant of a family, find the fewest parts that fit them all, price the parts and nest them on stock sheets.

            You may stop it at any time (Ctrl-C); the same command continues. {ExitCode.Help}
            """)
        {
            family, into, register, order, own, weak, drawings, anew, solveOnly, threads, chooseAnew, redraw, rebuild,
        };
        command.SetAction(parsed => Run(new(
            parsed.GetRequiredValue(family), parsed.GetRequiredValue(into), parsed.GetValue(register), parsed.GetValue(order), parsed.GetValue(own),
            !parsed.GetValue(weak), parsed.GetValue(drawings), parsed.GetValue(anew), parsed.GetValue(solveOnly), parsed.GetValue(threads),
            parsed.GetValue(chooseAnew), parsed.GetValue(redraw) ?? [], parsed.GetValue(rebuild))));
        return command;
    }

    private static int Run(Wishes wishes)
    {
        var read = FamilyReader.Read(wishes.Family.ToString(), new DiskFileSource());
        if (!read.IsRead)
        {
            foreach (var error in read.Errors)
            {
                Console.Error.WriteLine(ProfileErrorText.Format(error));
            }

            Console.Error.WriteLine(LineRunText.Mistakes(read.Errors.Sum(e => e.Count)));
            return ExitCode.BadInput;
        }

        var place = LinePlace.Of(wishes.Family.ToString(), wishes.Into.ToString(), wishes.Register?.ToString());
        if (wishes.Rebuild)
        {
            return RegisterRebuild.Run(read.Value, place, new(Console.Out, Console.Error, "bracketgen: ", _ => { }, () => { })) switch
            {
                LineEnd.BadInput => ExitCode.BadInput,
                LineEnd.CannotWrite => ExitCode.CannotWrite,
                _ => ExitCode.Pass,
            };
        }

        using var stop = new StopSignal();
        var progress = new ProgressReport(
            Console.Error, !Console.IsErrorRedirected, Console.IsErrorRedirected ? 80 : Math.Max(40, Console.WindowWidth));
        var (end, verdict) = LineWork.Run(
            read.Value,
            new(wishes.Threads)
            {
                Order = wishes.Order?.ToString(),
                Own = wishes.Own,
                Strength = wishes.Strength,
                Drawings = wishes.Drawings,
                Anew = wishes.Anew,
                SolveOnly = wishes.SolveOnly,
                ChooseAnew = wishes.ChooseAnew,
                Redraw = wishes.Redraw.Contains("all") ? null : wishes.Redraw.ToHashSet(),
            },
            place,
            new(Console.Out, Console.Error, "bracketgen: ", progress.Tell, progress.End), stop.Token);
        return end switch
        {
            LineEnd.BadInput => ExitCode.BadInput,
            LineEnd.CannotWrite => ExitCode.CannotWrite,
            LineEnd.Stopped => ExitCode.Stopped,
            _ => ExitCode.Of(verdict!.Value),
        };
    }
}
