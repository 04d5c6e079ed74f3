using System.Globalization;
using BracketGen.Drawing.Report.Html;
using BracketGen.Geometry;
using BracketGen.Units;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Report.Charts;

/// <summary>A chart as a figure: the picture, its key, and its values as a table.</summary>
internal static class ChartFigure
{
    private const double Width = 360, Height = 230, Left = 44, Right = 348, Top = 30, Bottom = 190;

    /// <summary>About so many rows has the table: enough to read off between them.</summary>
    private const int Rows = 24;

    public static void Write(HtmlWriter html, Chart chart)
    {
        var title = $"chart-{chart.Id}-title";
        using var figure = html.Open("figure", ("class", "chart"), ("id", "chart-" + chart.Id), ("aria-labelledby", title));
        html.Line("h3", chart.Words.Title, ("id", title));
        html.Line("p", chart.Words.Remark);

        var x = Ticks.Over(chart.At.Min() * chart.X.AxisUnit.Factor, chart.At.Max() * chart.X.AxisUnit.Factor, 6);
        var y = Range(chart);
        Picture(html, chart, x, y);
        Key(html, chart);
        html.Line("p", "", ("class", "readout"), ("aria-hidden", "true"), ("hidden", ""));
        using var details = html.Open("details");
        html.Line("summary", ChartText.Values(chart.Words.Title));
        Table(html, chart, x);
    }

    /// <summary>Where an abscissa (internal unit) lies in the picture.</summary>
    internal static double Across(Chart chart, Ticks x, double at) =>
        Left + (at * chart.X.AxisUnit.Factor - x.Low) / (x.High - x.Low) * (Right - Left);

    private static Ticks Range(Chart chart)
    {
        var all = chart.Series.SelectMany(s => s.Values).Concat(chart.Levels.Select(l => l.Value))
            .Where(double.IsFinite).Select(v => v * chart.Y.AxisUnit.Factor).DefaultIfEmpty(0).ToList();

        // From zero, or a curve that hardly moves looks like a steep one.
        return Ticks.Over(Math.Min(0, all.Min()), Math.Max(0, all.Max()), 4);
    }

    private static void Picture(HtmlWriter html, Chart chart, Ticks x, Ticks y)
    {
        double Up(double value) => Bottom - (value * chart.Y.AxisUnit.Factor - y.Low) / (y.High - y.Low) * (Bottom - Top);
        string N(double value) => PathData.Number(value);
        using var svg = html.Open(
            "svg", ("viewBox", $"0 0 {N(Width)} {N(Height)}"), ("role", "img"), ("aria-label", Spoken(chart)));
        var grid = new PathData();
        foreach (var value in x.Values)
        {
            var at = Left + (value - x.Low) / (x.High - x.Low) * (Right - Left);
            grid.MoveTo(new(at, Top)).LineTo(new(at, Bottom));
            html.Line("text", Tick(value, x), ("class", "tick"), ("x", N(at)), ("y", N(Bottom + 14)), ("text-anchor", "middle"));
        }

        foreach (var value in y.Values)
        {
            var at = Bottom - (value - y.Low) / (y.High - y.Low) * (Bottom - Top);
            grid.MoveTo(new(Left, at)).LineTo(new(Right, at));
            html.Line("text", Tick(value, y), ("class", "tick"), ("x", N(Left - 5)), ("y", N(at + 4)), ("text-anchor", "end"));
        }

        html.Void("path", ("class", "grid"), ("d", grid.ToString()));
        var zero = Math.Clamp(Up(0), Top, Bottom);
        html.Void("path", ("class", "axis"), ("d", new PathData().MoveTo(new(Left, Top)).LineTo(new(Left, Bottom)).MoveTo(new(Left, zero)).LineTo(new(Right, zero)).ToString()));
        html.Line("text", chart.Y.Label, ("class", "title"), ("x", "2"), ("y", N(Top - 14)));
        html.Line("text", chart.X.Label, ("class", "title"), ("x", N(Right)), ("y", N(Bottom + 32)), ("text-anchor", "end"));
        foreach (var (level, i) in chart.Levels.Select((l, i) => (l, i)))
        {
            html.Void("path", ("class", $"level l{i + 1}"), ("d", new PathData().MoveTo(new(Left, Up(level.Value))).LineTo(new(Right, Up(level.Value))).ToString()));
        }

        // The first curve last, on top of the others.
        foreach (var (series, i) in chart.Series.Select((s, i) => (s, i)).Reverse())
        {
            var path = new PathData();
            var pen = false;
            for (var k = 0; k < chart.At.Count; k++)
            {
                if (!double.IsFinite(series.Values[k]))
                {
                    pen = false;
                    continue;
                }

                Vector2 p = new(Across(chart, x, chart.At[k]), Up(series.Values[k]));
                _ = pen ? path.LineTo(p) : path.MoveTo(p);
                pen = true;
            }

            html.Void("path", ("class", $"curve c{i + 1}"), ("d", path.ToString()));
        }

        html.Void("path", ("class", "reader"), ("d", $"M0 {N(Top)}V{N(Bottom)}"), ("visibility", "hidden"));
    }

    private static void Key(HtmlWriter html, Chart chart)
    {
        using var list = html.Open("ul", ("class", "key"));
        foreach (var (name, style) in chart.Series.Select((s, i) => (s.Name, $"curve c{i + 1}"))
            .Concat(chart.Levels.Select((l, i) => ($"{l.Name}: {chart.Y.AxisUnit.Text(l.Value)}", $"level l{i + 1}"))))
        {
            using var item = html.Open("li");
            using (html.Open("svg", ("viewBox", "0 0 28 8"), ("aria-hidden", "true")))
            {
                html.Void("path", ("class", style), ("d", "M0 4H28"));
            }

            html.Text(name);
        }
    }

    private static void Table(HtmlWriter html, Chart chart, Ticks x)
    {
        using var frame = html.Open("div", ("class", "scroll"), ("tabindex", "0"), ("role", "region"), ("aria-label", ChartText.TableName(chart.Words.Title)));
        using var table = html.Open("table", ("class", "values"));
        html.Line("caption", chart.Words.Title);
        using (html.Open("thead"))
        {
            using var row = html.Open("tr");
            html.Line("th", chart.X.Label, ("scope", "col"), ("class", "n"));
            foreach (var series in chart.Series)
            {
                html.Line("th", $"{series.Name}, {chart.Y.AxisUnit.Unit}", ("scope", "col"), ("class", "n"));
            }
        }

        using var body = html.Open("tbody");
        var step = Math.Max(1, (chart.At.Count - 1) / Rows);
        foreach (var k in Enumerable.Range(0, chart.At.Count).Where(i => i % step == 0 || i == chart.At.Count - 1))
        {
            using var row = html.Open("tr", ("data-x", PathData.Number(Across(chart, x, chart.At[k]))));
            html.Line("th", chart.X.AxisUnit.Bare(chart.At[k]), ("scope", "row"), ("class", "n"));
            foreach (var series in chart.Series)
            {
                html.Line("td", chart.Y.AxisUnit.Bare(series.Values[k]), ("class", "n"));
            }
        }
    }

    private static string Spoken(Chart chart)
    {
        var (x, y) = (chart.X.AxisUnit, chart.Y.AxisUnit);
        var series = chart.Series.Select(s =>
        {
            var known = s.Values.Where(double.IsFinite).ToList();
            return known.Count == 0
                ? ChartText.SpokenUnknown(s.Name)
                : ChartText.SpokenSeries(s.Name, y.Text(known[0]), y.Text(known[^1]), y.Text(known.Min()), y.Text(known.Max()));
        });
        return ChartText.Spoken(chart.Words.Title, series, chart.X.Title, x.Text(chart.At[0]), x.Text(chart.At[^1]));
    }

    private static string Tick(double value, Ticks ticks) =>
        UnitSystems.Decimals(value, "F" + ticks.Decimals.ToString(CultureInfo.InvariantCulture));
}
