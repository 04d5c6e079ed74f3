using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Design.Part;

/// <summary>A corner of a flange that was measured.</summary>
/// <param name="At">Where the two edges meet, rounding or not, in the flange's own coordinates (mm).</param>
/// <param name="Radius">Radius of its rounding (mm); 0 for a sharp corner.</param>
public readonly record struct FlangeCorner(FlatPoint At, double Radius);

/// <summary>A bend of a bracket that was measured, with the flange that it makes.</summary>
/// <remarks>
/// The corner line is where the outsides of the two flanges would meet without the rounding of the bend. Coordinates on the new flange: u along that line from
/// <see cref="Start"/> to <see cref="End"/>, v from it up the flange.
/// </remarks>
public sealed record MeasuredBend
{
    /// <summary>Number of the flange that it starts from: 0 is the mount flange, i the flange of bend i.</summary>
    public required int From { get; init; }

    /// <summary>One end of the bend on the corner line, coordinates of the flange that it starts from (mm). The new flange lies to the left of the way to <see cref="End"/>.</summary>
    public required FlatPoint Start { get; init; }

    /// <summary>The other end (mm).</summary>
    public required FlatPoint End { get; init; }

    /// <summary>Included angle between the two flanges: a right angle for a square bend, a straight one for none.</summary>
    public required Angle Included { get; init; }

    /// <summary>Whether the flange goes up, away from the mount face.</summary>
    public required bool IsUp { get; init; }

    /// <summary>Inside radius (mm).</summary>
    public required double InsideRadius { get; init; }

    /// <summary>Width of the cuts beside the bend where the flange that it starts from runs on past it (mm); 0 where there are none.</summary>
    public double Relief { get; init; }

    /// <summary>How exactly each coordinate of both ends was read (mm, either way).</summary>
    public double LinePlusMinus { get; init; }

    /// <summary>How exactly the included angle was read, either way.</summary>
    public Angle IncludedPlusMinus { get; init; }

    /// <summary>How exactly the inside radius was read (mm, either way).</summary>
    public double RadiusPlusMinus { get; init; }

    /// <summary>How exactly each coordinate of the new flange's corners was read (mm, either way).</summary>
    public double OutlinePlusMinus { get; init; }

    /// <summary>Which of these ± are assumed, because nobody gave them.</summary>
    public (bool Line, bool Angle, bool Radius, bool Outline) IsAssumed { get; init; }

    /// <summary>The flange that it makes: its corners in order, drawn to the corner line.</summary>
    public required ImmutableArray<FlangeCorner> Outline { get; init; }

    /// <summary>Distance (mm) from the corner line to where the flange is flat, on either side.</summary>
    /// <param name="thickness">Thickness of the sheet (mm).</param>
    public double Setback(double thickness) => (InsideRadius + thickness) * Math.Tan((Math.PI - Included.Radians) / 2);

    /// <inheritdoc/>
    public bool Equals(MeasuredBend? other) => other is not null && From == other.From && Start == other.Start && End == other.End && Included == other.Included
        && IsUp == other.IsUp && InsideRadius == other.InsideRadius && Relief == other.Relief
        && LinePlusMinus == other.LinePlusMinus && IncludedPlusMinus == other.IncludedPlusMinus && RadiusPlusMinus == other.RadiusPlusMinus && OutlinePlusMinus == other.OutlinePlusMinus && IsAssumed == other.IsAssumed && Outline.SequenceEqual(other.Outline);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(From, Start, End, Included, InsideRadius);
}
