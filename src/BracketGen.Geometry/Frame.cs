namespace BracketGen.Geometry;

/// <summary>A rigid, right-handed frame: where a flat part or a view lies in the throttle frame.</summary>
/// <remarks>The axes are orthonormal and right-handed to round-off.</remarks>
public readonly record struct Frame : IMirrored<Frame>
{
    private Frame(Vector3 origin, Vector3 x, Vector3 y, Vector3 z)
    {
        Origin = origin;
        X = x;
        Y = y;
        Z = z;
    }

    /// <summary>Where local (0, 0, 0) lies (mm).</summary>
    public Vector3 Origin { get; }

    /// <summary>Local x, length one.</summary>
    public Vector3 X { get; }

    /// <summary>Local y, length one.</summary>
    public Vector3 Y { get; }

    /// <summary>Local z, length one.</summary>
    public Vector3 Z { get; }

    /// <summary>The throttle frame itself.</summary>
    public static readonly Frame Identity = new(Vector3.Zero, new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));

    /// <summary>
    /// The frame with local z along <paramref name="z"/> and local x as near to <paramref name="x"/> as a right angle allows.
    /// </summary>
    /// <exception cref="InvalidOperationException">The two directions are parallel or have no length.</exception>
    public static Frame FromZX(Vector3 origin, Vector3 z, Vector3 x)
    {
        var zUnit = z.Unit;
        var xUnit = (x - x.Dot(zUnit) * zUnit).Unit;
        return new(origin, xUnit, zUnit.Cross(xUnit), zUnit);
    }

    /// <summary>Local coordinates to the throttle frame (mm).</summary>
    public Vector3 ToWorld(Vector3 local) => Origin + ToWorldDirection(local);

    /// <summary>Local coordinates at height <paramref name="height"/> above the local xy plane to the throttle frame (mm).</summary>
    public Vector3 ToWorld(Vector2 local, double height = 0) => ToWorld(Vector3.From(local, height));

    /// <summary>Where a point of the flat part that lies in this frame, <paramref name="height"/> (mm) above its bottom, is in the throttle frame.</summary>
    public ThrottlePoint ToThrottle(FlatPoint flat, double height = 0) => new(ToWorld(flat.Vector, height));

    /// <summary>Where a point of the throttle frame, or its foot on the bottom, lies on the flat part in this frame.</summary>
    public FlatPoint ToFlat(ThrottlePoint point) => new(ToLocal(point.Vector).XY);

    /// <summary>A local direction in the throttle frame.</summary>
    public Vector3 ToWorldDirection(Vector3 local) => local.X * X + local.Y * Y + local.Z * Z;

    /// <summary>A point of the throttle frame in local coordinates (mm).</summary>
    public Vector3 ToLocal(Vector3 world) => ToLocalDirection(world - Origin);

    /// <summary>A direction of the throttle frame in local coordinates.</summary>
    public Vector3 ToLocalDirection(Vector3 world) => new(world.Dot(X), world.Dot(Y), world.Dot(Z));

    /// <summary>The frame whose local (0, 0, 0) is this frame's <paramref name="local"/>.</summary>
    public Frame Shift(Vector3 local) => new(ToWorld(local), X, Y, Z);

    /// <summary>Turned about the line through <paramref name="point"/> along <paramref name="axis"/> (length one).</summary>
    public Frame Rotate(Vector3 point, Vector3 axis, Angle angle)
    {
        var (sin, cos) = Math.SinCos(angle.Radians);
        return new(
            point + (Origin - point).Rotate(axis, sin, cos), X.Rotate(axis, sin, cos), Y.Rotate(axis, sin, cos), Z.Rotate(axis, sin, cos));
    }

    /// <summary>
    /// The mirror image in the plane y = 0, kept right-handed by reversing local x: a flat part in it is mirrored in its own
    /// x at the same time, and stays on the same side of its sheet.
    /// </summary>
    public Frame Mirrored() => new(Origin.MirroredInY, -X.MirroredInY, Y.MirroredInY, Z.MirroredInY);

    /// <summary>Origin and axes, for messages.</summary>
    public override string ToString() => $"frame at {Origin}, x {X}, y {Y}, z {Z}";
}
