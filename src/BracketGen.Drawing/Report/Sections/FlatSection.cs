using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Design.Study;
using BracketGen.Drawing.Measuring;
using BracketGen.Drawing.Report.Html;
using BracketGen.Drawing.Report.Pictures;
using BracketGen.Drawing.Report.Scene;
using BracketGen.Drawing.ShopDrawing;
using BracketGen.Geometry;
using BracketGen.Mechanism;
using BracketGen.SheetMetal;

namespace BracketGen.Drawing.Report.Sections;

/// <summary>The flat pattern as a picture, with the drawing's tables of bends and holes.</summary>
internal static class FlatSection
{
    public static void Write(HtmlWriter html, ReportScene scene)
    {
        var bracket = scene.Solution.Bracket!;
        var bounds = bracket.Flat.Blank.Outline.Bounds;
        using (html.Open("figure", ("class", "flat")))
        {
            FlatSvg.Write(html, scene, bracket);
            html.Line("figcaption", $"Seen from the side away from the mount face; {scene.Length(bounds.Width)} x {scene.Length(bounds.Height)}. The drawing and the cut file hold; this picture is for looking.");
        }

        HtmlTable.Facts(html,
        [
            new("Material", $"{bracket.Stock.Material.Designation}, {scene.Length(bracket.Stock.Thickness)}"),
            new("Mass", scene.Mass(bracket.Mass), "bare"),
            new("Cut length", scene.Length(bracket.Flat.Blank.CutLength), "outline and holes"),
            new("Seat of the outer", bracket.SeatOnTop ? "the side seen" : "the far side", "in the flat pattern"),
        ]);
        if (!bracket.Flat.Bends.IsEmpty)
        {
            var (heads, rows) = PartTables.Bends(bracket, scene.Value);
            HtmlTable.Write(html, $"Bends, lengths in {scene.Value.UnitName}", heads, rows, [2, 4]);
            html.Line("p", "Up is towards the eye. Bend a test strip first.", ("class", "meaning"));
        }

        HtmlTable.Write(
            html, $"Holes, from the lower left corner, in {scene.Value.UnitName}", PartTables.HoleHeads,
            PartTables.Holes(bracket, scene.Job.Vehicle.Cable.OuterEnd, scene.Value), [1, 2]);
    }
}
