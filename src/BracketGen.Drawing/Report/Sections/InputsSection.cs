using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Words.Report;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>Every input that the answer rests on, with how well it is known.</summary>
internal static class InputsSection
{
    public static void Write(HtmlWriter html, ReportScene scene)
    {
        html.Line("p", JobInputs.Intro);
        using var tables = html.Open("div", ("class", "inputs"));
        foreach (var (heading, rows) in new JobInputs(scene.Solution).All())
        {
            HtmlTable.Write(html, heading, JobInputs.Heads, rows.Select(r => (IReadOnlyList<string>)[r.Name, r.Value, r.PlusMinus]), []);
        }
    }
}
