using BracketGen.Words.Report;

namespace BracketGen.Drawing.Report.Html;

/// <summary>Tables whose heads are tied to their cells, in a frame that scrolls by itself where the screen is narrow.</summary>
internal static class HtmlTable
{
    /// <summary>A table; the first cell of each row is the row's own head.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="caption">What the table is of.</param>
    /// <param name="heads">Heads of the columns.</param>
    /// <param name="rows">Cells, the row's head first.</param>
    /// <param name="numbers">Columns of numbers: set to the right.</param>
    /// <param name="marked">Index of the row that is marked; none where negative.</param>
    public static void Write(
        HtmlWriter html, string caption, IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<string>> rows,
        IReadOnlyCollection<int> numbers, int marked = -1)
    {
        // Focusable, so that the arrow keys scroll it too.
        using var frame = html.Open("div", ("class", "scroll"), ("tabindex", "0"), ("role", "region"), ("aria-label", caption));
        using var table = html.Open("table", ("class", heads.Count > 4 ? "wide" : null));
        html.Line("caption", caption);
        using (html.Open("thead"))
        {
            using var row = html.Open("tr");
            for (var i = 0; i < heads.Count; i++)
            {
                html.Line("th", heads[i], ("scope", "col"), ("class", numbers.Contains(i) ? "n" : null));
            }
        }

        using var body = html.Open("tbody");
        var index = 0;
        foreach (var cells in rows)
        {
            using var row = html.Open("tr", ("class", index++ == marked ? "taken" : null));
            for (var i = 0; i < cells.Count; i++)
            {
                var style = numbers.Contains(i) ? "n" : null;
                if (i == 0)
                {
                    html.Line("th", cells[i], ("scope", "row"), ("class", style));
                }
                else
                {
                    html.Line("td", cells[i], ("class", style));
                }
            }
        }
    }

    /// <summary>Names and values, with a remark where there is one.</summary>
    public static void Facts(HtmlWriter html, IEnumerable<Fact> facts)
    {
        using var list = html.Open("dl", ("class", "facts"));
        foreach (var fact in facts)
        {
            using var one = html.Open("div");
            html.Line("dt", fact.Name);
            html.Line("dd", fact.Value, ("class", "value"));
            if (fact.Remark.Length > 0)
            {
                html.Line("dd", fact.Remark, ("class", "remark"));
            }
        }
    }
}
