using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Line.Nesting;

/// <summary>Lays true outlines on sheets: each where it comes to lie farthest left, turned the way in which it ends farthest left.</summary>
/// <remarks>
/// On cells of a millimetre, taken whole by whatever touches them, so that nothing can overlap. A few orders are tried, the large first in
/// each, with all turns and with two; plain rows of rectangles are among them. The one that uses the least sheet is kept, the last sheet
/// counted as far as it is used. The same input gives the same nest.
/// </remarks>
public static class Nester
{
    /// <summary>The nest.</summary>
    /// <param name="pieces">What to lay.</param>
    /// <param name="length">Length of the sheet, along the grain (mm).</param>
    /// <param name="width">Width of the sheet (mm).</param>
    /// <param name="spacing">Metal between two pieces (mm).</param>
    /// <param name="border">Metal along the edges (mm).</param>
    public static SheetNest Lay(IReadOnlyList<NestPiece> pieces, double length, double width, double spacing, double border)
    {
        // Half the spacing of a mask may hang over the border.
        double room = length - 2 * border + spacing, across = width - 2 * border + spacing;
        int columns = (int)Math.Floor(room / CellMask.Cell), rows = (int)Math.Floor(across / CellMask.Cell);
        var shapes = pieces.Select(p => new Shape(p, [.. p.Turns.Select(t => CellMask.Of(p.Outline, t, spacing)).Where(m => m.Width <= columns && m.Height <= rows)])).ToArray();
        var unlaid = shapes.Where(s => s.Masks.IsEmpty).Select(s => s.Piece).ToImmutableArray();
        var fitting = shapes.Where(s => !s.Masks.IsEmpty && s.Piece.Count > 0).ToArray();
        if (fitting.Length == 0)
        {
            return new([], unlaid, border);
        }

        var origin = new Vector2(border - spacing / 2, border - spacing / 2);
        Func<Shape, double>[] orders =
        [
            s => s.Piece.Outline.SignedArea,
            s => s.Masks.Min(m => m.Width),
            s => s.Masks.Min(m => Math.Max(m.Height, m.Width)),
        ];
        var nests =
            from turns in fitting.Any(s => s.Masks.Length > 2) ? (int[])[int.MaxValue, 2] : [int.MaxValue]
            from order in orders
            let shapesInOrder = fitting.OrderByDescending(order).ThenBy(s => s.Piece.Name, StringComparer.Ordinal).Select(s => s.WithTurns(turns)).ToArray()
            select new SheetNest(LayInOrder(shapesInOrder, columns, rows, origin, length, width), unlaid, border);
        return nests
            .Append(RowNest.Lay([.. fitting.Select(s => s.Piece)], length, width, spacing, border) with { Unlaid = unlaid })
            .MinBy(nest => Math.Round(nest.UsedArea, 3))!;
    }

    private sealed record Shape(NestPiece Piece, ImmutableArray<CellMask> Masks)
    {
        /// <summary>With the first so many turns and their opposites: alike ones lie in ranks, which sometimes takes less.</summary>
        public Shape WithTurns(int most)
        {
            if (Masks.Length <= most)
            {
                return this;
            }

            var first = Masks[0].Turn;
            return this with { Masks = [.. Masks.Where(m => Math.Abs(Math.Sin((m.Turn - first).Radians)) < Tolerance.Smooth)] };
        }
    }

    private sealed class OpenSheet(int columns, int rows)
    {
        public SheetCells Cells { get; } = new(columns, rows);

        public List<LaidPiece> Laid { get; } = [];

        // Cells are only ever taken: what was not free for a mask before is not free now.
        public Dictionary<CellMask, int> From { get; } = [];
    }

    private static ImmutableArray<LaidSheet> LayInOrder(Shape[] shapes, int columns, int rows, Vector2 origin, double length, double width)
    {
        var sheets = new List<OpenSheet>();
        foreach (var shape in shapes)
        {
            var first = 0; // A sheet that has no room for a shape has none for the next of the same.
            for (var n = 0; n < shape.Piece.Count; n++)
            {
                while (first < sheets.Count && !LayOn(sheets[first], shape, origin))
                {
                    first++;
                }

                if (first == sheets.Count)
                {
                    sheets.Add(new(columns, rows));
                    LayOn(sheets[first], shape, origin);
                }
            }
        }

        return [.. sheets.Select(s => new LaidSheet(length, width, [.. s.Laid]))];
    }

    private static bool LayOn(OpenSheet sheet, Shape shape, Vector2 origin)
    {
        (CellMask Mask, int X, int Y)? best = null;
        foreach (var mask in shape.Masks)
        {
            // Only what ends farther left than the best so far is of use.
            var last = best is { } b ? b.X + b.Mask.Width - mask.Width : sheet.Cells.Width;
            var from = sheet.From.GetValueOrDefault(mask);
            if (from > last)
            {
                continue;
            }

            if (sheet.Cells.Find(mask, from, last) is { } at)
            {
                sheet.From[mask] = at.X;
                if (best is not { } old || at.X + mask.Width < old.X + old.Mask.Width
                    || (at.X + mask.Width == old.X + old.Mask.Width && at.Y + mask.Height < old.Y + old.Mask.Height))
                {
                    best = (mask, at.X, at.Y);
                }
            }
            else
            {
                sheet.From[mask] = last + 1;
            }
        }

        if (best is not { } found)
        {
            return false;
        }

        sheet.Cells.Take(found.Mask, found.X, found.Y);
        sheet.Laid.Add(new(shape.Piece, found.Mask.Turn, origin + new Vector2(found.X * CellMask.Cell, found.Y * CellMask.Cell) - found.Mask.Corner));
        return true;
    }
}
