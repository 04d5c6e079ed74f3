using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Line.Nesting;

/// <summary>The plain way to fill a sheet, to measure the nest against: rectangles round the pieces in rows, the tallest first.</summary>
public static class RowNest
{
    /// <summary>Rows across the sheet, each as deep as its deepest rectangle, one after the other along the length.</summary>
    /// <remarks>Next fit by falling depth; every piece in that of its turns in which its rectangle is smallest.</remarks>
    /// <param name="pieces">What to lay.</param>
    /// <param name="length">Length of the sheet (mm).</param>
    /// <param name="width">Width of the sheet (mm).</param>
    /// <param name="spacing">Metal between two pieces (mm).</param>
    /// <param name="border">Metal along the edges (mm).</param>
    public static SheetNest Lay(IReadOnlyList<NestPiece> pieces, double length, double width, double spacing, double border)
    {
        var sheets = new List<List<LaidPiece>>();
        double x = 0, y = 0, depth = 0;
        var all =
            from piece in pieces
            let best = piece.Turns.Select(t => (Turn: t, Bounds: piece.Outline.Rotate(t).Bounds)).MinBy(b => Math.Round(b.Bounds.Width * b.Bounds.Height, 6))
            orderby best.Bounds.Width descending
            from n in Enumerable.Range(0, piece.Count)
            select (piece, best);
        foreach (var (piece, (turn, bounds)) in all)
        {
            if (sheets.Count == 0 || (y > 0 && y + bounds.Height > width - 2 * border))
            {
                (x, y, depth) = (sheets.Count == 0 ? 0 : x + depth + spacing, 0, 0);
            }

            if (sheets.Count == 0 || x + bounds.Width > length - 2 * border)
            {
                sheets.Add([]);
                (x, y, depth) = (0, 0, 0);
            }

            sheets[^1].Add(new(piece, turn, new Vector2(border + x, border + y) - bounds.Min));
            y += bounds.Height + spacing;
            depth = Math.Max(depth, bounds.Width);
        }

        return new([.. sheets.Select(s => new LaidSheet(length, width, [.. s]))], ImmutableArray<NestPiece>.Empty, border);
    }
}
