using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>How views are arranged.</summary>
public enum Projection
{
    /// <summary>First angle: the view from the left stands on the right.</summary>
    FirstAngle,

    /// <summary>Third angle: the view from the left stands on the left.</summary>
    ThirdAngle,
}

/// <summary>The projection symbol, ISO 5456-2: a truncated cone and its view from the left, the smaller end.</summary>
public static class ProjectionSymbol
{
    /// <summary>
    /// The symbol, middle at the origin. Diameters H and 2 H, length 2 H, for the lettering height <paramref name="height"/> (mm); the
    /// proportions are from memory of the standard's annex A.
    /// </summary>
    public static SheetBlock Draw(Projection projection, double height = TextHeight.Normal)
    {
        double h = height, apart = 1.9 * h;
        var side = projection == Projection.FirstAngle ? -1 : 1;
        Vector2 cone = new(side * apart, 0), circles = new(-side * apart, 0);

        // Seen from the left both circles show only if the small end is on the left; so it is under either method.
        ImmutableArray<SheetItem> items =
        [
            new Polyline([cone + new Vector2(-h, -h / 2), cone + new Vector2(h, -h), cone + new Vector2(h, h), cone + new Vector2(-h, h / 2)], true, LineKind.Visible),
            Stroke.Circle(circles, h / 2, LineKind.Visible),
            Stroke.Circle(circles, h, LineKind.Visible),
            new Stroke(cone - new Vector2(1.4 * h, 0), cone + new Vector2(1.4 * h, 0), LineKind.Dimension),
            .. Dimensions.CentreMark(circles, h, 0.4 * h).Cast<Stroke>().Select(s => s with { Kind = LineKind.Dimension }),
        ];
        return SheetBlock.Around(items);
    }
}
