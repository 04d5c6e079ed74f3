using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace BracketGen.Geometry;

/// <summary>A closed chain of lines and arcs: an outline or a hole.</summary>
/// <remarks>
/// Each segment starts where the one before it ends, within <see cref="Tolerance.Point"/>; the chain does not cross itself
/// (not checked here). Counter-clockwise contours have positive area. Lengths in mm. Equality is by segments.
/// </remarks>
public sealed class Contour : IEquatable<Contour>
{
    private EdgeTable? _edges;
    private StrongBox<Bounds>? _bounds;

    /// <summary>The contour of <paramref name="segments"/>, in order.</summary>
    /// <exception cref="ArgumentException">There is none, or two neighbours do not meet.</exception>
    public Contour(IEnumerable<Segment> segments)
    {
        Segments = [.. segments];
        if (Segments.IsEmpty)
        {
            throw new ArgumentException("A contour has at least one segment.", nameof(segments));
        }

        for (var i = 0; i < Segments.Length; i++)
        {
            var gap = Segments[i].End.DistanceTo(Segments[(i + 1) % Segments.Length].Start);
            if (!(gap <= Tolerance.Point))
            {
                throw new ArgumentException($"Segments {i} and {(i + 1) % Segments.Length} are {gap:R} mm apart.", nameof(segments));
            }
        }
    }

    /// <summary>The segments in order of travel.</summary>
    public ImmutableArray<Segment> Segments { get; }

    /// <summary>Enclosed area (mm²), positive where travelled counter-clockwise. Exact (Green's theorem).</summary>
    public double SignedArea => Segments.Sum(s => s.SweptArea);

    /// <summary>Length around (mm).</summary>
    public double Perimeter => Segments.Sum(s => s.Length);

    /// <summary>The smallest upright rectangle around it.</summary>
    public Bounds Bounds => LazyInitializer.EnsureInitialized(ref _bounds, () => new(Segments.Select(s => s.Bounds).Aggregate((a, b) => a.Union(b)))).Value;

    /// <summary>The same contour travelled the other way.</summary>
    public Contour Reversed => new(Segments.Reverse().Select(s => s.Reversed));

    /// <summary>Mirrored in the y axis (x becomes -x); the sense of travel is kept by reversing the order.</summary>
    public Contour MirroredInX => new Contour(Segments.Select(s => s.MirroredInX)).Reversed;

    /// <summary>A full circle, counter-clockwise.</summary>
    public static Contour Circle(Vector2 centre, double radius) =>
        new([new ArcSegment(centre, radius, Angle.Zero, new(2 * Math.PI))]);

    /// <summary>The polygon through <paramref name="corners"/>.</summary>
    public static Contour Polygon(IReadOnlyList<Vector2> corners) =>
        new(corners.Select((c, i) => new LineSegment(c, corners[(i + 1) % corners.Count])));

    /// <summary>Shifted by <paramref name="by"/> (mm).</summary>
    public Contour Shift(Vector2 by) => new(Segments.Select(s => s.Shift(by)));

    /// <summary>Turned about the origin.</summary>
    public Contour Rotate(Angle angle) => new(Segments.Select(s => s.Rotate(angle)));

    /// <summary>Whether <paramref name="point"/> lies inside (winding number not zero); either answer on the line itself.</summary>
    public bool Contains(Vector2 point) => Edges.Contains(point);

    /// <summary>Distance from <paramref name="point"/> to the line itself (mm), inside or out.</summary>
    public double DistanceTo(Vector2 point) => Edges.DistanceTo(point);

    private EdgeTable Edges => LazyInitializer.EnsureInitialized(ref _edges, () => new(Segments));

    /// <summary>Corner points of a polygon inside <paramref name="chord"/> (mm) of the contour; every join is a corner.</summary>
    public ImmutableArray<Vector2> Flatten(double chord = Tolerance.Chord)
    {
        var points = ImmutableArray.CreateBuilder<Vector2>();
        foreach (var segment in Segments)
        {
            points.Add(segment.Start);
            if (segment is ArcSegment arc)
            {
                var count = arc.ChordCount(chord);
                for (var i = 1; i < count; i++)
                {
                    points.Add(arc.PointAt((double)i / count));
                }
            }
        }

        return points.ToImmutable();
    }

    /// <inheritdoc/>
    public bool Equals(Contour? other) => other is not null && Segments.SequenceEqual(other.Segments);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Contour);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Segments.Length, Segments[0]);
}
