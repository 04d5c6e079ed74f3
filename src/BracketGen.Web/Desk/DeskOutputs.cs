using System.Collections.Immutable;
using BracketGen.Drawing;
using BracketGen.Drawing.Dxf;
using BracketGen.Profiles.Errors;
using BracketGen.Words.CutFile;
using BracketGen.Words.Page;

namespace BracketGen.Web.Desk;

/// <summary>The files of a job, byte for byte those of <c>make</c>. Those of the last job are kept, because the page downloads one after another.</summary>
public sealed class DeskOutputs
{
    private readonly Lock _gate = new();
    private readonly LastAnswer<OutputRequest, OutputResult> _last = new((one, other) => one.IsSame(other));
    private readonly LastAnswer<JobDesk, DeskAnswer> _solved = new(JobDesk.IsSame);

    /// <summary>The files, or why there are none.</summary>
    /// <param name="request">What is asked.</param>
    public OutputResult Of(OutputRequest request)
    {
        lock (_gate)
        {
            return _last.To(request, () => Make(request));
        }
    }

    private OutputResult Make(OutputRequest request)
    {
        var answer = _solved.To(request.Desk, () => DeskAnswer.Of(request.Desk, Depth.Strength));
        if (answer.Solution is not { } solution)
        {
            return new(null, answer.Errors, null);
        }

        var accepted = request.Accepted.Where(a => solution.Dangers.Any(d => d.Code == a)).ToArray();
        var path = request.IsKerfCompensated ? FlatPatternDxf.PathFor(solution) : null;
        if (request.IsKerfCompensated && solution.Bracket is not null && KerfText.Refusal(path, solution.Job.Units) is { } refusal)
        {
            return new(null, [], ServerWords.NoBeamPath(refusal));
        }

        return new(JobFiles.Of(solution, accepted, request.Choices with { CutPath = path }), [], null);
    }
}

/// <summary>What is asked of the outputs.</summary>
/// <param name="Desk">The job; it names the chosen bracket itself.</param>
/// <param name="Accepted">Failed safety checks accepted by name.</param>
/// <param name="Choices">What was chosen about the files, without the beam path.</param>
/// <param name="IsKerfCompensated">Whether the beam path is wanted too.</param>
public sealed record OutputRequest(JobDesk Desk, ImmutableArray<string> Accepted, FileChoices Choices, bool IsKerfCompensated)
{
    internal bool IsSame(OutputRequest other) =>
        JobDesk.IsSame(Desk, other.Desk) && Accepted.SequenceEqual(other.Accepted) && Choices == other.Choices && IsKerfCompensated == other.IsKerfCompensated;
}

/// <summary>The files, or why there are none.</summary>
/// <param name="Files">The files.</param>
/// <param name="Errors">Errors in the profiles.</param>
/// <param name="Problem">Why else there are none; null if they are there.</param>
public sealed record OutputResult(JobFiles? Files, IReadOnlyList<ProfileError> Errors, string? Problem);
