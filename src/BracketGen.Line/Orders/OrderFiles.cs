using System.Collections.Immutable;
using BracketGen.Design.Study;
using BracketGen.Drawing.Orders;
using BracketGen.Drawing.Setup;
using BracketGen.Drawing.Sheet;
using BracketGen.Line.Catalogue;
using BracketGen.Line.Costing;
using BracketGen.Line.Lists;
using BracketGen.Line.Nesting;
using BracketGen.Line.Solving;
using BracketGen.Units;
using BracketGen.Words;
using BracketGen.Words.Line;
using BracketGen.Words.SetupSheet;

namespace BracketGen.Line.Orders;

/// <summary>The dark modules of a text's QR code, row by row, without the quiet zone.</summary>
public delegate ImmutableArray<ImmutableArray<bool>> QrModules(string text);

/// <summary>The files of an order, in memory.</summary>
public static class OrderFiles
{
    /// <summary>Folder of the cut files within the order's.</summary>
    public const string Sheets = "sheets";

    /// <summary>Folder of the set-up sheets within the order's.</summary>
    public const string Fitting = "fitting";

    private const string JobCardsFile = "job-cards.pdf", PickFile = "pick-list.pdf", PackFile = "packing-lists.pdf", LabelFile = "labels.pdf";

    /// <summary>Names of the files in the order's folder itself: those of them that an order does not have are removed.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        "order.csv", "prices.csv", "costs.csv", "pick-list.csv", "packing-lists.csv", "sheets.csv", "sheets.html", JobCardsFile, PickFile, PackFile, LabelFile,
    ];

    /// <summary>Path from the order's folder and bytes of every file.</summary>
    /// <param name="order">The order.</param>
    /// <param name="qr">Calculates QR codes.</param>
    /// <param name="threads">How many kinds of sheet to nest at once.</param>
    public static IReadOnlyList<(string Name, byte[] Bytes)> Of(SolvedOrder order, QrModules qr, int threads)
    {
        var files = new List<(string, byte[])> { Csv(OrderLists.Order(order)) };
        foreach (var (variant, units) in Wanted(order))
        {
            var solution = In(variant.Solution!, units);
            files.Add((Path.Combine(Fitting, FittingSheet(variant, units)), Pdf(order, SetupSheet.Compose(solution, Paper(units)), $"{SetupText.Title}, {solution.Job.Document.PartNumber}")));
        }

        if (order.Sold.IsEmpty)
        {
            return files;
        }

        var nests = Nests(order, threads);
        var family = order.Family.Family with { Name = OrderText.SheetsName(order.Name, order.Family.Family.Name) };
        var report = new LineReport(order.Family with { Family = family }, new([], []), [], Selection(order), nests, Numbering.Register.Empty(family.Name));
        var (paper, cards, packs) = (Paper(family.Units), JobCards(order, nests), PackingSheets(order));
        files.AddRange(
        [
            Csv(OrderLists.Prices(order)), Csv(OrderLists.Costs(order)), Csv(OrderLists.PickList(order)), Csv(OrderLists.PackingLists(order)), Csv(LineLists.Sheets(report)),
            ("sheets.html", SheetsPage.Write(report)),
            (JobCardsFile, Pdf(order, [.. cards.SelectMany(c => c.Compose(paper))], OrderText.JobCard)),
            (PickFile, Pdf(order, PickSheet(order).Compose(paper), OrderText.PickList)),
            (PackFile, Pdf(order, [.. packs.SelectMany(p => p.Sheet.Compose(Paper(p.Units)))], OrderText.PackingList)),
            (LabelFile, Pdf(order, LabelSheet.Compose(Labels(order, qr), paper), OrderText.Labels)),
            .. SheetFiles.Of(family, report.Selection.Parts, nests).Select(f => (Path.Combine(Sheets, f.Name), f.Bytes)),
        ]);
        return files;
    }

    /// <summary>A solution with everything in a customer's units.</summary>
    internal static Solution In(Solution solution, UnitSystem units) => solution with { Job = solution.Job with { Units = units } };

    /// <summary>Name of a variant's set-up sheet.</summary>
    internal static string FittingSheet(SolvedVariant variant, UnitSystem units) => $"{variant.Served.Combination.Key}-{units.Symbol(Quantity.Length)}.pdf";

    /// <summary>The nests of the pieces that are sold.</summary>
    internal static ImmutableArray<StockNest> Nests(SolvedOrder order, int threads) => CuttingPlanner.Of(
        Selection(order), new([.. order.Parts.Select(p => (p.Part.Served.Made.PartNumber, p.Pieces))]), order.Family.Family.Cutting, threads);

    private static PartSelection Selection(SolvedOrder order) => new([.. order.Parts.Select(p => p.Part.Served)], [], true, 0);

    // One for each variant and units, also of what is not sold: it says on top what is not proven, and how much drag the springs can bear.
    private static IEnumerable<(SolvedVariant Variant, UnitSystem Units)> Wanted(SolvedOrder order) => order.Items
        .SelectMany(i => i.Variants.Select(v => (Variant: v, Units: i.Item.Units ?? order.Family.Family.Units)))
        .Where(v => v.Variant.Solution?.Bracket is not null)
        .DistinctBy(v => (v.Variant.Served.Combination.Key, v.Units))
        .OrderBy(v => FittingSheet(v.Variant, v.Units), StringComparer.Ordinal);

    private static IEnumerable<OrderSheet> JobCards(SolvedOrder order, ImmutableArray<StockNest> nests) => order.Parts.Select(p =>
    {
        var (bracket, units, work) = (p.Part.Solution!.Bracket!, order.Family.Family.Units, order.Family.Family.Rates.Work);
        var (bounds, times) = (bracket.Flat.Blank.Outline.Bounds, PartTimes.Of(bracket, work));
        var number = p.Part.Served.Made.PartNumber;
        ImmutableArray<string> Row(string name, double once, double each) =>
            [name, OrderText.Time(once), OrderText.Time(each), OrderText.Time(once + p.Pieces * each)];
        var sheets = nests.SelectMany(n => n.Nest.Sheets.Select((s, i) => (Name: SheetFiles.NameOf(n, i, units), Count: s.Laid.Count(l => l.Piece.Name == number)))).Where(s => s.Count > 0);
        var unlaid = nests.SelectMany(n => n.Nest.Unlaid).Any(u => u.Name == number);
        return new OrderSheet(
            OrderText.JobCard, OrderText.Part(number, p.Part.Served.Made.Revision, p.Part.Served.Job.Document.Title), Subject(order),
            [
                new(OrderText.WhatIsMade, OrderText.FactHeads, OrderText.Facts(
                    p.Pieces, LineText.Stock(bracket.Stock.Material.Designation, bracket.Stock.Thickness, units), Math.Max(bounds.Width, bounds.Height),
                    Math.Min(bounds.Width, bounds.Height), bracket.Flat.Blank.CutLength, bracket.Flat.Blank.Contours.Count(), bracket.Mass, units), [1, 2], []),
                new(OrderText.CutFrom, OrderText.SheetHeads, [.. sheets.Select(s => (ImmutableArray<string>)[s.Name, Counted.Number(s.Count)])], [3, 1], [1]),
                new(OrderText.Times, OrderText.TimeHeads,
                [
                    Row(OrderText.Works[0], times.CuttingSetUp, times.Cut + times.Pierce), Row(OrderText.Works[1], times.BendingSetUp, times.Bend), Row(OrderText.Works[2], 0, times.Finish),
                    Row(OrderText.Works[3], times.CuttingSetUp + times.BendingSetUp, times.Cut + times.Pierce + times.Bend + times.Finish),
                ], [3, 1, 1, 1], [1, 2, 3]),
            ],
            [.. bracket.Plan is null ? (string[])[OrderText.Flat] : [], OrderText.DrawingNote, OrderText.TimesNote, .. unlaid ? (string[])[SheetsText.TooLarge(number)] : []])
        {
            Part = In(p.Part.Solution!, units),
        };
    });

    private static OrderSheet PickSheet(SolvedOrder order) => new(
        OrderText.PickList, OrderText.Order(order.Name), Subject(order),
        [new("", OrderText.PickHeads, [.. OrderLists.Picked(order).Select(r => (ImmutableArray<string>)[Counted.Number(r.Count), r.Item, r.Size])], [1, 4, 6], [0])], []);

    // A customer reads the units of the first line.
    private static IEnumerable<(OrderSheet Sheet, UnitSystem Units)> PackingSheets(SolvedOrder order) => order.Sold.GroupBy(i => i.Item.Reference).Select(c => (
        new OrderSheet(
            OrderText.PackingList, OrderText.For(c.Key), Subject(order),
            [
                .. c.Select(i => new OrderTable(
                    OrderText.Packed(i.Item.Quantity, i.Part.PartNumber, i.Part.Revision, string.Join("; ", i.Variants.Select(v => v.Served.Combination.Title))), OrderText.PackHeads,
                    [.. OrderLists.Bag(order, i).Select(r => (ImmutableArray<string>)[Counted.Number(r.Count * i.Item.Quantity), Counted.Number(r.Count), r.Item, r.Size, r.Where])],
                    [1, 2, 3.5, 5, 4], [0, 1])),
            ],
            OrderText.PackNotes),
        c.First().Item.Units ?? order.Family.Family.Units));

    private static IEnumerable<(Label Label, int Count)> Labels(SolvedOrder order, QrModules qr) => order.Sold.Select(i => (
        new Label(
            i.Part.PartNumber,
            [
                .. new[]
                {
                    RevisionText.Revision(i.Part.Revision), i.Variants.Length == 1 ? i.Variants[0].Served.Combination.Title : i.Variants[0].Served.Combination.BodyName,
                    OrderText.Reference(i.Item.Reference), $"{OrderText.Order(order.Name)}, {order.Family.Shop.Name}",
                }.Where(l => l.Length > 0),
            ],
            qr(OrderText.Code(i.Part.PartNumber, i.Part.Revision))),
        i.Item.Quantity));

    private static string Subject(SolvedOrder order) => OrderText.Subject(order.Name, order.Family.Family.Name, order.Family.Shop.Name);

    private static PageFormat Paper(UnitSystem units) => units == UnitSystem.Inch ? PageFormat.AnsiA : PageFormat.A4;

    private static (string, byte[]) Csv(ListTable table) => (table.Name + ".csv", CsvText.Write(table));

    private static byte[] Pdf(SolvedOrder order, IReadOnlyList<SheetPage> pages, string title) => PdfWriter.Write(
        pages, new PdfInfo($"{title}, {OrderText.Order(order.Name)}", order.Family.Shop.Name, order.Family.Family.Document.Date ?? new DateOnly(2000, 1, 1)));
}
