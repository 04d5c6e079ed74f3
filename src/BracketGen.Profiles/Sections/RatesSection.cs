using System.Collections.Immutable;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[rates]</c> of a family: what it leaves out is the shop's; every default is common practice, no source.</summary>
internal static class RatesSection
{
    private static readonly Rates Usual = new();

    private static readonly Key<double> BoltPrice = Key<double>.WithDefault(
        "bolt_price", QuantityForm.Number(0, 100_000), "Price of a bolt with its washer.", Usual.BoltPrice);

    private static readonly Key<double> MarkUp = Key<double>.WithDefault("mark_up", QuantityForm.Number(0, 10), "Mark-up on the cost, as a fraction: 0.4 adds 40 %.", Usual.MarkUp);

    private static readonly Key<ImmutableArray<int>> Quantities = Key<ImmutableArray<int>>.WithDefault(
        "quantities", new ListForm<int>(new CountForm(1, 1_000_000), 1, 12), "Batch sizes to give prices for, from small to large.", Usual.Quantities);

    /// <summary>The rates over those of a shop.</summary>
    public static readonly Key<Func<ShopRates, Rates>> Rates = Key<Func<ShopRates, Rates>>.WithDefault(
        "rates",
        new Section<Func<ShopRates, Rates>>(
            [.. ShopRatesSection.FamilyKeys, BoltPrice, MarkUp, Quantities],
            v =>
            {
                var work = ShopRatesSection.Over(v);
                var sold = Usual with { BoltPrice = v.Get(BoltPrice), MarkUp = v.Get(MarkUp), Quantities = v.Get(Quantities) };
                return shop => sold with { Work = work(shop) };
            },
            [new([Quantities], CheckRising)]),
        "What things cost. What is left out is the shop's, or has its default (common practice, no source).",
        shop => Usual with { Work = shop.Currency is null ? Usual.Work : shop });

    private static void CheckRising(SectionValues values)
    {
        var all = values.Get(Quantities);
        for (var i = 1; i < all.Length; i++)
        {
            if (all[i] <= all[i - 1])
            {
                values.ReportItem(Quantities, i, "", new Contradiction(Contradictory.Quantities));
            }
        }
    }
}
