using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Tooling;

/// <summary>The press brake that holds punch and die, with its back gauge.</summary>
/// <remarks>Usual values are of our own plain dimensions (common practice, no source). Lengths in mm.</remarks>
public sealed record PressBrake
{
    /// <summary>Height between beam and bed with the beam at the top of its stroke.</summary>
    public double OpenHeight { get; init; } = 320;

    /// <summary>Stroke of the beam.</summary>
    public double Stroke { get; init; } = 180;

    /// <summary>Thickness of the beam that carries the punch, front to back.</summary>
    public double BeamWidth { get; init; } = 60;

    /// <summary>Thickness of the bed under the die, front to back.</summary>
    public double BedWidth { get; init; } = 80;

    /// <summary>Minimum distance of the back gauge from the middle of the bend.</summary>
    public double GaugeMin { get; init; } = 5;

    /// <summary>Maximum distance of the back gauge from the middle of the bend.</summary>
    public double GaugeMax { get; init; } = 500;

    /// <summary>Width of a finger of the back gauge along the bend.</summary>
    public double FingerWidth { get; init; } = 10;

    /// <summary>Height of a finger over the level of the die's top.</summary>
    public double FingerHeight { get; init; } = 12;

    /// <summary>How far a finger reaches below the level of the die's top.</summary>
    public double FingerDepth { get; init; } = 8;

    /// <summary>Whether the gauge moves back before the beam bends; if it does not, the part must stay clear of it all the way.</summary>
    public bool GaugeRetracts { get; init; }

    /// <summary>
    /// Steps in which punch and die are made up from sections; null where they come in one piece, longer than any bend. Sections let flanges stand beside
    /// the ends of the punch.
    /// </summary>
    public double? SectionStep { get; init; }

    /// <summary>Force of the press (N).</summary>
    public double MaxForce { get; init; } = 500_000;

    /// <summary>Force per length (N/mm, the same as kN/m) that bed and beam stand.</summary>
    public double MaxForcePerLength { get; init; } = 1000;

    /// <summary>How its dimensions are known: assumed, or given by the shop.</summary>
    public Evidence Evidence { get; init; } = Evidence.Assumed;
}
