using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Line.Nesting;

/// <summary>A place in a lattice: how the piece is turned, and where the lower left corner of its rectangle lies (mm).</summary>
/// <param name="Turn">By what it is turned.</param>
/// <param name="Corner">Lower left corner of its rectangle (mm).</param>
/// <param name="End">Right-hand end of its rectangle (mm).</param>
internal readonly record struct LatticePlace(Angle Turn, Vector2 Corner, double End);

/// <summary>Like pieces in rows that repeat: all turned alike, or in pairs of which one is turned by half a turn.</summary>
/// <remarks>
/// In a row the pieces come <see cref="Pitch"/> after one another; the second of a pair lies at <see cref="Second"/> from the first. The next
/// row is shifted by <see cref="Step"/>. The rows run along x, or along y where the lattice stands; these vectors are along and across the row.
/// </remarks>
internal sealed record Lattice
{
    /// <summary>By what the first piece of a pair is turned.</summary>
    public required Angle Turn { get; init; }

    /// <summary>By what the second is turned; null where there is none.</summary>
    public required Angle? OtherTurn { get; init; }

    /// <summary>Whether the rows run along y.</summary>
    public required bool Stands { get; init; }

    /// <summary>Size of a piece's rectangle along and across the row (mm).</summary>
    public required Vector2 Size { get; init; }

    /// <summary>From one piece, or pair, of a row to the next (mm).</summary>
    public required double Pitch { get; init; }

    /// <summary>From the first of a pair to the second (mm).</summary>
    public required Vector2 Second { get; init; }

    /// <summary>From one row to the next (mm).</summary>
    public required Vector2 Step { get; init; }

    /// <summary>Area that a piece takes (mm²).</summary>
    public double AreaOfOne => Pitch * Step.Y / (OtherTurn is null ? 1 : 2);

    /// <summary>The places in a room, those that end farthest left first.</summary>
    /// <param name="length">Length of the room (mm), along x.</param>
    /// <param name="width">Width (mm).</param>
    public ImmutableArray<LatticePlace> Fill(double length, double width)
    {
        var (along, across) = Stands ? (width, length) : (length, width);
        List<Vector2> best = [];
        var isSecond = new List<bool>();
        foreach (var start in Starts(along, across))
        {
            List<Vector2> places = [];
            List<bool> seconds = [];
            Add(start, along, across, places, seconds);
            if (places.Count > best.Count)
            {
                (best, isSecond) = (places, seconds);
            }
        }

        return
        [
            .. best.Zip(isSecond, (at, second) => new LatticePlace(
                second ? OtherTurn!.Value : Turn, Stands ? new(at.Y, at.X) : at, Stands ? at.Y + Size.Y : at.X + Size.X))
                .OrderBy(p => Math.Round(p.End, 6)).ThenBy(p => p.Corner.Y),
        ];
    }

    // One of the first rows begins at the edge, with the first or the second of a pair; either touches the edge that the rows begin from.
    private IEnumerable<Vector2> Starts(double along, double across)
    {
        var rows = (int)Math.Clamp((across - Size.Y) / Step.Y + 1, 1, 8);
        foreach (var up in OtherTurn is null || Second.Y == 0 ? (double[])[0] : [0, -Second.Y])
        {
            for (var row = 0; row < rows; row++)
            {
                yield return new(-row * Step.X, up);
                if (OtherTurn is not null)
                {
                    yield return new(-row * Step.X - Second.X, up);
                }

                // Or it ends at the other edge.
                yield return new(along - Size.X - row * Step.X, up);
            }
        }
    }

    private void Add(Vector2 start, double along, double across, List<Vector2> places, List<bool> seconds)
    {
        const double slack = Tolerance.SameSize;
        for (var row = -1; row <= across / Step.Y + 1; row++)
        {
            var first = start + row * Step;
            foreach (var second in OtherTurn is null ? (bool[])[false] : [false, true])
            {
                var (x, y) = (first.X + (second ? Second.X : 0), first.Y + (second ? Second.Y : 0));
                if (y < -slack || y + Size.Y > across + slack)
                {
                    continue;
                }

                var k = Math.Ceiling((-slack - x) / Pitch);
                for (var at = x + k * Pitch; at + Size.X <= along + slack; at = x + ++k * Pitch)
                {
                    places.Add(new(at, y));
                    seconds.Add(second);
                }
            }
        }
    }
}
