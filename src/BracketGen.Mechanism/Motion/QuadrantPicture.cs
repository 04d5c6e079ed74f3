using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Grooves;

namespace BracketGen.Mechanism.Motion;

/// <summary>What turns with the throttle shaft, seen along it from outside, with the valve closed: for pictures.</summary>
/// <remarks>
/// In the groove's plane, throttle frame, mm. The outline is as the clearance checks take it: a sector of the outer radius from just before
/// the pocket to the groove's end, joined to the hub by tangents.
/// </remarks>
public sealed record QuadrantPicture : IMirrored<QuadrantPicture>
{
    /// <summary>Step of the normal between two points of <see cref="Groove"/>.</summary>
    public static readonly Angle GrooveStep = Angle.FromDegrees(3);

    private const double OutlineStep = 0.07;

    private QuadrantPicture()
    {
    }

    /// <summary>The outline's corners, counter-clockwise; every point of it is seen from the shaft's axis.</summary>
    public required ImmutableArray<Vector2> Outline { get; init; }

    /// <summary>The wire's centre line in the groove from the pocket on, as far as the groove goes or the wire wraps.</summary>
    public required ImmutableArray<Vector2> Groove { get; init; }

    /// <summary>How many points of <see cref="Groove"/> lie in the groove itself.</summary>
    public required int InGroove { get; init; }

    /// <summary>Centre of the end fitting.</summary>
    public required Vector2 Fitting { get; init; }

    /// <summary>Radius over the rims of the groove.</summary>
    public required double OuterRadius { get; init; }

    /// <summary>Radius of the hub.</summary>
    public required double HubRadius { get; init; }

    /// <summary>Thickness over the rims of the groove, half of it on each side of z = 0.</summary>
    public required double Thickness { get; init; }

    // Turn of the shaft for an opening of one.
    private double Way { get; init; } = 1;

    /// <summary>How far the shaft has turned at an opening, positive counter-clockwise.</summary>
    public Angle TurnAt(Angle opening) => Way * opening;

    /// <summary>The picture of a quadrant that opens counter-clockwise.</summary>
    /// <param name="quadrant">The quadrant.</param>
    /// <param name="fitting">The end fitting in its pocket.</param>
    /// <param name="travel">The travel, whose wire the groove must carry.</param>
    public static QuadrantPicture Of(Quadrant quadrant, EndFitting fitting, Travel travel)
    {
        static int PointsUpTo(double extent) => (int)Math.Ceiling(extent / GrooveStep.Radians) + 1;
        var pocket = quadrant.PocketNormal;
        var wrapped = travel.Sweep.Append(travel.OnFloor).Max(w => w.Wrap.Radians);
        var inGroove = PointsUpTo(quadrant.GrooveExtent.Radians);
        return new()
        {
            Outline = [.. OutlineOf(quadrant, fitting)],
            Groove = [.. Enumerable.Range(0, Math.Max(inGroove, PointsUpTo(Math.Max(GrooveStep.Radians, wrapped)))).Select(i => quadrant.Groove.PointWithNormal(pocket + i * GrooveStep))],
            InGroove = inGroove,
            Fitting = quadrant.FittingAt(Angle.Zero),
            OuterRadius = quadrant.OuterRadius,
            HubRadius = quadrant.HubRadius,
            Thickness = quadrant.Thickness,
        };
    }

    /// <inheritdoc/>
    public QuadrantPicture Mirrored() => this with
    {
        Outline = [.. Outline.Reverse().Select(p => p.MirroredInY)],
        Groove = [.. Groove.Select(p => p.MirroredInY)],
        Fitting = Fitting.MirroredInY,
        Way = -Way,
    };

    /// <inheritdoc/>
    public bool Equals(QuadrantPicture? other) => other is not null
        && Outline.SequenceEqual(other.Outline) && Groove.SequenceEqual(other.Groove) && InGroove == other.InGroove && Fitting == other.Fitting
        && OuterRadius == other.OuterRadius && HubRadius == other.HubRadius && Thickness == other.Thickness && Way == other.Way;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Fitting, OuterRadius, Way);

    private static IEnumerable<Vector2> OutlineOf(Quadrant quadrant, EndFitting fitting)
    {
        var (outer, hub) = (quadrant.OuterRadius, Math.Min(quadrant.HubRadius, 0.98 * quadrant.OuterRadius));
        var before = Math.Asin(Math.Min(1, fitting.ReachRadius / outer));
        double from = quadrant.Pocket.Value.Radians - before, to = quadrant.Pocket.Value.Radians + quadrant.GrooveExtent.Radians;

        // A tangent from the rim touches the hub this far on.
        var tangent = Math.Acos(hub / outer);
        var rest = 2 * Math.PI - (to - from) - 2 * tangent;
        return rest > 0
            ? [.. Arc(outer, from, to - from), .. Arc(hub, to + tangent, rest)]
            : Arc(outer, from, Math.Min(to - from, 2 * Math.PI - OutlineStep));
    }

    private static IEnumerable<Vector2> Arc(double radius, double from, double sweep)
    {
        var count = Math.Max(1, (int)Math.Ceiling(sweep / OutlineStep));
        return Enumerable.Range(0, count + 1).Select(i => Vector2.FromPolar(radius, new(from + sweep * i / count)));
    }
}
