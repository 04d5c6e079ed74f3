using System.Collections.Immutable;
using BracketGen.Geometry;

namespace BracketGen.Line.Nesting;

/// <summary>Lays pieces on cells of a millimetre: each where it comes to lie farthest left, turned the way in which it ends farthest left.</summary>
internal sealed class CellNest
{
    private readonly SheetCells _empty;
    private readonly Vector2 _origin;
    private readonly ImmutableArray<Shape> _shapes;

    /// <summary>Pieces for sheets of one size.</summary>
    /// <param name="pieces">The pieces, each name once.</param>
    /// <param name="shapes">Their cells.</param>
    /// <param name="length">Length of the sheet (mm).</param>
    /// <param name="width">Width of the sheet (mm).</param>
    public CellNest(IReadOnlyList<NestPiece> pieces, PieceShapes shapes, double length, double width)
        : this(pieces, shapes, EmptySheet(length, width, shapes.Spacing, shapes.Border), new(shapes.Border - shapes.Spacing / 2, shapes.Border - shapes.Spacing / 2))
    {
    }

    /// <summary>Pieces for a sheet some of whose cells are taken.</summary>
    /// <param name="pieces">The pieces, each name once.</param>
    /// <param name="shapes">Their cells.</param>
    /// <param name="empty">The sheet's cells.</param>
    /// <param name="origin">Where the lower left corner of the first cell lies (mm).</param>
    public CellNest(IReadOnlyList<NestPiece> pieces, PieceShapes shapes, SheetCells empty, Vector2 origin)
    {
        (_empty, _origin) = (empty, origin);
        Shape[] all = [.. pieces.Where(p => p.Count > 0).Select(p => new Shape(p, [.. shapes.Masks(p).Where(m => m.Width <= empty.Width && m.Height <= empty.Height)]))];
        _shapes = [.. all.Where(s => !s.Masks.IsEmpty)];
        Fitting = [.. _shapes.Select(s => s.Piece)];
        Unlaid = [.. all.Where(s => s.Masks.IsEmpty).Select(s => s.Piece)];
    }

    /// <summary>The pieces that an empty sheet takes.</summary>
    public ImmutableArray<NestPiece> Fitting { get; }

    /// <summary>The pieces that are too large.</summary>
    public ImmutableArray<NestPiece> Unlaid { get; }

    /// <summary>All pieces on as many sheets as they take, in several orders and ways to turn.</summary>
    /// <param name="pieces">Pieces that fit, with their counts.</param>
    public IEnumerable<IEnumerable<ImmutableArray<LaidPiece>>> Nests(IReadOnlyList<NestPiece> pieces) =>
        Orders(pieces).Select(shapes => LayInOrder(shapes, int.MaxValue).Select(s => s.Laid.ToImmutableArray()));

    /// <summary>What goes on one sheet, likewise.</summary>
    public IEnumerable<ImmutableArray<LaidPiece>> OnOne() =>
        Orders(Fitting).Select(shapes => LayInOrder(shapes, 1).Select(s => s.Laid.ToImmutableArray()).FirstOrDefault([]));

    private static SheetCells EmptySheet(double length, double width, double spacing, double border)
    {
        // Half the spacing of a mask may hang over the border.
        double room = length - 2 * border + spacing, across = width - 2 * border + spacing;
        return new(Math.Max(0, (int)Math.Floor(room / CellMask.Cell)), Math.Max(0, (int)Math.Floor(across / CellMask.Cell)));
    }

    private IEnumerable<Shape[]> Orders(IReadOnlyList<NestPiece> pieces)
    {
        var counts = pieces.ToDictionary(p => p.Name, p => p);
        Shape[] shapes = [.. _shapes.Where(s => counts.ContainsKey(s.Piece.Name)).Select(s => s with { Piece = counts[s.Piece.Name] })];
        Func<Shape, double>[] orders =
        [
            s => s.Piece.Outline.SignedArea,
            s => s.Masks.Min(m => m.Width),
            s => s.Masks.Min(m => Math.Max(m.Height, m.Width)),
        ];
        return
            from turns in shapes.Any(s => s.Masks.Length > 2) ? (int[])[int.MaxValue, 2] : [int.MaxValue]
            from order in orders
            select shapes.OrderByDescending(order).ThenBy(s => s.Piece.Name, StringComparer.Ordinal).Select(s => s.WithTurns(turns)).ToArray();
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

    private sealed class OpenSheet(SheetCells cells)
    {
        public SheetCells Cells { get; } = cells;

        public List<LaidPiece> Laid { get; } = [];

        // Cells are only ever taken: what was not free for a mask before is not free now.
        public Dictionary<CellMask, int> From { get; } = [];
    }

    private List<OpenSheet> LayInOrder(Shape[] shapes, int most)
    {
        var sheets = new List<OpenSheet>();
        foreach (var shape in shapes)
        {
            var first = 0; // A sheet that has no room for a shape has none for the next of the same.
            for (var n = 0; n < shape.Piece.Count; n++)
            {
                while (first < sheets.Count && !LayOn(sheets[first], shape))
                {
                    first++;
                }

                if (first == sheets.Count)
                {
                    if (sheets.Count == most)
                    {
                        break;
                    }

                    sheets.Add(new(_empty.Copy()));
                    if (!LayOn(sheets[first], shape))
                    {
                        sheets.RemoveAt(first);
                        break;
                    }
                }
            }
        }

        return sheets;
    }

    private bool LayOn(OpenSheet sheet, Shape shape)
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
        sheet.Laid.Add(new(shape.Piece, found.Mask.Turn, _origin + new Vector2(found.X * CellMask.Cell, found.Y * CellMask.Cell) - found.Mask.Corner));
        return true;
    }
}
