using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Design.Part;

/// <summary>Where the length that a bend takes up in a drawn flat pattern comes from.</summary>
public enum AllowanceSource
{
    /// <summary>Its file gives it: allowance, bend deduction or K factor.</summary>
    Given,

    /// <summary>Nobody gave it: Machinery's Handbook, soft steel and aluminium, stands in.</summary>
    Assumed,
}

/// <summary>A bend of a drawn flat pattern.</summary>
/// <param name="Start">One end of its bend line, the middle of the bend (mm).</param>
/// <param name="End">The other end (mm).</param>
/// <param name="Allowance">Length of flat sheet that becomes the bend (mm).</param>
/// <param name="Source">Where that is from.</param>
/// <param name="Folded">Angle, direction and radius with their ±; its line and outline are not looked at.</param>
public sealed record DrawnBend(FlatPoint Start, FlatPoint End, double Allowance, AllowanceSource Source, MeasuredBend Folded);

/// <summary>What was read of a flat pattern that somebody drew.</summary>
/// <param name="File">Name of the file.</param>
/// <param name="IsInch">Whether it is drawn in inches.</param>
/// <param name="Skipped">Kinds of entities that were left out, with their number.</param>
/// <param name="Allowances">What each bend takes up (mm), and where that is from.</param>
/// <param name="IsStopMeasured">Whether the place of the stop was measured on the formed part; otherwise the drawing is folded.</param>
public sealed record DrawnSource(
    string File, bool IsInch, ImmutableArray<(string Kind, int Count)> Skipped, ImmutableArray<(double Allowance, AllowanceSource Source)> Allowances, bool IsStopMeasured)
{
    /// <inheritdoc/>
    public bool Equals(DrawnSource? other) => other is not null && File == other.File && IsInch == other.IsInch && IsStopMeasured == other.IsStopMeasured
        && Skipped.SequenceEqual(other.Skipped) && Allowances.SequenceEqual(other.Allowances);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(File, IsInch, Allowances.Length);
}

/// <summary>Why a drawn flat pattern does not fold to a bracket.</summary>
public enum DrawnFault
{
    /// <summary>A bend line does not run through the metal of one flange over the whole width of its strip.</summary>
    BendOffMetal,

    /// <summary>The bolt holes are not in one flange.</summary>
    HolesApart,

    /// <summary>A hole is in the strip of a bend, or outside the metal.</summary>
    HoleInBend,

    /// <summary>A hole that is neither in the mount flange nor the stop's.</summary>
    HoleElsewhere,

    /// <summary>A bend whose flanges hang together with the mount flange by no other bend.</summary>
    NotJoined,
}

/// <summary>Where a drawn flat pattern does not fold.</summary>
/// <param name="Fault">Why.</param>
/// <param name="Item">Number of the bend or the hole, from 0; null for the stop.</param>
public sealed record DrawnMistake(DrawnFault Fault, int? Item = null);

/// <summary>A flat pattern that somebody drew.</summary>
public sealed record DrawnFlat
{
    // A limit deviation of formed parts, 30 to 120 mm (ISO 2768-1 m).
    private const double Formed = 0.3;

    /// <summary>How far a corner line of a formed part may be off where only its drawing is known (mm): ISO 2768-1 m, and half of what the allowance may be off by where it is assumed.</summary>
    /// <param name="source">Where the allowance is from.</param>
    /// <param name="turn">Bend angle.</param>
    /// <param name="thickness">Thickness (mm).</param>
    public static double LinePlusMinus(AllowanceSource source, Angle turn, double thickness) =>
        Formed + (source == AllowanceSource.Assumed ? 0.5 * AssumedK * turn.Magnitude.Radians * thickness : 0);

    // How far the K factor of an unknown tool may be off a published rule (our judgement, no source).
    private const double AssumedK = 0.1;

    /// <summary>How far the stop of a formed part may be off where only its drawing is known, each coordinate (mm; our judgement, no source).</summary>
    public const double StopPlusMinus = 0.5;

    /// <summary>Outline, slots with it (mm).</summary>
    public required Contour Outline { get; init; }

    /// <summary>The holes for bolts, as chosen.</summary>
    public required ImmutableArray<MeasuredHole> Holes { get; init; }

    /// <summary>All other round holes but the stop's.</summary>
    public required ImmutableArray<MeasuredHole> Others { get; init; }

    /// <summary>The bends.</summary>
    public required ImmutableArray<DrawnBend> Bends { get; init; }

    /// <summary>Middle of the stop's hole, or of the round bottom of its slot.</summary>
    public required FlatPoint Stop { get; init; }

    /// <summary>The slot's way out, length one; null for a round hole.</summary>
    public Vector2? Towards { get; init; }
}
