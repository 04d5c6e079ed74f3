using BracketGen.Geometry;

namespace BracketGen.Drawing.Dxf.Model;

/// <summary>A full circle.</summary>
public sealed record DxfCircle : DxfEntity
{
    /// <summary>The circle of <paramref name="radius"/> about <paramref name="centre"/> (mm).</summary>
    /// <exception cref="ArgumentException">The radius is not positive, or a number is none.</exception>
    public DxfCircle(DxfLayer layer, Vector2 centre, double radius)
        : base(layer)
    {
        if (!Finite(centre) || !Finite(radius) || radius <= Tolerance.Point)
        {
            throw new ArgumentException($"A circle needs a centre and a positive radius, not {centre} and {radius}.", nameof(radius));
        }

        Centre = centre;
        Radius = radius;
    }

    /// <summary>Centre (mm).</summary>
    public Vector2 Centre { get; }

    /// <summary>Radius (mm).</summary>
    public double Radius { get; }

    /// <inheritdoc/>
    public override DxfEntity Moved(Angle turn, Vector2 shift) => new DxfCircle(Layer, Centre.Rotate(turn) + shift, Radius);

    /// <inheritdoc/>
    public override IEnumerable<Segment> Segments => Contour.Circle(Centre, Radius).Segments;
}
