using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Profiles.Errors;

namespace BracketGen.Web.Desk;

/// <summary>What the solver says of a bracket that is there already, on the job of a desk.</summary>
/// <param name="Errors">Errors in the files of job and bracket; with one there is no trial.</param>
/// <param name="Tried">The bracket, tried.</param>
/// <param name="Depth">How far the answer goes: with strength it is the whole answer of the command.</param>
public sealed record BracketAnswer(IReadOnlyList<ProfileError> Errors, TriedBracket? Tried, Depth Depth)
{
    /// <summary>Asks the solver.</summary>
    /// <param name="desk">The desk, with the bracket's file and its drawing.</param>
    /// <param name="bracket">Path of the bracket's file.</param>
    /// <param name="depth">How far to go. What corrects a bracket is looked for with strength only.</param>
    public static BracketAnswer Of(JobDesk desk, string bracket, Depth depth)
    {
        var job = desk.Read();
        var measured = desk.ReadBracket(bracket, job.IsRead ? job.Value.Shop : null);
        return job.IsRead && measured.IsRead
            ? new([], depth == Depth.Strength ? TriedBracket.Of(measured.Value, job.Value, StrengthDetail.Usual) : TriedBracket.Quick(measured.Value, job.Value), depth)
            : new([.. job.Errors, .. measured.Errors], null, depth);
    }
}
