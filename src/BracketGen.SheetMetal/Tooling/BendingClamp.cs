using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Tooling;

/// <summary>What clamps one flange while the other is turned up: a folder with clamp and beam, a hand brake, or a vice with bars.</summary>
public enum ClampKind
{
    /// <summary>A folder: clamp above, table below, and a beam that turns the flange up.</summary>
    Folder,

    /// <summary>A small folder worked by hand.</summary>
    HandBrake,

    /// <summary>A vice with bars: the flange is hammered or pushed over a bar's radius.</summary>
    Vice,
}

/// <summary>A tool that bends over an edge of given radius, without a V die.</summary>
/// <remarks>
/// The section stands with the bend's beginning at (0, 0) at the level of the sheet's underside, the clamped flange towards negative
/// <see cref="SectionPoint.Across"/>. Usual values are of our own plain dimensions (common practice, no source). Lengths in mm.
/// </remarks>
/// <param name="Kind">What it is.</param>
/// <param name="Name">Name in the shop.</param>
/// <param name="Radius">Radius of the edge that the sheet is bent over: the inside radius of the bend.</param>
public sealed record BendingClamp(ClampKind Kind, string Name, double Radius)
{
    /// <summary>How far the upper clamp or bar reaches back over the clamped flange.</summary>
    public double Depth { get; init; } = 60;

    /// <summary>Height of the upper clamp or bar at its front.</summary>
    public double Height { get; init; } = 40;

    /// <summary>Angle between the front of the upper clamp and the sheet: less than 90° leaves room to bend further than square.</summary>
    public Angle NoseAngle { get; init; } = Angle.FromDegrees(Kind == ClampKind.Vice ? 90 : 50);

    /// <summary>How far the clamp or the jaws reach down below the sheet.</summary>
    public double Below { get; init; } = 60;

    /// <summary>Height of the beam that turns the flange up, along the flange; 0 for none.</summary>
    public double BeamWidth { get; init; } = Kind == ClampKind.Vice ? 0 : 15;

    /// <summary>Length along the bend.</summary>
    public double Length { get; init; } = Kind switch { ClampKind.Folder => 2000, ClampKind.HandBrake => 600, _ => 150 };

    /// <summary>Thickest sheet it takes.</summary>
    public double MaxThickness { get; init; } = Kind switch { ClampKind.Folder => 3, ClampKind.HandBrake => 1.5, _ => 5 };

    /// <summary>Least width of the clamped flange.</summary>
    public double LeastClamped { get; init; } = 10;

    /// <summary>How its dimensions are known: assumed, or given by the shop.</summary>
    public Evidence Evidence { get; init; } = Evidence.Assumed;
}
