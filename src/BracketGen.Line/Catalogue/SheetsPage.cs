using System.Text;
using BracketGen.Line.Lists;
using BracketGen.Line.Nesting;
using BracketGen.Words.Line;

namespace BracketGen.Line.Catalogue;

/// <summary>The filled sheets as a page to look at before cutting.</summary>
public static class SheetsPage
{
    /// <summary>The page's bytes, UTF-8.</summary>
    public static byte[] Write(LineReport report)
    {
        var html = new HtmlText();
        var units = report.Family.Family.Units;
        var title = SheetsText.Title(report.Family.Family.Name);
        html.Raw("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n").Element("title", title).Raw($"<style>\n{Style}</style>\n</head>\n<body>\n");
        html.Element("h1", title);
        html.Element("p", SheetsText.Note);
        foreach (var note in StockNotes.Of(report.Family.Family, report.Nests))
        {
            html.Element("p", note, "class=\"note\"");
        }

        var parts = report.Selection.Parts.ToDictionary(p => p.Made.PartNumber);
        foreach (var nest in report.Nests)
        {
            html.Element("h2", LineText.Stock(nest.Stock.Material.Designation, nest.Stock.Thickness, units));
            html.Element("p", SheetsText.Nest(
                nest.Nest.Sheets.Length, nest.Size.Length, nest.Size.Width, nest.Nest.FewestSheets, nest.Nest.Utilisation, nest.Rows.Utilisation, nest.Saved,
                units));
            foreach (var unlaid in nest.Nest.Unlaid)
            {
                html.Element("p", SheetsText.TooLarge(unlaid.Name), "class=\"unlaid\"");
            }

            foreach (var (i, sheet) in nest.Nest.All.Index())
            {
                var file = SheetFiles.NameOf(nest, i, units);
                html.Element("h3", sheet.Offcut is { } offcut
                    ? SheetsText.Offcut(file, offcut.Code, sheet.Laid.Length)
                    : SheetsText.Sheet(file, sheet.Laid.Length, sheet.Used(nest.Nest.Border), sheet.Length, units));
                if (sheet.Offcut is null && StockNotes.WorthKeeping(sheet.Left(nest.Nest.Border)) is > 0 and var left)
                {
                    html.Element("p", SheetsText.Left(left, sheet.Width, units));
                }

                html.Raw(SheetPicture.Of(sheet, nest.Nest.Border, parts));
                html.Raw("<ul class=\"legend\">");
                foreach (var (number, (name, count)) in StockNotes.Counts(sheet).Index())
                {
                    html.Raw($"<li><span class=\"{SheetPicture.ClassOf(number)}\"></span>").Element("span", SheetsText.Legend(number + 1, name, count)).Raw("</li>");
                }

                html.Raw("</ul>\n");
            }
        }

        html.Raw("</body>\n</html>\n");
        return Encoding.UTF8.GetBytes(html.ToString());
    }

    private const string Style =
        """
        body{font-family:sans-serif;margin:2em auto;max-width:75em;padding:0 1em;color:#1a1a1a}
        svg{width:100%}
        .sheet{fill:#f4f4f4;stroke:#888}
        .p0,.p1,.p2,.p3,.p4,.p5{stroke:#1a1a1a;stroke-width:.8;fill-rule:evenodd}
        .p0{fill:#c9d6e2;background:#c9d6e2}
        .p1{fill:#f2dfb8;background:#f2dfb8}
        .p2{fill:#cfe5c9;background:#cfe5c9}
        .p3{fill:#ead0e4;background:#ead0e4}
        .p4{fill:#d9d9d9;background:#d9d9d9}
        .p5{fill:#f3cdc4;background:#f3cdc4}
        .bend{fill:none;stroke:#2255aa;stroke-width:.8;stroke-dasharray:5 3}
        text{text-anchor:middle;dominant-baseline:central;fill:#1a1a1a}
        .legend{list-style:none;padding:0}
        .legend span:first-child{display:inline-block;width:1.2em;height:1.2em;border:1px solid #1a1a1a;margin-right:.5em;vertical-align:middle}
        .used{stroke:#b00;stroke-dasharray:12 6;stroke-width:2}
        .unlaid{color:#b00}

        """;
}
