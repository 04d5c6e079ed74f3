using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Profiles.Errors;

namespace BracketGen.Web.Desk;

/// <summary>How far a question goes.</summary>
public enum Depth
{
    /// <summary>The best bracket and everything about it but its strength: for every change.</summary>
    Quick,

    /// <summary>The other brackets too, and where none passes what would mend it.</summary>
    Offers,

    /// <summary>All that <c>make</c> computes.</summary>
    Strength,
}

/// <summary>What the engine says of a desk.</summary>
/// <param name="Errors">Mistakes in the files; then there is no solution.</param>
/// <param name="Solution">The solution.</param>
/// <param name="Depth">How far it goes.</param>
public sealed record DeskAnswer(IReadOnlyList<ProfileError> Errors, Solution? Solution, Depth Depth)
{
    /// <summary>Asks the engine.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="choice">Number of the offer to take, from 1.</param>
    /// <param name="depth">How far to go.</param>
    public static DeskAnswer Of(JobDesk desk, int choice, Depth depth)
    {
        var job = desk.Read();
        if (!job.IsRead)
        {
            return new(job.Errors, null, depth);
        }

        var strength = depth == Depth.Strength ? StrengthDetail.Usual : null;
        var solution = depth == Depth.Quick && choice == 1 ? QuickDesigner.Solve(job.Value) : Designer.Solve(job.Value, choice, strength);
        return new([], depth == Depth.Quick ? solution : solution with { Diagnosis = Diagnosis.Of(solution, strength) }, depth);
    }
}
