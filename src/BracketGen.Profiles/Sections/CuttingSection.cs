using System.Collections.Immutable;
using BracketGen.Profiles.Errors;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;

namespace BracketGen.Profiles.Sections;

/// <summary>An offcut as its file says it, its outline not yet read.</summary>
/// <param name="Known">The offcut; without its size where an outline has it.</param>
/// <param name="Outline">Path of its outline (DXF), from the file; null for a rectangle.</param>
internal sealed record OffcutFile(Offcut Known, Located<string>? Outline);

/// <summary>How sheets are filled, the outlines of offcuts not yet read.</summary>
/// <param name="Plan">All the rest, without offcuts.</param>
/// <param name="Offcuts">The offcuts.</param>
internal sealed record CuttingFile(CuttingPlan Plan, ImmutableArray<OffcutFile> Offcuts);

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

    private static readonly Key<string> Code = new("code", new CodeForm(), "What you call the offcut: letters and digits, each code once.");

    private static readonly Key<double> OffcutLength = new("length", QuantityForm.Length(Offcut.Least, Offcut.MostLength), "Length of a rectangle; the grain runs along it.", isRequired: false);

    private static readonly Key<double> OffcutWidth = new("width", QuantityForm.Length(Offcut.Least, Offcut.MostWidth), "Its width.", isRequired: false);

    private static readonly Key<Located<string>> Outline = new(
        "outline", new LocatedForm<string>(new FileForm()), "In place of length and width: path of its outline (DXF), from this file. What is drawn inside is cut out already; the grain runs along x.", isRequired: false);

    private static readonly Key<ImmutableArray<OffcutFile>> Offcuts = Key<ImmutableArray<OffcutFile>>.WithDefault(
        "offcuts",
        new ListForm<OffcutFile>(
            new Section<OffcutFile>(
                [Code, Material, Thickness, OffcutLength, OffcutWidth, Outline],
                v => new(new(v.Get(Code), v.Get(Material), v.Get(Thickness), v.OrNull(OffcutLength) ?? 0, v.OrNull(OffcutWidth) ?? 0, null), v.Has(Outline) ? v.Get(Outline) : null),
                [new([OffcutLength, OffcutWidth], v =>
                {
                    if (v.Has(OffcutLength) != v.Has(OffcutWidth))
                    {
                        v.Report(v.Has(OffcutLength) ? OffcutLength : OffcutWidth, new Contradiction(Contradictory.OffcutSides));
                    }
                })],
                oneOf: [OffcutLength, Outline], kinds: [new Together(OffcutLength, OffcutWidth)]),
            0, 200),
        "What is left of earlier sheets: filled first, in this order.",
        []);

    private static readonly Key<double> Spacing = Key<double>.WithDefault(
        "spacing", QuantityForm.Length(0, 50), "Metal left between two parts, kerf included.", CuttingPlan.UsualSpacing);

    private static readonly Key<double> Border = Key<double>.WithDefault(
        "border", QuantityForm.Length(0, 100), "Metal left along the edge of the sheet.", CuttingPlan.UsualBorder);

    private static readonly Key<int> Quantity = Key<int>.WithDefault(
        "quantity", new CountForm(1, 10_000), "Pieces of each part to nest if no order says otherwise.", CuttingPlan.Usual.Quantity);

    public static readonly Key<CuttingFile> Cutting = Key<CuttingFile>.WithDefault(
        "cutting",
        new Section<CuttingFile>(
            [Spacing, Border, Quantity, Sheets, Offcuts], v => new(new(v.Get(Sheets), v.Get(Spacing), v.Get(Border), v.Get(Quantity)), v.Get(Offcuts)),
            [new([Offcuts], CheckCodes)]),
        "How parts are nested.",
        new(CuttingPlan.Usual, []));

    // Codes are in names of files: capital and small letters are one.
    private static void CheckCodes(SectionValues values)
    {
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var (i, offcut) in values.Get(Offcuts).Index())
        {
            if (!seen.Add(offcut.Known.Code))
            {
                values.ReportItem(Offcuts, i, "code", new GivenTwice(Repeated.Code));
            }
        }
    }
}
