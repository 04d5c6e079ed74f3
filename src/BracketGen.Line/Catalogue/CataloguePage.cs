using System.Collections.Immutable;
using System.Text;
using BracketGen.Design.Checks;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Line.Costing;
using BracketGen.Line.Lists;
using BracketGen.Line.Sharing;
using BracketGen.Line.Solving;
using BracketGen.Words;
using BracketGen.Words.Checks;
using BracketGen.Words.Line;

namespace BracketGen.Line.Catalogue;

/// <summary>The catalogue: one page that needs nothing else, with every part's picture, whom it fits and its price, and what fits where.</summary>
public static class CataloguePage
{
    /// <summary>The page's bytes, UTF-8.</summary>
    /// <param name="report">The line.</param>
    /// <param name="threads">How many pictures to draw at once.</param>
    public static byte[] Write(LineReport report, int threads)
    {
        var html = new HtmlText();
        var name = report.Family.Family.Name;
        html.Raw("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width\">\n")
            .Element("title", name).Raw($"<style>\n{Style}</style>\n</head>\n<body>\n");
        html.Element("h1", name).Element("p", Summary(report));
        html.Raw("<div class=\"caution\">\n");
        foreach (var caution in Cautions.All)
        {
            html.Element("p", caution);
        }

        html.Raw("</div>\n");
        ToProve(html, report);
        Matrices(html, report);
        Parts(html, report, threads);
        Shared(html, report);
        html.Raw("</body>\n</html>\n");
        return Encoding.UTF8.GetBytes(html.ToString());
    }

    // In large type, before anything that could be ordered: what is not proven, and what to do about it.
    private static void ToProve(HtmlText html, LineReport report)
    {
        var open = report.Selection.Services.Where(s => s.Fit.ToProve.Length > 0).ToArray();
        if (open.Length == 0)
        {
            return;
        }

        html.Raw("<div class=\"open\">\n").Element("p", VerdictText.Banner(VerdictKind.NotProven), "class=\"banner\"");
        html.Element("p", CatalogueText.NotProven(open.Length, report.Selection.Services.Count));
        html.Raw("<ul>\n");
        foreach (var todo in open.SelectMany(s => s.Fit.ToProve).Distinct())
        {
            html.Element("li", CatalogueText.ToProve(todo, open.Where(s => s.Fit.ToProve.Contains(todo)).Select(s => s.Served.Combination.Key).ToArray()));
        }

        html.Raw("</ul>\n</div>\n");
    }

    private static string Summary(LineReport report)
    {
        var (made, shared) = (report.Selection.Services.Count, report.Selection.Services.Count(s => s.IsShared));
        var without = report.Made.Count(m => !m.HasPart);
        return CatalogueText.Summary(report.Family.Shop.Name, report.Selection.Parts.Count, made, shared, without, report.Combinations.Excluded.Length);
    }

    // Vehicles down, throttle bodies across, one table for each choice of material and option.
    private static void Matrices(HtmlText html, LineReport report)
    {
        html.Element("h2", CatalogueText.Matrices);
        var services = report.Selection.Services.ToDictionary(s => s.Served.Combination.Key);
        var made = report.Combinations.Offered.Zip(report.Made).ToDictionary(p => p.First.Key, p => p.Second);
        var reasons = report.Combinations.Excluded.ToDictionary(e => e.Combination.Key, e => LineText.NotSoldBecause(e.Reason));
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
                        html.Raw($"<td class=\"{(service.IsShared ? "shared" : "own")}\"><a href=\"#{HtmlText.Safe(service.By.Made.PartNumber)}\">{HtmlText.Safe(service.By.Made.PartNumber)}</a></td>\n");
                    }
                    else
                    {
                        html.Element("td", reasons.TryGetValue(cell.Key, out var said) ? said : CatalogueText.Causes(made[cell.Key].Reasons), "class=\"empty\"");
                    }
                }

                html.Raw("</tr>\n");
            }

            html.Raw("</table>\n");
        }
    }

    private static void Parts(HtmlText html, LineReport report, int threads)
    {
        html.Element("h2", CatalogueText.Parts);
        var family = report.Family.Family;
        var fits = report.Selection.Services.ToLookup(s => s.By);
        var pictures = new (string Formed, string Flat)[report.Selection.Parts.Count];
        Parallel.For(0, pictures.Length, new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, threads) }, i =>
            pictures[i] = (BracketPicture.Formed(report.Selection.Parts[i].Bracket), BracketPicture.Flat(report.Selection.Parts[i].Bracket)));
        foreach (var (part, picture) in report.Selection.Parts.Zip(pictures))
        {
            var bracket = part.Bracket;
            var cost = PartCost.Of(bracket, family.Cutting, family.Rates);
            html.Raw($"<section id=\"{HtmlText.Safe(part.Made.PartNumber)}\">\n").Element("h3", CatalogueText.Part(part.Made.PartNumber, part.Made.Revision));
            html.Raw($"<div class=\"part\"><div class=\"picture\">{picture.Formed}{picture.Flat}</div><div>\n");
            html.Element("p", CatalogueText.PartFacts(
                bracket.Stock.Material.Designation, bracket.Stock.Thickness, bracket.Flat.Bends.Length, bracket.Mass, family.Units));
            html.Raw("<table>\n").Row(CatalogueText.FitColumns, isHead: true);
            foreach (var service in fits[part])
            {
                var served = service.Served.Combination;
                html.Row([
                    served.VehicleName, served.BodyName, string.Join(", ", new[] { served.Material.Name, served.Option.Option.Name }.Where(t => t.Length > 0)),
                    Adjuster(service.Fit, report), Title(service.Fit.Tightest), Margin(service.Fit.Tightest, report), VerdictText.Name(service.Fit.Verdict),
                ]);
            }

            html.Raw("</table>\n<table>\n").Row([.. family.Rates.Quantities.Select(q => "#" + CatalogueText.From(q))], isHead: true);
            html.Row([.. family.Rates.Quantities.Select(q => "#" + LineText.Money(cost.PriceFor(q), family.Rates.Currency))]);
            html.Raw("</table>\n</div></div>\n</section>\n");
        }
    }

    private static void Shared(HtmlText html, LineReport report)
    {
        var shared = report.Selection.Services.Where(s => s.IsShared).Select(MarginCost.Of).ToImmutableArray();
        if (shared.IsEmpty)
        {
            return;
        }

        html.Element("h2", CatalogueText.Shared);
        html.Element("p", CatalogueText.SharedNote);
        html.Raw("<table>\n").Row(CatalogueText.SharedColumns, isHead: true);
        foreach (var cost in shared)
        {
            html.Row([
                cost.Service.Served.Combination.Title, cost.Service.Served.Made.PartNumber, cost.Service.By.Made.PartNumber, Adjuster(cost.Service.Fit, report),
                Title(cost.OwnTightest), Margin(cost.OwnTightest, report), Title(cost.SharedTightest), Margin(cost.SharedTightest, report),
                cost.Dearest?.Check.Title() ?? CatalogueText.LosesNothing, Margin(cost.DearestBefore, report), Margin(cost.Dearest, report),
            ]);
        }

        html.Raw("</table>\n");
    }

    private static string Adjuster(Fit fit, LineReport report) => LineText.Adjuster(fit.AdjusterShift, fit.AdjusterRange, report.Family.Family.Units);

    private static string Title(FitMargin? margin) => margin?.Check.Title() ?? "";

    private static string Margin(FitMargin? margin, LineReport report) => margin is null ? "" : CheckText.Margin(margin.Check, report.Family.Family.Units);

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
        .open{border:2px solid #b60;padding:.2em 1em;margin:1em 0}
        .banner{font-size:2em;font-weight:bold;margin:.2em 0}
        section{border-top:1px solid #ccc;margin-top:1.2em;break-inside:avoid}
        .part{display:flex;flex-wrap:wrap;gap:1.5em;align-items:flex-start}
        .picture{display:flex;gap:1em}
        .picture svg{width:11em;height:11em}
        path{fill:none;stroke:#1a1a1a;stroke-width:1;vector-effect:non-scaling-stroke;stroke-linejoin:round;stroke-linecap:round}
        path.edge,path.cut{stroke-width:1.4}
        path.fold{stroke:#777;stroke-dasharray:6 3}

        """;
}
