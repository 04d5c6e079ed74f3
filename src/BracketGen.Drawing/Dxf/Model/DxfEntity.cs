using BracketGen.Geometry;

namespace BracketGen.Drawing.Dxf.Model;

/// <summary>One thing drawn on a layer.</summary>
/// <remarks>Lengths in mm whatever the file's unit will be.</remarks>
/// <param name="Layer">The layer it lies on.</param>
public abstract record DxfEntity(DxfLayer Layer)
{
    /// <summary>Its lines and arcs in order.</summary>
    public abstract IEnumerable<Segment> Segments { get; }

    /// <summary>The same turned about the origin and then shifted (mm); a text keeps its level and only moves.</summary>
    /// <param name="turn">By what it is turned.</param>
    /// <param name="shift">By what it is shifted (mm).</param>
    public abstract DxfEntity Moved(Angle turn, Vector2 shift);

    /// <summary>The smallest upright rectangle around it (mm).</summary>
    public virtual Bounds Bounds => Segments.Select(s => s.Bounds).Aggregate((a, b) => a.Union(b));

    private protected static bool Finite(double value) => double.IsFinite(value);

    private protected static bool Finite(Vector2 point) => double.IsFinite(point.X) && double.IsFinite(point.Y);
}
