using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Forming;

/// <summary>The points p with <see cref="Normal"/> · p at most <see cref="Limit"/>: across and up in the section, and along the bend (mm).</summary>
/// <param name="Normal">Outwards, length one.</param>
/// <param name="Limit">Distance of the plane from the origin (mm).</param>
internal readonly record struct HalfSpace(Vector3 Normal, double Limit);

/// <summary>A convex piece of a tool, as long as the bend and longer unless it ends, or of the part itself.</summary>
internal sealed class ConvexBody(Obstruction kind, Carrier carrier, HalfSpace[] faces, Vector2[] corners)
{
    public Obstruction Kind => kind;

    public Carrier Carrier => carrier;

    public HalfSpace[] Faces => faces;

    /// <summary>Whether it has no ends along the bend.</summary>
    public bool IsEndless { get; } = faces.All(f => f.Normal.Z == 0);

    /// <summary>Corners in the section, counted from its carrier's origin.</summary>
    public Vector2[] Corners => corners;

    /// <summary>Largest distance of any of it from the carrier's origin, in the section.</summary>
    public double Reach { get; } = corners.Max(c => c.Length);

    /// <summary>A prism over a convex polygon (counter-clockwise), from end to end along the bend or between two places.</summary>
    public static ConvexBody Prism(Obstruction kind, Carrier carrier, IReadOnlyList<Vector2> polygon, (double From, double To)? along = null)
    {
        List<HalfSpace> faces = [];
        for (var i = 0; i < polygon.Count; i++)
        {
            var side = polygon[(i + 1) % polygon.Count] - polygon[i];
            if (side.Length > Tolerance.Point)
            {
                var normal = -side.Unit.Left;
                faces.Add(new(Vector3.From(normal), normal.Dot(polygon[i])));
            }
        }

        if (along is { } ends)
        {
            faces.Add(new(new(0, 0, 1), ends.To));
            faces.Add(new(new(0, 0, -1), -ends.From));
        }

        return new(kind, carrier, [.. faces], [.. polygon]);
    }

    /// <summary>A prism over an upright rectangle.</summary>
    public static ConvexBody Box(Obstruction kind, Carrier carrier, Vector2 min, Vector2 max, (double From, double To)? along = null) =>
        Prism(kind, carrier, [min, new(max.X, min.Y), max, new(min.X, max.Y)], along);
}
