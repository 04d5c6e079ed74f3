using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Line.Nesting;

/// <summary>Fills sheets with one kind of piece after the other, each in the lattice in which it takes the least.</summary>
internal sealed class LatticeNest
{
    private readonly double _length, _width;
    private readonly PieceShapes _shapes;

    /// <summary>Sheets of one size.</summary>
    /// <param name="shapes">The pieces' lattices.</param>
    /// <param name="length">Length of the sheet (mm).</param>
    /// <param name="width">Width of the sheet (mm).</param>
    public LatticeNest(PieceShapes shapes, double length, double width) => (_shapes, _length, _width) = (shapes, length - 2 * shapes.Border, width - 2 * shapes.Border);

    /// <summary>The places of as many pieces as one sheet takes.</summary>
    public ImmutableArray<LaidPiece> Full(NestPiece piece) => Laid(piece, Best(piece, int.MaxValue, _length), 0);

    /// <summary>Whether every piece has a lattice that an empty sheet takes.</summary>
    public bool HasAll(IEnumerable<NestPiece> pieces) => pieces.All(p => !Best(p, 1, _length).IsEmpty);

    /// <summary>All pieces, the large first, where every one has a lattice; a kind begins where the one before it ends.</summary>
    /// <param name="pieces">Pieces that fit.</param>
    public IEnumerable<ImmutableArray<LaidPiece>> Lay(IEnumerable<NestPiece> pieces)
    {
        var sheet = ImmutableArray.CreateBuilder<LaidPiece>();
        double from = 0;
        foreach (var piece in pieces.OrderByDescending(p => p.Outline.SignedArea).ThenBy(p => p.Name, StringComparer.Ordinal))
        {
            for (var left = piece.Count; left > 0;)
            {
                var places = Best(piece, left, _length - from);
                if (places.IsEmpty)
                {
                    yield return sheet.ToImmutable();
                    sheet.Clear();
                    from = 0;
                    continue;
                }

                sheet.AddRange(Laid(piece, places, from));
                left -= places.Length;
                from += places[^1].End + _shapes.Spacing;
            }
        }

        if (sheet.Count > 0)
        {
            yield return sheet.ToImmutable();
        }
    }

    // In the room that is left: all that are wanted in the least length, else as many as it takes.
    private ImmutableArray<LatticePlace> Best(NestPiece piece, int wanted, double length) => _shapes.Lattices(piece)
        .Select(l => l.Fill(length, _width))
        .Select(places => places.Length > wanted ? places[..wanted] : places)
        .OrderByDescending(p => p.Length).ThenBy(p => p.IsEmpty ? 0 : Math.Round(p[^1].End, 6))
        .FirstOrDefault(ImmutableArray<LatticePlace>.Empty);

    private ImmutableArray<LaidPiece> Laid(NestPiece piece, ImmutableArray<LatticePlace> places, double from)
    {
        var corners = places.Select(p => p.Turn).Distinct().ToDictionary(t => t, t => piece.Outline.Rotate(t).Bounds.Min);
        return [.. places.Select(p => new LaidPiece(piece, p.Turn, new Vector2(_shapes.Border + from, _shapes.Border) + p.Corner - corners[p.Turn]))];
    }
}
