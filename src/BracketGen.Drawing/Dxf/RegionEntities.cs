using System.Collections.Immutable;
using BracketGen.Drawing.Dxf.Model;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Dxf;

/// <summary>Turns the contours of a flat piece into entities a machine can cut.</summary>
public static class RegionEntities
{
    // Past three quarters of a turn the chord gets short against the radius and the bulge blows up: two arcs say it better.
    private const double LargestSweep = 1.5 * Math.PI;

    /// <summary>The holes first, in their order, and the outline last, so that the piece stays put until all else is done.</summary>
    /// <exception cref="ArgumentException">A contour has no size.</exception>
    public static ImmutableArray<DxfEntity> Of(Region region, DxfLayer layer) =>
        [.. region.Holes.Append(region.Outline).Select(c => Of(c, layer))];

    /// <summary>
    /// The contour as one closed entity: a circle where it is one, else a polyline whose bulges are its arcs exactly, travelled
    /// the same way. Pieces shorter than <see cref="Tolerance.Point"/> are left out.
    /// </summary>
    /// <exception cref="ArgumentException">The contour has no size.</exception>
    public static DxfEntity Of(Contour contour, DxfLayer layer)
    {
        if (AsCircle(contour) is { } circle)
        {
            return new DxfCircle(layer, circle.Centre, circle.Radius);
        }

        var vertices = ImmutableArray.CreateBuilder<DxfVertex>();
        foreach (var segment in contour.Segments.Where(s => s.Length > Tolerance.Point))
        {
            if (segment is not ArcSegment arc)
            {
                vertices.Add(new(segment.Start));
            }
            else if (arc.Sweep.Magnitude.Radians <= LargestSweep)
            {
                vertices.Add(new(arc.Start, BulgeOf(arc.Sweep)));
            }
            else
            {
                vertices.Add(new(arc.Start, BulgeOf(0.5 * arc.Sweep)));
                vertices.Add(new(arc.PointAt(0.5), BulgeOf(0.5 * arc.Sweep)));
            }
        }

        return new DxfPolyline(layer, vertices.ToImmutable(), closed: true);
    }

    private static double BulgeOf(Angle sweep) => Math.Tan(sweep.Radians / 4);

    private static ArcSegment? AsCircle(Contour contour)
    {
        var arcs = contour.Segments.OfType<ArcSegment>().ToList();
        var first = arcs.FirstOrDefault();
        return arcs.Count == contour.Segments.Length
            && arcs.All(a => a.Centre.DistanceTo(first!.Centre) <= Tolerance.Point
                && Math.Abs(a.Radius - first.Radius) <= Tolerance.Point
                && Math.Sign(a.Sweep.Radians) == Math.Sign(first.Sweep.Radians))
            && Math.Abs(arcs.Sum(a => a.Length) - 2 * Math.PI * first!.Radius) <= Tolerance.Point * (arcs.Count + 1)
                ? first
                : null;
    }
}
