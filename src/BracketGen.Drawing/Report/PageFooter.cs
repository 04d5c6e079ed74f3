using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Report;

/// <summary>Which part, which revision, which program.</summary>
internal static class PageFooter
{
    /// <summary>Version of the program.</summary>
    public static string ProgramVersion { get; } = typeof(PageFooter).Assembly.GetName().Version?.ToString(3) ?? "";

    public static void Write(HtmlWriter html, ReportScene scene)
    {
        using var footer = html.Open("footer");
        if (scene.Tried is not null)
        {
            html.Line("p", TrialHeadings.WrittenBy(ProgramVersion));
            return;
        }

        if (PageText.Identity(scene.Job.Document) is { Length: > 0 } identity)
        {
            html.Line("p", identity);
        }

        html.Line("p", PageText.WrittenBy(scene.Job.Document, ProgramVersion));
    }
}
