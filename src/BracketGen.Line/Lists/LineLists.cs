using System.Collections.Immutable;
using BracketGen.Design.Checks;
using BracketGen.Line.Combinations;
using BracketGen.Line.Costing;
using BracketGen.Line.Nesting;
using BracketGen.Line.Numbering;
using BracketGen.Line.Sharing;
using BracketGen.Line.Solving;
using BracketGen.Units;
using BracketGen.Words;
using BracketGen.Words.Checks;
using BracketGen.Words.Line;

namespace BracketGen.Line.Lists;

/// <summary>Everything that lists and catalogue tell of a line.</summary>
/// <param name="Family">The family.</param>
/// <param name="Combinations">What is offered and what is not.</param>
/// <param name="Made">What was made of the offered ones, in order.</param>
/// <param name="Selection">The parts and whom they serve.</param>
/// <param name="Nests">The sheets.</param>
/// <param name="Register">The register.</param>
public sealed record LineReport(
    Profiles.Family.LoadedFamily Family, FamilyCombinations Combinations, ImmutableArray<Made> Made, PartSelection Selection,
    ImmutableArray<StockNest> Nests, Register Register);

/// <summary>The lists of a line.</summary>
public static class LineLists
{
    /// <summary>The parts: what each is, whom it fits, what it costs.</summary>
    public static ListTable Parts(LineReport report)
    {
        var family = report.Family.Family;
        var fits = report.Selection.Services.ToLookup(s => s.By);
        return new(
            "parts",
            [
                "part_number", "revision", "title", "material", "thickness_mm", "bends", "mass_g", "blank_length_mm", "blank_width_mm", "cut_length_mm",
                "pierces", "combinations", "currency", "cost_at_1",
                .. family.Rates.Quantities.Select(q => "price_at_" + Counted.Number(q)),
                "folder",
            ],
            [
                .. report.Selection.Parts.Select(part =>
                {
                    var bracket = part.Bracket;
                    var cost = PartCost.Of(bracket, family.Cutting, family.Rates);
                    var bounds = bracket.Flat.Blank.Outline.Bounds;
                    return (ImmutableArray<ListCell>)
                    [
                        part.Made.PartNumber, part.Made.Revision, part.Job.Document.Title, bracket.Stock.Material.Designation,
                        ListCell.Of(bracket.Stock.Thickness, 3), bracket.Flat.Bends.Length, ListCell.Of(bracket.Mass * 1e6, 1),
                        ListCell.Of(Math.Max(bounds.Width, bounds.Height), 2), ListCell.Of(Math.Min(bounds.Width, bounds.Height), 2),
                        ListCell.Of(bracket.Flat.Blank.CutLength, 1), bracket.Flat.Blank.Contours.Count(), fits[part].Count(), family.Rates.Currency,
                        ListCell.Of(cost.For(1), 2),
                        .. family.Rates.Quantities.Select(q => ListCell.Of(cost.PriceFor(q), 2)),
                        part.Folder,
                    ];
                }),
            ]);
    }

    /// <summary>Every combination: the part that serves it and how, or why there is none.</summary>
    public static ListTable Fits(LineReport report)
    {
        var units = report.Family.Family.Units;
        var services = report.Selection.Services.ToDictionary(s => s.Served.Combination.Key);
        var made = report.Combinations.Offered.Zip(report.Made).ToDictionary(p => p.First.Key, p => p.Second);
        var excluded = report.Combinations.Excluded.ToDictionary(e => e.Combination.Key, e => e.Reason);
        var all = report.Combinations.Offered.Concat(report.Combinations.Excluded.Select(e => e.Combination)).OrderBy(c => c.Order);
        return new(
            "fits",
            [
                "combination", "vehicle", "throttle_body", "material", "option", "part_number", "revision", "shared", "adjuster_off_middle_mm", "tightest_check",
                "tightest_margin", "reason", "verdict", "to_prove",
            ],
            [
                .. all.Select(c =>
                {
                    ImmutableArray<ListCell> who = [c.Key, c.VehicleName, c.BodyName, c.Material.Name, c.Option.Option.Name];
                    if (services.TryGetValue(c.Key, out var service))
                    {
                        return
                        [
                            .. who, service.By.Made.PartNumber, service.By.Made.Revision, LineText.YesNo(service.IsShared),
                            ListCell.Of(service.Fit.AdjusterShift, 2), Title(service.Fit.Tightest), Margin(service.Fit.Tightest, units), "",
                            VerdictText.Name(service.Fit.Verdict), string.Join(" ", service.Fit.ToProve),
                        ];
                    }

                    var reason = excluded.TryGetValue(c.Key, out var said) ? LineText.NotSoldBecause(said) : string.Join("; ", made[c.Key].Reasons);
                    return (ImmutableArray<ListCell>)[.. who, "", "", "", "", "", "", reason, made.TryGetValue(c.Key, out var done) ? Answer(done.Outcome) : "", ""];
                }),
            ]);
    }

    /// <summary>What each shared part saves and costs in margin.</summary>
    public static ListTable Shared(LineReport report) => Shared(report, report.Family.Family.Units);

    private static ListTable Shared(LineReport report, UnitSystem units) => new(
        "shared",
        [
            "combination", "own_part_not_made", "served_by", "adjuster_off_middle_mm", "tightest_before", "tightest_margin_before", "tightest_now",
            "tightest_margin_now", "dearest_check", "dearest_margin_before", "dearest_margin_now",
        ],
        [
            .. report.Selection.Services.Where(s => s.IsShared).Select(s =>
            {
                var cost = MarginCost.Of(s);
                return (ImmutableArray<ListCell>)
                [
                    s.Served.Combination.Key, s.Served.Made.PartNumber, s.By.Made.PartNumber, ListCell.Of(s.Fit.AdjusterShift, 2),
                    Title(cost.OwnTightest), Margin(cost.OwnTightest, units), Title(cost.SharedTightest), Margin(cost.SharedTightest, units),
                    Title(cost.Dearest), Margin(cost.DearestBefore, units), Margin(cost.Dearest, units),
                ];
            }),
        ]);

    /// <summary>What each part costs, position by position.</summary>
    public static ListTable Costs(LineReport report)
    {
        var family = report.Family.Family;
        return new(
            "costs",
            ["part_number", "position", "each", "once_for_a_batch", "currency"],
            [
                .. report.Selection.Parts.SelectMany(part => PartCost.Of(part.Bracket, family.Cutting, family.Rates).Items.Select(item =>
                    (ImmutableArray<ListCell>)[part.Made.PartNumber, item.What, ListCell.Of(item.Each, 4), ListCell.Of(item.Batch, 2), family.Rates.Currency])),
            ]);
    }

    /// <summary>The sheets, and how well they are used.</summary>
    public static ListTable Sheets(LineReport report) => new(
        "sheets",
        [
            "file", "material", "thickness_mm", "length_mm", "width_mm", "pieces", "used_length_mm", "net_area_over_used", "all_sheets_utilisation",
            "sheets_by_area_alone", "saved_over_rows", "offcut", "left_length_mm", "sheet_is_listed",
        ],
        [
            .. report.Nests.SelectMany(n => n.Nest.All.Select((sheet, i) => (ImmutableArray<ListCell>)
            [
                SheetFiles.NameOf(n, i, report.Family.Family.Units), n.Stock.Material.Designation, ListCell.Of(n.Stock.Thickness, 3), ListCell.Of(sheet.Length, 1), ListCell.Of(sheet.Width, 1),
                sheet.Laid.Length, ListCell.Of(sheet.Used(n.Nest.Border), 1),
                ListCell.Of(sheet.Area / (sheet.Offcut?.Outline?.Area ?? sheet.Used(n.Nest.Border) * sheet.Width), 3), ListCell.Of(n.Nest.Utilisation, 3), n.Nest.FewestSheets,
                ListCell.Of(n.Saved, 3), sheet.Offcut?.Code ?? "", ListCell.Of(StockNotes.WorthKeeping(sheet.Left(n.Nest.Border)), 1), sheet.Offcut is not null || n.IsListed ? "yes" : "no",
            ])),
        ]);

    private static string Title(FitMargin? margin) => margin?.Check.Title() ?? "";

    private static string Margin(FitMargin? margin, UnitSystem units) => margin is null ? "" : CheckText.Margin(margin.Check, units);

    /// <summary>The answer of a variant in a word.</summary>
    public static string Answer(Outcome outcome) => outcome switch
    {
        Outcome.Passes => VerdictText.Name(VerdictKind.Passes),
        Outcome.NotProven => VerdictText.Name(VerdictKind.NotProven),
        Outcome.Unsafe => VerdictText.Name(VerdictKind.Unsafe),
        _ => VerdictText.Name(VerdictKind.Fails),
    };
}
