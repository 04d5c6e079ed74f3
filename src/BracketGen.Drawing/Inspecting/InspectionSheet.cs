using System.Collections.Immutable;
using BracketGen.Design.Study;
using BracketGen.Drawing.Setup;
using BracketGen.Drawing.Sheet;
using BracketGen.Drawing.Views;
using BracketGen.Words.Inspecting;
using BracketGen.Words.SetupSheet;

namespace BracketGen.Drawing.Inspecting;

/// <summary>The inspection sheet: every dimension with its limits and a blank for what was measured.</summary>
public static class InspectionSheet
{
    private const double Margin = 4, Gap = 4.5;

    // Room for a number written by hand (mm).
    private const double Blank = 26, RowHeight = 8;

    /// <summary>The sheets.</summary>
    /// <param name="solution">A solution with a bracket.</param>
    /// <param name="format">Sheet, upright.</param>
    /// <exception cref="ArgumentException">The solution has no bracket.</exception>
    public static ImmutableArray<SheetPage> Compose(Solution solution, PageFormat format)
    {
        if (solution.Bracket is not { } bracket)
        {
            throw new ArgumentException(SetupText.NoBracket, nameof(solution));
        }

        var units = solution.Job.Units;
        var flow = new PageFlow(format, Margin);
        var items = Inspection.ItemsOf(solution.Job, bracket);
        flow.Add(Table(items.Select(i => InspectionText.Row(i, null, units)).ToList(), flow.Width), Gap);
        foreach (var note in InspectionText.Notes(items))
        {
            flow.Add(Notes.Paragraph(note, flow.Width), 1.5);
        }

        var shape = new BracketScene(solution, bracket);
        flow.Add(InspectionPicture.Draw(shape, new(flow.Width, 60)), Gap);
        return flow.Pages((sheet, sheets) => SheetHead.Draw(solution, InspectionText.Title, flow.Width, sheet, sheets));
    }

    private static SheetBlock Table(List<IReadOnlyList<string>> rows, double width)
    {
        const double height = TextHeight.Small, padding = 0.7 * height;
        string[] heads = [.. InspectionText.Heads];
        var columns = Enumerable.Range(0, heads.Length).Select(c => rows.Append(heads).Max(r => SheetFont.Of(FontWeight.Bold).Width(r[c], height)) + 2 * padding).ToArray();
        columns[^1] = Blank;
        columns[1] = width - columns.Where((_, i) => i != 1).Sum();
        var edges = columns.Aggregate(new List<double> { 0 }, (xs, w) => [.. xs, xs[^1] + w]);
        var items = ImmutableArray.CreateBuilder<SheetItem>();
        var y = 0.0;
        foreach (var (row, r) in rows.Prepend(heads).Select((row, r) => (row, r)))
        {
            var weight = r == 0 ? FontWeight.Bold : FontWeight.Regular;
            var lines = row.Select((text, c) => TextFlow.Wrap(text, columns[c] - 2 * padding, height, weight)).ToArray();
            var tall = Math.Max(RowHeight, lines.Max(l => l.Count()) * TextFlow.LineSpacing * height + 2 * padding);
            if (r == 0)
            {
                items.Add(Fill.Rectangle(new(new(0, y - tall), new(width, y)), Ink.Tint));
            }

            for (var c = 0; c < lines.Length; c++)
            {
                var isNumber = c is >= 2 and <= 4;
                items.AddRange(lines[c].Select((line, i) => new TextItem(
                    line, new(isNumber ? edges[c + 1] - padding : edges[c] + padding, y - padding - height - i * TextFlow.LineSpacing * height), height,
                    isNumber ? TextAlign.Right : TextAlign.Left, Weight: weight)));
            }

            y -= tall;
            items.Add(new Stroke(new(0, y), new(width, y), LineKind.Rule));
        }

        items.AddRange(edges.Skip(1).SkipLast(1).Select(x => new Stroke(new(x, 0), new(x, y), LineKind.Rule)));
        items.Add(Polyline.Rectangle(new(new(0, y), new(width, 0)), LineKind.Box));
        return new(items.ToImmutable(), new(new(0, y), new(width, 0)));
    }
}
