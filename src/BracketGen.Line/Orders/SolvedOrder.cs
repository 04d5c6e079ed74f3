using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Design.Study;
using BracketGen.Line.Costing;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Words.Checks;

namespace BracketGen.Line.Orders;

/// <summary>A line of an order with its answer: only what passes on every variant that it is for is sold.</summary>
/// <param name="Item">The line.</param>
/// <param name="Part">The part.</param>
/// <param name="Variants">The variants, each with its part checked anew.</param>
public sealed record SolvedItem(OrderedItem Item, KeptPart Part, ImmutableArray<SolvedVariant> Variants)
{
    /// <summary>The most severe answer of its variants.</summary>
    public Outcome Outcome => Variants.Max(v => v.Outcome);

    /// <summary>Whether it is sold.</summary>
    public bool IsSold => Outcome == Outcome.Passes;

    /// <summary>Why it is not sold: what to prove, or what fails; empty where it is sold.</summary>
    public IEnumerable<string> Open => Variants.SelectMany(v => v.Open).Distinct();
}

/// <summary>A variant of an order, checked anew.</summary>
/// <param name="Served">The variant; its bracket is the part.</param>
/// <param name="Solution">All checks with that part on that variant; null where its cable does not reach.</param>
public sealed record SolvedVariant(LinePart Served, Solution? Solution)
{
    /// <summary>What the checks come to.</summary>
    public Outcome Outcome => Solution is null ? Outcome.Fails : Fits.OutcomeOf(Solution);

    /// <summary>What to prove, or what fails.</summary>
    public IEnumerable<string> Open => Outcome switch
    {
        Outcome.Passes => [],
        Outcome.NotProven => VerdictText.ToProve(Solution!.Verdict),
        _ => Solution is null ? [] : Fits.Reasons(Solution),
    };
}

/// <summary>An order with every variant checked anew.</summary>
/// <param name="Name">Its name: that of its file.</param>
/// <param name="Family">The family.</param>
/// <param name="Items">The lines.</param>
public sealed record SolvedOrder(string Name, LoadedFamily Family, ImmutableArray<SolvedItem> Items)
{
    /// <summary>The lines that are sold.</summary>
    public ImmutableArray<SolvedItem> Sold => [.. Items.Where(i => i.IsSold)];

    /// <summary>The parts to make, by part number, with the pieces of each.</summary>
    public ImmutableArray<(SolvedVariant Part, int Pieces)> Parts =>
    [
        .. Sold.GroupBy(i => i.Part.PartNumber).OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => (g.First().Variants[0], g.Sum(i => i.Item.Quantity))),
    ];

    /// <summary>What the order comes to.</summary>
    public VerdictKind Verdict => Items.Max(i => i.Outcome) switch
    {
        Outcome.Passes => VerdictKind.Passes,
        Outcome.NotProven => VerdictKind.NotProven,
        Outcome.Unsafe => VerdictKind.Unsafe,
        _ => VerdictKind.Fails,
    };

    /// <summary>Checks every variant of a plan with its part.</summary>
    /// <param name="name">Name of the order.</param>
    /// <param name="family">The family.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="strength">How finely brackets are meshed; null without strength: then nothing is proven.</param>
    /// <param name="threads">How many at once.</param>
    public static SolvedOrder Of(string name, LoadedFamily family, OrderPlan plan, StrengthDetail? strength, int threads)
    {
        var keys = plan.Variants.Keys.ToArray();
        var solved = new SolvedVariant[keys.Length];
        Parallel.For(0, keys.Length, new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, threads) }, i =>
        {
            var (served, mount) = plan.Variants[keys[i]];
            solved[i] = new(served, GivenBracket.On(served.Job, served.Bracket, mount, strength));
        });
        var byKey = keys.Zip(solved).ToDictionary(p => p.First, p => p.Second);
        return new(name, family, [.. plan.Items.Select(i => new SolvedItem(i.Item, i.Part, [.. i.Variants.Select(v => byKey[v])]))]);
    }

    /// <summary>Price of one piece of a line: that of the largest quantity of the price list that the line reaches; below all of them, that of its own quantity.</summary>
    public double PriceOf(SolvedItem item)
    {
        var (rates, cutting) = (Family.Family.Rates, Family.Family.Cutting);
        var cost = PartCost.Of(item.Variants[0].Served.Bracket, cutting, rates);
        return cost.PriceFor(rates.Quantities.Where(q => q <= item.Item.Quantity).DefaultIfEmpty(item.Item.Quantity).Max());
    }
}
