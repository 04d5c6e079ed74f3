using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Words.Results;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>What the valve does when one part breaks or comes loose.</summary>
internal static class FailureSection
{
    public static void Write(HtmlWriter html, ReportScene scene)
    {
        html.Line("p", FailureText.Intro);
        HtmlTable.Write(
            html, FailureText.Caption, FailureText.Heads,
            FailureText.Rows(scene.Solution.Mechanism!.Return!, scene.Job.Vehicle.Cable.OuterEnd, scene.Units), [3, 4]);
    }
}
