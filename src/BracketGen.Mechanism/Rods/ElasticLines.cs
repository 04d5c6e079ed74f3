using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Mechanism.Rods;

/// <summary>A piece of the rod that rests by itself, and the lines in which it can.</summary>
/// <remarks>Pieces are parted by supports that fix direction and length; all lines of one piece go with all lines of the next.</remarks>
/// <param name="Lines">The lines found in which it is stable, the one with the least energy first; empty if it is too short.</param>
public sealed record RodPiece(ImmutableArray<ElasticLine> Lines) : IMirrored<RodPiece>
{
    /// <summary>The lines to reckon with: those without a full loop; all of them if there are no others.</summary>
    public IEnumerable<ElasticLine> Worst => IsLooped ? Lines : Lines.Where(l => !l.IsLooped);

    /// <summary>Whether every line it can rest in has a full loop.</summary>
    public bool IsLooped => Lines.All(l => l.IsLooped);

    /// <inheritdoc/>
    public RodPiece Mirrored() => new([.. Lines.Select(l => l.Mirrored())]);
}

/// <summary>How an elastic rod of given length can lie from its beginning to its end, over its supports.</summary>
/// <param name="Length">Length of the rod.</param>
/// <param name="Chord">Shortest length that reaches: from point to point.</param>
/// <param name="LeastBend">
/// Bend that no curve through the same points with the same directions goes below: that of the polygon inscribed in it (J. Milnor, <i>Annals of
/// Mathematics</i> 52 (1950) 248-257; W. Fenchel, 1929).
/// </param>
/// <param name="Pieces">Its pieces in order; empty if it is too short.</param>
public sealed record ElasticLines(double Length, double Chord, Angle LeastBend, ImmutableArray<RodPiece> Pieces) : IMirrored<ElasticLines>
{
    /// <summary>Whether some piece has no line: the rod does not reach.</summary>
    public bool IsTooShort => Pieces.IsEmpty || Pieces.Any(p => p.Lines.IsEmpty);

    /// <summary>Whether some piece rests only in lines with a full loop: the rod is too long.</summary>
    public bool IsTooLong => !IsTooShort && Pieces.Any(p => p.IsLooped);

    /// <summary>Largest bend over its lines, those with a full loop left out where there are others; zero if it is too short.</summary>
    public Angle MaxBend => IsTooShort ? Angle.Zero : new(Pieces.Sum(p => p.Worst.Max(l => l.Bend.Radians)));

    /// <summary>Smallest bend over its lines, looped ones left out likewise; zero if it is too short.</summary>
    public Angle MinBend => IsTooShort ? Angle.Zero : new(Pieces.Sum(p => p.Worst.Min(l => l.Bend.Radians)));

    /// <summary>Bend beyond <see cref="LeastBend"/>: what spare length adds.</summary>
    public Angle SpareBend => IsTooShort ? Angle.Zero : new(Math.Max(0, (MaxBend - LeastBend).Radians));

    /// <summary>Minimum radius over the same lines; zero if it is too short.</summary>
    public double MinRadius => IsTooShort ? 0 : Pieces.Min(p => p.Worst.Min(l => l.MinRadius));

    /// <summary>The points of the line with the largest bend, piece after piece, for pictures.</summary>
    public ImmutableArray<Vector3> Points => IsTooShort ? [] : [.. Pieces.SelectMany(p => p.Worst.MaxBy(l => l.Bend.Radians)!.Points)];

    /// <inheritdoc/>
    public ElasticLines Mirrored() => this with { Pieces = [.. Pieces.Select(p => p.Mirrored())] };
}
