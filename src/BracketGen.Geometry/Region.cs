using System.Collections.Immutable;

namespace BracketGen.Geometry;

/// <summary>A flat piece of sheet: an outline with holes in it.</summary>
/// <remarks>
/// The outline runs counter-clockwise, the holes clockwise, so metal is always on the left of travel. Holes lie inside the
/// outline and apart from each other (not checked here).
/// </remarks>
public sealed record Region
{
    /// <summary>The region inside <paramref name="outline"/> and outside <paramref name="holes"/>, whichever way they run.</summary>
    public Region(Contour outline, IEnumerable<Contour> holes)
    {
        Outline = outline.SignedArea >= 0 ? outline : outline.Reversed;
        Holes = [.. holes.Select(h => h.SignedArea <= 0 ? h : h.Reversed)];
    }

    /// <summary>The outer contour, counter-clockwise.</summary>
    public Contour Outline { get; }

    /// <summary>The holes, clockwise.</summary>
    public ImmutableArray<Contour> Holes { get; }

    /// <summary>All contours, the outline first.</summary>
    public IEnumerable<Contour> Contours => [Outline, .. Holes];

    /// <summary>Area of the metal (mm²).</summary>
    public double Area => Contours.Sum(c => c.SignedArea);

    /// <summary>Length of all cuts (mm).</summary>
    public double CutLength => Contours.Sum(c => c.Perimeter);

    /// <summary>Mirrored in the y axis (x becomes -x).</summary>
    public Region MirroredInX => new(Outline.MirroredInX, Holes.Select(h => h.MirroredInX));

    /// <summary>Shifted by <paramref name="by"/> (mm).</summary>
    public Region Shift(Vector2 by) => new(Outline.Shift(by), Holes.Select(h => h.Shift(by)));

    /// <summary>Turned about the origin.</summary>
    public Region Rotate(Angle angle) => new(Outline.Rotate(angle), Holes.Select(h => h.Rotate(angle)));

    /// <summary>Whether <paramref name="point"/> lies in the metal.</summary>
    public bool Contains(Vector2 point) => Outline.Contains(point) && !Holes.Any(h => h.Contains(point));

    /// <summary>Distance (mm) from <paramref name="point"/> to the nearest cut edge: positive in the metal, negative outside it.</summary>
    public double DepthOf(Vector2 point)
    {
        var nearest = Outline.DistanceTo(point);
        foreach (var hole in Holes)
        {
            nearest = Math.Min(nearest, hole.DistanceTo(point));
        }

        return Contains(point) ? nearest : -nearest;
    }

    /// <inheritdoc/>
    public bool Equals(Region? other) => other is not null && Outline.Equals(other.Outline) && Holes.SequenceEqual(other.Holes);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Outline, Holes.Length);

    /// <summary>Its size, for messages.</summary>
    public override string ToString() => $"region: {Outline.Segments.Length} segments, {Holes.Length} holes";
}
