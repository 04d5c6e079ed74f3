using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>The numbers that nobody gave or measured, with how many checks rest on each.</summary>
internal static class AssumedSection
{
    public static bool Has(ReportScene scene) => AssumedText.Of(scene.Solution).Count > 0;

    public static void Write(HtmlWriter html, ReportScene scene)
    {
        html.Line("p", AssumedText.Intro);
        using var list = html.Open("ul");
        foreach (var line in AssumedText.Of(scene.Solution))
        {
            html.Line("li", line);
        }
    }
}
