using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Pictures;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Drawing.ShopDrawing;
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
            FlatSvg.Write(html, scene, bracket);
            html.Line("figcaption", FlatText.Caption(bracket, scene.Units));
        }

        HtmlTable.Facts(html, FlatText.Facts(bracket, scene.Units));
        if (!bracket.Flat.Bends.IsEmpty)
        {
            HtmlTable.Write(html, FlatText.BendsCaption(scene.Units), PartTableText.BendHeads, PartTables.Bends(bracket, scene.Value), [2, 3, 5]);
            html.Line("p", FlatText.BendNote, ("class", "meaning"));
        }

        HtmlTable.Write(
            html, FlatText.HolesCaption(scene.Units), PartTableText.HoleHeads,
            PartTables.Holes(bracket, scene.Job, scene.Value), [1, 2]);
    }
}
