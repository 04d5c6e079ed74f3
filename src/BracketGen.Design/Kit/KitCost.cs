namespace BracketGen.Design.Kit;

/// <summary>What a set costs: first how much of it is open, then how many prices are not known, then money. Sums keep this order.</summary>
/// <param name="Open">Needs that nothing meets.</param>
/// <param name="Unpriced">Things in it whose price nobody knows.</param>
/// <param name="Money">Price of the others (the shop's currency).</param>
public readonly record struct KitCost(int Open, int Unpriced, double Money) : IComparable<KitCost>
{
    /// <summary>A price, or one that is not known.</summary>
    public static KitCost Of(double? price) => price is { } known ? new(0, 0, known) : new(0, 1, 0);

    /// <summary>Sum.</summary>
    public static KitCost operator +(KitCost a, KitCost b) => new(a.Open + b.Open, a.Unpriced + b.Unpriced, a.Money + b.Money);

    /// <inheritdoc/>
    public int CompareTo(KitCost other) => (Open, Unpriced, Money).CompareTo((other.Open, other.Unpriced, other.Money));
}
