using BracketGen.Geometry;
using BracketGen.Mechanism;

namespace BracketGen.Design;

/// <summary>The space that quadrant and end fitting sweep between the two stops.</summary>
/// <remarks>
/// The grooved sector is taken as a sector of its outer radius from just before the pocket to the groove's end, swept through
/// the rotation; the rest of the quadrant as its hub; the fitting as a ball carried along the groove. Throttle frame, mm.
/// Immutable, thread-safe.
/// </remarks>
public sealed class MovingParts
{
    private readonly double _outerRadius, _hubRadius, _halfThickness, _middle, _halfAperture;
    private readonly double _fittingRadius, _fittingReach, _fittingMiddle, _fittingHalf;

    /// <summary>The space swept by <paramref name="quadrant"/> (opening counter-clockwise) with <paramref name="fitting"/> in its pocket.</summary>
    public MovingParts(Quadrant quadrant, EndFitting fitting)
    {
        // The metal round the pocket reaches a fitting's radius past its centre.
        var before = Math.Asin(Math.Min(1, fitting.ReachRadius / quadrant.OuterRadius));
        double from = quadrant.Pocket.Value - before, to = quadrant.Pocket.Value + quadrant.GrooveExtent + quadrant.Rotation.Value;
        _middle = (from + to) / 2;
        _halfAperture = Math.Min(Math.PI, (to - from) / 2);
        _outerRadius = quadrant.OuterRadius;
        _hubRadius = quadrant.HubRadius;
        _halfThickness = quadrant.Thickness / 2;
        _fittingRadius = quadrant.FittingAt(Angle.Zero).Length;
        _fittingReach = fitting.ReachRadius;
        _fittingHalf = quadrant.Rotation.Value / 2;
        _fittingMiddle = quadrant.FittingAt(Angle.Zero).Polar.Radians + _fittingHalf;
    }

    /// <summary>Signed distance (mm) of a point from the swept space, negative inside.</summary>
    public double DistanceTo(Vector3 point)
    {
        var flat = point.XY;
        var across = Math.Min(SectorDistance(flat), flat.Length - _hubRadius);
        var along = Math.Abs(point.Z) - _halfThickness;
        var quadrant = across > 0 && along > 0 ? Math.Sqrt(across * across + along * along) : Math.Max(across, along);
        return Math.Min(quadrant, FittingDistance(point));
    }

    private double SectorDistance(Vector2 point)
    {
        var outside = point.Length - _outerRadius;
        if (_halfAperture >= Math.PI)
        {
            return outside;
        }

        // Signed distance of a circular sector about the x axis, by symmetry of its upper half.
        var turned = point.Rotate(new(-_middle));
        turned = new(turned.X, Math.Abs(turned.Y));
        var edge = Vector2.FromPolar(1, new(_halfAperture));
        var along = Math.Clamp(turned.Dot(edge), 0, _outerRadius);
        var toEdge = turned.DistanceTo(along * edge);
        var side = edge.Cross(turned) > 0 ? 1 : -1;
        return Math.Max(outside, side * toEdge);
    }

    private double FittingDistance(Vector3 point)
    {
        var angle = Math.Clamp(Math.IEEERemainder(point.XY.Polar.Radians - _fittingMiddle, 2 * Math.PI), -_fittingHalf, _fittingHalf);
        var nearest = Vector3.From(Vector2.FromPolar(_fittingRadius, new(_fittingMiddle + angle)));
        return point.DistanceTo(nearest) - _fittingReach;
    }
}
