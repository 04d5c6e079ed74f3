using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Design.Part;

/// <summary>How exactly a bend of a finished bracket was measured, each way.</summary>
/// <param name="Line">Each coordinate of both ends of its corner line (mm).</param>
/// <param name="Angle">Its included angle.</param>
/// <param name="Radius">Its inside radius (mm).</param>
public readonly record struct BendReading(double Line, Angle Angle, double Radius);

/// <summary>How exactly the shape of a finished bracket was measured, each way.</summary>
/// <param name="Edges">Each coordinate of the corners of a flange (mm), flange by flange; the mount flange first.</param>
/// <param name="Bends">Its bends in order.</param>
/// <param name="Thickness">The thickness of its sheet (mm).</param>
public sealed record ShapeReadings(ImmutableArray<double> Edges, ImmutableArray<BendReading> Bends, double Thickness)
{
    /// <summary>The ± of what was measured.</summary>
    /// <param name="measured">What was measured.</param>
    public static ShapeReadings Of(MeasuredBracket measured) => new(
        [measured.OutlinePlusMinus, .. measured.Bends.Select(b => b.OutlinePlusMinus)],
        [.. measured.Bends.Select(b => new BendReading(b.LinePlusMinus, b.IncludedPlusMinus, b.RadiusPlusMinus))],
        measured.Thickness.PlusMinus);

    /// <inheritdoc/>
    public bool Equals(ShapeReadings? other) =>
        other is not null && Edges.SequenceEqual(other.Edges) && Bends.SequenceEqual(other.Bends) && Thickness == other.Thickness;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Edges.Length, Bends.Length, Thickness);
}
