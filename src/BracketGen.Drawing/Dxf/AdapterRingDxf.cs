using BracketGen.Design.Inputs;
using BracketGen.Design.Part;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.SheetMetal.Patterns;
using BracketGen.Units;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.Dxf;

/// <summary>The cut file of an adapter ring: contours to cut, and a mark.</summary>
public static class AdapterRingDxf
{
    /// <summary>The drawing of a ring, seen from the side that the bracket lies on, its lower left corner at the origin.</summary>
    /// <param name="shape">The ring.</param>
    /// <param name="job">Its job: units and part number.</param>
    /// <param name="warnings">Lines for the head of the file.</param>
    public static DxfDrawing Compose(RingShape shape, Job job, IReadOnlyList<string> warnings)
    {
        var blank = shape.Blank.Shift(-shape.Blank.Outline.Bounds.Min);
        var label = string.Concat($"{RingText.PartNumber(job.Document)} {job.Document.Revision}".Where(StrokeFont.Knows)).Trim();
        var marks = MarkPlace.For(label, new FlatPattern { Blank = blank, Thickness = shape.Ring.Thickness, Bends = [] }) is { } at
            ? StrokeText.Of(label, at.At.Vector, at.Height, at.Along, DxfLayers.SurfaceMark)
            : [];
        return new(
            job.Units == UnitSystem.Inch ? DxfUnits.Inches : DxfUnits.Millimetres, DxfLayers.All,
            [.. RegionEntities.Of(blank, DxfLayers.CutThrough), .. marks],
            string.Join('\n', [.. RingText.CutFileHead(shape, job.Document, job.Units), .. warnings]));
    }
}
