using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Bending;

/// <summary>A V die of the press brake with the inside radius it gives in air bending.</summary>
/// <remarks>
/// Opening and inside radius must be known. The rest has usual values for the opening, of our own plain dimensions (common practice, no
/// source); <see cref="Evidence"/> says whether they were given.
/// </remarks>
/// <param name="Opening">Die opening (mm), between the points where the faces of the V would meet the top.</param>
/// <param name="InsideRadius">Inside radius of the bend it gives (mm), where no other is known for the material.</param>
public sealed record PressBrakeDie(double Opening, double InsideRadius)
{
    /// <summary>Minimum die opening over thickness.</summary>
    /// <remarks>Common practice, no source: 6 to 12 thicknesses; under 6 the force marks the sheet.</remarks>
    public const double LeastOpeningRatio = 6;

    /// <summary>Maximum die opening over thickness (common practice, no source).</summary>
    public const double MostOpeningRatio = 12;

    private readonly double? _bodyWidth, _shoulderRadius;

    /// <summary>Included angle of the V; 88° unless given. The sheet is never bent so far that it meets the faces of the V.</summary>
    public Angle Angle { get; init; } = Angle.FromDegrees(88);

    /// <summary>Width (mm) of the die across the bend at the level of its top; 1.6 times the opening and at least 14 mm more, unless given.</summary>
    public double BodyWidth
    {
        get => _bodyWidth ?? Math.Max(1.6 * Opening, Opening + 14);
        init => _bodyWidth = value;
    }

    /// <summary>Height (mm) of the shoulders over the bed of the press; 80 mm unless given.</summary>
    public double ShoulderHeight { get; init; } = 80;

    /// <summary>Radius (mm) of the shoulder between the V's face and the top; a twelfth of the opening and at least 1 mm, unless given.</summary>
    public double ShoulderRadius
    {
        get => _shoulderRadius ?? Math.Max(1, Opening / 12);
        init => _shoulderRadius = value;
    }

    /// <summary>Force per length (N/mm, the same as kN/m) that the die stands; 1000 unless given.</summary>
    public double MaxForce { get; init; } = 1000;

    /// <summary>Inside radii (mm) that differ by the group of the material.</summary>
    public GroupRadii Radii { get; init; } = new(null, null, null);

    /// <summary>How all but opening and inside radius is known: assumed, or given by the shop.</summary>
    public Evidence Evidence { get; init; } = Evidence.Assumed;

    /// <summary>Inside radius (mm) in a material of <paramref name="group"/>.</summary>
    public double InsideRadiusIn(BendGroup group) => Radii.Of(group) ?? InsideRadius;

    /// <summary>Whether the die suits sheet of <paramref name="thickness"/> (mm).</summary>
    public bool Suits(double thickness) =>
        Opening >= LeastOpeningRatio * thickness && Opening <= MostOpeningRatio * thickness;

    /// <summary>
    /// Shortest flange (mm), from the outside corner (where the outsides of the two flanges would meet) to the edge, that still
    /// lies on the shoulder of the V at the end of the bend.
    /// </summary>
    /// <remarks>
    /// The leg lies at half the bend angle to the level and must span half the opening: (V/2) / cos(A/2). At 90° this is
    /// 0.707 V, the 0.7 V of common practice.
    /// </remarks>
    public double ShortestFlange(Angle bend) => Opening / 2 / Math.Cos(bend.Magnitude.Radians / 2);

    /// <inheritdoc/>
    /// <remarks>A usual value is the same whether it is given or left out.</remarks>
    public bool Equals(PressBrakeDie? other) => other is not null && Opening == other.Opening && InsideRadius == other.InsideRadius
        && Angle == other.Angle && BodyWidth == other.BodyWidth && ShoulderHeight == other.ShoulderHeight && ShoulderRadius == other.ShoulderRadius
        && MaxForce == other.MaxForce && Radii == other.Radii && Evidence == other.Evidence;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Opening, InsideRadius, Angle, BodyWidth, ShoulderRadius);
}

/// <summary>Inside radii (mm) that one die gives in air bending in materials of different groups; null where it is not known apart.</summary>
/// <remarks>The harder the sheet, the larger the radius that it takes on the same die.</remarks>
/// <param name="SoftBrassOrCopper">Soft brass and copper.</param>
/// <param name="SoftSteelOrAluminium">Half-hard brass and copper, soft steel, aluminium.</param>
/// <param name="ColdRolledOrSpringSteel">Bronze, hard copper, cold-rolled, stainless and spring steel.</param>
public sealed record GroupRadii(double? SoftBrassOrCopper, double? SoftSteelOrAluminium, double? ColdRolledOrSpringSteel)
{
    /// <summary>The radius in a group; null if it is not known apart.</summary>
    public double? Of(BendGroup group) => group switch
    {
        BendGroup.SoftBrassOrCopper => SoftBrassOrCopper,
        BendGroup.SoftSteelOrAluminium => SoftSteelOrAluminium,
        _ => ColdRolledOrSpringSteel,
    };
}
