using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Result;
using BracketGen.Line.Combinations;
using BracketGen.Line.Numbering;
using BracketGen.Line.Parts;
using BracketGen.Profiles.Family;
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

    /// <summary>Whether what was made once is still what would be made now, as far as the inputs say.</summary>
    /// <param name="combination">The combination.</param>
    /// <param name="made">What was made of it.</param>
    public bool IsStill(Combination combination, Made made) =>
        made.Outcome != Outcome.Broken && made.Combination == combination.Key && made.Inputs == HashOf(combination) && made.Asked == _asked
        && made.PartNumber == numbers.NumberOf(combination) && made.Revision == numbers.RevisionOf(combination, made.Fingerprint);

    /// <summary>Solves a combination.</summary>
    public SolvedCombination Solve(Combination combination)
    {
        if (!combination.IsReadable)
        {
            var errors = combination.Vehicle.Errors.Concat(combination.Body.Errors).Select(ProfileErrorText.Format);
            return new(Start(combination, Outcome.Broken, [.. errors]), []);
        }

        try
        {
            return Made(combination);
        }
        catch (Exception problem) when (problem is not OutOfMemoryException)
        {
            // One bad variant must not stop the others: it is reported and left out.
            return new(Start(combination, Outcome.Broken, [LineRunText.Unexpected(problem.Message)]), []);
        }
    }

    private SolvedCombination Made(Combination combination)
    {
        var number = numbers.NumberOf(combination);
        var solution = Designer.Solve(CombinationJob.Of(family, combination, number, ""), new(strength));
        var outcome = Fits.OutcomeOf(solution);
        var bracket = outcome is Outcome.Passes or Outcome.NotProven ? solution.Bracket : null;
        var fingerprint = bracket is null ? null : PartFingerprint.Of(bracket);
        var revision = numbers.RevisionOf(combination, fingerprint);
        solution = solution with { Job = solution.Job with { Document = solution.Job.Document with { Revision = revision } } };
        var files = new List<(string, byte[])>();
        if (bracket is not null)
        {
            files.Add((CutFile, new DxfWriter().Write(FlatPatternDxf.Compose(bracket, solution.Job, []))));
            files.AddRange(more?.Invoke(solution) ?? []);
        }

        files.Add((ResultFile, ResultJson.Write(solution, [])));
        return new(
            Start(combination, outcome, bracket is null ? Fits.Reasons(solution) : []) with
            {
                Revision = revision,
                Fingerprint = fingerprint,
                Part = bracket is null ? null : PartShape.Of(bracket),
                Fit = bracket is null ? null : Fits.Of(solution),
                Files = [.. files.Select(f => new MadeFile(f.Item1, InputHash.OfBytes(f.Item2)))],
            },
            files);
    }

    private Made Start(Combination combination, Outcome outcome, string[] reasons) => new()
    {
        Layout = Solving.Made.LayoutVersion,
        Combination = combination.Key,
        Inputs = HashOf(combination),
        Asked = _asked,
        Outcome = outcome,
        Reasons = reasons,
        PartNumber = numbers.NumberOf(combination),
        Revision = numbers.RevisionOf(combination, null),
        Files = [],
    };
}
