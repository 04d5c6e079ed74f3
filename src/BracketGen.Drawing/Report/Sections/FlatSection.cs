using BracketGen.Design.Part;
using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Pictures;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.SheetMetal.Forming;
using BracketGen.Units;
using BracketGen.Words.Report;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>The flat pattern as a picture, with the drawing's tables of bends and holes.</summary>
internal static class FlatSection
{
    public static void Write(HtmlWriter html, ReportScene scene)
    {
        var bracket = scene.Solution.Bracket!;
        using (html.Open("figure", ("class", "flat")))
        {
            FlatSvg.Write(html, scene.Units, bracket);
            html.Line("figcaption", FlatText.Caption(bracket, scene.Units));
        }

        HtmlTable.Facts(html, FlatText.Facts(bracket, scene.Units));
        if (!bracket.Flat.Bends.IsEmpty)
        {
            HtmlTable.Write(html, FlatText.BendsCaption(scene.Units), PartTableText.BendHeads(bracket.Die is not null), PartTables.Bends(bracket, scene.Value), [2, 3, 5]);
            html.Line("p", FlatText.BendNote, ("class", "meaning"));
        }

        if (bracket.Plan is { Steps.IsEmpty: false } plan)
        {
            Steps(html, scene, bracket, plan);
        }

        HtmlTable.Write(
            html, FlatText.HolesCaption(scene.Units), PartTableText.HoleHeads,
            PartTables.Holes(bracket, scene.Job, scene.Value), [1, 2]);
    }

    /// <summary>The flat pattern of a bracket that is on no job: its picture alone.</summary>
    public static void Alone(HtmlWriter html, Bracket bracket, UnitSystem units)
    {
        using var figure = html.Open("figure", ("class", "flat"));
        FlatSvg.Write(html, units, bracket);
        html.Line("figcaption", FlatText.Caption(bracket, units));
    }

    private static void Steps(HtmlWriter html, ReportScene scene, Bracket bracket, BendPlan plan)
    {
        using (html.Open("div", ("class", "stills")))
        {
            for (var step = 0; step < plan.Steps.Length; step++)
            {
                using var figure = html.Open("figure", ("class", "still"));
                BendSvg.Write(html, plan, step);
                html.Line("figcaption", BendStepText.Step(plan, step));
            }
        }

        int[] all = [.. Enumerable.Range(0, plan.Steps.Length)];
        HtmlTable.Write(html, BendStepText.Title, BendStepText.Heads(plan, all), BendStepText.Rows(bracket, all, scene.Units), []);
        foreach (var note in BendStepText.Notes(bracket, scene.Units))
        {
            html.Line("p", note, ("class", "meaning"));
        }
    }
}
