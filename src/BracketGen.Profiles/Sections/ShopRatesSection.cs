using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Shops;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[rates]</c> of a shop, and of a family that has its own; every default is common practice, no source.</summary>
internal static class ShopRatesSection
{
    private static readonly ShopRates Usual = new();

    // A family takes from its shop what it leaves out, so its keys have no default of their own.
    private static readonly Key<string> Currency = new("currency", new TextForm(3), "Code of the currency: EUR.");

    private static readonly Key<string> FamilyCurrency = new(
        "currency", new TextForm(3), "Code of the currency. If left out: the shop's. In another currency than the shop's, the shop's prices do not count.", isRequired: false);

    private static readonly Pair SheetPerKilogram = Money("sheet_per_kilogram", "Price of sheet per kilogram, for sheets without a price.", r => r.SheetPerKilogram);

    private static readonly Pair CuttingRate = Money("cutting_rate", "Cutting machine with its operator, per hour.", r => r.CuttingRate);

    private static readonly Pair CutTime = Seconds("cut_time", "Seconds to cut one metre of sheet 1 mm thick; in proportion to the thickness.", r => r.CutTime);

    private static readonly Pair PierceTime = Seconds("pierce_time", "Seconds to pierce sheet 1 mm thick; in proportion to the thickness.", r => r.PierceTime);

    private static readonly Pair CuttingSetUp = Seconds("cutting_set_up", "Seconds to set up the cutting machine for a batch.", r => r.CuttingSetUp);

    private static readonly Pair BendingRate = Money("bending_rate", "Press brake with its operator, per hour.", r => r.BendingRate);

    private static readonly Pair BendTime = Seconds("bend_time", "Seconds for one bend.", r => r.BendTime);

    private static readonly Pair BendingSetUp = Seconds("bending_set_up", "Seconds to set up the press brake for a batch, per bend of the part.", r => r.BendingSetUp);

    private static readonly Pair AngleSetUp = Seconds("angle_set_up", "Seconds to try out an angle other than 90°, per batch and bend.", r => r.AngleSetUp);

    private static readonly Pair ToolChange = Seconds("tool_change", "Seconds to change to another die within a part, per batch.", r => r.ToolChange);

    private static readonly Pair FinishingTime = Seconds("finishing_time", "Seconds to deburr, wash and pack a part, at the rate of the press brake.", r => r.FinishingTime);

    private static readonly Key<int> Batch = Key<int>.WithDefault(
        "batch", new CountForm(1, 100_000), "Pieces that share the set-up where a job is made on its own.", Usual.Batch);

    private static readonly Pair[] All =
    [
        SheetPerKilogram, CuttingRate, CutTime, PierceTime, CuttingSetUp, BendingRate, BendTime, BendingSetUp, AngleSetUp, ToolChange, FinishingTime,
    ];

    /// <summary>The keys of a family.</summary>
    public static IEnumerable<Key> FamilyKeys => [FamilyCurrency, .. All.Select(p => p.Family)];

    public static readonly Key<ShopRates> Rates = new(
        "rates",
        new Section<ShopRates>(
            [Currency, .. All.Select(p => p.Shop), Batch],
            v => Read(v.Get(Currency), p => v.Get(p.Shop)) with { Batch = v.Get(Batch) }),
        "What work and sheet cost. If left out: brackets are compared by minutes of work.",
        isRequired: false);

    /// <summary>What a family's own rates make of the shop's.</summary>
    public static Func<ShopRates, ShopRates> Over(SectionValues values)
    {
        var given = All.ToDictionary(p => p, p => values.OrNull(p.Family));
        var currency = values.Has(FamilyCurrency) ? values.Get(FamilyCurrency) : null;
        return shop =>
        {
            // What a shop without rates has for money are minutes; what it has in another currency are other coins.
            var of = shop.Currency is null || currency is not null && currency != shop.Currency ? Usual : shop;
            return Read(currency ?? of.Currency!, p => given[p] ?? p.Value(p.IsMoney ? of : shop)) with { Batch = shop.Batch };
        };
    }

    private static ShopRates Read(string currency, Func<Pair, double> value) => new()
    {
        Currency = currency,
        SheetPerKilogram = value(SheetPerKilogram),
        CuttingRate = value(CuttingRate),
        CutTime = value(CutTime),
        PierceTime = value(PierceTime),
        CuttingSetUp = value(CuttingSetUp),
        BendingRate = value(BendingRate),
        BendTime = value(BendTime),
        BendingSetUp = value(BendingSetUp),
        AngleSetUp = value(AngleSetUp),
        ToolChange = value(ToolChange),
        FinishingTime = value(FinishingTime),
    };

    private static Pair Money(string name, string help, Func<ShopRates, double> value) => Of(name, help, value, isMoney: true);

    private static Pair Seconds(string name, string help, Func<ShopRates, double> value) => Of(name, help, value, isMoney: false);

    private static Pair Of(string name, string help, Func<ShopRates, double> value, bool isMoney)
    {
        var form = QuantityForm.Number(0, 100_000);
        return new(Key<double>.WithDefault(name, form, help, value(Usual)), new(name, form, help + " If left out: the shop's.", isRequired: false), value, isMoney);
    }

    /// <summary>A key of the shop, and the same of a family.</summary>
    private sealed record Pair(Key<double> Shop, Key<double> Family, Func<ShopRates, double> Value, bool IsMoney);
}
