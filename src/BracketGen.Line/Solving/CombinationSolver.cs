using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Result;
using BracketGen.Line.Combinations;
using BracketGen.Line.Numbering;
using BracketGen.Line.Parts;
using BracketGen.Profiles.Family;
using BracketGen.Words.Checks;
using BracketGen.Words.Line;
using BracketGen.Words.Profiles;

namespace BracketGen.Line.Solving;

/// <summary>A combination solved: what is kept of it, and its files.</summary>
/// <param name="Made">What is kept.</param>
/// <param name="Files">Name and bytes of its files.</param>
public sealed record SolvedCombination(Made Made, IReadOnlyList<(string Name, byte[] Bytes)> Files);

/// <summary>Makes more files of a solution with a bracket than the line needs itself: drawings.</summary>
public delegate IEnumerable<(string Name, byte[] Bytes)> MoreFiles(Solution solution);

/// <summary>Solves one combination: pure, whatever goes wrong becomes an outcome.</summary>
/// <param name="family">The family.</param>
/// <param name="inputs">What its combinations are made from.</param>
/// <param name="numbers">Their numbers.</param>
/// <param name="strength">How finely brackets are meshed to see whether they bend, shake or crack; null for brackets whose strength is not calculated.</param>
/// <param name="more">Makes more files; null for none.</param>
public sealed class CombinationSolver(LoadedFamily family, CombinationInputs inputs, NumberPlan numbers, StrengthDetail? strength, MoreFiles? more)
{
    // What of the command changes the files.
    private readonly string _asked = $"{(strength is null ? "no strength" : "strength")}{(more is null ? "" : ", more files")}";

    /// <summary>Name of the cut file.</summary>
    public const string CutFile = "flat-pattern.dxf";

    /// <summary>Name of the result.</summary>
    public const string ResultFile = "result.json";

    /// <summary>Hash of what a combination is made from.</summary>
    public string HashOf(Combination combination) => inputs.HashOf(combination);

    /// <summary>The numbers.</summary>
    internal NumberPlan Numbers => numbers;

    /// <summary>Numbers of the parts to draw anew where that gives another part; null for all, empty for none. Pinned parts stay.</summary>
    public IReadOnlySet<string>? Redrawn { get; init; } = new HashSet<string>();

    /// <summary>Whether what was made once is still what would be made now, as far as the inputs say; a running number is not looked at.</summary>
    /// <param name="combination">The combination.</param>
    /// <param name="made">What was made of it.</param>
    public bool IsStill(Combination combination, Made made) =>
        made.Layout == Made.LayoutVersion && made.Outcome != Outcome.Broken && made.Combination == combination.Key && made.Inputs == HashOf(combination) && made.Asked == _asked
        && (!made.HasPart && numbers.Known(combination) is null ? made.PartNumber.Length == 0 : numbers.NumberOf(combination) is not { } number || made.PartNumber == number)
        && made.Revision == numbers.RevisionOf(combination, made.Fingerprint)
        && !(made.Redraw is not null && IsRedrawn(made.PartNumber));

    /// <summary>Solves a combination, unless what an earlier run made of it still holds.</summary>
    /// <param name="combination">The combination.</param>
    /// <param name="there">What an earlier run made of it; null for nothing.</param>
    public Answered Answer(Combination combination, Made? there)
    {
        if (there is not null && IsStill(combination, there))
        {
            return new(combination) { Kept = there };
        }

        if (!combination.IsReadable)
        {
            var errors = combination.Vehicle.Errors.Concat(combination.Body.Errors).Select(ProfileErrorText.Format);
            return new(combination) { Outcome = Outcome.Broken, Reasons = [.. errors] };
        }

        try
        {
            return Drawn(combination, there);
        }
        catch (Exception problem) when (problem is not OutOfMemoryException)
        {
            return Failed(combination, problem);
        }
    }

    /// <summary>Makes what is kept of an answer, and its files.</summary>
    /// <param name="answer">The answer, not kept from an earlier run.</param>
    /// <param name="number">Number of its part; empty where there is no part and never was one.</param>
    /// <param name="serial">Its running number; null where it has none.</param>
    public SolvedCombination Finish(Answered answer, string number, int? serial)
    {
        try
        {
            return Written(answer, number, serial);
        }
        catch (Exception problem) when (problem is not OutOfMemoryException)
        {
            return Written(Failed(answer.Combination, problem), number, serial);
        }
    }

    /// <summary>Solves a combination by itself.</summary>
    public SolvedCombination Solve(Combination combination)
    {
        var answer = Answer(combination, null);
        return new NumberQueue(numbers, [combination]).Add(0, answer)[0] is var numbered ? Finish(answer, numbered.Number, numbered.Serial) : null!;
    }

    // One bad variant must not stop the others: it is reported and left out.
    private static Answered Failed(Combination combination, Exception problem) =>
        new(combination) { Outcome = Outcome.Broken, Reasons = [LineRunText.Unexpected(problem.Message)] };

    private bool IsRedrawn(string number) => !family.Family.Numbers.Pinned.Contains(number) && (Redrawn is null || Redrawn.Contains(number));

    private Answered Drawn(Combination combination, Made? there)
    {
        var job = CombinationJob.Of(family, combination, "", "");
        var drawn = Of(combination, Designer.Solve(job, new(strength)));
        if (numbers.Known(combination) is not { } known)
        {
            return drawn;
        }

        var shape = known.Shape ?? (there?.Fingerprint == known.Fingerprint ? there.Part : null);
        if (drawn.Fingerprint is { } fingerprint && (fingerprint == known.Fingerprint || fingerprint == FingerprintOf(shape, job)))
        {
            return drawn with { Fingerprint = known.Fingerprint };
        }

        // What was given out stays where it passes, and leaves no more to prove than a new one.
        var (passing, why) = IssuedPart.On(family, job, shape, strength, drawn.HasPart ? [.. VerdictText.ToProve(drawn.Solution!.Verdict)] : null);
        if (passing is null)
        {
            return drawn with { Before = new(known.Revision, true, why) };
        }

        return drawn.HasPart && IsRedrawn(known.PartNumber)
            ? drawn with { Before = new(known.Revision, false, [IssuedText.Asked]) }
            : Of(combination, passing) with { Fingerprint = known.Fingerprint, Redraw = drawn.HasPart ? Changes(known, drawn.Bracket!) : null };
    }

    private string[] Changes(RegisteredRevision known, Bracket drawn) =>
        [.. Difference.Between("", known.Facts, PartFactsText.Of(drawn, PartFactsText.UnitsOf(known.Facts))).Select(RevisionText.Of)];

    private string? FingerprintOf(PartShape? shape, Job job) =>
        shape?.ToBracket(family, job.Vehicle.Cable, job.Preferences.StopOpening) is { } bracket ? PartFingerprint.Of(bracket) : null;

    private static Answered Of(Combination combination, Solution solution)
    {
        var outcome = Fits.OutcomeOf(solution);
        var bracket = outcome is Outcome.Passes or Outcome.NotProven ? solution.Bracket : null;
        return new(combination)
        {
            Outcome = outcome,
            Solution = solution,
            Bracket = bracket,
            Fingerprint = bracket is null ? null : PartFingerprint.Of(bracket),
            Reasons = bracket is null ? Fits.Reasons(solution) : [],
        };
    }

    private SolvedCombination Written(Answered answer, string number, int? serial)
    {
        var (combination, bracket) = (answer.Combination, answer.Bracket);
        var revision = numbers.RevisionOf(combination, answer.Fingerprint);
        var files = new List<(string Name, byte[] Bytes)>();
        if (answer.Solution is { } solved)
        {
            var solution = solved with { Job = solved.Job with { Document = solved.Job.Document with { PartNumber = number, Revision = revision } } };
            if (bracket is not null)
            {
                files.Add((CutFile, new DxfWriter().Write(FlatPatternDxf.Compose(bracket, solution.Job, []))));
                files.AddRange(more?.Invoke(solution) ?? []);
            }

            files.Add((ResultFile, ResultJson.Write(solution, [])));
        }

        var made = new Made
        {
            Layout = Made.LayoutVersion,
            Combination = combination.Key,
            Inputs = HashOf(combination),
            Asked = _asked,
            Outcome = answer.Outcome,
            Reasons = answer.Reasons,
            PartNumber = number,
            Serial = serial,
            Revision = revision,
            Before = answer.Before,
            Redraw = answer.Redraw,
            Fingerprint = answer.Fingerprint,
            Part = bracket is null ? null : PartShape.Of(bracket),
            Fit = bracket is null ? null : Fits.Of(answer.Solution!),
            Files = [.. files.Select(f => new MadeFile(f.Name, InputHash.OfBytes(f.Bytes)))],
        };
        return new(made, files);
    }
}
