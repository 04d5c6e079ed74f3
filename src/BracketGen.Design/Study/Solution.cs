using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Search;
using BracketGen.Mechanism.Motion;

namespace BracketGen.Design.Study;

/// <summary>The answer to a job: the bracket, where the stop is, the travel, and every check.</summary>
/// <remarks>
/// Placement and bracket are in the throttle frame as the user measured it, whichever way the body opens; the travel is that of
/// the body opening counter-clockwise (lengths and openings are the same either way).
/// </remarks>
public sealed record Solution
{
    /// <summary>The job.</summary>
    public required Job Job { get; init; }

    /// <summary>What the pedal does to the valve.</summary>
    public required Travel Travel { get; init; }

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

    /// <summary>What would bring the valve to its wide-open stop; null where it gets there.</summary>
    public required TravelRemedy? Remedy { get; init; }

    /// <summary>How many brackets were shaped and looked at.</summary>
    public required int CandidateCount { get; init; }

    /// <summary>The passing brackets worth offering, the best first, in the frame opening counter-clockwise; empty where none passes.</summary>
    public ImmutableArray<Offer> Offers { get; init; } = [];

    /// <summary>Where none is strong enough: the brackets that pass every other check; otherwise empty.</summary>
    public ImmutableArray<ProvenOffer> Weak { get; init; } = [];

    /// <summary>Number of the offer this solution takes, counted from 1.</summary>
    public int Choice { get; init; } = 1;

    /// <summary>Why the first offer stands first; null where none passes.</summary>
    public ChoiceReasons? Reasons { get; init; }

    /// <summary>What stands in the way and what would open one; null where a bracket passes, and where nobody asked for it.</summary>
    public Diagnosis? Diagnosis { get; init; }

    /// <summary>What the checks come to.</summary>
    public Verdict Verdict => Verdict.Of(Checks);

    /// <summary>Whether every check but mere advice passes.</summary>
    public bool Passes => Verdict.Kind == VerdictKind.Passes;

    /// <summary>Whether nothing but mere advice fails; something may not be known.</summary>
    public bool NothingFails => Verdict.Kind is VerdictKind.Passes or VerdictKind.NotProven;

    /// <summary>The failed safety checks.</summary>
    public IEnumerable<Check> Dangers => Checks.Where(c => c.IsDanger);
}
