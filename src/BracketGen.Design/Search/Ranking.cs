using BracketGen.Design.Checks;
using BracketGen.Geometry;

namespace BracketGen.Design.Search;

/// <summary>Why the best of several brackets stands first.</summary>
public static class Ranking
{
    /// <summary>Mass or give that is less by two in a hundred is worth a word.</summary>
    internal const double WorthSaying = 0.98;

    /// <summary>So much more to spare at the tightest place, in parts of its limit, is worth a word.</summary>
    internal const double MoreRoom = 0.05;

    /// <summary>The reasons.</summary>
    /// <param name="outcome">What the search came to, with a best bracket.</param>
    public static ChoiceReasons Reasons(SearchOutcome outcome)
    {
        var best = outcome.Best!.Offer!;
        var others = outcome.Others.Select(o => o.Offer!).ToList();
        return new(
            outcome.Shapes, best, outcome.CheapestWeak,
            others.Where(o => o.Mass < best.Mass * WorthSaying).MinBy(o => o.Mass),
            others.Where(o => o.BestGive < best.BestGive * WorthSaying).MinBy(o => o.BestGive),
            others.Where(o => o.LeastSpare > best.LeastSpare + MoreRoom).MaxBy(o => o.LeastSpare))
        {
            FrequencyRule = outcome.FrequencyRule,
        };
    }
}

/// <summary>Why the first of several brackets stands first, beside those that beat it in something.</summary>
/// <param name="Shapes">How many shapes were looked at.</param>
/// <param name="Best">The first.</param>
/// <param name="TooWeak">The cheapest shape that passes all but strength, where that is not the first; otherwise null.</param>
/// <param name="Lighter">The lightest, where it is lighter than the first; null where none is.</param>
/// <param name="Stiffer">The stiffest, likewise.</param>
/// <param name="Roomier">The one with the most spare at its tightest place, likewise.</param>
public sealed record ChoiceReasons(int Shapes, Offer Best, Offer? TooWeak, Offer? Lighter, Offer? Stiffer, Offer? Roomier) : IMirrored<ChoiceReasons>
{
    /// <summary>How the first natural frequency of all of them was judged.</summary>
    public FrequencyRule FrequencyRule { get; init; }

    /// <inheritdoc/>
    public ChoiceReasons Mirrored() => new(
        Shapes, Best.Mirrored(), TooWeak?.Mirrored(), Lighter?.Mirrored(), Stiffer?.Mirrored(), Roomier?.Mirrored())
    {
        FrequencyRule = FrequencyRule,
    };
}
