using BracketGen.Design.Part;
using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Geometry;
using BracketGen.Units;
using BracketGen.Words.Line;

namespace BracketGen.Line.Nesting;

/// <summary>The cut file of a filled sheet.</summary>
public static class SheetDxf
{
    /// <summary>The edge of the sheet, to lay the sheet by; not cut.</summary>
    public static readonly DxfLayer SheetEdge = new("SHEET_EDGE", 8, 18);

    /// <summary>The drawing.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="brackets">The bracket of every piece by its name.</param>
    /// <param name="title">Line at the head of the file.</param>
    /// <param name="units">Unit of the file.</param>
    public static DxfDrawing Compose(LaidSheet sheet, IReadOnlyDictionary<string, Bracket> brackets, string title, UnitSystem units)
    {
        var edge = Contour.Polygon([new(0, 0), new(sheet.Length, 0), new(sheet.Length, sheet.Width), new(0, sheet.Width)]);
        List<DxfEntity> entities = [RegionEntities.Of(edge, SheetEdge)];
        foreach (var laid in sheet.Laid)
        {
            var flat = brackets[laid.Piece.Name].Flat;
            entities.AddRange(RegionEntities.Of(flat.Blank.Rotate(laid.Turn).Shift(laid.Shift), DxfLayers.CutThrough));
            foreach (var bend in flat.Bends)
            {
                var (start, end) = bend.CentreLine;
                entities.Add(new DxfLine(DxfLayers.FoldLine, start.Vector.Rotate(laid.Turn) + laid.Shift, end.Vector.Rotate(laid.Turn) + laid.Shift));
            }
        }

        return new(
            units == UnitSystem.Inch ? DxfUnits.Inches : DxfUnits.Millimetres, [.. DxfLayers.All, SheetEdge], entities,
            string.Join('\n',
            [
                title,
                .. SheetsText.FileNotes(sheet.Length, sheet.Width, [.. sheet.Laid.Select(l => l.Piece.Name)], units),
            ]));
    }
}
