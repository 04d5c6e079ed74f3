using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Line.Combinations;
using BracketGen.Line.Costing;
using BracketGen.Line.Lists;
using BracketGen.Line.Numbering;
using BracketGen.Line.Sharing;
using BracketGen.Line.Solving;
using BracketGen.Profiles.Family;
using BracketGen.Profiles.Forms;
using BracketGen.SheetMetal.Shops;
using BracketGen.Units;
using BracketGen.Words;
using BracketGen.Words.Checks;

namespace BracketGen.Line.Catalogue;

/// <summary>The catalogue: one page that needs nothing else, with every part's picture, whom it fits and its price, and what fits where.</summary>
public static class CataloguePage
{
    /// <summary>The page's bytes, UTF-8.</summary>
    /// <param name="report">The line.</param>
    /// <param name="threads">How many pictures to draw at once.</param>
    public static byte[] Write(LineReport report, int threads)
    {
        var html = new Html();
        var name = report.Family.Family.Name;
        html.Raw("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width\">\n")
            .Element("title", name).Raw($"<style>\n{Style}</style>\n</head>\n<body>\n");
        html.Element("h1", name).Element("p", Summary(report));
        html.Raw("<div class=\"caution\">\n");
        foreach (var caution in Cautions.All)
        {
            html.Element("p", caution);
        }

        if (!report.WithStrength)
        {
            html.Element("p", "Whether these brackets bend, shake or crack was not calculated. None of them is to be made before it was.");
        }

        html.Raw("</div>\n");
        Matrices(html, report);
        Parts(html, report, threads);
        Shared(html, report);
        html.Raw("</body>\n</html>\n");
        return Encoding.UTF8.GetBytes(html.ToString());
    }

    private static string Summary(LineReport report)
    {
        var (made, shared) = (report.Selection.Services.Count, report.Selection.Services.Count(s => s.IsShared));
        var without = report.Made.Count(m => m.Outcome != Outcome.Passes);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{report.Family.Shop.Name}. {Count(report.Selection.Parts.Count, "part")} for {Count(made, "combination")}: {shared} of them served by another's part. {without} without a bracket, {report.Combinations.Excluded.Length} not offered; the tables say why.");
    }

    private static string Count(int number, string what) => string.Create(CultureInfo.InvariantCulture, $"{number} {what}{(number == 1 ? "" : "s")}");

    // Vehicles down, throttle bodies across, one table for each choice of material and option.
    private static void Matrices(Html html, LineReport report)
    {
        html.Element("h2", "What fits where");
        var services = report.Selection.Services.ToDictionary(s => s.Served.Combination.Key);
        var made = report.Combinations.Offered.Zip(report.Made).ToDictionary(p => p.First.Key, p => p.Second);
        var reasons = report.Combinations.Excluded.ToDictionary(e => e.Combination.Key, e => "not offered: " + e.Reason);
        var all = report.Combinations.Offered.Concat(report.Combinations.Excluded.Select(e => e.Combination)).OrderBy(c => c.Order).ToArray();
        foreach (var choice in all.GroupBy(c => (Material: c.Material.Name, Option: c.Option.Option.Name)))
        {
            var title = string.Join(", ", new[] { choice.Key.Material, choice.Key.Option }.Where(t => t.Length > 0));
            if (title.Length > 0)
            {
                html.Element("h3", title);
            }

            html.Raw("<table class=\"matrix\">\n");
            html.Row(choice.Select(c => c.BodyName).Distinct().Prepend(""), isHead: true);
            foreach (var vehicle in choice.GroupBy(c => c.Vehicle.Code))
            {
                html.Raw("<tr>").Element("th", vehicle.First().VehicleName);
                foreach (var cell in vehicle)
                {
                    if (services.TryGetValue(cell.Key, out var service))
                    {
                        html.Raw($"<td class=\"{(service.IsShared ? "shared" : "own")}\"><a href=\"#{Html.Safe(service.By.Made.PartNumber)}\">{Html.Safe(service.By.Made.PartNumber)}</a></td>\n");
                    }
                    else
                    {
                        html.Element("td", reasons.TryGetValue(cell.Key, out var said) ? said : Why(made[cell.Key].Reasons), "class=\"empty\"");
                    }
                }

                html.Raw("</tr>\n");
            }

            html.Raw("</table>\n");
        }
    }

    private static string Why(string[] reasons) => reasons.Length switch
    {
        0 => "no bracket",
        1 => reasons[0],
        _ => string.Create(CultureInfo.InvariantCulture, $"{reasons[0]}; and {reasons.Length - 1} more in fits.csv"),
    };

    private static void Parts(Html html, LineReport report, int threads)
    {
        html.Element("h2", "Parts");
        var family = report.Family.Family;
        var fits = report.Selection.Services.ToLookup(s => s.By);
        var pictures = new (string Formed, string Flat)[report.Selection.Parts.Count];
        Parallel.For(0, pictures.Length, new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, threads) }, i =>
            pictures[i] = (BracketPicture.Formed(report.Selection.Parts[i].Bracket), BracketPicture.Flat(report.Selection.Parts[i].Bracket)));
        foreach (var (part, picture) in report.Selection.Parts.Zip(pictures))
        {
            var bracket = part.Bracket;
            var cost = PartCost.Of(bracket, family.Cutting, family.Rates);
            html.Raw($"<section id=\"{Html.Safe(part.Made.PartNumber)}\">\n").Element("h3", $"{part.Made.PartNumber}, revision {part.Made.Revision}");
            html.Raw($"<div class=\"part\"><div class=\"picture\">{picture.Formed}{picture.Flat}</div><div>\n");
            html.Element("p", string.Create(
                CultureInfo.InvariantCulture,
                $"{bracket.Stock.Material.Designation}, {Length(bracket.Stock.Thickness, report)}; {Bends(bracket.Flat.Bends.Length)}; {bracket.Mass * 1e6:0} g."));
            html.Raw("<table>\n").Row(["fits", "on", "in", "adjuster", "tightest check", "to spare"], isHead: true);
            foreach (var service in fits[part])
            {
                var served = service.Served.Combination;
                html.Row([
                    served.VehicleName, served.BodyName, string.Join(", ", new[] { served.Material.Name, served.Option.Option.Name }.Where(t => t.Length > 0)),
                    Adjuster(service.Fit, report), service.Fit.Tightest?.Title ?? "", service.Fit.Tightest?.Margin ?? "",
                ]);
            }

            html.Raw("</table>\n<table>\n").Row([.. family.Rates.Quantities.Select(q => "#" + (q == 1 ? "one" : "from " + q.ToString(CultureInfo.InvariantCulture)))], isHead: true);
            html.Row([.. family.Rates.Quantities.Select(q => "#" + cost.PriceFor(q).ToString("0.00", CultureInfo.InvariantCulture) + " " + family.Rates.Currency)]);
            html.Raw("</table>\n</div></div>\n</section>\n");
        }
    }

    private static void Shared(Html html, LineReport report)
    {
        var shared = report.Selection.Services.Where(s => s.IsShared).Select(MarginCost.Of).ToImmutableArray();
        if (shared.IsEmpty)
        {
            return;
        }

        html.Element("h2", "What each saved part costs in margin");
        html.Element("p", "Every check was made anew with the other's part. The tightest check, and the one that gives up most, before and with the shared part.");
        html.Raw("<table>\n").Row(["combination", "saved", "served by", "adjuster", "tightest with its own", "", "tightest now", "", "gives up most", "before", "now"], isHead: true);
        foreach (var cost in shared)
        {
            html.Row([
                cost.Service.Served.Combination.Title, cost.Service.Served.Made.PartNumber, cost.Service.By.Made.PartNumber, Adjuster(cost.Service.Fit, report),
                cost.OwnTightest.Title, cost.OwnTightest.Margin, cost.SharedTightest.Title, cost.SharedTightest.Margin,
                cost.Dearest?.Title ?? "nothing", cost.DearestBefore?.Margin ?? "", cost.Dearest?.Margin ?? "",
            ]);
        }

        html.Raw("</table>\n");
    }

    private static string Bends(int count) => count switch { 0 => "flat", 1 => "one bend", _ => string.Create(CultureInfo.InvariantCulture, $"{count} bends") };

    private static string Length(double value, LineReport report) => CheckText.Number(Quantity.Length, value, report.Family.Family.Units);

    private static string Adjuster(Fit fit, LineReport report) => fit.AdjusterRange <= 0
        ? "none"
        : Math.Abs(fit.AdjusterShift) < 0.05
            ? "middle"
            : $"{Length(Math.Abs(fit.AdjusterShift), report)} {(fit.AdjusterShift > 0 ? "taken up" : "let out")}";

    private const string Style =
        """
        body{font-family:sans-serif;margin:2em auto;max-width:75em;padding:0 1em;color:#1a1a1a;line-height:1.4}
        table{border-collapse:collapse;margin:.6em 0;font-size:.9em}
        th,td{border:1px solid #bbb;padding:.25em .6em;text-align:left;vertical-align:top}
        th{background:#f0f0f0}
        .number{text-align:right}
        .matrix td.empty{color:#777;background:#fafafa;max-width:18em;font-size:.85em}
        .matrix td.shared{background:#eef5fb}
        .caution{border:2px solid #b00;padding:.2em 1em;margin:1em 0}
        section{border-top:1px solid #ccc;margin-top:1.2em;break-inside:avoid}
        .part{display:flex;flex-wrap:wrap;gap:1.5em;align-items:flex-start}
        .picture{display:flex;gap:1em}
        .picture svg{width:11em;height:11em}
        path{fill:none;stroke:#1a1a1a;stroke-width:1;vector-effect:non-scaling-stroke;stroke-linejoin:round;stroke-linecap:round}
        path.edge,path.cut{stroke-width:1.4}
        path.fold{stroke:#777;stroke-dasharray:6 3}

        """;
}
