using System.Collections.Immutable;

namespace BracketGen.Profiles.Family;

/// <summary>What material, machines and hands cost.</summary>
/// <remarks>Every default is common practice, no source: a shop puts its own numbers in. Times in s, rates for an hour.</remarks>
public sealed record Rates
{
    /// <summary>Three letters for the currency.</summary>
    public string Currency { get; init; } = "EUR";

    /// <summary>Price of sheet for a kilogram, where the sheet has no price of its own.</summary>
    public double SheetPerKilogram { get; init; } = 2.5;

    /// <summary>Cutting machine with its operator, per hour.</summary>
    public double CuttingRate { get; init; } = 90;

    /// <summary>Time to cut one metre in sheet of one millimetre (s); it grows with the thickness.</summary>
    public double CutTime { get; init; } = 6;

    /// <summary>Time to pierce sheet of one millimetre (s); it grows with the thickness.</summary>
    public double PierceTime { get; init; } = 0.4;

    /// <summary>Time to set up the cutting machine for a batch (s).</summary>
    public double CuttingSetUp { get; init; } = 600;

    /// <summary>Press brake with its operator, per hour.</summary>
    public double BendingRate { get; init; } = 70;

    /// <summary>Time for one bend (s).</summary>
    public double BendTime { get; init; } = 25;

    /// <summary>Time to set up the press brake for a batch (s), once for each bend of the part.</summary>
    public double BendingSetUp { get; init; } = 600;

    /// <summary>Time to take off burrs, wash and pack a part (s), at the rate of the press brake.</summary>
    public double FinishingTime { get; init; } = 90;

    /// <summary>Price of a bolt with its washer.</summary>
    public double BoltPrice { get; init; } = 0.4;

    /// <summary>Mark-up on the cost, as a fraction: 0.4 adds 40 %.</summary>
    public double MarkUp { get; init; } = 0.4;

    /// <summary>Batch sizes to give prices for, from small to large.</summary>
    public ImmutableArray<int> Quantities { get; init; } = [1, 10, 50, 100];

    /// <inheritdoc/>
    public bool Equals(Rates? other) => other is not null && Values.SequenceEqual(other.Values)
        && Currency == other.Currency && Quantities.SequenceEqual(other.Quantities);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Currency, SheetPerKilogram, CuttingRate);

    private double[] Values =>
    [
        SheetPerKilogram, CuttingRate, CutTime, PierceTime, CuttingSetUp, BendingRate, BendTime, BendingSetUp, FinishingTime, BoltPrice, MarkUp,
    ];
}
