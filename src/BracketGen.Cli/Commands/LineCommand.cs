using System.Collections.Immutable;
using System.CommandLine;
using System.Reflection;
using BracketGen.Cli.Line;
using BracketGen.Cli.Terminal;
using BracketGen.Design.Checks;
using BracketGen.Line.Combinations;
using BracketGen.Line.Numbering;
using BracketGen.Line.Solving;
using BracketGen.Profiles;
using BracketGen.Profiles.Family;
using BracketGen.Storage;
using BracketGen.Words.Line;
using BracketGen.Words.Profiles;

namespace BracketGen.Cli.Commands;

/// <summary>A product line: every vehicle on every throttle body, with few parts.</summary>
internal static class LineCommand
{
    private sealed record Wishes(FileInfo Family, DirectoryInfo Into, FileInfo? Register, FileInfo? Order, bool Own, bool Strength, bool Drawings, bool Anew, bool SolveOnly, int Threads);

    public static Command Create()
    {
        var family = new Argument<FileInfo>("family") { Description = "The family file (TOML)." };
        var into = new Option<DirectoryInfo>("--into")
        {
            Description = "Folder for the files; one folder named after the family is made in it.",
            DefaultValueFactory = _ => new("output"),
        };
        var register = new Option<FileInfo?>("--register") { Description = "The register of part numbers and revisions; by default register.jsonl in the line's folder. Back it up: it only grows, and nothing can replace it." };
        var order = new Option<FileInfo?>("--order") { Description = "What to nest on stock sheets: a CSV file with the columns part_number and quantity. By default the family's quantity of every part." };
        var own = new Option<bool>("--own-parts") { Description = "Give every variant its own part, even if another variant's part fits." };
        var drawings = new Option<bool>("--drawings") { Description = "Also write a drawing (PDF) of every variant." };
        var weak = new Option<bool>("--skip-strength") { Description = "Do not calculate whether the brackets bend, shake or crack: many times quicker, but do not make brackets from it." };
        var anew = new Option<bool>("--anew") { Description = "Make every variant again, unchanged ones too." };
        var solveOnly = new Option<bool>("--solve-only") { Description = "Only solve: cut files, results and register; no shared parts, lists or stock sheets." };
        var threads = new Option<int>("--at-once") { Description = "How many variants to work on at once; by default one on each processor.", DefaultValueFactory = _ => Environment.ProcessorCount };
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
            family, into, register, order, own, weak, drawings, anew, solveOnly, threads,
        };
        command.SetAction(parsed => Run(new(
            parsed.GetRequiredValue(family), parsed.GetRequiredValue(into), parsed.GetValue(register), parsed.GetValue(order), parsed.GetValue(own),
            !parsed.GetValue(weak), parsed.GetValue(drawings), parsed.GetValue(anew), parsed.GetValue(solveOnly), parsed.GetValue(threads))));
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

        var place = LinePlace.Of(wishes.Family, wishes.Into, wishes.Register);
        try
        {
            using var held = FolderLock.TryTake(place.Folder);
            return held is null
                ? Bad(LineRunText.Busy(place.Folder))
                : Make(wishes, read.Value, place, held);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"bracketgen: {LineRunText.NotWritten(place.Folder, problem.Message)}");
            return ExitCode.CannotWrite;
        }
    }

    private static int Make(Wishes wishes, LoadedFamily family, LinePlace place, FolderLock held)
    {
        var combinations = FamilyCombinations.Of(family);
        var (register, damage) = RegisterFile.Read(place.Register, family.Family.Name);
        if (register is null)
        {
            return Bad(LineRunText.Damaged(place.Register, damage!));
        }

        var (numbers, conflicts) = NumberPlan.Of(family.Family.Name, family.Family.Numbers, combinations.Offered, register);
        if (numbers is null)
        {
            foreach (var conflict in conflicts)
            {
                Console.Error.WriteLine($"bracketgen: {conflict.Text}");
            }

            Console.Error.WriteLine(LineRunText.Conflicts(place.Register));
            return ExitCode.BadInput;
        }

        var strength = wishes.Strength ? StrengthDetail.Usual : null;
        var inputs = new CombinationInputs(family, ProgramVersion);
        var solver = new CombinationSolver(family, inputs, numbers, strength, wishes.Drawings ? LineDrawings.Of : null);
        using var stop = new StopSignal();
        if (Solve(wishes, combinations, solver, place.Combinations(held), stop.Token) is not { } made)
        {
            return ExitCode.Stopped;
        }

        var parts = LineParts.Of(family, combinations.Offered, made);
        var now = NewRevisions.Add(register, combinations.Offered, made, inputs, numbers, parts, family.Family.Units);
        if (!RegisterFile.Write(held, place.Register, register, now))
        {
            return Bad(LineRunText.RegisterChanged(place.Register));
        }

        LineTable.PrintOutcome(Console.Out, combinations, made, now, register);
        foreach (var folder in place.Combinations(held).Others(combinations.Offered.Select(c => c.Key)))
        {
            Console.Out.WriteLine($"  {LineRunText.Left(Path.Combine(LinePlace.CombinationsFolder, folder))}");
        }

        if (!wishes.SolveOnly && stop.Token.IsCancellationRequested)
        {
            return ExitCode.Stopped;
        }

        var code = wishes.SolveOnly
            ? ExitCode.Pass
            : LineOutputs.Write(wishes.Order, wishes.Own, wishes.Threads, new(family, combinations, made, parts, now, strength), place, held);
        return code != ExitCode.Pass ? code : ExitCode.Of(LineVerdict.Of(made));
    }

    /// <summary>Solves the variants that are new or changed; null if the run was stopped before the end.</summary>
    private static ImmutableArray<Made>? Solve(
        Wishes wishes, FamilyCombinations combinations, CombinationSolver solver, CombinationFolder folder, CancellationToken stop)
    {
        foreach (var combination in wishes.Anew ? combinations.Offered : [])
        {
            folder.Forget(combination.Key);
        }

        var progress = new ProgressReport(
            Console.Error, !Console.IsErrorRedirected, Console.IsErrorRedirected ? 80 : Math.Max(40, Console.WindowWidth));
        var run = LineRun.Run(combinations.Offered, solver, folder, wishes.Threads, progress.Tell, stop);
        progress.End();
        if (run.Any(m => m is null))
        {
            Console.Error.WriteLine(LineRunText.Stopped(run.Count(m => m is not null), run.Length));
            return null;
        }

        return [.. run.Select(m => m!)];
    }

    private static int Bad(string problem)
    {
        Console.Error.WriteLine($"bracketgen: {problem}");
        return ExitCode.BadInput;
    }

    private static string ProgramVersion =>
        typeof(LineCommand).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "unknown";
}
