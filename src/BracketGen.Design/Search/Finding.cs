using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Geometry;

namespace BracketGen.Design.Search;

/// <summary>How far a candidate came in the search.</summary>
public enum SearchStage
{
    /// <summary>Its place or its flat pattern rules it out.</summary>
    Flat,

    /// <summary>Something is in its way.</summary>
    Space,

    /// <summary>The shop's tools cannot bend it.</summary>
    Bending,

    /// <summary>It is not strong enough.</summary>
    Strength,

    /// <summary>The mechanism does not work with it.</summary>
    Mechanism,

    /// <summary>It passes every check that a bracket can pass.</summary>
    Passes,
}

/// <summary>What the search found of one candidate.</summary>
/// <param name="Candidate">The candidate.</param>
/// <param name="Stage">How far it came.</param>
/// <param name="Failed">The check that stopped it; null where it passes.</param>
public sealed record Finding(Candidate Candidate, SearchStage Stage, Check? Failed) : IMirrored<Finding>
{
    /// <summary>The bracket with its checks so far; null where it did not get past <see cref="SearchStage.Space"/>.</summary>
    public Offer? Offer { get; init; }

    /// <summary>Its strength in full; null where less was enough to turn it down, and where nobody asked.</summary>
    public StrengthReport? Strength { get; init; }

    /// <summary>The mechanism with it; null where the search did not come to it.</summary>
    public MechanismReport? Mechanism { get; init; }

    /// <summary>The checks at every end of its slotted mount holes, null for one that no wire reaches; empty where there are none.</summary>
    public ImmutableArray<ImmutableArray<Check>?> AtEnds { get; init; } = [];

    /// <summary>By what its strength was judged; null where the search did not come to it.</summary>
    public StrengthMeans? Means { get; init; }

    /// <summary>Whether it passes all that was calculated: for one that was judged in full.</summary>
    public bool IsGoodEnough => Offer is not null
        && SlotChecks.Worst(Offer.Checks.Concat(Strength?.Checks ?? []).Concat(Mechanism?.Checks ?? []), AtEnds).All(CandidateSearch.IsGoodEnough);

    /// <summary>Whether it passes.</summary>
    public bool Passes => Stage == SearchStage.Passes;

    /// <inheritdoc/>
    public Finding Mirrored() => this with
    {
        Candidate = Candidate.Mirrored(),
        Offer = Offer?.Mirrored(),
        Strength = Strength?.Mirrored(),
        Mechanism = Mechanism?.Mirrored(),
    };
}
