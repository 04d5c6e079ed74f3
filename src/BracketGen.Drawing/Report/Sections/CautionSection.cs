using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Words;
using BracketGen.Words.Checks;
using BracketGen.Words.Report;
using BracketGen.Words.Results;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>The cautions that every report carries, and in large type what is not safe about this job.</summary>
internal static class CautionSection
{
    public static void Write(HtmlWriter html, ReportScene scene)
    {
        foreach (var danger in scene.Solution.Dangers)
        {
            using var box = html.Open("div", ("class", "warning"), ("role", "note"));
            html.Line("p", WarningText.Headline(danger, scene.Units), ("class", "large"));
            html.Line("p", danger.Consequence());
            // Of a bracket that is there already no cut file is made.
            if (scene.Solution.Bracket is not null && scene.Tried is null)
            {
                html.Line("p", ChecksText.CutFile(scene.Allowed.Contains(danger.Code)));
            }
        }

        if (scene.Solution is { Bracket: not null, Strength: null })
        {
            html.Line("p", StrengthText.NotCalculated, ("class", "unproven"));
        }

        using var list = html.Open("ul", ("class", "cautions"));
        foreach (var caution in Cautions.All)
        {
            html.Line("li", caution);
        }
    }
}
