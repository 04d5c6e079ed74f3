using System.Collections.Immutable;
using BracketGen.Drawing.Sheet;
using BracketGen.Geometry;

namespace BracketGen.Drawing.Orders;

/// <summary>A label of one piece.</summary>
/// <param name="PartNumber">In large type.</param>
/// <param name="Lines">Below it, at most four.</param>
/// <param name="Modules">Dark modules of the QR code, row by row, without the quiet zone.</param>
public sealed record Label(string PartNumber, ImmutableArray<string> Lines, ImmutableArray<ImmutableArray<bool>> Modules);

/// <summary>Labels in rows and columns, to be printed on sticky paper and cut along the lines.</summary>
public static class LabelSheet
{
    /// <summary>Quiet zone round a QR code in modules (ISO/IEC 18004, from memory).</summary>
    public const int QuietZone = 4;

    private const int Columns = 2, Rows = 8;

    // No printer of an office prints nearer to the edge (mm; common practice, no source).
    private const double Edge = 10;

    // Between the cutting line and what is printed (mm).
    private const double Inside = 2;

    /// <summary>How many labels go on a page.</summary>
    public const int PerPage = Columns * Rows;

    /// <summary>The pages.</summary>
    /// <param name="labels">The labels, each with how many of it follow each other.</param>
    /// <param name="format">Sheet, upright.</param>
    public static ImmutableArray<SheetPage> Compose(IEnumerable<(Label Label, int Count)> labels, PageFormat format)
    {
        double wide = (format.Width - 2 * Edge) / Columns, tall = (format.Height - 2 * Edge) / Rows;
        var drawn = labels.Select(l => (Block: Draw(l.Label, wide, tall), l.Count)).SelectMany(l => Enumerable.Repeat(l.Block, l.Count));
        return
        [
            .. drawn.Chunk(PerPage).Select(page => new SheetPage(
                format,
                [
                    .. page.SelectMany((block, i) => block.LowerLeftAt(new(Edge + i % Columns * wide, format.Height - Edge - (i / Columns + 1) * tall)).Items),
                ],
                Framed: false)),
        ];
    }

    // Origin in the lower left corner.
    private static SheetBlock Draw(Label label, double wide, double tall)
    {
        var box = new Bounds(Vector2.Zero, new(wide, tall));
        var side = label.Modules.Length;
        var module = (tall - 2 * Inside) / (side + 2 * QuietZone);
        var corner = new Vector2(Inside + QuietZone * module, tall - Inside - QuietZone * module);
        var left = tall + Inside;
        var items = ImmutableArray.CreateBuilder<SheetItem>();
        items.Add(Polyline.Rectangle(box, LineKind.Rule));
        items.AddRange(Dark(label.Modules).Select(r => (SheetItem)Fill.Rectangle(
            new(corner + module * new Vector2(r.Column, -r.Row - r.Height), corner + module * new Vector2(r.Column + r.Width, -r.Row)), Ink.Black)));
        items.Add(TextLine.Fitting(label.PartNumber, new(left, tall - Inside - TextHeight.Large - 1), TextHeight.Large, wide - left - Inside, FontWeight.Bold));
        items.AddRange(label.Lines.Select((line, i) => (SheetItem)TextLine.Fitting(line, new(left, tall - 15 - 5 * i), TextHeight.Small, wide - left - Inside)));
        return new(items.ToImmutable(), box);
    }

    /// <summary>The dark modules as rectangles, none over another: runs of a row, as far down as they repeat.</summary>
    internal static IEnumerable<(int Column, int Row, int Width, int Height)> Dark(ImmutableArray<ImmutableArray<bool>> modules)
    {
        var taken = new bool[modules.Length, modules.Length];
        for (var row = 0; row < modules.Length; row++)
        {
            for (var column = 0; column < modules.Length; column++)
            {
                if (!Is(row, column))
                {
                    continue;
                }

                int width = 1, height = 1;
                while (column + width < modules.Length && Is(row, column + width))
                {
                    width++;
                }

                while (row + height < modules.Length && Enumerable.Range(column, width).All(c => Is(row + height, c)))
                {
                    height++;
                }

                for (var r = row; r < row + height; r++)
                {
                    for (var c = column; c < column + width; c++)
                    {
                        taken[r, c] = true;
                    }
                }

                yield return (column, row, width, height);
            }
        }

        bool Is(int row, int column) => modules[row][column] && !taken[row, column];
    }
}
