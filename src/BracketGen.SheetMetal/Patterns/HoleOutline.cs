using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Patterns;

/// <summary>The outline of a hole that is not round; its size is that of the hole, given from outside.</summary>
/// <remarks>Flat-pattern coordinates, mm.</remarks>
/// <param name="Along">The direction that it is laid out by, length one.</param>
public abstract record HoleOutline(Vector2 Along)
{
    /// <summary>The outline, counter-clockwise.</summary>
    /// <param name="centre">Its centre.</param>
    /// <param name="size">Its size: side, diameter or width (mm).</param>
    public abstract Contour Round(FlatPoint centre, double size);

    /// <summary>How far the outline reaches from its centre (mm).</summary>
    /// <param name="size">Its size (mm).</param>
    public abstract double Reach(double size);

    /// <summary>How far the outline reaches from its centre in a direction, or farther (mm).</summary>
    /// <param name="size">Its size (mm).</param>
    /// <param name="way">The direction, length one.</param>
    public virtual double ReachTowards(double size, Vector2 way) => Reach(size);

    /// <summary>Half the line that its bolt can stand on, from its centre (mm): zero for all but a slotted hole.</summary>
    public virtual Vector2 HalfTravel => Vector2.Zero;

    /// <summary>Its least width (mm).</summary>
    /// <param name="size">Its size (mm).</param>
    public virtual double LeastWidth(double size) => size;

    /// <summary>The same outline mirrored in the y axis of the flat pattern.</summary>
    public HoleOutline Mirrored() => this with { Along = Along.MirroredInX };

    // From the centre: across is to the left of along.
    private protected Vector2 At(FlatPoint centre, double along, double across) => centre.Vector + along * Along + across * Along.Left;
}

/// <summary>A square hole; its size is the side.</summary>
/// <param name="Along">Direction of a side, length one.</param>
/// <param name="Corner">Radius of its corners (mm), more than zero and less than half the side.</param>
public sealed record SquareHole(Vector2 Along, double Corner) : HoleOutline(Along)
{
    /// <inheritdoc/>
    public override Contour Round(FlatPoint centre, double size)
    {
        double half = size / 2, flat = half - Corner;
        var segments = ImmutableArray.CreateBuilder<Segment>();
        for (var side = 0; side < 4; side++)
        {
            var turn = Angle.FromDegrees(90 * side);
            var turned = this with { Along = Along.Rotate(turn) };
            segments.Add(new LineSegment(turned.At(centre, -flat, -half), turned.At(centre, flat, -half)));
            segments.Add(new ArcSegment(turned.At(centre, flat, -flat), Corner, (-turned.Along.Left).Polar, Angle.FromDegrees(90)));
        }

        return new(segments);
    }

    /// <inheritdoc/>
    public override double Reach(double size) => Math.Sqrt(2) * (size / 2 - Corner) + Corner;
}

/// <summary>A round hole with two flats opposite each other; its size is the diameter.</summary>
/// <param name="Along">Direction of the flats, length one.</param>
/// <param name="AcrossFlats">Width across the flats (mm), less than the diameter.</param>
public sealed record FlatSidedHole(Vector2 Along, double AcrossFlats) : HoleOutline(Along)
{
    /// <inheritdoc/>
    public override Contour Round(FlatPoint centre, double size)
    {
        double half = AcrossFlats / 2, along = Math.Sqrt(size * size / 4 - half * half);
        var sweep = new Angle(2 * Math.Atan2(half, along));
        Vector2 right = At(centre, along, -half), left = At(centre, -along, -half), far = At(centre, along, half), back = At(centre, -along, half);
        return new(
        [
            new LineSegment(left, right), new ArcSegment(centre.Vector, size / 2, (right - centre.Vector).Polar, sweep),
            new LineSegment(far, back), new ArcSegment(centre.Vector, size / 2, (back - centre.Vector).Polar, sweep),
        ]);
    }

    /// <inheritdoc/>
    public override double Reach(double size) => size / 2;

    /// <inheritdoc/>
    public override double LeastWidth(double size) => AcrossFlats;
}

/// <summary>A slotted hole with round ends, in which a bolt can stand anywhere along a line; its size is the width.</summary>
/// <param name="Along">Direction of the slot, length one.</param>
/// <param name="Travel">From the centre of one round end to that of the other (mm), more than zero.</param>
public sealed record SlottedHole(Vector2 Along, double Travel) : HoleOutline(Along)
{
    /// <inheritdoc/>
    public override Vector2 HalfTravel => Travel / 2 * Along;

    /// <inheritdoc/>
    public override Contour Round(FlatPoint centre, double size)
    {
        double half = Travel / 2, radius = size / 2;
        return new(
        [
            new LineSegment(At(centre, -half, -radius), At(centre, half, -radius)),
            new ArcSegment(centre.Vector + half * Along, radius, (-Along.Left).Polar, Angle.FromDegrees(180)),
            new LineSegment(At(centre, half, radius), At(centre, -half, radius)),
            new ArcSegment(centre.Vector - half * Along, radius, Along.Left.Polar, Angle.FromDegrees(180)),
        ]);
    }

    /// <inheritdoc/>
    public override double Reach(double size) => (Travel + size) / 2;

    /// <inheritdoc/>
    public override double ReachTowards(double size, Vector2 way) => size / 2 + Math.Abs(HalfTravel.Dot(way));
}
