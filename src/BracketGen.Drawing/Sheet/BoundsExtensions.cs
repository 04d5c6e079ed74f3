using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>Questions about upright rectangles that only a sheet asks.</summary>
internal static class BoundsExtensions
{
    public static bool Touches(this Bounds a, Bounds b) =>
        a.Min.X <= b.Max.X && b.Min.X <= a.Max.X && a.Min.Y <= b.Max.Y && b.Min.Y <= a.Max.Y;

    public static bool Holds(this Bounds outer, Bounds inner) =>
        inner.Min.X >= outer.Min.X && inner.Max.X <= outer.Max.X && inner.Min.Y >= outer.Min.Y && inner.Max.Y <= outer.Max.Y;
}
