using BracketGen.Geometry;

namespace BracketGen.Drawing.Dxf.Model;

/// <summary>A straight line.</summary>
public sealed record DxfLine : DxfEntity
{
    /// <summary>The line from <paramref name="start"/> to <paramref name="end"/> (mm).</summary>
    /// <exception cref="ArgumentException">It has no length, or a coordinate is no number.</exception>
    public DxfLine(DxfLayer layer, Vector2 start, Vector2 end)
        : base(layer)
    {
        if (!Finite(start) || !Finite(end) || start.DistanceTo(end) <= Tolerance.Point)
        {
            throw new ArgumentException($"A line needs two points apart, not {start} and {end}.", nameof(end));
        }

        Start = start;
        End = end;
    }

    /// <summary>Where it begins (mm).</summary>
    public Vector2 Start { get; }

    /// <summary>Where it ends (mm).</summary>
    public Vector2 End { get; }

    /// <inheritdoc/>
    public override DxfEntity Moved(Angle turn, Vector2 shift) => new DxfLine(Layer, Start.Rotate(turn) + shift, End.Rotate(turn) + shift);

    /// <inheritdoc/>
    public override IEnumerable<Segment> Segments => [new LineSegment(Start, End)];
}
