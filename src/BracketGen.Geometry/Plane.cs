namespace BracketGen.Geometry;

/// <summary>An oriented plane in space.</summary>
/// <remarks>The normal has length one, pointing out of the solid behind the plane.</remarks>
public readonly record struct Plane : IMirrored<Plane>
{
    /// <summary>The plane through <paramref name="point"/> (mm) square to <paramref name="normal"/> (any length).</summary>
    /// <exception cref="InvalidOperationException"><paramref name="normal"/> has no length.</exception>
    public Plane(Vector3 point, Vector3 normal)
    {
        Point = point;
        Normal = normal.Unit;
    }

    private Plane((Vector3 Point, Vector3 Unit) exact) => (Point, Normal) = exact;

    /// <summary>A point of the plane (mm).</summary>
    public Vector3 Point { get; }

    /// <summary>Direction square to the plane, length one.</summary>
    public Vector3 Normal { get; }

    /// <summary>Signed distance (mm), positive on the normal's side.</summary>
    public double HeightOf(Vector3 point) => (point - Point).Dot(Normal);

    /// <summary>The foot of the perpendicular from <paramref name="point"/>.</summary>
    public Vector3 FootOf(Vector3 point) => point - HeightOf(point) * Normal;

    /// <inheritdoc/>
    public Plane Mirrored() => new((Point.MirroredInY, Normal.MirroredInY));

    /// <summary>Point and normal, for messages.</summary>
    public override string ToString() => $"plane through {Point}, normal {Normal}";
}
