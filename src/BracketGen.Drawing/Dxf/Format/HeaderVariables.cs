using BracketGen.Drawing.Dxf.Model;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Dxf.Format;

/// <summary>Header variables that both releases share.</summary>
internal static class HeaderVariables
{
    public static void Extents(GroupCodeWriter groups, DxfDrawing drawing, Scale scale)
    {
        var bounds = drawing.Bounds;
        Point3(groups, "$INSBASE", Vector2.Zero);
        Point3(groups, "$EXTMIN", scale.Of(bounds.Min));
        Point3(groups, "$EXTMAX", scale.Of(bounds.Max));
        Point(groups, "$LIMMIN", scale.Of(bounds.Min));
        Point(groups, "$LIMMAX", scale.Of(bounds.Max));
    }

    public static void Integer(GroupCodeWriter groups, string name, int value)
    {
        groups.Text(9, name);
        groups.Integer(70, value);
    }

    private static void Point(GroupCodeWriter groups, string name, Vector2 value)
    {
        groups.Text(9, name);
        groups.Point(10, value);
    }

    private static void Point3(GroupCodeWriter groups, string name, Vector2 value)
    {
        groups.Text(9, name);
        groups.Point3(10, value);
    }
}
