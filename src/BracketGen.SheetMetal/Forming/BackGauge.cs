using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Forming;

/// <summary>What a bend is placed by.</summary>
public enum GaugeKind
{
    /// <summary>A straight edge parallel to the bend, against the fingers of the back gauge.</summary>
    Edge,

    /// <summary>The outside of a square flange already up, against the fingers.</summary>
    Flange,

    /// <summary>Two points of a rounded outline where it runs parallel to the bend, one finger at each.</summary>
    TwoPoints,

    /// <summary>A line scribed or etched on the sheet, set under the punch by eye.</summary>
    ScribedLine,
}

/// <summary>Where one finger of the back gauge stands.</summary>
/// <param name="Distance">From the middle of the bend to the finger's face (mm).</param>
/// <param name="Along">Middle of the finger along the bend, from its left end as seen from the front (mm); outside 0 to the length of the bend it stands beside it.</param>
public readonly record struct GaugeFinger(double Distance, double Along);

/// <summary>How a bend is placed under the punch.</summary>
/// <param name="Kind">What it is placed by.</param>
/// <param name="Fingers">The fingers, one or two, from left to right; none for a scribed line.</param>
/// <param name="Span">Length of edge between the outer sides of the fingers, or distance of the two points (mm); for a scribed line the length of the bend.</param>
public sealed record BackGauge(GaugeKind Kind, ImmutableArray<GaugeFinger> Fingers, double Span)
{
    /// <summary>± (mm) of a finger's place (common practice, no source).</summary>
    public const double FingerError = 0.1;

    /// <summary>± (mm) to which a scribed line is set under the punch by eye (common practice, no source).</summary>
    public const double LineError = 0.5;

    /// <summary>± of the place of the bend line at the middle of what it is placed by (mm).</summary>
    public double PlusMinus => Kind == GaugeKind.ScribedLine ? LineError : FingerError;

    /// <summary>± of the direction of the bend line in the sheet: both ends of <see cref="Span"/> off by <see cref="PlusMinus"/>, opposite ways.</summary>
    public Angle Tilt => new(Math.Atan2(2 * PlusMinus, Span));

    /// <inheritdoc/>
    public bool Equals(BackGauge? other) => other is not null && Kind == other.Kind && Span == other.Span && Fingers.SequenceEqual(other.Fingers);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Kind, Span, Fingers.Length);
}
