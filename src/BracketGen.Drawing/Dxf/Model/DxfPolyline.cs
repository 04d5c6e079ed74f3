using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Dxf.Model;

/// <summary>A chain of lines and arcs in one entity.</summary>
/// <remarks>
/// A cut contour is one closed polyline and not a heap of lines and arcs: the file itself then says that it is closed, and
/// no reader has to find which ends meet.
/// </remarks>
public sealed record DxfPolyline : DxfEntity
{
    /// <summary>The polyline through <paramref name="vertices"/>; closed, it goes on from the last one to the first.</summary>
    /// <exception cref="ArgumentException">There are fewer than two vertices, two neighbours are one point, or a number is none.</exception>
    public DxfPolyline(DxfLayer layer, ImmutableArray<DxfVertex> vertices, bool closed)
        : base(layer)
    {
        if (vertices.Length < 2)
        {
            throw new ArgumentException("A polyline needs at least two vertices.", nameof(vertices));
        }

        for (var i = 0; i < vertices.Length; i++)
        {
            if (!Finite(vertices[i].Point) || !Finite(vertices[i].Bulge))
            {
                throw new ArgumentException($"Vertex {i} of a polyline is no point.", nameof(vertices));
            }

            if ((closed || i > 0) && vertices[i].Point.DistanceTo(vertices[i > 0 ? i - 1 : ^1].Point) <= Tolerance.Point)
            {
                throw new ArgumentException($"Vertex {i} of a polyline lies on the one before it.", nameof(vertices));
            }
        }

        Vertices = vertices;
        Closed = closed;
    }

    /// <summary>The vertices in order; the last one's bulge counts only where the polyline is closed.</summary>
    public ImmutableArray<DxfVertex> Vertices { get; }

    /// <summary>Whether it returns to its first vertex.</summary>
    public bool Closed { get; }

    /// <inheritdoc/>
    public override DxfEntity Moved(Angle turn, Vector2 shift) =>
        new DxfPolyline(Layer, [.. Vertices.Select(v => v with { Point = v.Point.Rotate(turn) + shift })], Closed);

    /// <inheritdoc/>
    public override IEnumerable<Segment> Segments
    {
        get
        {
            for (var i = 0; i < Vertices.Length - (Closed ? 0 : 1); i++)
            {
                yield return Vertices[i].To(Vertices[(i + 1) % Vertices.Length].Point);
            }
        }
    }
}
