using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Mechanism.Rods;

/// <summary>A line in which an elastic rod rests between two clamps.</summary>
/// <remarks>
/// Lengths in the unit of the ends (mm). Forces and moments are for a bending stiffness of one: times the rod's stiffness (N·mm²) a force in 1/mm² is one
/// in N, a moment in 1/mm one in N·mm.
/// </remarks>
public sealed record ElasticLine : IMirrored<ElasticLine>
{
    /// <summary>Turn about one axis from which on a line counts as one with a full loop (our judgement, no source).</summary>
    /// <remarks>A line in one plane that crosses itself and goes on turns through 360°; in space, with its ends a little apart, somewhat less.</remarks>
    public static readonly Angle Loop = Angle.FromDegrees(330);

    /// <summary>Points along the line, both ends included.</summary>
    public required ImmutableArray<Vector3> Points { get; init; }

    /// <summary>Its direction at each point, length one.</summary>
    public required ImmutableArray<Vector3> Directions { get; init; }

    /// <summary>Distance of each point from the beginning, along the line.</summary>
    public required ImmutableArray<double> Along { get; init; }

    /// <summary>Length of the rod.</summary>
    public double Length => Along[^1];

    /// <summary>All bends added without sign: the integral of the curvature, which is what the capstan formula takes.</summary>
    public required Angle Bend { get; init; }

    /// <summary>Minimum radius anywhere on the line; infinite if it is straight.</summary>
    public required double MinRadius { get; init; }

    /// <summary>Where the radius is the minimum: distance from the beginning along the line.</summary>
    public required double TightestAt { get; init; }

    /// <summary>Force on the far end (1/length²).</summary>
    public required Vector3 EndForce { get; init; }

    /// <summary>Bending moment at the beginning (1/length).</summary>
    public required Vector3 StartMoment { get; init; }

    /// <summary>Bending moment at the far end (1/length).</summary>
    public required Vector3 EndMoment { get; init; }

    /// <summary>Half the integral of the squared curvature (1/length).</summary>
    public required double Energy { get; init; }

    /// <summary>Number of ways in which the line would give: 0 if it is stable.</summary>
    public required int NegativeModes { get; init; }

    /// <summary>Largest turn about one axis between any two of its points: the turn of each piece is added as a vector.</summary>
    public required Angle Turning { get; init; }

    /// <summary>Whether the rod stays in this line.</summary>
    public bool IsStable => NegativeModes == 0;

    /// <summary>Whether the line has a full loop.</summary>
    public bool IsLooped => Turning >= Loop;

    /// <inheritdoc/>
    public ElasticLine Mirrored() => this with
    {
        Points = [.. Points.Select(p => p.MirroredInY)],
        Directions = [.. Directions.Select(d => d.MirroredInY)],
        EndForce = EndForce.MirroredInY,
        StartMoment = -StartMoment.MirroredInY, // The axis of a turn mirrors the other way round from a direction.
        EndMoment = -EndMoment.MirroredInY,
    };
}
