using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Words.Report;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.Report;

/// <summary>Title of the page and its list of contents.</summary>
internal static class PageHeader
{
    public static void Write(HtmlWriter html, ReportScene scene, IReadOnlyList<ReportSection> sections)
    {
        var job = scene.Job;
        using var header = html.Open("header", ("class", "top"));
        html.Line("p", job.Shop.Name, ("class", "shop"));
        html.Line("h1", scene.Tried is { } tried ? TrialHeadings.Title(tried.Bracket) : PageText.Title(job));
        html.Line("p", DrawingText.Subject(job), ("class", "subject"));
        if (scene.Tried is null && PageText.Identity(job.Document) is { Length: > 0 } identity)
        {
            html.Line("p", identity, ("class", "identity"));
        }

        using var contents = html.Open("nav", ("aria-label", PageText.Contents));
        using var list = html.Open("ul");
        foreach (var section in sections)
        {
            using var item = html.Open("li");
            html.Line("a", section.Heading, ("href", "#" + section.Id));
        }
    }
}
