using BracketGen.Geometry;
using BracketGen.Profiles.Family;

namespace BracketGen.Line.Nesting;

/// <summary>Fills one offcut.</summary>
internal static class OffcutNest
{
    /// <summary>The offcut with as much metal of pieces on it as was found to go, nothing where nothing goes.</summary>
    /// <param name="pieces">What there is to lay, each name once.</param>
    /// <param name="shapes">Their cells and lattices.</param>
    /// <param name="offcut">The offcut; the border is kept from every edge, that of what was cut out before too.</param>
    public static LaidSheet Fill(IReadOnlyList<NestPiece> pieces, PieceShapes shapes, Offcut offcut)
    {
        var cells = offcut.Outline is { } outline ? Within(pieces, shapes, outline, offcut) : new CellNest(pieces, shapes, offcut.Length, offcut.Width);
        var nests = cells.Fitting.IsEmpty ? [] : cells.OnOne();
        var lattices = new LatticeNest(shapes, offcut.Length, offcut.Width);
        if (offcut.Outline is null && !cells.Fitting.IsEmpty && lattices.HasAll(cells.Fitting))
        {
            nests = nests.Concat(lattices.Lay(cells.Fitting).Take(1));
        }

        return nests.Select(n => new LaidSheet(offcut.Length, offcut.Width, n) { Offcut = offcut })
            .OrderByDescending(s => Math.Round(s.Area, 3)).ThenBy(s => Math.Round(s.Used(shapes.Border), 3))
            .FirstOrDefault(new LaidSheet(offcut.Length, offcut.Width, []) { Offcut = offcut });
    }

    // A mask reaches half the spacing past its piece, so the cells that it may take keep half the spacing less from the edge.
    private static CellNest Within(IReadOnlyList<NestPiece> pieces, PieceShapes shapes, Region outline, Offcut offcut)
    {
        var depth = Math.Max(0, shapes.Border - shapes.Spacing / 2) + CellMask.Cell * Math.Sqrt(0.5);
        var cells = new SheetCells((int)Math.Floor(offcut.Length / CellMask.Cell), (int)Math.Floor(offcut.Width / CellMask.Cell));
        cells.Take((i, j) => outline.DepthOf(new((i + 0.5) * CellMask.Cell, (j + 0.5) * CellMask.Cell)) < depth);
        return new(pieces, shapes, cells, Vector2.Zero);
    }
}
