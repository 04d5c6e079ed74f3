using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.SheetMetal.Cutting;

/// <summary>The beam path round a blank: half the kerf off the finished edge, on the side of the scrap.</summary>
/// <remarks>
/// Outside of the outline, inside of the holes. Travelled like the blank's contours, metal to the left.
/// </remarks>
/// <param name="Kerf">Width of the cut (mm).</param>
/// <param name="Contours">Outline and holes of the path, in the order of the blank's; null if the beam does not fit.</param>
/// <param name="Tight">Inside corners (mm) rounded tighter than the beam: it leaves half the kerf as their radius.</param>
/// <param name="Stuck">Where the beam does not fit (mm); null if it fits.</param>
public sealed record CutPath(double Kerf, Region? Contours, ImmutableArray<FlatPoint> Tight, FlatPoint? Stuck)
{
    /// <summary>The path that cuts <paramref name="blank"/> with a cut of width <paramref name="kerf"/> (mm, positive).</summary>
    /// <exception cref="ArgumentException">The kerf is not positive.</exception>
    public static CutPath Of(Region blank, double kerf)
    {
        var rolled = blank.Contours.Select(c => RollingDisc.Along(c, kerf / 2)).ToArray();
        return rolled.FirstOrDefault(r => r.Path is null) is { } stuck
            ? new(kerf, null, [], stuck.Stuck is { } at ? new(at) : null)
            : new(kerf, new(rolled[0].Path!, rolled.Skip(1).Select(r => r.Path!)), [.. rolled.SelectMany(r => r.Tight).Select(t => new FlatPoint(t))], null);
    }

    /// <inheritdoc/>
    public bool Equals(CutPath? other) => other is not null
        && Kerf == other.Kerf && Equals(Contours, other.Contours) && Tight.SequenceEqual(other.Tight) && Stuck == other.Stuck;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Kerf, Contours, Tight.Length);
}
