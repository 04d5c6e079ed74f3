using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Geometry;

namespace BracketGen.Design.Search;

/// <summary>A check that stands in the way of brackets.</summary>
/// <param name="Nearest">The check, of the bracket that misses it by the least.</param>
/// <param name="Stopped">How many of the shapes it stops: each is counted at the first check that stops it.</param>
/// <param name="Of">How many shapes were looked at.</param>
public sealed record Obstacle(Check Nearest, int Stopped, int Of);

/// <summary>What a search came to.</summary>
public sealed record SearchOutcome : IMirrored<SearchOutcome>
{
    /// <summary>The cheapest bracket that passes; null where none was found.</summary>
    public required Finding? Best { get; init; }

    /// <summary>Other brackets that pass, none of which is beaten in mass, stiffness, bends and smallest margin at once; by cost. Empty where nobody asked.</summary>
    public ImmutableArray<Finding> Others { get; init; } = [];

    /// <summary>Where none passes: the one nearest to it, judged in full; null where none could be shaped.</summary>
    public Finding? Nearest { get; init; }

    /// <summary>The cheapest that passes all but strength, where that is another than <see cref="Best"/>; otherwise null.</summary>
    public Offer? CheapestWeak { get; init; }

    /// <summary>How many shapes were looked at.</summary>
    public required int Shapes { get; init; }

    /// <summary>How many shapes there are; null where the best was found before all were sketched.</summary>
    public int? AllShapes { get; init; }

    /// <summary>How many were judged by finite elements or by a bound on them.</summary>
    public required int Solves { get; init; }

    /// <summary>Whether the answer is certain: no cheaper bracket passes, or none at all. False where the limit of the effort ended the search.</summary>
    public required bool IsCertain { get; init; }

    /// <summary>How the first natural frequency of <see cref="Best"/> and the others was judged.</summary>
    public FrequencyRule FrequencyRule { get; init; }

    /// <summary>What stopped the shapes that were looked at, the check that stops most first.</summary>
    public ImmutableArray<Obstacle> Obstacles { get; init; } = [];

    /// <inheritdoc/>
    public SearchOutcome Mirrored() => this with
    {
        Best = Best?.Mirrored(),
        Others = [.. Others.Select(o => o.Mirrored())],
        Nearest = Nearest?.Mirrored(),
        CheapestWeak = CheapestWeak?.Mirrored(),
    };
}
