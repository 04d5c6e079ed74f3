using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Mechanism.Cables;
using BracketGen.Mechanism.Rods;

namespace BracketGen.Design.Part;

/// <summary>How the outer lies between the stop and the bulkhead.</summary>
/// <remarks>Lengths in mm.</remarks>
public sealed record OuterFit : IMirrored<OuterFit>
{
    /// <summary>The shortest route with the outer's minimum bend radius: an outer must be longer; null if there is none.</summary>
    public required OuterRoute? Shortest { get; init; }

    /// <summary>Why the outer does not get there; null if it does.</summary>
    public required NoOuterRoute? Problem { get; init; }

    /// <summary>The outer as an elastic rod at its length, then at the ends of its ± if it has one; empty if its length was not measured.</summary>
    public required ImmutableArray<ElasticLines> AtLengths { get; init; }

    /// <summary>Length of outer that lies well, to order (mm); null where the outer that is there does, and where none was found.</summary>
    public required double? Order { get; init; }

    /// <summary>Length left over along the shortest route, shortest outer its ± allows (mm); not a number without length or route.</summary>
    public double Spare => Shortest is { } route && !AtLengths.IsEmpty ? AtLengths.Min(l => l.Length) - route.Length : double.NaN;

    /// <summary>Whether an elastic line is known: the length was measured, and it reaches.</summary>
    public bool IsLaid => !AtLengths.IsEmpty && !AtLengths.Any(l => l.IsTooShort);

    /// <summary>Whether the outer rests only in lines with a full loop.</summary>
    public bool IsTooLong => AtLengths.Any(l => l.IsTooLong);

    /// <summary>All bends added: of the worst elastic line, or of the shortest route, which has fewer; null without either.</summary>
    public Angle? Bends => IsLaid ? new(AtLengths.Max(l => l.MaxBend.Radians)) : Shortest?.TotalBend;

    /// <summary>Minimum radius over all lines, a hundred metres where it is straight; zero if the outer does not reach, not a number if its length was not measured.</summary>
    public double MinRadius => AtLengths.IsEmpty ? double.NaN : AtLengths.Min(l => Math.Min(l.MinRadius, Straight));

    /// <summary>Bend that spare length adds to what the ends ask for; a full turn at least if the outer has to loop, zero if its length was not measured.</summary>
    public Angle SpareBend =>
        new(Math.Max(AtLengths.Select(l => l.SpareBend.Radians).DefaultIfEmpty().Max(), IsTooLong ? 2 * Math.PI : 0));

    /// <summary>Points along the worst elastic line, or along the shortest route, no two farther apart than <paramref name="step"/> (mm).</summary>
    public ImmutableArray<ThrottlePoint> Points(double step) =>
        [.. (IsLaid ? Thinned(AtLengths[0].Points, step) : Shortest?.Points(step) ?? []).Select(p => new ThrottlePoint(p))];

    /// <inheritdoc/>
    public OuterFit Mirrored() => this with
    {
        Shortest = Shortest?.Mirrored(),
        AtLengths = [.. AtLengths.Select(l => l.Mirrored())],
    };

    private const double Straight = 100_000;

    private static ImmutableArray<Vector3> Thinned(ImmutableArray<Vector3> points, double step)
    {
        var kept = ImmutableArray.CreateBuilder<Vector3>();
        for (var i = 0; i < points.Length; i++)
        {
            if (i == 0 || i + 1 == points.Length || kept[^1].DistanceTo(points[i + 1]) > step)
            {
                kept.Add(points[i]);
            }
        }

        return kept.ToImmutable();
    }
}
