using System.Collections.Immutable;

namespace BracketGen.Line.Nesting;

/// <summary>What does not depend on the sheet that a piece is laid on, worked out once for each piece: its cells in every turn, its lattices.</summary>
/// <param name="length">Length of the sheet for which lattices are looked for (mm).</param>
/// <param name="width">Its width (mm).</param>
/// <param name="spacing">Metal between two pieces (mm).</param>
/// <param name="border">Metal along the edges (mm).</param>
internal sealed class PieceShapes(double length, double width, double spacing, double border)
{
    private readonly Dictionary<string, ImmutableArray<CellMask>> _masks = [];
    private readonly Dictionary<string, ImmutableArray<Lattice>> _lattices = [];

    /// <summary>Metal between two pieces (mm).</summary>
    public double Spacing => spacing;

    /// <summary>Metal along the edges (mm).</summary>
    public double Border => border;

    /// <summary>Its cells, turn by turn.</summary>
    public ImmutableArray<CellMask> Masks(NestPiece piece)
    {
        if (!_masks.TryGetValue(piece.Name, out var masks))
        {
            _masks.Add(piece.Name, masks = [.. piece.Turns.Select(t => CellMask.Of(piece.Outline, t, spacing))]);
        }

        return masks;
    }

    /// <summary>Its lattices, the best on the sheet first; they fill any other room too.</summary>
    public ImmutableArray<Lattice> Lattices(NestPiece piece)
    {
        if (!_lattices.TryGetValue(piece.Name, out var lattices))
        {
            _lattices.Add(piece.Name, lattices = LatticeSearch.Of(piece, length - 2 * border, width - 2 * border, spacing));
        }

        return lattices;
    }
}
