using BracketGen.Geometry;

namespace BracketGen.Drawing.Solid.Brep;

/// <summary>The plane or cylinder that a face of a solid lies on.</summary>
/// <remarks>Throttle frame, mm.</remarks>
public abstract record BrepSurface
{
    private protected BrepSurface()
    {
    }

    /// <summary>Distance of <paramref name="point"/> from the surface (mm).</summary>
    public abstract double DistanceTo(Vector3 point);

    /// <summary>The surface's own normal at one of its points, length one: out of the solid unless the face is turned over.</summary>
    public abstract Vector3 NormalAt(Vector3 point);
}

/// <summary>A plane.</summary>
/// <param name="Point">A point of it (mm).</param>
/// <param name="Normal">Square to it, length one.</param>
/// <param name="X">A direction in it, length one.</param>
public sealed record BrepPlane(Vector3 Point, Vector3 Normal, Vector3 X) : BrepSurface
{
    /// <inheritdoc/>
    public override double DistanceTo(Vector3 point) => Math.Abs((point - Point).Dot(Normal));

    /// <inheritdoc/>
    public override Vector3 NormalAt(Vector3 point) => Normal;
}

/// <summary>A cylinder without ends; its own normal points away from the axis.</summary>
/// <param name="Point">A point of the axis (mm).</param>
/// <param name="Axis">Direction of the axis, length one.</param>
/// <param name="Towards">
/// Square to the axis, length one: where angles round it are counted from. On a part of a cylinder it looks away from the part, so
/// that no reader's seam runs through it; on a whole one it looks at the seam.
/// </param>
/// <param name="Radius">Radius (mm), positive.</param>
public sealed record BrepCylinder(Vector3 Point, Vector3 Axis, Vector3 Towards, double Radius) : BrepSurface
{
    /// <inheritdoc/>
    public override double DistanceTo(Vector3 point) => Math.Abs((point - Point).Cross(Axis).Length - Radius);

    /// <inheritdoc/>
    public override Vector3 NormalAt(Vector3 point) => (point - Point - (point - Point).Dot(Axis) * Axis).Unit;
}
