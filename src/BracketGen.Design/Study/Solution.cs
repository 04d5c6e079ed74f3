using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Geometry;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Study;

/// <summary>What came of the bracket that was chosen for a job.</summary>
public enum ChosenState
{
    /// <summary>None was chosen: the best was taken.</summary>
    None,

    /// <summary>It is the bracket of this solution, and passes.</summary>
    Passes,

    /// <summary>It is the bracket of this solution, and does not pass any more.</summary>
    Fails,

    /// <summary>The job as it is now has no such bracket: the best was taken.</summary>
    CannotBeMade,
}

/// <summary>The answer to a job: the bracket, where the stop is, the travel, and every check.</summary>
/// <remarks>
/// All of it is in one frame, that of <see cref="Job"/>: as measured in what <see cref="Designer"/> and <see cref="GivenBracket"/> return.
/// </remarks>
public sealed record Solution : IMirrored<Solution>
{
    /// <summary>The job.</summary>
    public required Job Job { get; init; }

    /// <summary>What the pedal does to the valve.</summary>
    public required Travel Travel { get; init; }

    /// <summary>Quadrant and groove, for pictures of the travel.</summary>
    public required QuadrantPicture Quadrant { get; init; }

    /// <summary>The whole mechanism at that stop; null only where nobody asked for it.</summary>
    public MechanismReport? Mechanism { get; init; }

    /// <summary>Whether the bracket bends, shakes or cracks; null where that was not looked at, and where there is no bracket.</summary>
    public StrengthReport? Strength { get; init; }

    /// <summary>Where the stop is; null where no bracket could be shaped.</summary>
    public required StopPlacement? Placement { get; init; }

    /// <summary>The bracket; null where none could be shaped.</summary>
    public required Bracket? Bracket { get; init; }

    /// <summary>Every check.</summary>
    public required ImmutableArray<Check> Checks { get; init; }

    /// <summary>What the search came to; null where nothing was searched for.</summary>
    public SearchOutcome? Search { get; init; }

    /// <summary>The passing brackets worth offering, the best first; empty where none passes.</summary>
    public ImmutableArray<Offer> Offers { get; init; } = [];

    /// <summary>Every offer as it is written down to be made again, in the order of <see cref="Offers"/>.</summary>
    public ImmutableArray<ChosenBracket> Choices { get; init; } = [];

    /// <summary>The bracket of this solution as it is written down to be made again; null where there is none.</summary>
    public ChosenBracket? Taken { get; init; }

    /// <summary>What came of the bracket that was chosen for the job.</summary>
    public ChosenState ChosenIs { get; init; }

    /// <summary>Number of the offer this solution takes, counted from 1; 0 for a chosen bracket that is none of them.</summary>
    public int Choice { get; init; } = 1;

    /// <summary>Why the first offer stands first; null where none passes.</summary>
    public ChoiceReasons? Reasons { get; init; }

    /// <summary>What stands in the way and what would open one; null where a bracket passes, and where nobody asked for it.</summary>
    public Diagnosis? Diagnosis { get; init; }

    /// <inheritdoc/>
    /// <remarks>Numbers without a direction stay: lengths, openings, forces, checks.</remarks>
    public Solution Mirrored() => this with
    {
        Job = Job.Mirrored(),
        Travel = Travel.Mirrored(),
        Quadrant = Quadrant.Mirrored(),
        Mechanism = Mechanism?.Mirrored(),
        Strength = Strength?.Mirrored(),
        Placement = Placement?.Mirrored(),
        Bracket = Bracket?.Mirrored(),
        Offers = [.. Offers.Select(o => o.Mirrored())],
        Search = Search?.Mirrored(),
        Reasons = Reasons?.Mirrored(),
    };

    /// <summary>What the checks come to.</summary>
    public Verdict Verdict => Verdict.Of(Checks);

    /// <summary>Whether every check but mere advice passes.</summary>
    public bool Passes => Verdict.Kind == VerdictKind.Passes;

    /// <summary>Whether nothing but mere advice fails; something may not be known.</summary>
    public bool NothingFails => Verdict.Kind is VerdictKind.Passes or VerdictKind.NotProven;

    /// <summary>The failed safety checks.</summary>
    public IEnumerable<Check> Dangers => Checks.Where(c => c.IsDanger);
}
