using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Words.Results;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>The vehicle's other cables: what becomes of each, what is lost, and how to lay it by.</summary>
internal static class CablesSection
{
    public static void Write(HtmlWriter html, ReportScene scene)
    {
        var job = scene.Job;
        html.Line("p", OtherCableText.Intro(job));
        foreach (var cable in job.Vehicle.OtherCables)
        {
            html.Line("h3", OtherCableText.Which(cable));
            html.Line("p", OtherCableText.Account(job, cable));
            if (OtherCableText.Steps(job, cable).ToList() is not { Count: > 0 } steps)
            {
                continue;
            }

            html.Line("p", OtherCableText.HowTo(job, cable));
            using var list = html.Open("ol");
            foreach (var step in steps)
            {
                html.Line("li", step);
            }
        }
    }
}
