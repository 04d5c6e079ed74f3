using BracketGen.Geometry;

namespace BracketGen.Drawing.Dxf.Model;

/// <summary>An open circular arc.</summary>
public sealed record DxfArc : DxfEntity
{
    /// <summary>The arc about <paramref name="centre"/> (mm) from polar angle <paramref name="from"/> on through <paramref name="sweep"/>.</summary>
    /// <exception cref="ArgumentException">It has no length, is a full circle, or a number is none.</exception>
    public DxfArc(DxfLayer layer, Vector2 centre, double radius, Angle from, Angle sweep)
        : base(layer)
    {
        if (!Finite(centre) || !Finite(from.Radians) || !Finite(radius)
            || !(radius * sweep.Magnitude.Radians > Tolerance.Point) || !(sweep.Magnitude.Radians < 2 * Math.PI - Tolerance.Direction))
        {
            throw new ArgumentException("An arc needs a positive length and is less than a full circle.", nameof(sweep));
        }

        Centre = centre;
        Radius = radius;
        From = from;
        Sweep = sweep;
    }

    /// <summary>Centre (mm).</summary>
    public Vector2 Centre { get; }

    /// <summary>Radius (mm).</summary>
    public double Radius { get; }

    /// <summary>Polar angle of its start.</summary>
    public Angle From { get; }

    /// <summary>Angle travelled, positive counter-clockwise.</summary>
    public Angle Sweep { get; }

    /// <inheritdoc/>
    public override DxfEntity Moved(Angle turn, Vector2 shift) => new DxfArc(Layer, Centre.Rotate(turn) + shift, Radius, From + turn, Sweep);

    /// <inheritdoc/>
    public override IEnumerable<Segment> Segments => [new ArcSegment(Centre, Radius, From, Sweep)];
}
