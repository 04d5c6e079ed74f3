using System.Collections.Immutable;

namespace BracketGen.Design.Kit;

/// <summary>One way to meet a need.</summary>
/// <param name="Price">Price of as many as are needed; null where it is not known, zero where the bundle has the price.</param>
/// <param name="Count">How many pieces it takes of the item.</param>
/// <param name="Item">Number of the item; the same item may meet several needs.</param>
/// <param name="Bundle">Number of the bundle it comes with; null where it comes alone.</param>
public readonly record struct SetOption(double? Price, int Count, int Item, int? Bundle);

/// <summary>The set with the fewest open needs, of those with the fewest unknown prices, of those the cheapest.</summary>
public static class CheapestSet
{
    /// <summary>An open need in a set.</summary>
    public const int None = -1;

    /// <summary>
    /// Branch and bound over all sets, exact: what is chosen so far with the least that each further need costs bounds what may become of it.
    /// </summary>
    /// <param name="needs">The options of each need.</param>
    /// <param name="bundles">Price of each bundle, paid once; null where it is not known.</param>
    /// <param name="stock">Pieces of each item; null for as many as are wanted.</param>
    /// <param name="goes">
    /// Asked after every choice with the options chosen so far: what they cost beside their prices; null where they do not go together. A need that is open has
    /// <see cref="None"/>.
    /// </param>
    /// <returns>The option of each need, and what the set costs.</returns>
    public static (ImmutableArray<int> Taken, KitCost Cost) Of(
        ImmutableArray<ImmutableArray<SetOption>> needs, ImmutableArray<double?> bundles, ImmutableArray<int?> stock, Func<IReadOnlyList<int>, KitCost?> goes)
    {
        // A bundle that is not bought yet costs each need that it can serve an equal share of its price, at least: all shares together are its price.
        KitCost[] share =
        [
            .. bundles.Select((price, b) => price is { } money ? new KitCost(0, 0, money / Math.Max(1, needs.Count(n => n.Any(o => o.Bundle == b)))) : default),
        ];
        var taken = new List<int>();
        var left = stock.ToArray();
        var bought = new bool[bundles.Length];
        (ImmutableArray<int> Taken, KitCost Cost)? best = null;
        Choose(default);
        return best!.Value;

        void Choose(KitCost sum)
        {
            var need = taken.Count;
            if (IsNoBetter(sum, need))
            {
                return;
            }

            if (need == needs.Length)
            {
                best = ([.. taken], sum);
                return;
            }

            foreach (var option in Enumerable.Range(0, needs[need].Length).OrderBy(o => KitCost.Of(needs[need][o].Price)))
            {
                var (price, count, item, bundle) = needs[need][option];
                if (left[item] < count)
                {
                    continue;
                }

                var isNew = bundle is { } number && !bought[number];
                left[item] -= count;
                Take(option, sum + KitCost.Of(price) + (isNew ? KitCost.Of(bundles[bundle!.Value]) : default), isNew ? bundle : null);
                left[item] += count;
            }

            Take(None, sum + new KitCost(1, 0, 0), null);
        }

        // Sums keep the order of costs: the least of each need added up is the least of all.
        bool IsNoBetter(KitCost sum, int from)
        {
            if (best is not { } known)
            {
                return false;
            }

            for (var need = from; need < needs.Length; need++)
            {
                var least = new KitCost(1, 0, 0);
                foreach (var (price, _, _, bundle) in needs[need])
                {
                    var cost = KitCost.Of(price) + (bundle is { } number && !bought[number] ? share[number] : default);
                    least = cost.CompareTo(least) < 0 ? cost : least;
                }

                sum += least;
            }

            return sum.CompareTo(known.Cost) >= 0;
        }

        void Take(int option, KitCost sum, int? bundle)
        {
            taken.Add(option);
            if (bundle is { } number)
            {
                bought[number] = true;
            }

            // What goes together may take long to ask.
            if (!IsNoBetter(sum, taken.Count) && goes(taken) is { } more)
            {
                Choose(sum + more);
            }

            if (bundle is { } back)
            {
                bought[back] = false;
            }

            taken.RemoveAt(taken.Count - 1);
        }
    }
}
