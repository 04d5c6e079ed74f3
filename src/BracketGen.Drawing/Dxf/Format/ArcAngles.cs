using BracketGen.Drawing.Dxf.Model;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Dxf.Format;

/// <summary>Start and end of an ARC entity.</summary>
internal static class ArcAngles
{
    /// <summary>The format knows counter-clockwise arcs only, in degrees from 0 to 360.</summary>
    public static void Write(GroupCodeWriter groups, DxfArc arc)
    {
        var (from, to) = arc.Sweep.Radians > 0 ? (arc.From, arc.From + arc.Sweep) : (arc.From + arc.Sweep, arc.From);
        groups.Real(50, Positive(from));
        groups.Real(51, Positive(to));
    }

    private static double Positive(Angle angle)
    {
        var degrees = angle.Normalised.Degrees;
        return degrees < 0 ? degrees + 360 : degrees;
    }
}
