using System.Globalization;
using BracketGen.Design;
using BracketGen.Geometry;
using BracketGen.SheetMetal;

namespace BracketGen.Drawing.Dxf;

/// <summary>The cut file of a bracket: contours to cut, fold lines, and marks.</summary>
public static class FlatPatternDxf
{
    private const double TextHeight = 3, TickLength = 2.5;

    /// <summary>The drawing of a bracket's flat pattern, seen from the top of the sheet, its lower left corner at the origin.</summary>
    /// <param name="bracket">The bracket.</param>
    /// <param name="job">Its job: units and part number.</param>
    /// <param name="warnings">Lines for the head of the file, such as failed safety checks the user allowed.</param>
    public static DxfDrawing Compose(BracketGen.Design.Bracket bracket, Job job, IReadOnlyList<string> warnings)
    {
        var bounds = bracket.Flat.Blank.Outline.Bounds;
        var flat = bracket.Flat.Shift(-bounds.Min);
        var label = string.Concat($"{job.Document.PartNumber} {job.Document.Revision}".Where(StrokeFont.Knows)).Trim();
        List<DxfEntity> entities = [.. RegionEntities.Of(flat.Blank, DxfLayers.CutThrough)];
        foreach (var bend in flat.Bends)
        {
            var (start, end) = bend.CentreLine;
            entities.Add(new DxfLine(DxfLayers.FoldLine, start, end));
            entities.Add(new DxfLine(DxfLayers.SurfaceMark, start, start + TickLength * bend.Along));
            entities.Add(new DxfLine(DxfLayers.SurfaceMark, end, end - TickLength * bend.Along));
        }

        if (RoomFor(label, flat) is { } at)
        {
            entities.AddRange(StrokeText.Of(label, at, TextHeight, Angle.Zero, DxfLayers.SurfaceMark));
        }

        return new(
            job.Units == LengthUnit.Inch ? DxfUnits.Inches : DxfUnits.Millimetres, DxfLayers.All, entities,
            string.Join('\n', Heading(bracket, label).Concat(warnings)));
    }

    private static IEnumerable<string> Heading(BracketGen.Design.Bracket bracket, string label)
    {
        yield return $"Part {label}";
        yield return string.Create(
            CultureInfo.InvariantCulture, $"{bracket.Stock.Material.Designation}, thickness {bracket.Stock.Thickness:0.###} mm");
        yield return "CUT_THROUGH: cut. FOLD_LINE: middle of a bend, do not cut. SURFACE_MARK: engrave or leave out.";
        yield return "Contours are net: kerf not compensated.";
    }

    // The first place, from the left and from below, where the text lies on one flange clear of edges, holes and bends.
    private static Vector2? RoomFor(string label, FlatPattern flat)
    {
        const double clear = 1.5;
        var width = StrokeText.Width(label, TextHeight);
        var bounds = flat.Blank.Outline.Bounds;
        for (var y = bounds.Min.Y + clear; y + TextHeight <= bounds.Max.Y; y += 1.5)
        {
            for (var x = bounds.Min.X + clear; x + width <= bounds.Max.X; x += 3)
            {
                var at = new Vector2(x, y);
                if (Lies(at, width, flat, clear))
                {
                    return at;
                }
            }
        }

        return null;
    }

    private static bool Lies(Vector2 at, double width, FlatPattern flat, double clear)
    {
        var steps = Math.Max(2, (int)Math.Ceiling(width / 2));
        var flange = flat.ZoneOf(at);
        for (var i = 0; i <= steps; i++)
        {
            for (var j = 0; j <= 2; j++)
            {
                var point = at + new Vector2(width * i / steps, TextHeight * j / 2);
                if (flat.ZoneOf(point) is not { Bend: null } zone || zone.Flange != flange.Flange || flat.Blank.DepthOf(point) < clear)
                {
                    return false;
                }
            }
        }

        return true;
    }
}
