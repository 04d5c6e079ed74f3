using System.Collections.Immutable;
using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;

namespace BracketGen.Design.Checks;

/// <summary>The space that quadrant and end fitting sweep between the two stops, as convex pieces.</summary>
/// <remarks>
/// The grooved sector is taken as a sector of its outer radius from just before the pocket to the groove's end, swept through
/// the rotation; the rest of the quadrant as its hub; the fitting as a ball carried along the groove. Throttle frame, mm.
/// </remarks>
public sealed class MovingParts
{
    private const int FittingSteps = 12;

    /// <summary>The space swept by <paramref name="quadrant"/> (opening counter-clockwise) with <paramref name="fitting"/> in its pocket.</summary>
    /// <param name="quadrant">The quadrant.</param>
    /// <param name="fitting">The end fitting.</param>
    /// <param name="runsBack">Whether the groove runs against the opening from its pocket, as one whose wire is drawn does.</param>
    /// <param name="z">Height of its middle plane (mm).</param>
    public MovingParts(Quadrant quadrant, EndFitting fitting, bool runsBack = false, double z = 0)
    {
        // The metal round the pocket reaches a fitting's radius past its centre.
        var before = Math.Asin(Math.Min(1, fitting.ReachRadius / quadrant.OuterRadius));
        double pocket = quadrant.Pocket.Value.Radians, extent = quadrant.GrooveExtent.Radians;
        double from = pocket - (runsBack ? extent : before), to = pocket + (runsBack ? before : extent) + quadrant.Rotation.Value.Radians;
        var half = quadrant.Thickness / 2;
        Solids =
        [
            .. SectorsOf(from, to).Select(s => ConvexSolid.Sector(s.From, s.To, quadrant.OuterRadius, half)),
            ConvexSolid.Cylinder(new(0, 0, -half), new(0, 0, half), quadrant.HubRadius),
            .. FittingRods(quadrant, fitting).Select(r => r.Solid),
        ];
        Pieces =
        [
            .. Sectors(from, to, quadrant.OuterRadius, half),
            point => Prism(point.XY.Length - quadrant.HubRadius, point.Z, half),
            .. FittingRods(quadrant, fitting).Select(r => r.Distance),
        ];
        if (z != 0)
        {
            Vector3 by = new(0, 0, z);
            Solids = [.. Solids.Select(s => s.Shifted(by))];
            Pieces = [.. Pieces.Select(p => (ConvexDistance)(point => p(point - by)))];
        }
    }

    private MovingParts(IReadOnlyList<MovingParts> parts) =>
        (Solids, Pieces) = ([.. parts.SelectMany(p => p.Solids)], [.. parts.SelectMany(p => p.Pieces)]);

    /// <summary>The whole quadrant of a body with all its grooves, and the end fittings in them.</summary>
    /// <param name="job">The job, opening counter-clockwise.</param>
    public static MovingParts Of(Job job)
    {
        var (body, fitting) = (job.Body, job.Vehicle.Cable.Fitting);
        MovingParts first = new(body.Quadrant, fitting);
        return body.OtherGrooves.IsEmpty ? first : new(
            [first, .. body.OtherGrooves.Select(g => new MovingParts(g.Quadrant, OtherCableWire.In(job, g)?.Cable?.Fitting ?? fitting, g.Draws, g.Z))]);
    }

    /// <summary>Convex pieces whose union is the swept space, as distances.</summary>
    public ImmutableArray<ConvexDistance> Pieces { get; }

    /// <summary>The same pieces as solids.</summary>
    public ImmutableArray<ConvexSolid> Solids { get; }

    /// <summary>Signed distance (mm) of a point from the swept space, negative inside.</summary>
    public double DistanceTo(ThrottlePoint point)
    {
        var least = double.PositiveInfinity;
        foreach (var piece in Pieces)
        {
            least = Math.Min(least, piece(point));
        }

        return least;
    }

    // A sector is convex up to half a turn; a whole turn is a disc.
    private static IEnumerable<(Angle From, Angle To)> SectorsOf(double from, double to)
    {
        var count = to - from >= 2 * Math.PI ? 1 : (int)Math.Ceiling((to - from) / Math.PI);
        return Enumerable.Range(0, count).Select(i => (new Angle(from + i * (to - from) / count), new Angle(from + (i + 1) * (to - from) / count)));
    }

    private static IEnumerable<ConvexDistance> Sectors(double from, double to, double radius, double half)
    {
        foreach (var (first, last) in SectorsOf(from, to))
        {
            var aperture = (last - first).Radians / 2;
            if (aperture >= Math.PI)
            {
                yield return point => Prism(point.XY.Length - radius, point.Z, half);
                continue;
            }

            var middle = first + new Angle(aperture);
            var edge = Vector2.FromPolar(1, new(aperture));
            yield return point => Prism(SectorDistance(point.XY.Rotate(-middle), edge, radius), point.Z, half);
        }
    }

    private static IEnumerable<Rod> FittingRods(Quadrant quadrant, EndFitting fitting)
    {
        // A chain of capsules, wide enough to hold the arc between its joints as well.
        var step = new Angle(quadrant.Rotation.Value.Radians / FittingSteps);
        var sagitta = quadrant.FittingAt(Angle.Zero).Length * (1 - Math.Cos(step.Radians / 2));
        return Enumerable.Range(0, FittingSteps).Select(i => new Rod(
            new(Vector3.From(quadrant.FittingAt(i * step))), new(Vector3.From(quadrant.FittingAt((i + 1) * step))), fitting.ReachRadius + sagitta));
    }

    /// <summary>Distance (mm) of a point from a straight line's part.</summary>
    internal static double SegmentDistance(ThrottlePoint point, ThrottlePoint from, ThrottlePoint to)
    {
        var along = to - from;
        if (along == Vector3.Zero)
        {
            return point.DistanceTo(from);
        }

        var fraction = Math.Clamp((point - from).Dot(along) / along.Dot(along), 0, 1);
        return point.DistanceTo(from + fraction * along);
    }

    /// <summary>Signed distance (mm) of a prism square to z from that of its section and its half height.</summary>
    internal static double Prism(double across, double z, double half)
    {
        var along = Math.Abs(z) - half;
        return across > 0 && along > 0 ? Math.Sqrt(across * across + along * along) : Math.Max(across, along);
    }

    // Signed distance of a circular sector about the x axis, by symmetry of its upper half.
    private static double SectorDistance(Vector2 point, Vector2 edge, double radius)
    {
        var upper = new Vector2(point.X, Math.Abs(point.Y));
        var toEdge = upper.DistanceTo(Math.Clamp(upper.Dot(edge), 0, radius) * edge);
        return Math.Max(point.Length - radius, edge.Cross(upper) > 0 ? toEdge : -toEdge);
    }
}
