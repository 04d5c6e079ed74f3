using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>Every input that the answer rests on, with how well it is known.</summary>
internal static class InputsSection
{
    public static void Write(HtmlWriter html, ReportScene scene)
    {
        html.Line("p", "As the profiles gave it. A figure that is wrong here is wrong everywhere above.");
        using var tables = html.Open("div", ("class", "inputs"));
        foreach (var (heading, rows) in JobInputs.Of(scene))
        {
            HtmlTable.Write(html, heading, ["input", "value", "±"], rows.Select(r => (IReadOnlyList<string>)[r.Name, r.Value, r.PlusMinus]), []);
        }
    }
}
