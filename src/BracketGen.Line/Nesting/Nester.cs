using System.Collections.Immutable;
using BracketGen.Profiles.Family;

namespace BracketGen.Line.Nesting;

/// <summary>Lays true outlines on offcuts, and what is left over on sheets.</summary>
/// <remarks>
/// Three ways are tried. On cells of a millimetre, taken whole by whatever touches them, each piece where it comes to lie farthest left: in a few
/// orders, the large first in each, with all turns and with two. In lattices, one kind after the other; and lattices on all full sheets, the rest
/// on cells. In plain rows of rectangles. The one that uses the least sheet is kept, the last sheet counted as far as it is used. The same input
/// gives the same nest.
/// </remarks>
public static class Nester
{
    /// <summary>The nest without offcuts.</summary>
    /// <param name="pieces">What to lay, each name once.</param>
    /// <param name="length">Length of the sheet, along the grain (mm).</param>
    /// <param name="width">Width of the sheet (mm).</param>
    /// <param name="spacing">Metal between two pieces (mm).</param>
    /// <param name="border">Metal along the edges (mm).</param>
    public static SheetNest Lay(IReadOnlyList<NestPiece> pieces, double length, double width, double spacing, double border) =>
        Lay(pieces, [], length, width, spacing, border);

    /// <summary>The nest, each offcut filled as far as it goes before a sheet is begun.</summary>
    /// <param name="pieces">What to lay, each name once.</param>
    /// <param name="offcuts">Offcuts, in the order in which they are cut.</param>
    /// <param name="length">Length of a sheet, along the grain (mm).</param>
    /// <param name="width">Width of a sheet (mm).</param>
    /// <param name="spacing">Metal between two pieces (mm).</param>
    /// <param name="border">Metal along the edges (mm).</param>
    public static SheetNest Lay(
        IReadOnlyList<NestPiece> pieces, IReadOnlyList<Offcut> offcuts, double length, double width, double spacing, double border)
    {
        var whole = pieces.ToDictionary(p => p.Name);
        var left = pieces;
        var first = ImmutableArray.CreateBuilder<LaidSheet>();
        var shapes = new PieceShapes(length, width, spacing, border);
        foreach (var offcut in offcuts)
        {
            var filled = OffcutNest.Fill(left, shapes, offcut);
            if (!filled.Laid.IsEmpty)
            {
                first.Add(filled);
                left = Less(left, filled.Laid);
            }
        }

        var nest = OnSheets(left, shapes, length, width);
        LaidSheet Named(LaidSheet sheet) => sheet with { Laid = [.. sheet.Laid.Select(l => l with { Piece = whole[l.Piece.Name] })] };
        return nest with
        {
            Sheets = [.. nest.Sheets.Select(Named)],
            Offcuts = [.. first.Select(Named)],
            Unlaid = [.. nest.Unlaid.Select(p => offcuts.Count == 0 ? whole[p.Name] : p)],
        };
    }

    /// <summary>What is still to be laid.</summary>
    internal static IReadOnlyList<NestPiece> Less(IEnumerable<NestPiece> pieces, IEnumerable<LaidPiece> laid)
    {
        var counts = laid.CountBy(l => l.Piece.Name).ToDictionary();
        return [.. pieces.Select(p => p with { Count = p.Count - counts.GetValueOrDefault(p.Name) }).Where(p => p.Count > 0)];
    }

    private static SheetNest OnSheets(IReadOnlyList<NestPiece> pieces, PieceShapes shapes, double length, double width)
    {
        var cells = new CellNest(pieces, shapes, length, width);
        if (cells.Fitting.IsEmpty)
        {
            return new([], cells.Unlaid, shapes.Border);
        }

        SheetNest Of(IEnumerable<ImmutableArray<LaidPiece>> sheets) => new([.. sheets.Select(s => new LaidSheet(length, width, s))], cells.Unlaid, shapes.Border);
        var lattices = new LatticeNest(shapes, length, width);
        var full = FullSheets(lattices, cells.Fitting);
        var rest = full.Aggregate((IReadOnlyList<NestPiece>)cells.Fitting, (left, sheet) => Less(left, sheet));
        return cells.Nests(cells.Fitting).Select(Of)
            .Concat(lattices.HasAll(cells.Fitting) ? new[] { Of(lattices.Lay(cells.Fitting)) } : [])
            .Concat(full.Count > 0 && rest.Count > 0 && cells.Fitting.Length > 1 ? cells.Nests(rest).Select(r => Of(full.Concat(r))) : [])
            .Append(RowNest.Lay(cells.Fitting, length, width, shapes.Spacing, shapes.Border) with { Unlaid = cells.Unlaid })
            .MinBy(nest => Math.Round(nest.UsedArea, 3))!;
    }

    // Kinds of which more than a sheet is wanted.
    private static List<ImmutableArray<LaidPiece>> FullSheets(LatticeNest lattices, ImmutableArray<NestPiece> pieces)
    {
        var sheets = new List<ImmutableArray<LaidPiece>>();
        foreach (var piece in pieces)
        {
            var full = lattices.Full(piece);
            if (!full.IsEmpty)
            {
                sheets.AddRange(Enumerable.Repeat(full, piece.Count / full.Length));
            }
        }

        return sheets;
    }
}
