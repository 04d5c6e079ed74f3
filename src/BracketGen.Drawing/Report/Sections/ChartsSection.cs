using BracketGen.Drawing.Report.Charts;
using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>What the whole mechanism does over the sweep: its numbers, then the charts.</summary>
internal static class ChartsSection
{
    public static void Write(HtmlWriter html, ReportScene scene)
    {
        if (scene.Solution.Mechanism is { } mechanism)
        {
            if (mechanism.Loaded is null)
            {
                html.Line("p", MechanismFacts.NoForces);
            }

            HtmlTable.Facts(html, MechanismFacts.Of(scene.Solution, mechanism));
        }

        using var charts = html.Open("div", ("class", "charts"));
        foreach (var chart in JobCharts.Of(scene))
        {
            ChartFigure.Write(html, chart);
        }
    }
}
