using System.Collections.Immutable;
using BracketGen.Geometry;
using BracketGen.Words.ShopDrawing;

namespace BracketGen.Drawing.Sheet;

/// <summary>Gathers a title block's cells: a small label in the corner, the value below it as large as it fits.</summary>
internal sealed class TitleBlockPainter
{
    private const double Padding = 1.2;
    private readonly List<SheetItem> _rules = [];
    private readonly List<SheetItem> _texts = [];
    private SheetItem? _outline;

    public ImmutableArray<SheetItem> Items => [.. _rules, .. _outline is null ? [] : new[] { _outline }, .. _texts];

    public void Add(SheetBlock block) => _texts.AddRange(block.Items);

    public void Outline(Bounds box) => _outline = Polyline.Rectangle(box, LineKind.Box);

    public void Cell(string label, string value, double x, double y, double width, double height) =>
        Cell(label, value, x, y, width, height, TextHeight.Small, FontWeight.Regular);

    public void Cell(string label, string value, double x, double y, double width, double height, double largest, FontWeight weight)
    {
        Frame(label, x, y, width, height);
        var below = height - Padding - TextHeight.Label - 0.6;
        _texts.AddRange(Fit(value, x + Padding, y + 0.7, width - 2 * Padding, below - 0.7, largest, weight));
    }

    public void TitleCell(string title, string supplement, double x, double y, double width, double height)
    {
        Frame(TitleBlockText.Title, x, y, width, height);
        double inner = width - 2 * Padding, below = height - Padding - TextHeight.Label - 0.6;
        var share = supplement.Length > 0 ? below * 0.6 : below;
        _texts.AddRange(Fit(title, x + Padding, y + below - share + 0.7, inner, share - 0.7, TextHeight.Large, FontWeight.Bold));
        if (supplement.Length > 0)
        {
            _texts.AddRange(Fit(supplement, x + Padding, y + 0.7, inner, below - share - 0.7, TextHeight.Small, FontWeight.Regular));
        }
    }

    private void Frame(string label, double x, double y, double width, double height)
    {
        _rules.Add(Polyline.Rectangle(new(new(x, y), new(x + width, y + height)), LineKind.Rule));
        _texts.Add(new TextItem(label, new(x + Padding, y + height - Padding - TextHeight.Label), TextHeight.Label, Ink: Ink.Grey));
    }

    /// <summary>
    /// A value in the largest standard height at which it fits, on as many lines as there is room for; below the smallest standard
    /// height it shrinks until it fits, for nothing may be left out.
    /// </summary>
    private static IEnumerable<SheetItem> Fit(string value, double x, double y, double width, double room, double largest, FontWeight weight)
    {
        if (value.Trim().Length == 0)
        {
            return [];
        }

        double[] standard = [TextHeight.Large, TextHeight.Normal, TextHeight.Small, TextHeight.Label];
        var shrinking = Enumerable.Range(1, 20).Select(i => TextHeight.Label * Math.Pow(0.9, i));
        foreach (var height in standard.Where(h => h <= largest).Concat(shrinking))
        {
            var step = 1.5 * height;
            var lines = TextFlow.Wrap(value, width, height, weight);
            var broken = lines.Length > 1 && lines.Length > value.Split(' ').Length;
            var tall = (TextFlow.Descent + TextFlow.Ascent) * height + (lines.Length - 1) * step;
            if (tall <= room + Tolerance.Point && !broken)
            {
                var first = y + (room - tall) / 2 + TextFlow.Descent * height + (lines.Length - 1) * step;
                return lines.Select((line, i) => new TextItem(line, new(x, first - i * step), height, Weight: weight));
            }
        }

        throw new ArgumentException($"“{value}” is too long for its field in the title block.");
    }
}
