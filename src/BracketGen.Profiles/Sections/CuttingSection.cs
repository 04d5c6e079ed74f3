using System.Collections.Immutable;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary><c>[cutting]</c> of a family: the sheets, and how they are filled.</summary>
internal static class CuttingSection
{
    private static readonly Key<string> Material = new("material", new TextForm(60), "Designation of the sheet.");

    private static readonly Key<double> Thickness = new("thickness", QuantityForm.Length(0.3, 25), "Its thickness.");

    private static readonly Key<double> Length = new("length", QuantityForm.Length(100, 6000), "Its length; the grain runs along it.");

    private static readonly Key<double> Width = new("width", QuantityForm.Length(100, 3000), "Its width.");

    private static readonly Key<double> Price = new("price", QuantityForm.Number(0, 100_000), "Price of one sheet. If left out: by its mass.", isRequired: false);

    private static readonly Key<ImmutableArray<StockSheet>> Sheets = Key<ImmutableArray<StockSheet>>.WithDefault(
        "sheets",
        new ListForm<StockSheet>(
            new Section<StockSheet>(
                [Material, Thickness, Length, Width, Price],
                v => new(v.Get(Material), v.Get(Thickness), v.Get(Length), v.Get(Width), v.OrNull(Price))),
            0, 200),
        "Stock sheets. A material without one is nested on 2000 by 1000 mm.",
        []);

    private static readonly Key<double> Spacing = Key<double>.WithDefault(
        "spacing", QuantityForm.Length(0, 50), "Metal left between two parts, kerf included.", CuttingPlan.UsualSpacing);

    private static readonly Key<double> Border = Key<double>.WithDefault(
        "border", QuantityForm.Length(0, 100), "Metal left along the edge of the sheet.", CuttingPlan.UsualBorder);

    private static readonly Key<int> Quantity = Key<int>.WithDefault(
        "quantity", new CountForm(1, 10_000), "Pieces of each part to nest if no order says otherwise.", CuttingPlan.Usual.Quantity);

    public static readonly Key<CuttingPlan> Cutting = Key<CuttingPlan>.WithDefault(
        "cutting",
        new Section<CuttingPlan>(
            [Spacing, Border, Quantity, Sheets], v => new(v.Get(Sheets), v.Get(Spacing), v.Get(Border), v.Get(Quantity))),
        "How parts are nested.",
        CuttingPlan.Usual);
}
