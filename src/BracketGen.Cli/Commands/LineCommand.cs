using System.Collections.Immutable;
using System.CommandLine;
using System.Reflection;
using BracketGen.Cli.Line;
using BracketGen.Cli.Terminal;
using BracketGen.Design.Checks;
using BracketGen.Line.Combinations;
using BracketGen.Line.Files;
using BracketGen.Line.Numbering;
using BracketGen.Line.Parts;
using BracketGen.Line.Solving;
using BracketGen.Profiles;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
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
        var register = new Option<FileInfo?>("--register") { Description = "The register of part numbers and revisions; usually register.jsonl in the line's folder. Keep it well: it only grows." };
        var order = new Option<FileInfo?>("--order") { Description = "What to lay on sheets: a CSV file with the columns part_number and quantity. Usually the family's quantity of every part." };
        var own = new Option<bool>("--own-parts") { Description = "Give every combination its own part, even where another's would serve." };
        var drawings = new Option<bool>("--drawings") { Description = "Write a drawing (PDF) for every combination as well." };
        var weak = new Option<bool>("--skip-strength") { Description = "Do not calculate whether brackets bend, shake or crack: many times quicker, and not for brackets that are to be made." };
        var anew = new Option<bool>("--anew") { Description = "Make every combination anew, unchanged ones too." };
        var solveOnly = new Option<bool>("--solve-only") { Description = "Only solve: cut files, results and register, no parts shared, no lists, no sheets." };
        var threads = new Option<int>("--at-once") { Description = "How many combinations to work on at once; usually one on each processor.", DefaultValueFactory = _ => Environment.ProcessorCount };
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
            Make a whole product line: every combination of a family solved, numbered and registered, served by the fewest parts, priced, and laid on sheets.

            It may be stopped at any time (Ctrl-C) and goes on where it was. {ExitCode.Help.TrimEnd('.')}, 4 stopped before the end.
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

            Console.Error.WriteLine(read.Errors.Length == 1 ? "1 mistake in the files; nothing was computed." : $"{read.Errors.Length} mistakes in the files; nothing was computed.");
            return ExitCode.BadInput;
        }

        var place = LinePlace.Of(wishes.Family, wishes.Into, wishes.Register);
        try
        {
            using var busy = place.Lock();
            return busy is null
                ? Bad($"another run is at work in {place.Folder}; wait for it to end.")
                : Make(wishes, read.Value, place);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"bracketgen: the files could not be written to {place.Folder}: {problem.Message}");
            return ExitCode.CannotWrite;
        }
    }

    private static int Make(Wishes wishes, LoadedFamily family, LinePlace place)
    {
        var combinations = FamilyCombinations.Of(family);
        var (register, damage) = RegisterFile.Read(place.Register, family.Family.Name);
        if (register is null)
        {
            return Bad($"the register {place.Register} is damaged: {damage}. Nothing was computed. Fetch it from a safe copy, or mend it by hand.");
        }

        var (numbers, conflicts) = NumberPlan.Of(family.Family.Name, family.Family.Numbers, combinations.Offered, register);
        if (numbers is null)
        {
            foreach (var conflict in conflicts)
            {
                Console.Error.WriteLine($"bracketgen: {conflict}");
            }

            Console.Error.WriteLine($"The register is {place.Register}; nothing of it was changed, and nothing was computed.");
            return ExitCode.BadInput;
        }

        var strength = wishes.Strength ? StrengthDetail.Usual : null;
        var inputs = new CombinationInputs(family, ProgramVersion);
        var solver = new CombinationSolver(family, inputs, numbers, strength, wishes.Drawings ? LineDrawings.Of : null);
        if (wishes.Anew)
        {
            foreach (var combination in combinations.Offered)
            {
                place.Combinations.Forget(combination.Key);
            }
        }

        using var stop = new StopSignal();
        var progress = new ProgressReport(
            Console.Error, !Console.IsErrorRedirected, Console.IsErrorRedirected ? 80 : Math.Max(40, Console.WindowWidth));
        var run = LineRun.Run(combinations.Offered, solver, place.Combinations, wishes.Threads, progress.Tell, stop.Token);
        progress.End();
        if (run.Any(m => m is null))
        {
            Console.Error.WriteLine($"Stopped: {run.Count(m => m is not null)} of {run.Length} combinations are done. The same command goes on from there.");
            return ExitCode.Stopped;
        }

        ImmutableArray<Made> made = [.. run.Select(m => m!)];
        var parts = LineParts.Of(family, combinations.Offered, made);
        var now = NewRevisions.Add(register, combinations.Offered, made, inputs, numbers, parts);
        if (RegisterFile.Write(place.Register, register, now) is { } changed)
        {
            return Bad($"the register {place.Register} was not written: {changed}.");
        }

        LineTable.PrintOutcome(Console.Out, combinations, made, now, register);
        foreach (var folder in place.Combinations.Others(combinations.Offered.Select(c => c.Key)))
        {
            Console.Out.WriteLine($"  {Path.Combine("combinations", folder)} belongs to no combination of the line any more; it was left as it is.");
        }

        if (!wishes.SolveOnly && stop.Token.IsCancellationRequested)
        {
            return ExitCode.Stopped;
        }

        var code = wishes.SolveOnly ? ExitCode.Pass : LineOutputs.Write(wishes.Order, wishes.Own, strength, wishes.Threads, family, combinations, made, parts, now, place);
        return code != ExitCode.Pass ? code : made.All(m => m.Outcome == Outcome.Passes) ? ExitCode.Pass : ExitCode.CheckFailed;
    }

    private static int Bad(string problem)
    {
        Console.Error.WriteLine($"bracketgen: {problem}");
        return ExitCode.BadInput;
    }

    private static string ProgramVersion =>
        typeof(LineCommand).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "unknown";
}
