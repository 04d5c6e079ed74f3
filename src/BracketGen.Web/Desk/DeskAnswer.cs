using BracketGen.Design.Search;
using BracketGen.Design.Study;
using BracketGen.Profiles.Errors;

namespace BracketGen.Web.Desk;

/// <summary>How far a question goes.</summary>
public enum Depth
{
    /// <summary>The best bracket and everything about it except its strength: after every change.</summary>
    Quick,

    /// <summary>The other choices too; if none passes, the causes and remedies.</summary>
    Offers,

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
    /// <param name="choice">Number of the choice to take, from 1.</param>
    /// <param name="depth">How far to go.</param>
    public static DeskAnswer Of(JobDesk desk, int choice, Depth depth)
    {
        var job = desk.Read();
        if (!job.IsRead)
        {
            return new(job.Errors, null, depth);
        }

        var effort = depth switch
        {
            Depth.Quick => SearchEffort.WithoutStrength with { WithOthers = choice != 1 },
            Depth.Offers => SearchEffort.WithoutStrength with { WithOthers = true },
            _ => SearchEffort.Whole,
        };
        var solution = Designer.Solve(job.Value, effort, choice);
        return new([], depth == Depth.Quick ? solution : solution with { Diagnosis = Diagnosis.Of(solution, effort) }, depth);
    }
}
