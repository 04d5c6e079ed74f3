using System.Collections.Immutable;
using BracketGen.Design.Kit;
using BracketGen.TestSupport;
using CsCheck;

namespace BracketGen.Design.Tests;

/// <summary>The cheapest set, held against trying every one.</summary>
public class CheapestSetTests
{
    private sealed record Lists(ImmutableArray<ImmutableArray<SetOption>> Needs, ImmutableArray<double?> Bundles, ImmutableArray<int?> Stock, ImmutableArray<(int Need, int Option, int Other, int Its)> Clashes);

    private static readonly Gen<double?> Price = Gen.Select(Gen.Int[0, 30], Gen.Int[0, 6], (p, unknown) => unknown == 0 ? null : (double?)p);

    private static readonly Gen<SetOption> Option = Gen.Select(
        Price, Gen.Int[1, 3], Gen.Int[0, 5], Gen.Int[0, 5], (p, count, item, bundle) => bundle < 2 ? new SetOption(0, count, item, bundle) : new(p, count, item, null));

    private static readonly Gen<Lists> Random = Gen.Select(
        Option.Array[0, 4].Array[1, 5], Price.Array[2], Gen.Int[0, 8].Array[6], Gen.Select(Gen.Int[0, 4], Gen.Int[0, 3], Gen.Int[0, 4], Gen.Int[0, 3]).Array[0, 6],
        (needs, bundles, stock, clashes) => new Lists(
            [.. needs.Select(n => n.ToImmutableArray())], [.. bundles], [.. stock.Select(s => s > 5 ? null : (int?)s)], [.. clashes.Select(c => (c.Item1, c.Item2, c.Item3, c.Item4))]));

    [Fact]
    public void It_is_the_best_of_all_sets() => Random.Check(LongRun.Of(2000), lists =>
    {
        var (taken, cost) = CheapestSet.Of(lists.Needs, lists.Bundles, lists.Stock, chosen => Goes(lists, chosen) ? Extra(chosen) : null);
        var best = All(lists, []).Select(set => CostOf(lists, set)).Min();
        Assert.Equal((best.Open, best.Unpriced), (cost.Open, cost.Unpriced));
        Assert.Equal(best.Money, cost.Money, 1e-9);
        Assert.Equal(cost, CostOf(lists, taken));
    });

    // A price that is known only once something is chosen counts, and the dearest of equals is not taken for it.
    [Fact]
    public void What_a_choice_costs_beside_its_price_counts()
    {
        ImmutableArray<ImmutableArray<SetOption>> needs = [[new(0, 1, 0, null), new(12, 1, 1, null)]];
        var (taken, cost) = CheapestSet.Of(needs, [], [null, null], chosen => chosen[0] == 0 ? new KitCost(0, 0, 30) : default(KitCost));
        Assert.Equal((1, 12.0), (taken[0], cost.Money));
    }

    [Fact]
    public void A_bundle_is_paid_once_and_serves_all_that_comes_with_it()
    {
        ImmutableArray<ImmutableArray<SetOption>> needs = [[new(9, 1, 0, null), new(0, 1, 1, 0)], [new(9, 1, 2, null), new(0, 1, 3, 0)]];
        Assert.Equal(16, CheapestSet.Of(needs, [16], [null, null, null, null], _ => default(KitCost)).Cost.Money);
        Assert.Equal(18, CheapestSet.Of(needs, [19], [null, null, null, null], _ => default(KitCost)).Cost.Money);
    }

    private static bool Goes(Lists lists, IReadOnlyList<int> chosen) =>
        lists.Clashes.All(c => c.Need >= chosen.Count || c.Other >= chosen.Count || c.Need == c.Other || chosen[c.Need] != c.Option || chosen[c.Other] != c.Its);

    private static KitCost Extra(IReadOnlyList<int> chosen) => new(0, 0, chosen.Count == 2 && chosen[0] == 1 && chosen[1] == 0 ? 7 : 0);

    private static IEnumerable<ImmutableArray<int>> All(Lists lists, ImmutableArray<int> chosen) => chosen.Length == lists.Needs.Length
        ? IsPossible(lists, chosen) ? [chosen] : []
        : Enumerable.Range(-1, lists.Needs[chosen.Length].Length + 1).SelectMany(o => All(lists, chosen.Add(o)));

    private static bool IsPossible(Lists lists, ImmutableArray<int> set) => Goes(lists, set)
        && set.Select((o, n) => (o, n)).Where(c => c.o >= 0).Select(c => lists.Needs[c.n][c.o]).GroupBy(o => o.Item).All(g => g.Sum(o => o.Count) <= (lists.Stock[g.Key] ?? int.MaxValue));

    private static KitCost CostOf(Lists lists, ImmutableArray<int> set)
    {
        SetOption[] taken = [.. set.Select((o, n) => (o, n)).Where(c => c.o >= 0).Select(c => lists.Needs[c.n][c.o])];
        return taken.Select(o => KitCost.Of(o.Price)).Concat(taken.Select(o => o.Bundle).OfType<int>().Distinct().Select(b => KitCost.Of(lists.Bundles[b])))
            .Aggregate(new KitCost(set.Count(o => o < 0), 0, 0), (a, b) => a + b) + (set.Length > 1 ? Extra([.. set.Take(2)]) : default);
    }
}
