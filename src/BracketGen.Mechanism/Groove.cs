using BracketGen.Geometry;

namespace BracketGen.Mechanism;

/// <summary>The wire's centre line in the quadrant's groove: a convex curve round the throttle shaft.</summary>
/// <remarks>
/// Given by its support function in the quadrant's own frame (the throttle frame with the valve on its closed stop):
/// h(ν) is the distance from the shaft axis to the tangent whose outward normal has polar angle ν. Then the touching point
/// is h n + h' t, with n the normal and t the normal turned left, and an element of arc is (h + h'') dν (any text on convex
/// curves). The tangent's distance h is the moment arm of a wire along it, which is why the mechanism is written in it.
/// Lengths in mm. Immutable, thread-safe.
/// </remarks>
public abstract record Groove
{
    /// <summary>Support function h (mm): distance from the shaft axis to the tangent with outward <paramref name="normal"/>.</summary>
    public abstract double Support(Angle normal);

    /// <summary>dh/dν (mm): how far the touching point lies ahead (counter-clockwise) of the foot of the perpendicular.</summary>
    public abstract double Slope(Angle normal);

    /// <summary>Length of groove (mm) between the points with the two normals; negative where <paramref name="to"/> is less.</summary>
    public abstract double ArcBetween(Angle from, Angle to);

    /// <summary>Outward normal at the groove's point whose polar angle is <paramref name="polar"/>, on the same turn.</summary>
    public abstract Angle NormalAt(Angle polar);

    /// <summary>The groove's point with the given outward normal (mm).</summary>
    public Vector2 PointWithNormal(Angle normal)
    {
        var n = Vector2.FromPolar(1, normal);
        return Support(normal) * n + Slope(normal) * n.Left;
    }

    /// <summary>The mirror image in the x axis, for a body that opens clockwise.</summary>
    public abstract Groove MirroredInY { get; }
}
