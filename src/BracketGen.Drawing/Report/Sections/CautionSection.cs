using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Report.Html;
using BracketGen.Units;
using BracketGen.Words;
using BracketGen.Words.Checks;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>The cautions that every report carries, and in large type what is not safe about this job.</summary>
internal static class CautionSection
{
    public static void Write(HtmlWriter html, ReportScene scene)
    {
        foreach (var danger in scene.Solution.Dangers)
        {
            using var box = html.Open("div", ("class", "warning"), ("role", "note"));
            html.Line("p", $"SAFETY CHECK FAILED: {danger.Title()}: {CheckText.Value(danger, scene.Units)} (limit: {CheckText.Limit(danger, scene.Units)})", ("class", "large"));
            html.Line("p", danger.Consequence());
            if (scene.Solution.Bracket is not null)
            {
                html.Line("p", scene.Allowed.Contains(danger.Code)
                    ? "It was accepted by name; whoever did so answers for it. The drawing carries it too."
                    : "The cut file is withheld until it is mended.");
            }
        }

        if (scene.Solution is { Bracket: not null, Strength: null })
        {
            html.Line("p", "Strength was NOT calculated: whether the bracket bends, shakes or cracks is not known.", ("class", "unproven"));
        }

        using var list = html.Open("ul", ("class", "cautions"));
        foreach (var caution in Cautions.All)
        {
            html.Line("li", caution);
        }
    }
}
