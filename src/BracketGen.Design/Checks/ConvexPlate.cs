using BracketGen.Geometry;
using BracketGen.SheetMetal.Patterns;

namespace BracketGen.Design.Checks;

/// <summary>A flat flange in space, as the convex plate around it.</summary>
internal static class ConvexPlate
{
    /// <summary>Signed distance (mm) from the convex plate that holds a flange of the folded sheet.</summary>
    public static ConvexDistance Around(FoldedSheet sheet, int flange)
    {
        var corners = sheet.Flat.FlangeRegion(flange).Outline.Flatten(0.1).Select(p => new Disc(p, 0)).ToList();
        var hull = new Region(TangentOutline.Around(corners), []);
        var frame = sheet.Flanges[flange];
        var half = sheet.Flat.Thickness / 2;
        return point =>
        {
            var local = frame.ToLocal(point.Vector);
            return MovingParts.Prism(-hull.DepthOf(local.XY), local.Z - half, half);
        };
    }
}
