using BracketGen.Design.Checks;
using BracketGen.Drawing.Report.Charts;
using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Pictures;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Drawing.Sheet;
using BracketGen.Units;
using BracketGen.Words.Report;
using BracketGen.Words.Results;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>Whether the bracket bends, shakes or cracks: loads, factors, frequencies, and where it is stressed.</summary>
internal static class StrengthSection
{
    public static void Write(HtmlWriter html, ReportScene scene)
    {
        if (scene.Solution.Strength is not { } report)
        {
            html.Line("p", StrengthText.NotCalculated);
            return;
        }

        var units = scene.Units;
        HtmlTable.Facts(html, StrengthFacts.Of(report, units));
        HtmlTable.Write(
            html, StrengthFacts.LoadsCaption, StrengthText.LoadHeads, StrengthText.Loads(scene.Solution, report), [1, 2, 3]);
        using (html.Open("div", ("class", "stressed")))
        {
            Stress(html, scene, report);
            Vibration(html, scene, report);
        }

        using (html.Open("ul", ("class", "notes")))
        {
            foreach (var note in StrengthText.Notes(report, units))
            {
                html.Line("li", note);
            }
        }

        Shaking(html, scene, report);
    }

    private static void Shaking(HtmlWriter html, ReportScene scene, StrengthReport report)
    {
        html.Line("h3", ShakingText.Heading);
        using (html.Open("ul", ("class", "notes")))
        {
            IEnumerable<string> notes = report.Shaking is { } shaking ? ShakingText.Notes(shaking, scene.Units) : [report.Ring is null ? ShakingText.NotKnown : ShakingText.NotKnownOnRing];
            foreach (var note in report.FrequencyRule == FrequencyRule.Response ? notes.Prepend(ShakingText.ByResponse) : notes)
            {
                html.Line("li", note);
            }
        }

        if (scene.Job.Body.Engine is not { } engine)
        {
            return;
        }

        using (html.Open("div", ("class", "charts")))
        {
            ChartFigure.Write(html, OrderChart.Of(scene, engine, report));
        }

        var crossings = ShakingText.Crossings(engine, report);
        if (crossings.Count == 0)
        {
            html.Line("p", ShakingText.NoCrossing(engine));
        }
        else
        {
            HtmlTable.Write(html, ShakingText.OrdersTitle, ShakingText.OrderHeads, crossings, [0, 1, 2, 3]);
        }
    }

    private static void Stress(HtmlWriter html, ReportScene scene, StrengthReport report)
    {
        var values = scene.Stresses(report);
        var colours = ValueScale.UpTo(values.Max());
        using var figure = html.Open("figure");
        html.Line("h3", StrengthFacts.StressHeading);
        new FlatValuesSvg(scene, report).Write(
            html, values, colours, StrengthFacts.StressSpoken(report, scene.Units), report.Stamped.At);
        FlatValuesSvg.Scale(html, colours, scene.Units.Symbol(Quantity.Stress));
        html.Line("figcaption", StrengthFacts.StressCaption(scene.Solution.Bracket!.Stock.Material.Yield, scene.Units));
    }

    private static void Vibration(HtmlWriter html, ReportScene scene, StrengthReport report)
    {
        if (report.Modes.IsEmpty)
        {
            return;
        }

        double[] values = [.. report.Modes[0].Shape.Select(s => s.Length)];
        var most = values.Max();
        var colours = new ValueScale(1);
        using var figure = html.Open("figure");
        html.Line("h3", StrengthText.VibrationHeading(report));
        new FlatValuesSvg(scene, report).Write(
            html, [.. values.Select(v => v / most)], colours, StrengthFacts.VibrationSpoken, null);
        FlatValuesSvg.Scale(html, colours, "");
        html.Line("figcaption", StrengthFacts.VibrationCaption);
    }
}
