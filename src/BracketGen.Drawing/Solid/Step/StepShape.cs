using System.Collections.Immutable;
using BracketGen.Drawing.Solid.Brep;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Solid.Step;

/// <summary>Writes a solid's geometry and topology as instances of ISO 10303-42.</summary>
internal static class StepShape
{
    /// <summary>Adds <paramref name="solid"/>; the name of its manifold_solid_brep.</summary>
    public static string Add(StepData data, BrepSolid solid, string name)
    {
        var corners = solid.Corners.Select(c => data.Add($"VERTEX_POINT('',{Point(data, c)})")).ToList();
        var edges = solid.Edges
            .Select(e => data.Add($"EDGE_CURVE('',{corners[e.Start]},{corners[e.End]},{Curve(data, e.Curve)},.T.)"))
            .ToList();
        var faces = solid.Faces.Select(f => Face(data, f, edges)).ToList();
        var shell = data.Add($"CLOSED_SHELL('',{StepText.List(faces)})");
        return data.Add($"MANIFOLD_SOLID_BREP({StepText.String(name)},{shell})");
    }

    /// <summary>Adds a frame at <paramref name="point"/>; the name of its axis2_placement_3d.</summary>
    public static string Placement(StepData data, Vector3 point, Vector3 axis, Vector3 towards) =>
        data.Share($"AXIS2_PLACEMENT_3D('',{Point(data, point)},{Direction(data, axis)},{Direction(data, towards)})");

    private static string Face(StepData data, BrepFace face, IReadOnlyList<string> edges)
    {
        var bounds = face.Loops.Select((loop, i) =>
        {
            var kind = i == 0 ? "FACE_OUTER_BOUND" : "FACE_BOUND";
            return data.Add($"{kind}('',{Loop(data, loop, edges)},.T.)");
        }).ToList();
        return data.Add($"ADVANCED_FACE('',{StepText.List(bounds)},{Surface(data, face.Surface)},{Flag(face.FacesOut)})");
    }

    private static string Loop(StepData data, ImmutableArray<BrepEdgeUse> loop, IReadOnlyList<string> edges)
    {
        var uses = loop.Select(u => data.Add($"ORIENTED_EDGE('',*,*,{edges[u.Edge]},{Flag(u.IsForward)})")).ToList();
        return data.Add($"EDGE_LOOP('',{StepText.List(uses)})");
    }

    private static string Curve(StepData data, BrepCurve curve) => curve switch
    {
        BrepLine line => data.Share($"LINE('',{Point(data, line.Point)},{data.Share($"VECTOR('',{Direction(data, line.Direction)},1.)")})"),
        BrepCircle circle => data.Share($"CIRCLE('',{Placement(data, circle.Centre, circle.Axis, circle.Towards)},{Length(circle.Radius)})"),
        _ => throw new ArgumentOutOfRangeException(nameof(curve), curve, "No such curve."),
    };

    private static string Surface(StepData data, BrepSurface surface) => surface switch
    {
        BrepPlane plane => data.Add($"PLANE('',{Placement(data, plane.Point, plane.Normal, plane.X)})"),
        BrepCylinder cylinder => data.Add(
            $"CYLINDRICAL_SURFACE('',{Placement(data, cylinder.Point, cylinder.Axis, cylinder.Towards)},{Length(cylinder.Radius)})"),
        _ => throw new ArgumentOutOfRangeException(nameof(surface), surface, "No such surface."),
    };

    private static string Point(StepData data, Vector3 p) => data.Share($"CARTESIAN_POINT('',({Length(p.X)},{Length(p.Y)},{Length(p.Z)}))");

    private static string Direction(StepData data, Vector3 d) => data.Share($"DIRECTION('',({Share(d.X)},{Share(d.Y)},{Share(d.Z)}))");

    // Decimals that stand for nothing but rounding are left out: a hundredth of what counts as one point, and over 1 m as much in angle.
    private static string Length(double value) => StepText.Real(Math.Round(value, 9));

    private static string Share(double value) => StepText.Real(Math.Round(value, 12));

    private static string Flag(bool value) => value ? ".T." : ".F.";
}
