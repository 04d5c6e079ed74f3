using BracketGen.Geometry;

namespace BracketGen.Drawing.Solid.Brep;

/// <summary>The line or circle that an edge of a solid lies on.</summary>
/// <remarks>Throttle frame, mm.</remarks>
public abstract record BrepCurve
{
    private protected BrepCurve()
    {
    }

    /// <summary>Distance of <paramref name="point"/> from the curve (mm).</summary>
    public abstract double DistanceTo(Vector3 point);
}

/// <summary>A line without ends.</summary>
/// <param name="Point">A point of it (mm).</param>
/// <param name="Direction">The way the edge runs, length one.</param>
public sealed record BrepLine(Vector3 Point, Vector3 Direction) : BrepCurve
{
    /// <inheritdoc/>
    public override double DistanceTo(Vector3 point) => (point - Point).Cross(Direction).Length;
}

/// <summary>A circle, run through counter-clockwise for an eye at the tip of its axis.</summary>
/// <param name="Centre">Centre (mm).</param>
/// <param name="Axis">Square to its plane, length one.</param>
/// <param name="Towards">From the centre to where the edge begins, length one.</param>
/// <param name="Radius">Radius (mm), positive.</param>
public sealed record BrepCircle(Vector3 Centre, Vector3 Axis, Vector3 Towards, double Radius) : BrepCurve
{
    /// <inheritdoc/>
    public override double DistanceTo(Vector3 point)
    {
        var height = (point - Centre).Dot(Axis);
        var out_ = (point - Centre - height * Axis).Length - Radius;
        return Math.Sqrt(height * height + out_ * out_);
    }
}
