using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Profiles.Family;

namespace BracketGen.Line.Nesting;

/// <summary>Fills one offcut.</summary>
internal static class OffcutNest
{
    /// <summary>The offcut with as much metal of pieces on it as was found to go, nothing where nothing goes.</summary>
    /// <param name="pieces">What there is to lay, each name once.</param>
    /// <param name="offcut">The offcut.</param>
    /// <param name="spacing">Metal between two pieces (mm).</param>
    /// <param name="border">Metal along every edge, that of what was cut out before too (mm).</param>
    public static LaidSheet Fill(IReadOnlyList<NestPiece> pieces, Offcut offcut, double spacing, double border)
    {
        var cells = offcut.Outline is { } outline ? Within(pieces, outline, offcut, spacing, border) : new CellNest(pieces, offcut.Length, offcut.Width, spacing, border);
        var nests = cells.Fitting.IsEmpty ? [] : cells.OnOne();
        if (offcut.Outline is null && !cells.Fitting.IsEmpty)
        {
            var lattices = new LatticeNest(cells.Fitting, offcut.Length, offcut.Width, spacing, border);
            nests = nests.Concat(lattices.HasAll ? lattices.Lay(cells.Fitting).Take(1) : []);
        }

        return nests.Select(n => new LaidSheet(offcut.Length, offcut.Width, n) { Offcut = offcut })
            .OrderByDescending(s => Math.Round(s.Area, 3)).ThenBy(s => Math.Round(s.Used(border), 3))
            .FirstOrDefault(new LaidSheet(offcut.Length, offcut.Width, []) { Offcut = offcut });
    }

    // A mask reaches half the spacing past its piece, so the cells that it may take keep half the spacing less from the edge.
    private static CellNest Within(IReadOnlyList<NestPiece> pieces, Region outline, Offcut offcut, double spacing, double border)
    {
        var depth = Math.Max(0, border - spacing / 2) + CellMask.Cell * Math.Sqrt(0.5);
        var cells = new SheetCells((int)Math.Floor(offcut.Length / CellMask.Cell), (int)Math.Floor(offcut.Width / CellMask.Cell));
        cells.Take((i, j) => outline.DepthOf(new((i + 0.5) * CellMask.Cell, (j + 0.5) * CellMask.Cell)) < depth);
        return new(pieces, cells, Vector2.Zero, spacing);
    }
}
