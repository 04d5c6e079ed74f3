using System.Collections.Immutable;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Profiles.Family;

/// <summary>What a line's parts cost and sell for.</summary>
/// <remarks>Every default is common practice, no source: a shop puts its own numbers in.</remarks>
public sealed record Rates
{
    /// <summary>What work and sheet cost; in money.</summary>
    public ShopRates Work { get; init; } = new();

    /// <summary>Code of the currency, three letters.</summary>
    public string Currency => Work.Currency ?? new ShopRates().Currency!;

    /// <summary>Price of a bolt with its washer.</summary>
    public double BoltPrice { get; init; } = 0.4;

    /// <summary>Mark-up on the cost, as a fraction: 0.4 adds 40 %.</summary>
    public double MarkUp { get; init; } = 0.4;

    /// <summary>Batch sizes to give prices for, from small to large.</summary>
    public ImmutableArray<int> Quantities { get; init; } = [1, 10, 50, 100];

    /// <inheritdoc/>
    public bool Equals(Rates? other) => other is not null && Work == other.Work
        && BoltPrice == other.BoltPrice && MarkUp == other.MarkUp && Quantities.SequenceEqual(other.Quantities);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Work, BoltPrice, MarkUp);
}
