using System.Collections.Immutable;
using BracketGen.Drawing.Solid.Brep;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Tests.Solid;

/// <summary>Volume and areas of a solid from its edges, surfaces and senses alone, without knowing what it is the solid of.</summary>
/// <remarks>
/// The divergence theorem makes the volume a third of the integral of r·n over the faces, Green's theorem makes that integrals along
/// the loops, and on lines and circles these are closed formulae. A loop or face the wrong way round gives a negative area.
/// </remarks>
internal sealed record BrepMeasure(double Volume, ImmutableArray<double> Areas)
{
    public double Area => Areas.Sum();

    public static BrepMeasure Of(BrepSolid solid)
    {
        var parts = solid.Faces.Select(f => f.Surface switch
        {
            BrepPlane plane => OnPlane(solid, f, plane),
            BrepCylinder cylinder => OnCylinder(solid, f, cylinder),
            _ => throw new InvalidOperationException("No such surface."),
        }).ToList();
        return new(parts.Sum(p => p.Volume), [.. parts.Select(p => p.Area)]);
    }

    /// <summary>Area from half the integral of r × dr.</summary>
    private static (double Volume, double Area) OnPlane(BrepSolid solid, BrepFace face, BrepPlane plane)
    {
        var sum = Vector3.Zero;
        foreach (var use in face.Loops.SelectMany(l => l))
        {
            Vector3 from = solid.Corners[solid.StartOf(use)], to = solid.Corners[solid.EndOf(use)];
            sum += solid.Edges[use.Edge].Curve is BrepCircle circle
                ? circle.Centre.Cross(to - from) + circle.Radius * circle.Radius * Sweep(solid, use, circle) * circle.Axis
                : from.Cross(to);
        }

        var normal = face.FacesOut ? plane.Normal : -plane.Normal;
        var area = sum.Dot(normal) / 2;
        return (plane.Point.Dot(normal) * area / 3, area);
    }

    /// <summary>With angle u and height v on the cylinder, r·n = p·n(u) + R, and an integral of f(u) du dv is that of -v f(u) du along the loops.</summary>
    private static (double Volume, double Area) OnCylinder(BrepSolid solid, BrepFace face, BrepCylinder cylinder)
    {
        Vector3 x = cylinder.Towards, y = cylinder.Axis.Cross(x), p = cylinder.Point;
        var radius = cylinder.Radius;
        double flux = 0, area = 0;
        foreach (var use in face.Loops.SelectMany(l => l))
        {
            if (solid.Edges[use.Edge].Curve is not BrepCircle circle)
            {
                continue; // Along the axis: u does not change.
            }

            var start = solid.Corners[solid.StartOf(use)] - p;
            var from = Math.Atan2(start.Dot(y), start.Dot(x));
            var sweep = Sweep(solid, use, circle) * Math.Sign(circle.Axis.Dot(cylinder.Axis));
            var height = (circle.Centre - p).Dot(cylinder.Axis);
            var to = from + sweep;
            flux -= height * radius * (radius * sweep + p.Dot(x) * (Math.Sin(to) - Math.Sin(from)) - p.Dot(y) * (Math.Cos(to) - Math.Cos(from)));
            area -= height * radius * sweep;
        }

        return (flux / 3, face.FacesOut ? area : -area);
    }

    /// <summary>Angle travelled about the circle's axis, with sign.</summary>
    private static double Sweep(BrepSolid solid, BrepEdgeUse use, BrepCircle circle)
    {
        var edge = solid.Edges[use.Edge];
        var end = solid.Corners[edge.End] - circle.Centre;
        var angle = Math.Atan2(end.Dot(circle.Axis.Cross(circle.Towards)), end.Dot(circle.Towards));
        var sweep = edge.Start == edge.End ? 2 * Math.PI : angle > 0 ? angle : angle + 2 * Math.PI;
        return use.IsForward ? sweep : -sweep;
    }
}
