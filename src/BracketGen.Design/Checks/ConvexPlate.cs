using BracketGen.Geometry;
using BracketGen.SheetMetal;

namespace BracketGen.Design;

/// <summary>A flat flange in space, as the convex plate around it.</summary>
internal static class ConvexPlate
{
    /// <summary>Signed distance (mm) from the convex plate that holds a flange of the folded sheet.</summary>
    public static ConvexDistance Around(FoldedSheet sheet, int flange)
    {
        var corners = sheet.Flat.FlangeRegion(flange).Outline.Flatten(0.1).Select(p => new Disc(p, 0)).ToList();
        Vector2[] hull = [.. TangentOutline.Around(corners).Segments.Select(s => s.Start)];
        var frame = sheet.Flanges[flange];
        var half = sheet.Flat.Thickness / 2;
        return point =>
        {
            var local = frame.ToLocal(point);
            return MovingParts.Prism(Distance(hull, local.XY), local.Z - half, half);
        };
    }

    // Signed distance (mm) from a convex polygon, counter-clockwise: a point is inside where it lies to the left of every edge.
    private static double Distance(Vector2[] hull, Vector2 point)
    {
        var (inside, square) = (true, double.PositiveInfinity);
        var start = hull[^1];
        foreach (var end in hull)
        {
            Vector2 along = end - start, from = point - start;
            inside &= along.Cross(from) >= 0;
            var rest = from - Math.Clamp(from.Dot(along) / along.Dot(along), 0, 1) * along;
            square = Math.Min(square, rest.Dot(rest));
            start = end;
        }

        return inside ? -Math.Sqrt(square) : Math.Sqrt(square);
    }
}
