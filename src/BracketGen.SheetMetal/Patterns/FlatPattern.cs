using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.SheetMetal.Bending;

namespace BracketGen.SheetMetal.Patterns;

/// <summary>A part as cut: the blank, and where to bend it.</summary>
/// <remarks>
/// Coordinates in mm, seen from the top of the sheet. Flange 0 is the mount flange; each bend attaches one more flange
/// to an earlier one.
/// </remarks>
public sealed record FlatPattern
{
    /// <summary>Outline and holes.</summary>
    public required Region Blank { get; init; }

    /// <summary>Thickness of the sheet (mm).</summary>
    public required double Thickness { get; init; }

    /// <summary>The bends; bend i makes flange i + 1.</summary>
    public required ImmutableArray<Bend> Bends { get; init; }

    /// <summary>Number of flanges.</summary>
    public int FlangeCount => Bends.Length + 1;

    /// <summary>Seen from the other end of the x axis: what a mirrored vehicle needs.</summary>
    public FlatPattern Mirrored() => this with
    {
        Blank = Blank.MirroredInX,
        Bends = [.. Bends.Select(b => b.Mirrored())],
    };

    /// <summary>Shifted by <paramref name="by"/> (mm).</summary>
    public FlatPattern Shift(Vector2 by) => this with
    {
        Blank = Blank.Shift(by),
        Bends = [.. Bends.Select(b => b.Shift(by))],
    };

    /// <summary>Which flange or bend a flat point belongs to.</summary>
    public (int Flange, Bend? Bend) ZoneOf(FlatPoint flat)
    {
        var flange = 0;
        for (var i = 0; i < Bends.Length; i++)
        {
            var bend = Bends[i];
            if (bend.From != flange)
            {
                continue;
            }

            if (bend.Beyond(flat) <= 0)
            {
                continue;
            }

            if (bend.Depth(flat) < bend.Allowance)
            {
                return (flange, bend);
            }

            flange = bend.To;
        }

        return (flange, null);
    }

    /// <summary>The part of the blank that is the flat face of <paramref name="flange"/>, holes included.</summary>
    public Region FlangeRegion(int flange)
    {
        var outline = Blank.Outline;
        foreach (var bend in Bends)
        {
            if (bend.From == flange)
            {
                outline = HalfPlane.KeepRight(outline, bend.Start.Vector, bend.End.Vector);
            }
            else if (bend.To == flange)
            {
                outline = HalfPlane.KeepRight(outline, (bend.End + bend.Allowance * bend.Across).Vector, (bend.Start + bend.Allowance * bend.Across).Vector);
            }
        }

        return new(outline, Blank.Holes.Where(h => ZoneOf(new(h.Bounds.Centre)) == (flange, null)));
    }

    /// <inheritdoc/>
    public bool Equals(FlatPattern? other) => other is not null
        && Blank.Equals(other.Blank) && Thickness == other.Thickness && Bends.SequenceEqual(other.Bends);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Blank, Thickness, Bends.Length);
}
