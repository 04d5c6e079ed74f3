using BracketGen.Design.Inputs;
using BracketGen.Drawing.Report.Html;
using BracketGen.SheetMetal;
using BracketGen.Words.Checks;

namespace BracketGen.Drawing.Report;

/// <summary>Title of the page and its list of contents.</summary>
internal static class PageHeader
{
    public static void Write(HtmlWriter html, ReportScene scene, IReadOnlyList<ReportSection> sections)
    {
        var job = scene.Job;
        using var header = html.Open("header", ("class", "top"));
        html.Line("p", job.Shop.Name, ("class", "shop"));
        html.Line("h1", job.Document.Title.Trim() is { Length: > 0 } title ? title : "Throttle cable bracket");
        html.Line("p", $"{job.Vehicle.Name}, throttle body {job.Body.Name}", ("class", "subject"));
        if (PageFooter.Identity(job.Document) is { Length: > 0 } identity)
        {
            html.Line("p", identity, ("class", "identity"));
        }

        using var contents = html.Open("nav", ("aria-label", "Contents"));
        using var list = html.Open("ul");
        foreach (var section in sections)
        {
            using var item = html.Open("li");
            html.Line("a", section.Heading, ("href", "#" + section.Id));
        }
    }
}
