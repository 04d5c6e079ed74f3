using BracketGen.Drawing.Dxf;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Geometry;
using BracketGen.Line.Solving;
using BracketGen.Units;
using BracketGen.Words.Line;

namespace BracketGen.Line.Nesting;

/// <summary>The cut file of a filled sheet.</summary>
public static class SheetDxf
{
    /// <summary>The edge of the sheet, to lay the sheet by; not cut.</summary>
    public static readonly DxfLayer SheetEdge = new("SHEET_EDGE", 8, 18);

    /// <summary>The drawing: every part as its own cut file draws it, with its number and its bend marks, on the same layers.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="parts">The part of every piece by its name.</param>
    /// <param name="title">Line at the head of the file.</param>
    /// <param name="units">Unit of the file.</param>
    public static DxfDrawing Compose(LaidSheet sheet, IReadOnlyDictionary<string, LinePart> parts, string title, UnitSystem units)
    {
        var edge = Contour.Polygon([new(0, 0), new(sheet.Length, 0), new(sheet.Length, sheet.Width), new(0, sheet.Width)]);
        List<DxfEntity> entities = [.. RegionEntities.Of(sheet.Offcut?.Outline ?? new(edge, []), SheetEdge)];
        var drawn = sheet.Laid.Select(l => l.Piece.Name).Distinct().ToDictionary(n => n, n => FlatPatternDxf.Entities(parts[n].Bracket, parts[n].Job));
        foreach (var laid in sheet.Laid)
        {
            // A cut file begins at the corner of its part, a piece where its bracket's flat pattern does.
            var corner = laid.Piece.Outline.Bounds.Min.Rotate(laid.Turn) + laid.Shift;
            entities.AddRange(drawn[laid.Piece.Name].Select(e => e.Moved(laid.Turn, corner)));
        }

        return new(
            units == UnitSystem.Inch ? DxfUnits.Inches : DxfUnits.Millimetres, [.. DxfLayers.All, SheetEdge], entities,
            string.Join('\n',
            [
                title,
                .. SheetsText.FileNotes(sheet.Length, sheet.Width, sheet.Offcut?.Code, [.. sheet.Laid.Select(l => l.Piece.Name)], units),
            ]));
    }
}
