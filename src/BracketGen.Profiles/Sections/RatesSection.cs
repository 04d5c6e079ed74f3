using System.Collections.Immutable;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[rates]</c> of a family; every default is common practice, no source.</summary>
internal static class RatesSection
{
    private static readonly Rates Usual = new();

    private static readonly Key<string> Currency = Key<string>.WithDefault("currency", new TextForm(3), "Code of the currency: EUR.", Usual.Currency);

    private static readonly Key<double> SheetPerKilogram = Money("sheet_per_kilogram", "Price of sheet per kilogram, for sheets without a price.", Usual.SheetPerKilogram);

    private static readonly Key<double> CuttingRate = Money("cutting_rate", "Cutting machine with its operator, per hour.", Usual.CuttingRate);

    private static readonly Key<double> CutTime = Seconds("cut_time", "Seconds to cut one metre of sheet 1 mm thick; in proportion to the thickness.", Usual.CutTime);

    private static readonly Key<double> PierceTime = Seconds("pierce_time", "Seconds to pierce sheet 1 mm thick; in proportion to the thickness.", Usual.PierceTime);

    private static readonly Key<double> CuttingSetUp = Seconds("cutting_set_up", "Seconds to set up the cutting machine for a batch.", Usual.CuttingSetUp);

    private static readonly Key<double> BendingRate = Money("bending_rate", "Press brake with its operator, per hour.", Usual.BendingRate);

    private static readonly Key<double> BendTime = Seconds("bend_time", "Seconds for one bend.", Usual.BendTime);

    private static readonly Key<double> BendingSetUp = Seconds("bending_set_up", "Seconds to set up the press brake for a batch, per bend of the part.", Usual.BendingSetUp);

    private static readonly Key<double> FinishingTime = Seconds("finishing_time", "Seconds to deburr, wash and pack a part, at the rate of the press brake.", Usual.FinishingTime);

    private static readonly Key<double> BoltPrice = Money("bolt_price", "Price of a bolt with its washer.", Usual.BoltPrice);

    private static readonly Key<double> MarkUp = Key<double>.WithDefault("mark_up", QuantityForm.Number(0, 10), "Mark-up on the cost, as a fraction: 0.4 adds 40 %.", Usual.MarkUp);

    private static readonly Key<ImmutableArray<int>> Quantities = Key<ImmutableArray<int>>.WithDefault(
        "quantities", new ListForm<int>(new CountForm(1, 1_000_000), 1, 12), "Batch sizes to give prices for, from small to large.", Usual.Quantities);

    public static readonly Key<Rates> Rates = Key<Rates>.WithDefault(
        "rates",
        new Section<Rates>(
            [Currency, SheetPerKilogram, CuttingRate, CutTime, PierceTime, CuttingSetUp, BendingRate, BendTime, BendingSetUp, FinishingTime, BoltPrice, MarkUp, Quantities],
            v => new()
            {
                Currency = v.Get(Currency),
                SheetPerKilogram = v.Get(SheetPerKilogram),
                CuttingRate = v.Get(CuttingRate),
                CutTime = v.Get(CutTime),
                PierceTime = v.Get(PierceTime),
                CuttingSetUp = v.Get(CuttingSetUp),
                BendingRate = v.Get(BendingRate),
                BendTime = v.Get(BendTime),
                BendingSetUp = v.Get(BendingSetUp),
                FinishingTime = v.Get(FinishingTime),
                BoltPrice = v.Get(BoltPrice),
                MarkUp = v.Get(MarkUp),
                Quantities = v.Get(Quantities),
            },
            [new([Quantities], CheckRising)]),
        "What things cost. What is left out has its default (common practice, no source).",
        Usual);

    private static Key<double> Money(string name, string help, double usual) => Key<double>.WithDefault(name, QuantityForm.Number(0, 100_000), help, usual);

    private static Key<double> Seconds(string name, string help, double usual) => Key<double>.WithDefault(name, QuantityForm.Number(0, 100_000), help, usual);

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
