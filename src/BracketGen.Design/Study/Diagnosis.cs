using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Search;

namespace BracketGen.Design.Study;

/// <summary>Why a job has no passing bracket, and what would give it one.</summary>
/// <param name="Obstacles">The checks in the way of the shapes, the one that stops most first; empty where a bracket passes all that a bracket can pass.</param>
/// <param name="Ways">The smallest changes that open a way, each of them tried whole; pairs only where no single one does. Empty where none was found.</param>
/// <param name="IsCutShort">Whether the search for ways ended at its limit, so that others may exist.</param>
public sealed record Diagnosis(ImmutableArray<Obstacle> Obstacles, ImmutableArray<WayOpened> Ways, bool IsCutShort)
{
    /// <summary>The diagnosis of a solution in which something fails; null where nothing fails, and where nothing was searched for. Takes as long as some tens of searches.</summary>
    /// <param name="solution">The solution.</param>
    /// <param name="effort">How far it was searched.</param>
    public static Diagnosis? Of(Solution solution, SearchEffort effort)
    {
        // A chosen bracket that fails is no matter of the job's while another passes.
        if (solution.NothingFails || solution.Search is not { } search || (solution.ChosenIs == ChosenState.Fails && search.Best is not null))
        {
            return null;
        }

        // No bracket and no number of the job changes what becomes of another cable: the check itself says what does.
        if (solution.Checks.All(c => !c.Fails || c.Kind == CheckKind.Advice || OtherCableChecks.IsOne(c)))
        {
            return null;
        }

        var remedies = new RemedySearch(solution.Job.OpeningCounterClockwise() with { Chosen = null }, effort);
        var ways = remedies.Ways();
        return new(solution.Offers.IsEmpty ? search.Obstacles : [], ways, remedies.IsCutShort);
    }
}
