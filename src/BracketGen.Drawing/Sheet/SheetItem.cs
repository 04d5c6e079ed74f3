using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Sheet;

/// <summary>One thing drawn on a sheet, as data: writers draw it, tests ask it where it is.</summary>
/// <remarks>Sheet coordinates in mm on paper: x to the right, y up, origin at the sheet's lower left corner.</remarks>
public abstract record SheetItem
{
    /// <summary>The smallest upright rectangle around it, line width left aside.</summary>
    public abstract Bounds Bounds { get; }

    /// <summary>The same thing shifted by <paramref name="by"/> (mm).</summary>
    public abstract SheetItem Shift(Vector2 by);

    /// <summary>What it is, in words: for messages.</summary>
    public sealed override string ToString() => this switch
    {
        TextItem text => $"the text “{text.Text}”",
        Stroke { Segment: ArcSegment } stroke => $"a {Name(stroke.Kind)} arc",
        Stroke stroke => $"a {Name(stroke.Kind)} line",
        Polyline line => $"a {Name(line.Kind)} line",
        _ => "a filled area",
    };

    private static string Name(LineKind kind) => kind.ToString().ToLowerInvariant();
}

/// <summary>A straight line, an arc or a full circle.</summary>
/// <param name="Segment">The exact line or arc (mm on paper).</param>
/// <param name="Kind">What the line means.</param>
public sealed record Stroke(Segment Segment, LineKind Kind) : SheetItem
{
    /// <summary>A straight line between two points (mm on paper).</summary>
    /// <exception cref="ArgumentException">The two are the same point.</exception>
    public Stroke(Vector2 start, Vector2 end, LineKind kind)
        : this(new LineSegment(start, end), kind)
    {
    }

    /// <inheritdoc/>
    public override Bounds Bounds => Segment.Bounds;

    /// <inheritdoc/>
    public override SheetItem Shift(Vector2 by) => this with { Segment = Segment.Shift(by) };

    /// <summary>A full circle.</summary>
    public static Stroke Circle(Vector2 centre, double radius, LineKind kind) =>
        new(new ArcSegment(centre, radius, Angle.Zero, new(2 * Math.PI)), kind);
}

/// <summary>A chain of straight pieces drawn in one go, so that its dashes run on over the corners.</summary>
/// <param name="Points">Corners in order (mm on paper), at least two.</param>
/// <param name="Closed">Whether the last corner joins the first.</param>
/// <param name="Kind">What the line means.</param>
public sealed record Polyline(ImmutableArray<Vector2> Points, bool Closed, LineKind Kind) : SheetItem
{
    /// <inheritdoc/>
    public override Bounds Bounds => Bounds.Around(Points);

    /// <inheritdoc/>
    public override SheetItem Shift(Vector2 by) => this with { Points = [.. Points.Select(p => p + by)] };

    /// <summary>An upright rectangle.</summary>
    public static Polyline Rectangle(Bounds box, LineKind kind) =>
        new([box.Min, new(box.Max.X, box.Min.Y), box.Max, new(box.Min.X, box.Max.Y)], true, kind);

    /// <inheritdoc/>
    public bool Equals(Polyline? other) =>
        other is not null && Closed == other.Closed && Kind == other.Kind && Points.SequenceEqual(other.Points);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Points.Length, Points[0], Closed, Kind);
}

/// <summary>A filled polygon: an arrowhead, a bar of a scale, a ground.</summary>
/// <param name="Points">Corners in order (mm on paper), at least three.</param>
/// <param name="Ink">Colour.</param>
public sealed record Fill(ImmutableArray<Vector2> Points, Ink Ink) : SheetItem
{
    /// <inheritdoc/>
    public override Bounds Bounds => Bounds.Around(Points);

    /// <inheritdoc/>
    public override SheetItem Shift(Vector2 by) => this with { Points = [.. Points.Select(p => p + by)] };

    /// <summary>An upright rectangle.</summary>
    public static Fill Rectangle(Bounds box, Ink ink) =>
        new([box.Min, new(box.Max.X, box.Min.Y), box.Max, new(box.Min.X, box.Max.Y)], ink);

    /// <inheritdoc/>
    public bool Equals(Fill? other) => other is not null && Ink == other.Ink && Points.SequenceEqual(other.Points);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Points.Length, Points[0], Ink);
}

/// <summary>A filled polygon in a colour of a scale: what shows a value and is no part of the drawing.</summary>
/// <param name="Points">Corners in order (mm on paper), at least three.</param>
/// <param name="Red">Red, 0 to 255.</param>
/// <param name="Green">Green, 0 to 255.</param>
/// <param name="Blue">Blue, 0 to 255.</param>
public sealed record Shade(ImmutableArray<Vector2> Points, byte Red, byte Green, byte Blue) : SheetItem
{
    /// <inheritdoc/>
    public override Bounds Bounds => Bounds.Around(Points);

    /// <inheritdoc/>
    public override SheetItem Shift(Vector2 by) => this with { Points = [.. Points.Select(p => p + by)] };

    /// <inheritdoc/>
    public bool Equals(Shade? other) =>
        other is not null && (Red, Green, Blue) == (other.Red, other.Green, other.Blue) && Points.SequenceEqual(other.Points);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Points.Length, Points[0], Red, Green, Blue);
}
