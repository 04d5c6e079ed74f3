using BracketGen.Design.Study;
using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Words.Results;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>The brackets that pass and are worth offering, with why the first stands first.</summary>
internal static class OffersSection
{
    public static void Write(HtmlWriter html, ReportScene scene)
    {
        var solution = scene.Solution;
        html.Line("p", OfferText.Intro(solution));
        Reasons(html, solution);
        HtmlTable.Write(
            html, OfferText.Title, [.. OfferText.Heads], solution.Offers.Select((o, i) => OfferText.Row(o, i + 1, solution.Job)), [0, 3, 4, 5],
            marked: solution.Choice - 1);
        if (solution.Offers.Length > 1)
        {
            html.Line("p", OfferText.Note(solution), ("class", "meaning"));
        }
    }

    /// <summary>Why the first stands first.</summary>
    public static void Reasons(HtmlWriter html, Solution solution)
    {
        using var list = html.Open("ul");
        foreach (var reason in ReasonText.Of(solution.Reasons, solution.Job, solution.Job.Units))
        {
            html.Line("li", reason);
        }
    }
}
