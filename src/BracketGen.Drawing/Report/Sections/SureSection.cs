using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Mechanism.Uncertainty;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>How sure the answer is, with everything measured only as well as it was.</summary>
internal static class SureSection
{
    /// <summary>Smaller parts of the spread are not worth a line.</summary>
    private const double LeastShare = 0.005;

    public static void Write(HtmlWriter html, ReportScene scene)
    {
        var mechanism = scene.Solution.Mechanism!;
        var sure = mechanism.Uncertainty!;
        html.Line("p", SureText.Intro(sure.Run.Count));
        HtmlTable.Write(html, SureText.Probabilities, SureText.ProbabilityHeads, SureText.ProbabilityRows(mechanism, sure), [1, 2]);
        HtmlTable.Write(html, SureText.Spreads, SureText.SpreadHeads, SureText.SpreadRows(mechanism, sure, scene.Units), [1, 2, 3]);
        if (mechanism.AdjusterRange > 0)
        {
            html.Line("p", SureText.Adjuster(mechanism, sure, scene.Units));
        }

        Ranking(html, sure);
    }

    private static void Ranking(HtmlWriter html, TravelUncertainty sure)
    {
        var contributions = sure.Ranking.Contributions;
        html.Line("h3", SureText.MeasureAgain);
        if (contributions.IsEmpty)
        {
            html.Line("p", SureText.NothingGiven);
            return;
        }

        html.Line("p", SureText.First(sure));
        using var list = html.Open("ol", ("class", "shares"));
        foreach (var c in contributions.Where(c => c.Share >= LeastShare))
        {
            using var item = html.Open("li");
            html.Line("span", c.Name, ("class", "name"));
            html.Line("span", SureText.Share(c.Share, c.MeasuredAgain), ("class", "share"));
            using var bar = html.Open("svg", ("class", "bar"), ("viewBox", "0 0 100 10"), ("preserveAspectRatio", "none"), ("aria-hidden", "true"));
            html.Void("path", ("class", "track"), ("d", "M0 0H100V10H0Z"));
            html.Void("path", ("class", c.MeasuredAgain ? "share" : "tolerance"), ("d", $"M0 2H{PathData.Number(Math.Clamp(100 * c.Share, 0, 100))}V8H0Z"));
        }
    }
}
