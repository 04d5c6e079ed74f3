using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Profiles.Errors;

namespace BracketGen.Web.Desk;

/// <summary>How far a question goes.</summary>
public enum Depth
{
    /// <summary>The best bracket and everything about it except its strength: after every change.</summary>
    Quick,

    /// <summary>If something fails, the causes and remedies too.</summary>
    Remedies,

    /// <summary>All that <c>make</c> calculates.</summary>
    Strength,
}

/// <summary>What the solver says of a desk.</summary>
/// <param name="Errors">Errors in the files; with one there is no solution.</param>
/// <param name="Solution">The solution.</param>
/// <param name="Depth">How far the answer goes.</param>
public sealed record DeskAnswer(IReadOnlyList<ProfileError> Errors, Solution? Solution, Depth Depth)
{
    /// <summary>Asks the solver.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="depth">How far to go.</param>
    public static DeskAnswer Of(JobDesk desk, Depth depth)
    {
        var job = desk.Read();
        if (!job.IsRead)
        {
            return new(job.Errors, null, depth);
        }

        // Which brackets pass is not known without their strength: none but the one shown is looked for.
        var answer = new DeskAnswer([], Designer.Solve(job.Value, EffortOf(depth)), depth);
        return depth == Depth.Quick ? answer : answer.Diagnosed(depth);
    }

    /// <summary>The quick answer with causes and remedies.</summary>
    public DeskAnswer WithRemedies() => Solution is null ? this with { Depth = Depth.Remedies } : Diagnosed(Depth.Remedies);

    private DeskAnswer Diagnosed(Depth depth) => this with { Solution = Solution! with { Diagnosis = Diagnosis.Of(Solution, EffortOf(depth)) }, Depth = depth };

    private static SearchEffort EffortOf(Depth depth) => depth == Depth.Strength ? SearchEffort.Whole : SearchEffort.WithoutStrength;
}
