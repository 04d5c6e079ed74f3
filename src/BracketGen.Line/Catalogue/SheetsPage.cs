using System.Globalization;
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

            for (var i = 0; i < nest.Nest.Sheets.Length; i++)
            {
                var sheet = nest.Nest.Sheets[i];
                html.Element("h3", SheetsText.Sheet(
                    SheetFiles.NameOf(nest, i, units), sheet.Laid.Length, sheet.Used(nest.Nest.Border), sheet.Length, units));
                html.Raw(Picture(sheet, nest.Nest.Border));
            }
        }

        html.Raw("</body>\n</html>\n");
        return Encoding.UTF8.GetBytes(html.ToString());
    }

    private static string Picture(LaidSheet sheet, double border)
    {
        var svg = new StringBuilder(Text($"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"-2 -2 {sheet.Length + 4:0.##} {sheet.Width + 4:0.##}\">"));
        svg.Append(Text($"<rect class=\"sheet\" width=\"{sheet.Length:0.##}\" height=\"{sheet.Width:0.##}\"/>"));
        svg.Append(Text($"<path class=\"used\" d=\"M{sheet.Used(border):0.##} 0V{sheet.Width:0.##}\"/>"));
        svg.Append("<path class=\"piece\" d=\"");
        foreach (var laid in sheet.Laid)
        {
            var points = laid.Outline.Flatten(0.3);
            for (var i = 0; i < points.Length; i++)
            {
                svg.Append(i == 0 ? 'M' : 'L').Append(Text($"{points[i].X:0.#} {sheet.Width - points[i].Y:0.#}"));
            }

            svg.Append('Z');
        }

        return svg.Append("\"/></svg>\n").ToString();
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private const string Style =
        """
        body{font-family:sans-serif;margin:2em auto;max-width:75em;padding:0 1em;color:#1a1a1a}
        svg{width:100%}
        .sheet{fill:#f4f4f4;stroke:#888}
        .piece{fill:#c9d6e2;stroke:#1a1a1a;stroke-width:.8}
        .used{stroke:#b00;stroke-dasharray:12 6;stroke-width:2}
        .unlaid{color:#b00}

        """;
}
