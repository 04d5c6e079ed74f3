using System.Collections.Immutable;

namespace BracketGen.Drawing.Sheet;

/// <summary>Tables of bends, holes, checks.</summary>
public static class SheetTable
{
    /// <summary>
    /// A table with a header, its columns as wide as their widest entry. Texts stand left, but columns named in
    /// <paramref name="rightAligned"/> (from 0) right, as numbers do. The block's upper left corner is the origin.
    /// </summary>
    /// <param name="title">Written above the table; empty for none.</param>
    /// <param name="header">Column names.</param>
    /// <param name="rows">Entries, as many in each row as there are columns; line breaks make a row higher.</param>
    /// <param name="rightAligned">Columns whose entries stand right.</param>
    /// <param name="height">Height of the capitals (mm).</param>
    /// <param name="maximumWidth">Widest a column may get (mm) before its entries are wrapped.</param>
    /// <exception cref="ArgumentException">A row has more or fewer entries than there are columns.</exception>
    public static SheetBlock Draw(
        string title,
        IReadOnlyList<string> header,
        IReadOnlyList<IReadOnlyList<string>> rows,
        IReadOnlyCollection<int>? rightAligned = null,
        double height = TextHeight.Small,
        double maximumWidth = 90)
    {
        if (rows.FirstOrDefault(r => r.Count != header.Count) is { } odd)
        {
            throw new ArgumentException($"A row of the table “{title}” has {odd.Count} entries for {header.Count} columns.", nameof(rows));
        }

        double padding = 0.7 * height, step = TextFlow.LineSpacing * height;
        var right = rightAligned ?? [];
        FontWeight WeightOf(int row) => row == 0 ? FontWeight.Bold : FontWeight.Regular;
        var cells = rows.Prepend(header)
            .Select((row, r) => row.Select(cell => TextFlow.Wrap(cell, maximumWidth, height, WeightOf(r))).ToArray())
            .ToArray();
        var widths = Enumerable.Range(0, header.Count)
            .Select(c => cells.Select((row, r) => row[c].Max(l => SheetFont.Of(WeightOf(r)).Width(l, height))).Max() + 2 * padding)
            .ToArray();
        var edges = widths.Aggregate(new List<double> { 0 }, (xs, w) => [.. xs, xs[^1] + w]);

        var items = ImmutableArray.CreateBuilder<SheetItem>();
        var top = 0.0;
        if (title.Length > 0)
        {
            items.Add(new TextItem(title, new(0, -TextFlow.Ascent * height), height, Weight: FontWeight.Bold));
            top = -TextFlow.Ascent * height - padding - 0.4 * height;
        }

        var y = top;
        var levels = new List<double>();
        var texts = new List<SheetItem>();
        for (var r = 0; r < cells.Length; r++)
        {
            levels.Add(y);
            for (var c = 0; c < header.Count; c++)
            {
                var isRight = right.Contains(c);
                texts.AddRange(cells[r][c].Select((line, i) => new TextItem(
                    line,
                    new(isRight ? edges[c + 1] - padding : edges[c] + padding, y - padding - height - i * step),
                    height,
                    isRight ? TextAlign.Right : TextAlign.Left,
                    Weight: WeightOf(r))));
            }

            y -= 2 * padding + height + (cells[r].Max(c => c.Length) - 1) * step;
        }

        double headerFoot = levels.Count > 1 ? levels[1] : y;
        items.Add(Fill.Rectangle(new(new(0, headerFoot), new(edges[^1], top)), Ink.Tint));
        items.AddRange(levels.Skip(1).Select(level => new Stroke(new(0, level), new(edges[^1], level), LineKind.Rule)));
        items.AddRange(edges.Skip(1).SkipLast(1).Select(x => new Stroke(new(x, top), new(x, y), LineKind.Rule)));
        items.Add(Polyline.Rectangle(new(new(0, y), new(edges[^1], top)), LineKind.Box));
        items.AddRange(texts);
        var titleWidth = title.Length > 0 ? SheetFont.Of(FontWeight.Bold).Width(title, height) : 0;
        return new(items.ToImmutable(), new(new(0, y), new(Math.Max(edges[^1], titleWidth), 0)));
    }
}
