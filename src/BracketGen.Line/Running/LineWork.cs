using System.Collections.Immutable;
using System.Reflection;
using BracketGen.Design.Checks;
using BracketGen.Line.Combinations;
using BracketGen.Line.Lists;
using BracketGen.Line.Numbering;
using BracketGen.Line.Sharing;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Storage;
using BracketGen.Words.Line;

namespace BracketGen.Line.Running;

/// <summary>What is wanted of a run.</summary>
/// <param name="Threads">How many variants to work on at once.</param>
public sealed record LineWishes(int Threads)
{
    /// <summary>Path of the list of quantities to nest; null for the family's quantity of every part.</summary>
    public string? Order { get; init; }

    /// <summary>Whether the parts are chosen anew: a variant may lose a part that still passes.</summary>
    public bool ChooseAnew { get; init; }

    /// <summary>Numbers of parts to draw anew though they still pass; null for all.</summary>
    public IReadOnlySet<string>? Redraw { get; init; } = new HashSet<string>();

    /// <summary>Whether every variant gets its own part.</summary>
    public bool Own { get; init; }

    /// <summary>Whether the strength of brackets is calculated.</summary>
    public bool Strength { get; init; } = true;

    /// <summary>Whether a drawing of every variant is written too.</summary>
    public bool Drawings { get; init; }

    /// <summary>Whether unchanged variants are made again.</summary>
    public bool Anew { get; init; }

    /// <summary>Whether nothing is made but the variants and the register.</summary>
    public bool SolveOnly { get; init; }
}

/// <summary>Where a run tells what it does.</summary>
/// <param name="Output">What came out.</param>
/// <param name="Errors">What went wrong.</param>
/// <param name="Prefix">What stands before a problem: the name of the program where other programs write there too.</param>
/// <param name="Progress">Told after each variant, by whichever thread.</param>
/// <param name="Ended">Told when all variants are done, or none is begun any more.</param>
public sealed record LineTeller(TextWriter Output, TextWriter Errors, string Prefix, Action<LineProgress> Progress, Action Ended)
{
    internal void Problem(string text) => Errors.WriteLine(Prefix + text);
}

/// <summary>How a run ended.</summary>
public enum LineEnd
{
    /// <summary>All is made.</summary>
    Made,

    /// <summary>The register, the order or another run stands against it.</summary>
    BadInput,

    /// <summary>The files could not be written.</summary>
    CannotWrite,

    /// <summary>It was stopped before the end.</summary>
    Stopped,
}

/// <summary>A whole product line: its variants solved, numbered and registered, its parts, lists and sheets.</summary>
public static class LineWork
{
    /// <summary>Version of the program: another one makes every variant anew.</summary>
    public static string ProgramVersion { get; } =
        typeof(LineWork).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "unknown";

    /// <summary>Makes it. Whenever it is stopped, there are whole files only, and the next run goes on.</summary>
    /// <param name="family">The family.</param>
    /// <param name="wishes">What is wanted.</param>
    /// <param name="place">Where its files go.</param>
    /// <param name="tell">Where it tells what it does.</param>
    /// <param name="stop">Stops it between two variants.</param>
    /// <returns>How it ended, and what the line comes to where all is made.</returns>
    public static (LineEnd End, VerdictKind? Verdict) Run(LoadedFamily family, LineWishes wishes, LinePlace place, LineTeller tell, CancellationToken stop)
    {
        try
        {
            using var held = FolderLock.TryTake(place.Folder);
            return held is null ? Bad(tell, LineRunText.Busy(place.Folder)) : Make(family, wishes, place, held, tell, stop);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            tell.Problem(LineRunText.NotWritten(place.Folder, problem.Message));
            return (LineEnd.CannotWrite, null);
        }
    }

    private static (LineEnd End, VerdictKind? Verdict) Make(LoadedFamily family, LineWishes wishes, LinePlace place, FolderLock held, LineTeller tell, CancellationToken stop)
    {
        var combinations = FamilyCombinations.Of(family);
        if (!File.Exists(place.Register) && place.HasProducts)
        {
            return Bad(tell, RegisterWords.Lost(place.Register, place.Folder));
        }

        var (register, damage) = RegisterFile.Read(place.Register, family.Family.Name);
        if (register is null)
        {
            return Bad(tell, LineRunText.Damaged(place.Register, damage!));
        }

        var (numbers, conflicts) = NumberPlan.Of(family.Family.Name, family.Family.Numbers, combinations.Offered, register);
        if (numbers is null)
        {
            foreach (var conflict in conflicts)
            {
                tell.Problem(conflict.Text);
            }

            tell.Errors.WriteLine(LineRunText.Conflicts(place.Register));
            return (LineEnd.BadInput, null);
        }

        if (wishes.Redraw?.FirstOrDefault(n => !register.Owners.ContainsKey(n)) is { } unknown)
        {
            return Bad(tell, RegisterWords.NotRedrawn(unknown));
        }

        // From the first moment on: products without a register are products of a lost one.
        if (!File.Exists(place.Register))
        {
            RegisterFile.Write(held, place.Register, register, register);
        }

        var strength = wishes.Strength ? StrengthDetail.Usual : null;
        var inputs = new CombinationInputs(family, ProgramVersion);
        var solver = new CombinationSolver(family, inputs, numbers, strength, wishes.Drawings ? LineDrawings.Of : null) { Redrawn = wishes.Redraw };
        if (Solve(wishes, combinations, solver, place.Combinations(held), tell, stop) is not { } made)
        {
            return (LineEnd.Stopped, null);
        }

        var parts = LineParts.Of(family, combinations.Offered, made);
        var now = NewRevisions.Add(register, combinations.Offered, made, inputs, parts, family.Family.Units);
        now = NewRecalls.Add(now, family.Family.Numbers, combinations.Offered, made);
        if (!RegisterFile.Write(held, place.Register, register, now))
        {
            return Bad(tell, LineRunText.RegisterChanged(place.Register));
        }

        PartSelection? selection = null;
        if (!wishes.SolveOnly && !stop.IsCancellationRequested)
        {
            var solved = now;
            selection = wishes.Own ? FewestParts.Own(parts)
                : FewestParts.Of(
                    family, parts, strength, wishes.Threads, ServicesBefore.Of(solved, family.Family.Numbers, wishes.ChooseAnew), SharedNumbers.GivenOut(solved, family, parts));
            (selection, now) = SharedNumbers.Issue(selection, solved, inputs, family.Family);
            var asked = wishes.Own ? IssuedText.AskedOwn : wishes.ChooseAnew ? IssuedText.AskedAnew : null;
            now = new NewServices(family, combinations, made, strength, asked).Add(now, selection);
            if (!RegisterFile.Write(held, place.Register, solved, now))
            {
                return Bad(tell, LineRunText.RegisterChanged(place.Register));
            }
        }

        place.WriteCopy(held, now);
        WholeFiles.Write(held, place.Folder, [(LinePlace.RecallFile, CsvText.Write(IssuedLists.Recall(now)))], []);
        LineTable.PrintRecalls(tell.Output, now, register);
        if (!now.OpenRecalls.IsEmpty)
        {
            tell.Output.WriteLine($"  {LineRunText.Wrote(Path.Combine(place.Folder, LinePlace.RecallFile))}");
        }

        LineTable.PrintOutcome(tell.Output, combinations, made, now, register);
        LineTable.PrintReplaced(tell.Output, now, register);
        foreach (var folder in place.Combinations(held).Others(combinations.Offered.Select(c => c.Key)))
        {
            tell.Output.WriteLine($"  {LineRunText.Left(Path.Combine(LinePlace.CombinationsFolder, folder))}");
        }

        if (!wishes.SolveOnly && selection is null)
        {
            return (LineEnd.Stopped, null);
        }

        return wishes.SolveOnly || LineOutputs.Write(wishes, new(family, combinations, made, selection!, now, strength), place, held, tell)
            ? (LineEnd.Made, LineVerdict.Of(made)) : (LineEnd.BadInput, null);
    }

    /// <summary>Solves the variants that are new or changed; null if the run was stopped before the end.</summary>
    private static ImmutableArray<Made>? Solve(
        LineWishes wishes, FamilyCombinations combinations, CombinationSolver solver, CombinationFolder folder, LineTeller tell, CancellationToken stop)
    {
        foreach (var combination in wishes.Anew ? combinations.Offered : [])
        {
            folder.Forget(combination.Key);
        }

        var run = LineRun.Run(combinations.Offered, solver, folder, wishes.Threads, tell.Progress, stop);
        tell.Ended();
        if (run.Any(m => m is null))
        {
            tell.Errors.WriteLine(LineRunText.Stopped(run.Count(m => m is not null), run.Length));
            return null;
        }

        return [.. run.Select(m => m!)];
    }

    private static (LineEnd End, VerdictKind? Verdict) Bad(LineTeller tell, string problem)
    {
        tell.Problem(problem);
        return (LineEnd.BadInput, null);
    }
}
