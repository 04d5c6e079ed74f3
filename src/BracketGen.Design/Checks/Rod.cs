using BracketGen.Geometry;

namespace BracketGen.Design.Checks;

/// <summary>A straight piece of wire, outer or fitting's path with round ends.</summary>
/// <param name="From">One end of its centre line (mm).</param>
/// <param name="To">The other end (mm).</param>
/// <param name="Radius">Its radius (mm).</param>
internal readonly record struct Rod(ThrottlePoint From, ThrottlePoint To, double Radius)
{
    /// <summary>As a solid.</summary>
    public ConvexSolid Solid => ConvexSolid.Rod(From.Vector, To.Vector, Radius);

    /// <summary>As the distance from it.</summary>
    public ConvexDistance Distance
    {
        get
        {
            var (from, to, radius) = this;
            return point => MovingParts.SegmentDistance(point, from, to) - radius;
        }
    }
}
