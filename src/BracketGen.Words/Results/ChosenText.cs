using BracketGen.Design.Study;

namespace BracketGen.Words.Results;

/// <summary>What came of the bracket that was chosen for a job, in words; screen, page and report say the same.</summary>
public static class ChosenText
{
    /// <summary>The sentence; null where none was chosen.</summary>
    public static string? Of(Solution solution) => solution.ChosenIs switch
    {
        ChosenState.Passes => "This is the bracket that was chosen for the job.",
        ChosenState.Fails => "The bracket that was chosen for this job does not pass any more. It is shown as it is. Remove chosen from the job to take the best.",
        ChosenState.CannotBeMade => "The bracket that was chosen for this job cannot be made any more: the job has no such shape. The best is shown in its place. Remove chosen from the job, or choose again.",
        _ => null,
    };
}
